package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What a vehicle stands lengthways: climbing, pulling away, braking. Rigid on its wheels, no drag, no rolling resistance, no drawbar.
 *
 * @param frontLift where the front wheels leave the ground
 * @param rearLift where the rear wheels leave the ground
 * @param tailTipRad how far the front must rise, turning about the rear wheels, before it goes over backwards by itself, rad; on the
 *     planned grade, else on the level
 * @param loads in the order of {@link Condition}, as far as they are planned
 * @param traction null when the driven axles are not known
 * @param braking null when the braked axles are not known
 */
public record Lengthways(
        Lift frontLift,
        Lift rearLift,
        double tailTipRad,
        List<AxleLoads> loads,
        @Nullable Traction traction,
        @Nullable Braking braking) {

    private static final Source TILTING =
            Source.published("Jazar, Vehicle Dynamics, ch. 2: tilting angle; the combined form by the same moments");

    private static final Step FRONT_COEFFICIENT = coefficient("front", "K_p = (L − x)/h");
    private static final Step REAR_COEFFICIENT = coefficient("rear", "K_p = x/h");
    private static final Step LIFT = Step.of(
            "a_lift",
            "acceleration or deceleration at which the wheels of that end leave the ground",
            "a_lift = g·(K_p·cos θ − sin θ)",
            ACCELERATION,
            TILTING,
            new Symbol("g", ACCELERATION),
            new Symbol("K_p", NONE),
            new Symbol("θ", ANGLE));
    private static final Step LIFT_GRADE = Step.of(
            "θ_lift",
            "grade at which the wheels of that end leave the ground, standing or at steady speed",
            "θ_lift = atan K_p",
            GRADE,
            TILTING,
            new Symbol("K_p", NONE));
    private static final Step TAIL_TIP = Step.of(
            "δ",
            "rise of the front about the rear wheels before it goes over backwards by itself",
            "δ = θ_lift − θ",
            ANGLE,
            TILTING,
            new Symbol("θ_lift", GRADE),
            new Symbol("θ", ANGLE));
    private static final Step GRIP_ACCELERATION = Step.of(
            "a",
            "what the tyres give beside the pull of the grade",
            "a = F/m − g·sin θ",
            ACCELERATION,
            Source.derived("Newton's second law along the slope"),
            new Symbol("F", FORCE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("θ", ANGLE));
    private static final Step GRIP_GRADE = Step.of(
            "θ_grip",
            "steepest grade that the tyres of these axles hold or climb",
            "θ_grip = atan[F/(m·g)], F on the level",
            GRADE,
            Source.published("Jazar, Vehicle Dynamics, ch. 2, eq. 2.68 and 2.119"),
            new Symbol("F", FORCE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION));

    private static Step coefficient(String end, String formula) {
        return Step.of(
                "K_p",
                "pitch coefficient, lift of the " + end + " wheels",
                formula,
                NONE,
                Source.memory("pitch stability coefficient of ANSI/SVIA 1"),
                new Symbol("L", LENGTH),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH));
    }

    /** What the vehicle does while its axle loads are taken. */
    public enum Condition {
        /** Standing on the level. */
        LEVEL("level"),
        /** Standing on the planned grade. */
        ON_GRADE("on-grade"),
        /** With the planned acceleration, on the planned grade if there is one. */
        PLANNED("planned"),
        /** Pulling away as hard as the driven tyres allow, on the planned grade if there is one. */
        TRACTION_LIMIT("traction-limit"),
        /** Braking as hard as the braked tyres allow, nose down on the planned grade if there is one. */
        BRAKING_LIMIT("braking-limit");

        private final String token;

        Condition(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * Loads of the axles, N; negative when the axle has left the ground.
     *
     * @param gradeRad uphill positive
     * @param acceleration forward positive, m/s²
     */
    public record AxleLoads(Condition condition, double gradeRad, double acceleration, double frontN, double rearN) {
        public double frontShare() {
            return frontN / (frontN + rearN);
        }
    }

    /**
     * Where the wheels of one end leave the ground.
     *
     * @param coefficient lever of the centre of gravity to the other axle over its height
     * @param acceleration on the level, m/s²; forward for the front wheels, braking for the rear ones; negative when they are off the
     *     ground standing
     * @param gradeRad uphill for the front wheels, downhill for the rear ones, rad
     * @param onGrade acceleration left on the planned grade, for the rear wheels deceleration left nose down on it, m/s²; null when none
     *     is planned
     */
    public record Lift(
            double coefficient,
            double acceleration,
            double gradeRad,
            @Nullable Double onGrade) {}

    /**
     * What the driven tyres allow.
     *
     * @param acceleration on the level, m/s²
     * @param onGrade acceleration left up the planned grade, m/s²; null when none is planned; negative when it slips back
     * @param gradeRad steepest grade, rad
     */
    public record Traction(
            AxleSet driven,
            double acceleration,
            LimitedBy limitedBy,
            @Nullable Double onGrade,
            double gradeRad) {}

    /**
     * What the braked tyres allow.
     *
     * @param deceleration on the level, m/s²
     * @param downhill deceleration left down the planned grade, m/s²; null when none is planned; negative when it runs away
     * @param noseUpRad steepest grade they hold parked nose up, rad
     * @param noseDownRad steepest grade they hold parked nose down, rad
     */
    public record Braking(
            AxleSet braked,
            double deceleration,
            LimitedBy limitedBy,
            @Nullable Double downhill,
            double noseUpRad,
            double noseDownRad) {}

    static Lengthways of(Whole whole, Stability.Input input, Trace trace) {
        Stance stance = new Stance(whole.massKg(), input.wheelbaseM(), whole.xM(), whole.zM());
        double wheelbase = input.wheelbaseM();
        double height = whole.zM();
        Double grade = input.gradeRad();
        double front = trace.note(FRONT_COEFFICIENT, (wheelbase - whole.xM()) / height, wheelbase, whole.xM(), height);
        double rear = trace.note(REAR_COEFFICIENT, whole.xM() / height, wheelbase, whole.xM(), height);
        Lift frontLift = lift(front, grade, trace);
        Lift rearLift = lift(rear, grade == null ? null : (Double) Math.abs(grade), trace);
        double slope = grade == null ? 0 : grade;
        double tailTip = trace.note(TAIL_TIP, frontLift.gradeRad() - slope, frontLift.gradeRad(), slope);
        Traction traction = input.driven() == null
                ? null
                : traction(stance, input.driven(), input.friction(), grade, frontLift, trace);
        Braking braking = input.braked() == null
                ? null
                : braking(stance, input.braked(), input.friction(), grade, frontLift, rearLift, trace);
        return new Lengthways(
                frontLift, rearLift, tailTip, loads(stance, input, traction, braking, trace), traction, braking);
    }

    private static Lift lift(double coefficient, @Nullable Double gradeRad, Trace trace) {
        return new Lift(
                coefficient,
                liftAcceleration(coefficient, 0, trace),
                trace.note(LIFT_GRADE, Math.atan(coefficient), coefficient),
                gradeRad == null ? null : (Double) liftAcceleration(coefficient, gradeRad, trace));
    }

    private static double liftAcceleration(double coefficient, double gradeRad, Trace trace) {
        double acceleration = STANDARD_GRAVITY * (coefficient * Math.cos(gradeRad) - Math.sin(gradeRad));
        return trace.note(LIFT, acceleration, STANDARD_GRAVITY, coefficient, gradeRad);
    }

    private static Traction traction(
            Stance stance, AxleSet driven, double friction, @Nullable Double grade, Lift frontLift, Trace trace) {
        double thrust = stance.thrustLimitN(driven, friction, 0, trace);
        double grip = gripAcceleration(stance, thrust, 0, trace);
        Double onGrade = grade == null
                ? null
                : (Double) Math.min(
                        gripAcceleration(stance, stance.thrustLimitN(driven, friction, grade, trace), grade, trace),
                        liftAcceleration(frontLift.coefficient(), grade, trace));
        return new Traction(
                driven,
                Math.min(grip, frontLift.acceleration()),
                grip <= frontLift.acceleration() ? LimitedBy.GRIP : LimitedBy.FRONT_LIFT,
                onGrade,
                Math.min(gripGrade(stance, thrust, trace), frontLift.gradeRad()));
    }

    /** Parked nose up, the braked axle is asked for just what a driven one is on a climb. */
    private static Braking braking(
            Stance stance,
            AxleSet braked,
            double friction,
            @Nullable Double grade,
            Lift frontLift,
            Lift rearLift,
            Trace trace) {
        double force = stance.brakeLimitN(braked, friction, 0, trace);
        double grip = gripAcceleration(stance, force, 0, trace);
        Double downhill = null;
        if (grade != null) {
            double slope = Math.abs(grade);
            double held = gripAcceleration(stance, stance.brakeLimitN(braked, friction, -slope, trace), slope, trace);
            downhill = Math.min(held, liftAcceleration(rearLift.coefficient(), slope, trace));
        }
        double noseUp = gripGrade(stance, stance.thrustLimitN(braked, friction, 0, trace), trace);
        return new Braking(
                braked,
                Math.min(grip, rearLift.acceleration()),
                grip <= rearLift.acceleration() ? LimitedBy.GRIP : LimitedBy.REAR_LIFT,
                downhill,
                Math.min(noseUp, frontLift.gradeRad()),
                Math.min(gripGrade(stance, force, trace), rearLift.gradeRad()));
    }

    /** Infinite where the other end lifts before these tyres slip: that limit then stands alone. */
    private static double gripAcceleration(Stance stance, double forceN, double gradeRad, Trace trace) {
        return Double.isInfinite(forceN)
                ? forceN
                : trace.note(
                        GRIP_ACCELERATION,
                        forceN / stance.massKg() - STANDARD_GRAVITY * Math.sin(gradeRad),
                        forceN,
                        stance.massKg(),
                        STANDARD_GRAVITY,
                        gradeRad);
    }

    private static double gripGrade(Stance stance, double forceN, Trace trace) {
        return Double.isInfinite(forceN)
                ? Math.PI / 2
                : trace.note(
                        GRIP_GRADE, Math.atan(forceN / stance.weightN()), forceN, stance.massKg(), STANDARD_GRAVITY);
    }

    private static List<AxleLoads> loads(
            Stance stance, Stability.Input input, @Nullable Traction traction, @Nullable Braking braking, Trace trace) {
        List<AxleLoads> loads = new ArrayList<>();
        loads.add(loads(Condition.LEVEL, stance, 0, 0, trace));
        Double grade = input.gradeRad();
        double slope = grade == null ? 0 : grade;
        if (grade != null) {
            loads.add(loads(Condition.ON_GRADE, stance, slope, 0, trace));
        }
        if (input.acceleration() != null) {
            loads.add(loads(Condition.PLANNED, stance, slope, input.acceleration(), trace));
        }
        if (traction != null) {
            double acceleration = traction.onGrade() != null ? traction.onGrade() : traction.acceleration();
            loads.add(loads(Condition.TRACTION_LIMIT, stance, slope, acceleration, trace));
        }
        if (braking != null) {
            double deceleration = braking.downhill() != null ? braking.downhill() : braking.deceleration();
            loads.add(loads(Condition.BRAKING_LIMIT, stance, 0 - Math.abs(slope), 0 - deceleration, trace));
        }
        return List.copyOf(loads);
    }

    private static AxleLoads loads(
            Condition condition, Stance stance, double gradeRad, double acceleration, Trace trace) {
        return new AxleLoads(
                condition,
                gradeRad,
                acceleration,
                stance.frontLoadN(gradeRad, acceleration, trace),
                stance.rearLoadN(gradeRad, acceleration, trace));
    }
}
