package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.lift.DoubleWishbone.InstantCentre;
import org.axlewright.domain.lift.DoubleWishbone.Pose;
import org.axlewright.domain.lift.DoubleWishbone.Reach;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What a lift does to a double wishbone: camber, track, roll centre and toe. Everything is worked out in the coordinates of the frame as
 * found, y outward and z up from the ground as found; the ground then sinks away by the rise of the frame. The tyre counts as a thin
 * disc, so that the point of its plane below the wheel centre is where it meets the ground however it leans.
 */
public final class FrontSuspension {

    private static final Source LINKAGE = Source.derived("closure of the four-bar linkage on its continuous branch");
    private static final Source CONSTRUCTION =
            Source.weak("instant-centre construction of the roll centre, chassis discussions");
    private static final Source CAMBER = Source.published("sign of camber: ISO 8855, negative when the top leans in");
    private static final Source TOE = Source.derived("lateral error of the steering joint over the steering arm");

    private static final Step LOWER_ANGLE = Step.of(
            "α'",
            "angle of the lower arm at the lifted ride height, rising outward",
            "α' such that the contact patch lies Δz_f below the ground as found, while |U − L| = k and |U − P2| = l2",
            ANGLE,
            LINKAGE,
            new Symbol("α", ANGLE),
            new Symbol("l1", LENGTH),
            new Symbol("l2", LENGTH),
            new Symbol("k", LENGTH),
            new Symbol("Δz_f", LENGTH));
    private static final Step LOWER_Y = joint("y_L'", "lower ball joint, outward", "y_L' = y_P1 + l1 · cos α'", "y_P1");
    private static final Step LOWER_Z = joint("z_L'", "lower ball joint, up", "z_L' = z_P1 + l1 · sin α'", "z_P1");
    private static final Step UPPER_ANGLE = Step.of(
            "φ'",
            "direction from lower to upper ball joint at the lifted ride height",
            "φ' = atan2(z_U' − z_L', y_U' − y_L')",
            ANGLE,
            LINKAGE,
            new Symbol("y_L'", LENGTH),
            new Symbol("z_L'", LENGTH),
            new Symbol("y_U'", LENGTH),
            new Symbol("z_U'", LENGTH));
    private static final Step CAMBER_CHANGE = Step.of(
            "Δγ",
            "change of camber of each wheel",
            "Δγ = φ − φ'",
            ANGLE,
            CAMBER,
            new Symbol("φ", ANGLE),
            new Symbol("φ'", ANGLE));
    private static final Step TRACK_CHANGE = Step.of(
            "Δt",
            "change of track, both wheels",
            "Δt = 2 · (y_C' − y_C)",
            Dimension.CLEARANCE,
            LINKAGE,
            new Symbol("y_C'", LENGTH),
            new Symbol("y_C", LENGTH));
    private static final Step ROLL_CENTRE_BEFORE = rollCentre("h_RC", "as found");
    private static final Step ROLL_CENTRE_AFTER = rollCentre("h_RC'", "at the lifted ride height");
    private static final Step TOE_CHANGE = Step.of(
            "Δδ",
            "change of toe of each wheel, positive when the front turns in",
            "Δδ = asin(e / b)",
            ANGLE,
            TOE,
            new Symbol("e", LENGTH),
            new Symbol("b", LENGTH));

    /** Wheel travel about the ride height for which camber, track and toe are listed, m; bump is positive. */
    private static final double[] TRAVEL = {-0.05, -0.025, 0, 0.025, 0.05};

    private FrontSuspension() {}

    private static Step joint(String symbol, String meaning, String formula, String origin) {
        return Step.of(
                symbol,
                meaning,
                formula,
                LENGTH,
                LINKAGE,
                new Symbol(origin, LENGTH),
                new Symbol("l1", LENGTH),
                new Symbol("α'", ANGLE));
    }

    private static Step rollCentre(String symbol, String state) {
        return Step.of(
                symbol,
                "height of the roll centre above the ground " + state,
                symbol + " = −y_C · (Z − W · z_C) / (Y − W · y_C), instant centre at (Y/W, Z/W)",
                LENGTH,
                CONSTRUCTION,
                new Symbol("Y", LENGTH),
                new Symbol("Z", LENGTH),
                new Symbol("W", Dimension.NONE),
                new Symbol("y_C", LENGTH),
                new Symbol("z_C", LENGTH));
    }

    /**
     * The suspension and what was done to it.
     *
     * @param linkage as found
     * @param tieRod null when it was not measured
     * @param halfTrackM half the front track as found, m
     * @param frameRiseM rise of the frame over the ground, m
     * @param stubDropM how much lower the wheel stands on its knuckle, m: change of loaded radius, and the amount of a spindle lift. The
     *     rest of the rise is droop of the arms
     */
    public record LiftedWishbone(
            DoubleWishbone linkage, @Nullable TieRod tieRod, double halfTrackM, double frameRiseM, double stubDropM) {

        public LiftedWishbone {
            positive(halfTrackM, "halfTrackM");
            finite(frameRiseM, "frameRiseM");
            finite(stubDropM, "stubDropM");
        }

        Point contactBefore() {
            return new Point(halfTrackM, 0);
        }

        /** Contact patch of the wheel as it is now, on the knuckle as found. */
        Point contactAfter() {
            return new Point(halfTrackM, -stubDropM);
        }
    }

    /**
     * What the lift did.
     *
     * @param droopM droop of the arms that the lift asks for, m
     * @param reachedM droop that the linkage can give, m; less than asked for when {@code alignment} is null
     * @param rollCentreBeforeM height above the ground as found, m; null when the construction gives none
     * @param alignment null when the linkage does not reach the lifted ride height
     * @param travel about the ride height before and after
     */
    public record Result(
            double droopM,
            double reachedM,
            @Nullable Double rollCentreBeforeM,
            @Nullable Alignment alignment,
            List<Travel> travel) {}

