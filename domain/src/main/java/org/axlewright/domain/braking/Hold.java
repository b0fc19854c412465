package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * The steepest ramp on which a parked vehicle stays. Rolling resistance, which would help a little, is left out.
 *
 * @param gradeRad angle of the ramp, rad
 * @param limit what gives way beyond it
 */
public record Hold(double gradeRad, HoldLimit limit) {

    private static final Source GRIP = Source.published(
            "Jazar, Vehicle Dynamics, ch. 2: parked on an inclined road, braked at one axle; nose down by mirror");
    private static final Source TIPPING_SOURCE =
            Source.published("Jazar, Vehicle Dynamics, ch. 2: tilting angle of a parked vehicle");
    private static final Source BRAKE_SOURCE = Source.derived("weight along the ramp against the force of the brake");

    private static final Step REAR_UP = grip("rear wheels held, nose up", "θ = atan(μ·x/(L − μ·h))");
    private static final Step REAR_DOWN = grip("rear wheels held, nose down", "θ = atan(μ·x/(L + μ·h))");
    private static final Step FRONT_UP = grip("front wheels held, nose up", "θ = atan(μ·(L − x)/(L + μ·h))");
    private static final Step FRONT_DOWN = grip("front wheels held, nose down", "θ = atan(μ·(L − x)/(L − μ·h))");
    private static final Step ALL = Step.of(
            "θ", "ramp at which the tyres slide, all wheels held", "θ = atan(μ)", GRADE, GRIP, new Symbol("μ", NONE));
    private static final Step TIPS_UP = tips("nose up", "θ = atan((L − x)/h)");
    private static final Step TIPS_DOWN = tips("nose down", "θ = atan(x/h)");
    private static final Step BRAKE = Step.of(
            "θ",
            "ramp at which the brake turns",
            "θ = asin(F/(m·g))",
            GRADE,
            BRAKE_SOURCE,
            new Symbol("F", FORCE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION));

    private static final double UPRIGHT = Math.PI / 2;

    private static Step grip(String what, String formula) {
        return Step.of(
                "θ",
                "ramp at which the tyres slide, " + what,
                formula,
                GRADE,
                GRIP,
                new Symbol("μ", NONE),
                new Symbol("L", LENGTH),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH));
    }

    private static Step tips(String what, String formula) {
        return Step.of(
                "θ",
                "ramp at which it tips over its lower axle, " + what,
                formula,
                GRADE,
                TIPPING_SOURCE,
                new Symbol("L", LENGTH),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH));
    }

    /**
     * Nose up or nose down; null when neither brake nor tyres are known well enough to say.
     *
     * @param massKg kg
     * @param stance null when wheelbase, position or height is not known
     * @param held axles that the brake holds
     * @param forceN largest force of the brake at the ground, N; null when not known
     * @param friction tyre to ground; null when not known
     */
    static @Nullable Hold of(
            double massKg,
            @Nullable Stance stance,
            AxleSet held,
            @Nullable Double forceN,
            @Nullable Double friction,
            boolean noseUp,
            Trace trace) {
        Hold least = null;
        if (forceN != null) {
            double weightN = massKg * Constants.STANDARD_GRAVITY;
            if (forceN < weightN) {
                double angle =
                        trace.note(BRAKE, Math.asin(forceN / weightN), forceN, massKg, Constants.STANDARD_GRAVITY);
                least = new Hold(angle, HoldLimit.BRAKE);
            }
        }
        if (friction != null && held == AxleSet.ALL) {
            least = lesser(least, new Hold(trace.note(ALL, Math.atan(friction), friction), HoldLimit.TYRES));
        }
        if (stance == null) {
            return least;
        }
        if (friction != null && held != AxleSet.ALL) {
            least = lesser(least, new Hold(gripRad(stance, held, friction, noseUp, trace), HoldLimit.TYRES));
        }
        double leverM = noseUp ? stance.wheelbaseM() - stance.xM() : stance.xM();
        double tipsRad = trace.note(
                noseUp ? TIPS_UP : TIPS_DOWN,
                Math.atan(Math.max(0, leverM) / stance.heightM()),
                stance.wheelbaseM(),
                stance.xM(),
                stance.heightM());
        return least == null ? null : lesser(least, new Hold(tipsRad, HoldLimit.TIPPING));
    }

    private static double gripRad(Stance stance, AxleSet held, double friction, boolean noseUp, Trace trace) {
        double shiftM = friction * stance.heightM();
        boolean rear = held == AxleSet.REAR;
        double leverM = Math.max(0, rear ? stance.xM() : stance.wheelbaseM() - stance.xM());
        // the load moves onto the lower axle: the rear one nose up, the front one nose down
        double divisorM = stance.wheelbaseM() + (rear == noseUp ? -shiftM : shiftM);
        if (!(divisorM > 0)) {
            return UPRIGHT;
        }
        Step step = rear ? noseUp ? REAR_UP : REAR_DOWN : noseUp ? FRONT_UP : FRONT_DOWN;
        return trace.note(
                step,
                Math.atan(friction * leverM / divisorM),
                friction,
                stance.wheelbaseM(),
                stance.xM(),
                stance.heightM());
    }

    private static Hold lesser(@Nullable Hold one, Hold other) {
        return one == null || other.gradeRad() < one.gradeRad() ? other : one;
    }
}
