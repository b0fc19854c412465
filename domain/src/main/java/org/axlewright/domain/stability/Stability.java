package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Settling;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.stability.Fillings.Filling;
import org.axlewright.domain.stability.Footprint.Roll;
import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Whether a vehicle tips, slides, lifts its front wheels or loses the rear: as driven, empty, and in its worst filling. */
public final class Stability {

    /** Springs that move the centre of gravity by more were told wrong, m. */
    static final double MOST_DROP_M = 0.3;

    private static final Step SETTLED = Step.of(
            "h",
            "height of the centre of gravity, settled on springs and tyres",
            "h = h_0 − Δh",
            LENGTH,
            Source.derived("heights as found, lift and tyres included, less what springs and tyres give"),
            new Symbol("h_0", LENGTH),
            new Symbol("Δh", CLEARANCE));

    private Stability() {}

    /**
     * The vehicle, what comes and goes with it, the ground and what is planned on it.
     *
     * @param footprint null when a track is not known: nothing is said sideways then
     * @param occupied as driven
     * @param empty without occupants; null when only the laden vehicle is known
     * @param fixed without occupants and cargo; null when only the laden vehicle is known
     * @param movable occupants and cargo, in the order of the request; empty without {@code fixed}
     * @param measured whether the vehicle as driven was measured and may differ from the sum of its parts
     * @param heightMeasured whether its height was measured as it stands then, settled on its springs
     * @param settling what springs and tyres take off the height; null when they are not known
     * @param friction tyre to ground, above 0
     * @param gradeRad uphill positive; null when none is planned
     * @param sideSlopeRad right side lower positive; null when none is planned
     * @param turningRadiusM path of the outer front wheel at full lock
     * @param radiusM path of the centre of gravity in the planned turn
     * @param speedMPS planned
     * @param topSpeedMPS what the vehicle is limited to
     * @param acceleration planned, forward positive, m/s²
     * @param roll null when springs are not known
     */
    public record Input(
            double wheelbaseM,
            @Nullable Footprint footprint,
            Whole occupied,
            @Nullable Whole empty,
            @Nullable Whole fixed,
            List<Aboard> movable,
            boolean measured,
            boolean heightMeasured,
            @Nullable Settling settling,
            double friction,
            @Nullable Double gradeRad,
            @Nullable Double sideSlopeRad,
            @Nullable Double turningRadiusM,
            @Nullable Double radiusM,
            @Nullable Double speedMPS,
            @Nullable Double topSpeedMPS,
            @Nullable Double acceleration,
            @Nullable AxleSet driven,
            @Nullable AxleSet braked,
            @Nullable Roll roll,
            Ratings ratings,
            Told told) {

        public Input {
            Check.positive(wheelbaseM, "wheelbase");
            Check.positive(friction, "friction");
            movable = List.copyOf(movable);
            if (turningRadiusM != null) {
                Check.positive(turningRadiusM, "turning radius");
            }
            if (radiusM != null) {
                Check.positive(radiusM, "radius");
            }
        }

        boolean hasPeople() {
            return movable.stream().anyMatch(one -> one.person() != null);
        }
    }

    /** Rated loads, N; null where not known. */
    public record Ratings(
            @Nullable Double frontN,
            @Nullable Double rearN,
            @Nullable Double totalN) {}

    /**
     * How things were told, where that is worth a second look.
     *
     * @param surface of the ground, beside a friction that was sent; null otherwise
     * @param gradeInDegrees whether the grade was sent in degrees
     * @param sideSlopeInDegrees whether the side slope was sent in degrees
     * @param spacerM what spacers and wheels added to the wider of the two axles, m; 0 when nothing
     * @param lifted whether lift or tyres raised the vehicle
     */
    public record Told(
            @Nullable Surface surface,
            boolean gradeInDegrees,
            boolean sideSlopeInDegrees,
            double spacerM,
            boolean lifted) {}

    /**
     * The vehicle in one state.
     *
     * @param sideways null when a track is not known
     */
    public record State(Whole whole, @Nullable Sideways sideways, Lengthways lengthways) {}

    /**
     * A filling and what the vehicle stands with it.
     *
     * @param aboard in the order of the request
     * @param asDriven whether it is the vehicle as driven, measured
     */
    public record Worst(List<Aboard> aboard, boolean asDriven, State state) {}

    /**
     * A filling that is only looked at parked.
     *
     * @param limit to the side it goes over first
     */
    public record Parked(List<Aboard> aboard, SideLimit limit) {}

    /**
     * A filling that lifts the front wheels before others.
     *
     * @param gradeRad at which the front wheels leave the ground standing, rad
     * @param acceleration at which they do so on the level, m/s²
     */
    public record Rearmost(List<Aboard> aboard, double gradeRad, double acceleration) {}