    /**
     * Changes at the lifted ride height since found.
     *
     * @param camberChangeRad of each wheel; negative when the top leans in
     * @param trackChangeM of both wheels
     * @param toeChangeRad of each wheel, positive when the front turns in; null without a tie rod or where it can't follow
     * @param rollCentreM height above the ground, m; null when the construction gives none
     * @param instantCentreFlips whether the instant centre went to the other side of the wheel
     */
    public record Alignment(
            double camberChangeRad,
            double trackChangeM,
            @Nullable Double toeChangeRad,
            @Nullable Double rollCentreM,
            boolean instantCentreFlips) {}

    /**
     * Changes when a wheel moves from its ride height.
     *
     * @param travelM bump positive, m
     * @param before about the ride height as found; null where the linkage does not reach
     * @param after about the lifted ride height; null where the linkage does not reach
     */
    public record Travel(
            double travelM,
            @Nullable Change before,
            @Nullable Change after) {}

    /**
     * Changes since the ride height.
     *
     * @param camberRad of the wheel; negative when the top leans in
     * @param trackM of both wheels
     * @param toeRad of the wheel, positive when the front turns in; null without a tie rod or where it can't follow
     */
    public record Change(
            double camberRad, double trackM, @Nullable Double toeRad) {}

    /** Works out what the lift does. Pure. */
    public static Result of(LiftedWishbone input, Trace trace) {
        DoubleWishbone linkage = input.linkage();
        Pose found = linkage.asFound();
        Point before = input.contactBefore();
        Double rollBefore = rollCentre(ROLL_CENTRE_BEFORE, linkage.instantCentre(found), before, trace);
        Reach reach = linkage.withHeight(input.contactAfter(), -input.frameRiseM());
        Pose lifted = reach.pose();
        double droop = input.frameRiseM() - input.stubDropM();
        if (lifted == null) {
            return new Result(droop, -input.stubDropM() - reach.z(), rollBefore, null, List.of());
        }
        Point after = linkage.moved(input.contactAfter(), lifted);
        note(linkage, found, lifted, input, trace);
        double camber =
                trace.note(CAMBER_CHANGE, linkage.camberChange(lifted), found.knuckleAngle(), lifted.knuckleAngle());
        double track = trace.note(TRACK_CHANGE, 2 * (after.y() - before.y()), after.y(), before.y());
        InstantCentre centre = linkage.instantCentre(lifted);
        Alignment alignment = new Alignment(
                camber,
                track,
                toe(input.tieRod(), linkage, lifted, trace),
                rollCentre(ROLL_CENTRE_AFTER, centre, after, trace),
                linkage.instantCentre(found).isInboardOf(before) != centre.isInboardOf(after));
        return new Result(droop, droop, rollBefore, alignment, travel(input, found, lifted));
    }

    private static void note(DoubleWishbone linkage, Pose found, Pose lifted, LiftedWishbone input, Trace trace) {
        trace.note(
                LOWER_ANGLE,
                lifted.lowerAngle(),
                found.lowerAngle(),
                linkage.lowerLength(),
                linkage.upperLength(),
                linkage.knuckleLength(),
                input.frameRiseM());
        Point lower = lifted.lowerOuter();
        Point upper = lifted.upperOuter();
        trace.note(LOWER_Y, lower.y(), linkage.lowerInner().y(), linkage.lowerLength(), lifted.lowerAngle());
        trace.note(LOWER_Z, lower.z(), linkage.lowerInner().z(), linkage.lowerLength(), lifted.lowerAngle());
        trace.note(UPPER_ANGLE, lifted.knuckleAngle(), lower.y(), lower.z(), upper.y(), upper.z());
    }

    private static @Nullable Double rollCentre(Step step, InstantCentre centre, Point contact, Trace trace) {
        Double height = centre.rollCentreHeight(contact);
        return height == null
                ? null
                : (Double) trace.note(step, height, centre.y(), centre.z(), centre.weight(), contact.y(), contact.z());
    }

    private static @Nullable Double toe(@Nullable TieRod tieRod, DoubleWishbone linkage, Pose lifted, Trace trace) {
        if (tieRod == null) {
            return null;
        }
        Double push = tieRod.push(linkage, lifted);
        Double toe = tieRod.toeChange(linkage, lifted);
        return push == null || toe == null ? null : (Double) trace.note(TOE_CHANGE, toe, push, tieRod.armM());
    }

    private static List<Travel> travel(LiftedWishbone input, Pose found, Pose lifted) {
        List<Travel> travel = new ArrayList<>();
        for (double step : TRAVEL) {
            travel.add(new Travel(
                    step,
                    change(input, input.contactBefore(), found, step),
                    change(input, input.contactAfter(), lifted, step)));
        }
        return List.copyOf(travel);
    }

    private static @Nullable Change change(LiftedWishbone input, Point contact, Pose ride, double travelM) {
        DoubleWishbone linkage = input.linkage();
        Point there = linkage.moved(contact, ride);
        Pose pose = linkage.withHeight(contact, there.z() + travelM).pose();
        if (pose == null) {
            return null;
        }
        TieRod tieRod = input.tieRod();
        Double toe = tieRod == null ? null : tieRod.toeChange(linkage, pose);
        Double toeAtRide = tieRod == null ? null : tieRod.toeChange(linkage, ride);
        return new Change(
                linkage.camberChange(pose) - linkage.camberChange(ride),
                2 * (linkage.moved(contact, pose).y() - there.y()),
                toe == null || toeAtRide == null ? null : (Double) (toe - toeAtRide));
    }
}
