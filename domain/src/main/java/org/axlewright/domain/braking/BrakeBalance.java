package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.Objects;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * What the brakes of both axles pass to the ground with the pedal right down: each axle the least of its brakes and its tyres, while the
 * load moves forward with the force itself. W_f = (m·g·l_r·cos θ + h·F)/L and W_r = (m·g·l_f·cos θ − h·F)/L whatever the grade: moments
 * as in Jazar, Vehicle Dynamics, ch. 2, eq. 2.121 and 2.122, with F = −m·(g·sin θ + a).
 *
 * @param totalN retarding force of both axles at the ground, N
 * @param frontN front axle, N
 * @param rearN rear axle, N
 * @param frontLoadN load on the front axle meanwhile, N
 * @param rearLoadN load on the rear axle meanwhile, N
 * @param frontLimit what ends the force of the front axle
 * @param rearLimit what ends the force of the rear axle
 * @param lockFrontN force of both axles at which the front wheels lock, N; infinite when they never do
 * @param lockRearN force of both axles at which the rear wheels lock, N; infinite when they never do
 * @param shared whether the forces were shared in proportion to the loads because their own share is not known
 */
record BrakeBalance(
        double totalN,
        double frontN,
        double rearN,
        double frontLoadN,
        double rearLoadN,
        BrakeLimit frontLimit,
        BrakeLimit rearLimit,
        double lockFrontN,
        double lockRearN,
        boolean shared) {

    private static final Source MOMENTS = Source.published(
            "Jazar, Vehicle Dynamics, ch. 2, eq. 2.121 and 2.122: load transfer of a braking vehicle on an incline");

    private static final Step FRONT_LOCK = lock("F_lf", "front", "F_lf = μ·m·g·(L − x)·cos θ/(β·L − μ·h)");
    private static final Step REAR_LOCK = lock("F_lr", "rear", "F_lr = μ·m·g·x·cos θ/((1 − β)·L + μ·h)");
    private static final Step TOTAL = Step.of(
            "F",
            "retarding force at the ground, each axle the least of brakes and tyres; what is not known stands as 10⁹ N",
            "F = min(F_b, F_bf + F_br; (μ·m·g·(L − x)·cos θ + L·F_br)/(L − μ·h) where μ·h < L;"
                    + " (μ·m·g·x·cos θ + L·F_bf)/(L + μ·h); μ·m·g·cos θ; m·g·x·cos θ/h)",
            FORCE,
            MOMENTS,
            new Symbol("F_b", FORCE),
            new Symbol("F_bf", FORCE),
            new Symbol("F_br", FORCE),
            new Symbol("μ", NONE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("L", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("h", LENGTH),
            new Symbol("θ", ANGLE));
    private static final Step FRONT_FORCE = Step.of(
            "F_f",
            "retarding force of the front axle",
            "F_f = min(F_bf, μ·W_f)",
            FORCE,
            MOMENTS,
            new Symbol("F_bf", FORCE),
            new Symbol("μ", NONE),
            new Symbol("W_f", FORCE));
    private static final Step SHARED_FORCE = Step.of(
            "F_f",
            "retarding force of the front axle, in proportion to the loads",
            "F_f = F·W_f/(W_f + W_r)",
            FORCE,
            MOMENTS,
            new Symbol("F", FORCE),
            new Symbol("W_f", FORCE),
            new Symbol("W_r", FORCE));

    /** Beyond any force that a vehicle of this kind has: stands for brakes that are not the limit. */
    static final double NOT_THE_LIMIT_N = 1e9;

    private static Step lock(String symbol, String axle, String formula) {
        return Step.of(
                symbol,
                "retarding force of both axles at which the " + axle + " wheels lock",
                formula,
                FORCE,
                MOMENTS,
                new Symbol("μ", NONE),
                new Symbol("m", MASS),
                new Symbol("g", ACCELERATION),
                new Symbol("L", LENGTH),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH),
                new Symbol("θ", ANGLE),
                new Symbol("β", NONE));
    }

    /**
     * The forces.
     *
     * @param front brakes of the front axle; not known counts as never the limit
     * @param rear brakes of the rear axle; not known counts as never the limit
     * @param togetherN what both axles together gave in a measured stop, N; {@link #NOT_THE_LIMIT_N} without one
     * @param friction tyre to ground, above 0
     * @param gradeRad angle of the grade, rad, uphill positive
     */
    static BrakeBalance of(
            Stance stance,
            WheelBrakes front,
            WheelBrakes rear,
            double togetherN,
            double friction,
            double gradeRad,
            Trace trace) {
        Check.positive(friction, "friction");
        double frontBrakesN = front.forceN() == null ? NOT_THE_LIMIT_N : front.forceN();
        double rearBrakesN = rear.forceN() == null ? NOT_THE_LIMIT_N : rear.forceN();
        double length = stance.wheelbaseM();
        double h = stance.heightM();
        double weightN = stance.weightN() * Math.cos(gradeRad);
        double frontLeverM = Math.max(0, length - stance.xM());
        double rearLeverM = Math.max(0, stance.xM());
        double brakesN = Math.min(togetherN, frontBrakesN + rearBrakesN);
        double frontLocksN = friction * h < length
                ? (friction * weightN * frontLeverM + length * rearBrakesN) / (length - friction * h)
                : NOT_THE_LIMIT_N;
        double rearLocksN = (friction * weightN * rearLeverM + length * frontBrakesN) / (length + friction * h);
        double tippingN = weightN * rearLeverM / h;
        double totalN =
                Math.min(Math.min(brakesN, friction * weightN), Math.min(Math.min(frontLocksN, rearLocksN), tippingN));
        trace.note(
                TOTAL,
                totalN,
                togetherN,
                frontBrakesN,
                rearBrakesN,
                friction,
                stance.massKg(),
                stance.gravity(),
                length,
                stance.xM(),
                h,
                gradeRad);
        double acceleration = -totalN / stance.massKg() - stance.gravity() * Math.sin(gradeRad);
        double frontLoadN = Math.max(0, stance.frontLoadN(gradeRad, acceleration, trace));
        double rearLoadN = Math.max(0, stance.rearLoadN(gradeRad, acceleration, trace));
        boolean shared = front.there() && rear.there() && (front.forceN() == null || rear.forceN() == null);
        double frontN;
        if (shared) {
            frontN = trace.note(
                    SHARED_FORCE, totalN * frontLoadN / (frontLoadN + rearLoadN), totalN, frontLoadN, rearLoadN);
        } else if (!rear.there()) {
            frontN = totalN;
        } else {
            frontN = Math.min(
                    totalN,
                    trace.note(
                            FRONT_FORCE,
                            Math.min(frontBrakesN, friction * frontLoadN),
                            frontBrakesN,
                            friction,
                            frontLoadN));
        }
        double rearN = totalN - frontN;
        boolean tips = tippingN <= totalN && friction * weightN > totalN && brakesN > totalN;
        double beta = shared ? Double.NaN : share(front, rear);
        return new BrakeBalance(
                totalN,
                frontN,
                rearN,
                frontLoadN,
                rearLoadN,
                limit(frontN, friction * frontLoadN, tips),
                limit(rearN, friction * rearLoadN, tips),
                shared ? NOT_THE_LIMIT_N : lockFront(stance, beta, friction, gradeRad, trace),
                shared ? NOT_THE_LIMIT_N : lockRear(stance, beta, friction, gradeRad, trace),
                shared);
    }

    /** Share of the front axle in the force of the brakes. */
    private static double share(WheelBrakes front, WheelBrakes rear) {
        if (!rear.there()) {
            return 1;
        }
        if (!front.there()) {
            return 0;
        }
        double frontN = Objects.requireNonNull(front.forceN());
        double rearN = Objects.requireNonNull(rear.forceN());
        return frontN / (frontN + rearN);
    }

    private static double lockFront(Stance stance, double beta, double friction, double gradeRad, Trace trace) {
        double divisorM = beta * stance.wheelbaseM() - friction * stance.heightM();
        if (!(divisorM > 0)) {
            return NOT_THE_LIMIT_N;
        }
        double leverM = Math.max(0, stance.wheelbaseM() - stance.xM());
        double forceN = friction * stance.weightN() * leverM * Math.cos(gradeRad) / divisorM;
        return note(FRONT_LOCK, forceN, stance, beta, friction, gradeRad, trace);
    }

    private static double lockRear(Stance stance, double beta, double friction, double gradeRad, Trace trace) {
        if (beta == 1) {
            return NOT_THE_LIMIT_N;
        }
        double divisorM = (1 - beta) * stance.wheelbaseM() + friction * stance.heightM();
        double forceN = friction * stance.weightN() * Math.max(0, stance.xM()) * Math.cos(gradeRad) / divisorM;
        return note(REAR_LOCK, forceN, stance, beta, friction, gradeRad, trace);
    }

    private static double note(
            Step step, double forceN, Stance stance, double beta, double friction, double gradeRad, Trace trace) {
        return trace.note(
                step,
                forceN,
                friction,
                stance.massKg(),
                stance.gravity(),
                stance.wheelbaseM(),
                stance.xM(),
                stance.heightM(),
                gradeRad,
                beta);
    }

    private static BrakeLimit limit(double forceN, double gripN, boolean tips) {
        if (tips) {
            return BrakeLimit.TIPPING;
        }
        return forceN >= gripN * (1 - 1e-9) ? BrakeLimit.TYRES : BrakeLimit.BRAKES;
    }

    /** Which wheels lock first, if the brakes can lock any. */
    FirstToLock firstToLock(double brakesN) {
        double least = Math.min(lockFrontN, lockRearN);
        if (shared || least > brakesN) {
            return FirstToLock.NEITHER;
        }
        return lockRearN <= lockFrontN ? FirstToLock.REAR : FirstToLock.FRONT;
    }
}