    /**
     * Everything.
     *
     * @param worst of all fillings with the driver aboard, sideways; null when a track is not known
     * @param worstParked of all fillings, also without the driver, sideways; null when a track or the fillings are not known
     * @param rearmost of all fillings with the driver aboard; null when the fillings are not known
     * @param rearmostParked of all fillings
     * @param driverAlone null without a driver or a track
     */
    public record Result(
            State occupied,
            @Nullable State empty,
            @Nullable Worst worst,
            @Nullable Parked worstParked,
            @Nullable Rearmost rearmost,
            @Nullable Rearmost rearmostParked,
            @Nullable SideLimit driverAlone) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        Trace occupiedTrace = input.empty() == null || input.movable().isEmpty() ? trace : trace.of("as driven");
        State occupied = input.heightMeasured()
                ? standing(input.occupied(), input, occupiedTrace)
                : state(input.occupied(), input, occupiedTrace);
        State empty = input.empty() == null ? null : state(input.empty(), input, trace.of("empty"));
        Whole fixed = input.fixed();
        Footprint footprint = input.footprint();
        Worst worst = footprint == null ? null : worst(occupied, footprint, input, trace.of("worst filling"));
        Result result = new Result(
                occupied,
                empty,
                worst,
                footprint == null || fixed == null ? null : parked(fixed, footprint, input),
                fixed == null ? null : rearmost(fixed, true, input),
                fixed == null ? null : rearmost(fixed, false, input),
                footprint == null || fixed == null ? null : driverAlone(fixed, footprint, input));
        StabilityFindings.find(input, result, trace);
        return result;
    }

    private static State state(Whole whole, Input input, Trace trace) {
        return standing(settled(whole, input, trace), input, trace);
    }

    /** As it stands on springs and tyres with that load. Which filling is the worst is told before: the ranking takes the heights as found. */
    private static Whole settled(Whole whole, Input input, Trace trace) {
        Settling settling = input.settling();
        if (settling == null) {
            return whole;
        }
        double drop = dropM(whole, settling, input, trace);
        return believed(drop, whole)
                ? new Whole(
                        whole.massKg(),
                        whole.xM(),
                        whole.yM(),
                        trace.note(SETTLED, whole.zM() - drop, whole.zM(), drop))
                : whole;
    }

    static double dropM(Whole whole, Settling settling, Input input, Trace trace) {
        double weight = whole.massKg() * STANDARD_GRAVITY;
        double rearN = weight * whole.xM() / input.wheelbaseM();
        return settling.dropM(weight - rearN, rearN, trace);
    }

    static boolean believed(double dropM, Whole whole) {
        return Math.abs(dropM) <= MOST_DROP_M && dropM < whole.zM() / 2;
    }

    private static State standing(Whole whole, Input input, Trace trace) {
        Footprint footprint = input.footprint();
        return new State(
                whole,
                footprint == null ? null : Sideways.of(whole, footprint, input, trace),
                Lengthways.of(whole, input, trace));
    }

    /** The vehicle as driven, when it was measured, stands beside the fillings. */
    private static Worst worst(State occupied, Footprint footprint, Input input, Trace trace) {
        Whole fixed = input.fixed();
        if (fixed == null) {
            return new Worst(List.of(), true, occupied);
        }
        Filling filling = least(fixed, footprint, true, input);
        State state = state(filling.whole(), input, trace);
        if (input.measured() && weaker(occupied).factor() < weaker(state).factor()) {
            return new Worst(input.movable(), true, occupied);
        }
        return new Worst(filling.aboard(), false, state);
    }

    private static SideLimit weaker(State state) {
        return Objects.requireNonNull(state.sideways()).weaker();
    }

    private static Filling least(Whole fixed, Footprint footprint, boolean driven, Input input) {
        Filling left = least(fixed, footprint, Side.LEFT, driven, input);
        Filling right = least(fixed, footprint, Side.RIGHT, driven, input);
        return Fillings.ratio(left.whole(), (x, y) -> footprint.acrossM(Side.LEFT, x, y))
                        < Fillings.ratio(right.whole(), (x, y) -> footprint.acrossM(Side.RIGHT, x, y))
                ? left
                : right;
    }

    private static Filling least(Whole fixed, Footprint footprint, Side side, boolean driven, Input input) {
        return Fillings.least(fixed, input.movable(), driven, (x, y) -> footprint.acrossM(side, x, y));
    }

    private static Parked parked(Whole fixed, Footprint footprint, Input input) {
        Filling filling = least(fixed, footprint, false, input);
        return new Parked(filling.aboard(), weaker(footprint, filling.whole(), input));
    }

    private static SideLimit weaker(Footprint footprint, Whole found, Input input) {
        Trace silent = Trace.withoutWorking();
        Whole whole = settled(found, input, silent);
        SideLimit left = footprint.limit(Side.LEFT, whole, input.roll(), silent);
        SideLimit right = footprint.limit(Side.RIGHT, whole, input.roll(), silent);
        return left.factor() < right.factor() ? left : right;
    }

    private static Rearmost rearmost(Whole fixed, boolean driven, Input input) {
        Fillings.Lever toRearAxle = (x, y) -> input.wheelbaseM() - x;
        Filling filling = Fillings.least(fixed, input.movable(), driven, toRearAxle);
        double coefficient = Fillings.ratio(settled(filling.whole(), input, Trace.withoutWorking()), toRearAxle);
        return new Rearmost(filling.aboard(), Math.atan(coefficient), STANDARD_GRAVITY * coefficient);
    }

    private static @Nullable SideLimit driverAlone(Whole fixed, Footprint footprint, Input input) {
        List<Aboard> driver = input.movable().stream().filter(Aboard::drives).toList();
        return driver.isEmpty()
                ? null
                : weaker(footprint, Fillings.of(fixed, driver).whole(), input);
    }
}
