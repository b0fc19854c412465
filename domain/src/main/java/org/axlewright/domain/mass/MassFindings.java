package org.axlewright.domain.mass;

import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import java.util.Comparator;
import org.axlewright.domain.mass.CentreOfGravity.Input;
import org.axlewright.domain.mass.CentreOfGravity.Lever;
import org.axlewright.domain.mass.CentreOfGravity.Result;
import org.axlewright.domain.mass.CentreOfGravity.State;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in the weight of a vehicle. */
final class MassFindings {

    /** Share below which steering suffers. */
    static final double LIGHT_FRONT = 0.20;

    /** Share of one side above which the vehicle leans on it. */
    static final double HEAVY_SIDE = 0.55;

    private static final String EMPTY = "empty";
    private static final String OCCUPIED = "occupied";

    private static final Source STEERED_AXLE = Source.weak(
            "20 % of the laden mass on the steered axle, asked of goods vehicles by Regulation (EU) 1230/2012 as read in a reprint;"
                    + " for this class of vehicle a rule of thumb");

    private static final Source RATINGS = Source.regulation("49 CFR 571.3: only the maker sets GVWR and GAWR");

    private static final Caution MAKER_RATINGS = new Caution(
            "maker-ratings",
            "The maker's axle, tyre and vehicle ratings bind, whatever the arithmetic says. Weigh the finished vehicle, driver"
                    + " aboard, before it is driven.");

    private MassFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(MAKER_RATINGS);
        boolean people = input.laden() != null || input.parts().stream().anyMatch(CentreOfGravity.Part::occupant);
        if (people) {
            judge(result.occupied(), OCCUPIED, input, result, trace);
        }
        if (result.empty() != null) {
            judge(result.empty(), EMPTY, input, result, trace);
        }
        if (input.laden() != null && input.weighing() != null) {
            trace.find(Finding.of(
                            "laden-overrides",
                            Level.NOTICE,
                            "The measured laden vehicle overrides what bare vehicle, items and occupants add up to",
                            Source.derived("measured beats derived"))
                    .at("/laden")
                    .in(OCCUPIED));
        }
    }

    private static void judge(State state, String name, Input input, Result result, Trace trace) {
        balance(state, name, input, result, trace);
        rating(state.frontLoadN(), input.ratings().frontN(), "front axle", "/chassis/ratings/front", name, trace);
        rating(state.rearLoadN(), input.ratings().rearN(), "rear axle", "/chassis/ratings/rear", name, trace);
        rating(
                state.whole().massKg() * Constants.STANDARD_GRAVITY,
                input.ratings().totalN(),
                "vehicle",
                "/chassis/ratings/total",
                name,
                trace);
        Double left = state.leftShare();
        if (left != null) {
            sides(left, name, trace);
        }
    }

    private static void sides(double left, String name, Trace trace) {
        double heavier = Math.max(left, 1 - left);
        boolean toLeft = left > 0.5;
        if (heavier > 1) {
            trace.find(Finding.of(
                            "tips-sideways",
                            Level.DANGER,
                            "The centre of gravity lies outside the " + (toLeft ? "left" : "right")
                                    + " wheels, which carry {actual} times the weight: the wheels of the other side leave the ground",
                            Source.derived("statics of two supports"))
                    .in(name)
                    .actual(Measure.number(heavier))
                    .limit(Measure.number(1))
                    .action("Check the positions: y counts to the right from the centre plane"));
        } else if (heavier > HEAVY_SIDE) {
            trace.find(Finding.of(
                            "side-imbalance",
                            Level.CAUTION,
                            "The " + (toLeft ? "left" : "right")
                                    + " wheels carry a share of {actual} of the weight, more than {limit}: it leans and tips earlier to that side",
                            Source.COMMON_PRACTICE)
                    .in(name)
                    .actual(Measure.number(heavier))
                    .limit(Measure.number(HEAVY_SIDE))
                    .action("Move mass towards the other side, or seat a lone driver nearer the middle"));
        }
    }

    private static void balance(State state, String name, Input input, Result result, Trace trace) {
        if (state.rearLoadN() < 0) {
            trace.find(Finding.of(
                            "tips-forward",
                            Level.DANGER,
                            "The centre of gravity lies ahead of the front axle, at {actual}: the rear wheels leave the ground",
                            Source.derived("statics of two supports"))
                    .in(name)
                    .actual(new Measure(state.whole().xM(), LENGTH))
                    .limit(new Measure(0, LENGTH))
                    .action("Check the positions: x counts rearward from the front axle"));
        }
        if (state.frontLoadN() < 0) {
            trace.find(Finding.of(
                            "tips-rearward",
                            Level.DANGER,
                            "The centre of gravity lies behind the rear axle, at {actual} with a wheelbase of {limit}: the front wheels leave the ground",
                            Source.derived("statics of two supports"))
                    .at(mostUnloading(result, name))
                    .in(name)
                    .actual(new Measure(state.whole().xM(), LENGTH))
                    .limit(new Measure(input.wheelbaseM(), LENGTH))
                    .action("Move mass forward before the vehicle leaves the stands"));
        } else if (state.frontShare() < LIGHT_FRONT) {
            trace.find(Finding.of(
                            "front-axle-light",
                            Level.WARNING,
                            "The front axle carries a share of {actual} of the weight; below {limit} it stops steering long before it lifts,"
                                    + " on a climb or a hard start first",
                            STEERED_AXLE)
                    .at(mostUnloading(result, name))
                    .in(name)
                    .actual(Measure.number(state.frontShare()))
                    .limit(Measure.number(LIGHT_FRONT))
                    .action("Move the heaviest part behind the rear axle forward, or lengthen the wheelbase"));
        }
    }

    private static void rating(
            double loadN, @Nullable Double ratingN, String what, String pointer, String state, Trace trace) {
        if (ratingN != null && loadN > ratingN) {
            trace.find(Finding.of(
                            "over-rating",
                            Level.WARNING,
                            "The " + what + " carries {actual}, more than its rating of {limit}",
                            RATINGS)
                    .at(pointer)
                    .in(state)
                    .actual(new Measure(loadN, LOAD))
                    .limit(new Measure(ratingN, LOAD))
                    .action("Take mass off or move it; a modifier can't raise a rating"));
        }
    }

    /** The part aboard in that state that takes most off the front axle, or null. */
    private static @Nullable String mostUnloading(Result result, String state) {
        return result.leverage().stream()
                .filter(lever -> !(state.equals(EMPTY) && lever.part().occupant()))
                .filter(lever -> lever.frontLoadChangeN() < 0)
                .min(Comparator.comparingDouble(Lever::frontLoadChangeN))
                .map(lever -> lever.part().pointer() + (lever.part().mass().massKg() < 0 ? "" : "/position/x"))
                .orElse(null);
    }
}
