package org.axlewright.domain.axles;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * A vehicle on two axles with its centre of gravity at a height: what each axle carries while it climbs, speeds up or brakes, and what
 * the tyres can push or hold. Rigid on its wheels, no drag, no drawbar.
 *
 * @param massKg mass, kg, above 0
 * @param wheelbaseM front axle to rear axle, m, above 0
 * @param xM centre of gravity behind the front axle, m; outside the wheelbase one axle has nothing to carry
 * @param heightM height of the centre of gravity above the ground, m, above 0
 * @param gravity acceleration of free fall, m/s²; {@link Constants#STANDARD_GRAVITY} but for textbook cases
 */
public record Stance(double massKg, double wheelbaseM, double xM, double heightM, double gravity) {

    private static final Source AXLE_EQUATIONS = Source.published(
            "Jazar, Vehicle Dynamics, ch. 2, eq. 2.121 and 2.122: an accelerating vehicle on an inclined road");
    private static final Source GRIP_LIMITS = Source.published(
            "Jazar, Vehicle Dynamics, ch. 2, eq. 2.68, 2.117 and 2.119; the braked form by the same moments");

    private static final Step FRONT = Step.of(
            "W_f",
            "load on the front axle, grade and acceleration included",
            "W_f = m·[g·(L − x)·cos θ − h·(g·sin θ + a)]/L",
            LOAD,
            AXLE_EQUATIONS,
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("L", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("h", LENGTH),
            new Symbol("θ", ANGLE),
            new Symbol("a", ACCELERATION));

    private static final Step REAR = Step.of(
            "W_r",
            "load on the rear axle, grade and acceleration included",
            "W_r = m·[g·x·cos θ + h·(g·sin θ + a)]/L",
            LOAD,
            AXLE_EQUATIONS,
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("L", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("h", LENGTH),
            new Symbol("θ", ANGLE),
            new Symbol("a", ACCELERATION));

    private static final Step THRUST_REAR = grip("rear axle drives", "F = μ·m·g·x·cos θ/(L − μ·h)");
    private static final Step THRUST_FRONT = grip("front axle drives", "F = μ·m·g·(L − x)·cos θ/(L + μ·h)");
    private static final Step GRIP_ALL = grip("all wheels drive or brake", "F = μ·m·g·cos θ");
    private static final Step BRAKE_REAR = grip("rear axle brakes", "F = μ·m·g·x·cos θ/(L + μ·h)");
    private static final Step BRAKE_FRONT = grip("front axle brakes", "F = μ·m·g·(L − x)·cos θ/(L − μ·h)");

    private static Step grip(String what, String formula) {
        return Step.of(
                "F",
                "largest force the tyres pass to the ground, " + what,
                formula,
                FORCE,
                GRIP_LIMITS,
                new Symbol("μ", NONE),
                new Symbol("m", MASS),
                new Symbol("g", ACCELERATION),
                new Symbol("L", LENGTH),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH),
                new Symbol("θ", ANGLE));
    }

    public Stance {
        Check.positive(massKg, "mass");
        Check.positive(wheelbaseM, "wheelbase");
        Check.positive(heightM, "height");
        Check.positive(gravity, "gravity");
    }

    /** With standard gravity. */
    public Stance(double massKg, double wheelbaseM, double xM, double heightM) {
        this(massKg, wheelbaseM, xM, heightM, Constants.STANDARD_GRAVITY);
    }

    /** Weight, N. */
    public double weightN() {
        return massKg * gravity;
    }

    /**
     * Load on the front axle, N; negative when the front wheels have left the ground.
     *
     * @param gradeRad angle of the grade, rad, uphill positive
     * @param acceleration forward, m/s²; braking negative
     */
    public double frontLoadN(double gradeRad, double acceleration, Trace trace) {
        double loadN = massKg
                * (gravity * (wheelbaseM - xM) * Math.cos(gradeRad)
                        - heightM * (gravity * Math.sin(gradeRad) + acceleration))
                / wheelbaseM;
        return trace.note(FRONT, loadN, massKg, gravity, wheelbaseM, xM, heightM, gradeRad, acceleration);
    }

    /** Load on the rear axle, N; negative when the rear wheels have left the ground. Same inputs as {@link #frontLoadN}. */
    public double rearLoadN(double gradeRad, double acceleration, Trace trace) {
        double loadN = massKg
                * (gravity * xM * Math.cos(gradeRad) + heightM * (gravity * Math.sin(gradeRad) + acceleration))
                / wheelbaseM;
        return trace.note(REAR, loadN, massKg, gravity, wheelbaseM, xM, heightM, gradeRad, acceleration);
    }

    /**
     * Largest thrust, N, that the driven tyres pass to the ground: the sum of what accelerates, climbs and rolls. Load shifts to the
     * rear with the thrust; where {@code L <= μ·h} the front lifts before the rear tyres slip, and the answer is infinite.
     *
     * @param friction tyre to ground, above 0
     */
    public double thrustLimitN(AxleSet driven, double friction, double gradeRad, Trace trace) {
        return switch (driven) {
            case FRONT ->
                limitN(THRUST_FRONT, wheelbaseM - xM, wheelbaseM + friction * heightM, friction, gradeRad, trace);
            case REAR -> limitN(THRUST_REAR, xM, wheelbaseM - friction * heightM, friction, gradeRad, trace);
            case ALL -> limitN(GRIP_ALL, 1, 1, friction, gradeRad, trace);
        };
    }

    /**
     * Largest retarding force, N, that the braked tyres pass to the ground. Load shifts to the front with it: rear brakes alone lose
     * grip as they work. Infinite where the vehicle would pitch over its front wheels before they slip.
     */
    public double brakeLimitN(AxleSet braked, double friction, double gradeRad, Trace trace) {
        return switch (braked) {
            case FRONT ->
                limitN(BRAKE_FRONT, wheelbaseM - xM, wheelbaseM - friction * heightM, friction, gradeRad, trace);
            case REAR -> limitN(BRAKE_REAR, xM, wheelbaseM + friction * heightM, friction, gradeRad, trace);
            case ALL -> limitN(GRIP_ALL, 1, 1, friction, gradeRad, trace);
        };
    }

    private double limitN(Step step, double leverM, double divisorM, double friction, double gradeRad, Trace trace) {
        Check.positive(friction, "friction");
        if (!(divisorM > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double forceN = friction * weightN() * Math.max(0, leverM) * Math.cos(gradeRad) / divisorM;
        return trace.note(step, forceN, friction, massKg, gravity, wheelbaseM, xM, heightM, gradeRad);
    }
}
