package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * One stop that was measured, reaction left out.
 *
 * @param speedMPS speed at which the brakes came on, m/s
 * @param distanceM from there to a standstill, m
 * @param gradeRad slope of the ground, rad, uphill positive
 * @param massKg mass during the stop, kg
 * @param tyreFactor what the change of tyres since then does to the force of the brakes: former loaded radius over the one now
 */
public record MeasuredStop(double speedMPS, double distanceM, double gradeRad, double massKg, double tyreFactor) {

    /** Within this share of the grip the tyres may have been the limit. */
    private static final double NEAR_GRIP = 0.95;

    private static final Source KINEMATICS = Source.published(
            "uniform deceleration: Gillespie, Fundamentals of Vehicle Dynamics, ch. 3; grade as in Jazar, ch. 2");

    private static final Step DECELERATION = Step.of(
            "a_m",
            "mean deceleration of the measured stop",
            "a_m = v²/(2·s)",
            ACCELERATION,
            KINEMATICS,
            new Symbol("v", SPEED),
            new Symbol("s", LENGTH));
    private static final Step FORCE_THEN = Step.of(
            "F_m",
            "mean retarding force of the measured stop",
            "F_m = m·(a_m − g·sin θ)",
            FORCE,
            KINEMATICS,
            new Symbol("m", MASS),
            new Symbol("a_m", ACCELERATION),
            new Symbol("g", ACCELERATION),
            new Symbol("θ", ANGLE));
    private static final Step FORCE_NOW = Step.of(
            "F_b",
            "the same force with the tyres now",
            "F_b = F_m·τ",
            FORCE,
            Source.derived("the torque of a brake stays, its force at the ground falls as the radius grows"),
            new Symbol("F_m", FORCE),
            new Symbol("τ", NONE));

    public MeasuredStop {
        Check.positive(speedMPS, "speedMPS");
        Check.positive(distanceM, "distanceM");
        Check.positive(massKg, "massKg");
        Check.positive(tyreFactor, "tyreFactor");
    }

    /**
     * What the stop tells.
     *
     * @param decelerationMPS2 mean, m/s²
     * @param forceN mean retarding force then, N
     * @param forceNowN the same with the tyres now, N: the brakes give at least this
     * @param frictionAtLeast the ground gave at least this friction; null when it can't be told
     * @param limit what ended it; null when it can't be told: the stop then bounds brakes and tyres alike, from below
     */
    public record Calibration(
            double decelerationMPS2,
            double forceN,
            double forceNowN,
            @Nullable Double frictionAtLeast,
            @Nullable BrakeLimit limit) {}

    /** Mean deceleration, m/s². */
    public double decelerationMPS2() {
        return speedMPS * speedMPS / (2 * distanceM);
    }

    /** Retarding force then, N; not above zero when the hill alone explains the stop. */
    public double forceN() {
        return massKg * (decelerationMPS2() - Constants.STANDARD_GRAVITY * Math.sin(gradeRad));
    }

    Calibration tells(@Nullable Stance stance, AxleSet braked, @Nullable Double friction, Trace trace) {
        double deceleration = trace.note(DECELERATION, decelerationMPS2(), speedMPS, distanceM);
        double then = trace.note(FORCE_THEN, forceN(), massKg, deceleration, Constants.STANDARD_GRAVITY, gradeRad);
        double now = trace.note(FORCE_NOW, then * tyreFactor, then, tyreFactor);
        Stance during = stance == null
                ? null
                : new Stance(massKg, stance.wheelbaseM(), stance.xM(), stance.heightM(), stance.gravity());
        Double atLeast = Retarder.frictionNeeded(massKg, during, braked, then, gradeRad, trace);
        BrakeLimit limit = null;
        if (friction != null && atLeast != null) {
            limit = atLeast >= NEAR_GRIP * friction ? BrakeLimit.TYRES : BrakeLimit.BRAKES;
        }
        return new Calibration(deceleration, then, now, atLeast, limit);
    }
}
