package org.axlewright.domain.towing;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.within;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.roadload.RoadLoad;
import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What towing asks of the vehicle: pull, axle loads, grip and motor, and how much mass each of them bears. */
public final class Towing {

    /** Share of the weight that the front axle should keep to steer. */
    public static final double STEERING_SHARE = 0.20;

    /** Towed mass over the mass of the unladen vehicle, trailers without brakes. */
    public static final double UNBRAKED_RULE = 2;

    /** Towed mass over the mass of the unladen vehicle, trailers with brakes. */
    public static final double BRAKED_RULE = 4;

    private static final Source LONGITUDINAL = Source.derived(
            "Newton's second law for the trailers along the road; grade and rolling as in Gillespie and Marks' handbook");

    private static final Step PULL = Step.of(
            "P",
            "pull at the drawbar",
            "P = s·f_t·(m_t·g − Z)·cos θ + m_t·(g·sin θ + a)",
            FORCE,
            LONGITUDINAL,
            new Symbol("s", NONE),
            new Symbol("f_t", NONE),
            new Symbol("m_t", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("Z", LOAD),
            new Symbol("θ", ANGLE),
            new Symbol("a", ACCELERATION));
    private static final Step THRUST = Step.of(
            "F",
            "thrust at the driven wheels",
            "F = P + s·f_v·(m·g + Z)·cos θ + m·(g·sin θ + a) + D",
            FORCE,
            LONGITUDINAL,
            new Symbol("P", FORCE),
            new Symbol("s", NONE),
            new Symbol("f_v", NONE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("Z", LOAD),
            new Symbol("θ", ANGLE),
            new Symbol("a", ACCELERATION),
            new Symbol("D", FORCE));
    private static final Step FRONT = Step.of(
            "W_f'",
            "load on the front axle with the drawbar",
            "W_f' = W_f + ΔW_f",
            LOAD,
            Source.derived("moments add"),
            new Symbol("W_f", LOAD),
            new Symbol("ΔW_f", LOAD));
    private static final Step REAR = Step.of(
            "W_r'",
            "load on the rear axle with the drawbar",
            "W_r' = W_r + ΔW_r",
            LOAD,
            Source.derived("moments add"),
            new Symbol("W_r", LOAD),
            new Symbol("ΔW_r", LOAD));
    private static final Step GRIP_USE = Step.of(
            "u",
            "thrust over what the driven tyres hold",
            "u = F/(μ·W_d)",
            NONE,
            Source.derived("definition"),
            new Symbol("F", FORCE),
            new Symbol("μ", NONE),
            new Symbol("W_d", LOAD));
    private static final Step MOTOR_TORQUE = Step.of(
            "T",
            "torque at the motor shaft",
            "T = F·r/(i·η)",
            TORQUE,
            Source.published("NPTEL Electric Vehicles, week 4: F = T·i·η/r"),
            new Symbol("F", FORCE),
            new Symbol("r", LENGTH),
            new Symbol("i", NONE),
            new Symbol("η", NONE));
    private static final Step MASS_BY_PULL = Step.of(
            "m_t",
            "towed mass that takes this pull",
            "m_t = (P + s·f_t·Z·cos θ)/[s·f_t·g·cos θ + g·sin θ + a]",
            MASS,
            LONGITUDINAL,
            new Symbol("P", FORCE),
            new Symbol("s", NONE),
            new Symbol("f_t", NONE),
            new Symbol("Z", LOAD),
            new Symbol("θ", ANGLE),
            new Symbol("g", ACCELERATION),
            new Symbol("a", ACCELERATION));
    private static final Step MASS_BY_RULE = Step.of(
            "m_t",
            "towed mass by rule, level ground",
            "m_t = n·m_0",
            MASS,
            Source.published(
                    "HSE information sheet AIS33, all-terrain vehicles: 2 x unladen mass unbraked, 4 x braked, level ground"),
            new Symbol("n", NONE),
            new Symbol("m_0", MASS));

    private Towing() {}

    /**
     * The question.
     *
     * @param tug null when its mass isn't known
     * @param speedMPS walking pace, m/s
     * @param acceleration when pulling away, m/s²
     * @param gradeRad angle of the grade, whichever way it is driven, rad, 0 or more; null when there is none
     * @param gradeInDegrees whether it was sent in degrees
     */
    public record Input(
            Trailers trailers,
            @Nullable Tug tug,
            double speedMPS,
            double acceleration,
            @Nullable Double gradeRad,
            boolean gradeInDegrees) {
        public Input {
            notNegative(speedMPS, "speed");
            notNegative(acceleration, "acceleration");
            if (gradeRad != null) {
                within(gradeRad, 0, 0.8, "grade");
            }
        }

        /** The same question of another towed mass. */
        Input towing(double massKg) {
            return new Input(trailers.of(massKg), tug, speedMPS, acceleration, gradeRad, gradeInDegrees);
        }
    }

    /** One way to go: its grade, acceleration and the factor on rolling resistance. */
    record Going(String name, double gradeRad, double acceleration, double factor, double speedMPS) {}

    /**
     * What one way to go takes; null what isn't known.
     *
     * @param gripUse thrust over what the driven tyres hold; null too where they carry nothing
     * @param motor what the motor bears of it
     */
    public record Effort(
            double pullN,
            @Nullable Double thrustN,
            @Nullable Double frontN,
            @Nullable Double frontShare,
            @Nullable Double rearN,
            @Nullable Double gripUse,
            MotorLoad.@Nullable Result motor) {}

    /** A bound of the towed mass. Negative pulls mean that nothing may be towed: the mass is then 0. */
    public record Bound(Limit limit, double massKg) {}

    /** The answer; null what can't be given. */
    public record Result(
            double towedKg,
            Effort level,
            @Nullable Effort grade,
            Effort start,
            @Nullable Effort startOnGrade,
            @Nullable Double standingFrontN,
            @Nullable Double standingFrontShare,
            @Nullable Double standingRearN,
            List<Bound> bounds,
            @Nullable Bound least,
            HitchedBraking.@Nullable Result braking) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        Double grade = input.gradeRad();
        Effort level = effort(input, steady(input, 0, "level"), trace);
        Effort uphill = grade == null ? null : effort(input, steady(input, grade, "grade"), trace);
        Effort start = effort(input, starting(input, 0, "start"), trace);
        Effort startUphill = grade == null ? null : effort(input, starting(input, grade, "start on the grade"), trace);
        Double front = null;
        Double share = null;
        Double rear = null;
        Footing footing = input.tug() == null ? null : input.tug().footing();
        if (footing != null) {
            Trace standing = trace.of("standing hitched");
            front = front(footing, 0, 0, 0, standing);
            rear = rear(footing, 0, 0, 0, standing);
            share = share(front, rear);
        }
        List<Bound> bounds = bounds(input, trace);
        Result result = new Result(
                input.trailers().massKg(),
                level,
                uphill,
                start,
                startUphill,
                front,
                share,
                rear,
                bounds,
                bounds.stream().min(Comparator.comparingDouble(Bound::massKg)).orElse(null),
                footing == null ? null : HitchedBraking.of(input, footing, trace));
        TowingFindings.find(input, result, trace);
        return result;
    }

    private static Going steady(Input input, double gradeRad, String name) {
        return new Going(name, gradeRad, 0, 1, input.speedMPS());
    }

    private static Going starting(Input input, double gradeRad, String name) {
        return new Going(name, gradeRad, input.acceleration(), input.trailers().startingFactor(), 0);
    }

    private static Effort effort(Input input, Going going, Trace whole) {
        Trace trace = whole.of(going.name());
        Trailers trailers = input.trailers();
        double pull = trace.note(
                PULL,
                pullN(trailers, trailers.massKg(), going),
                going.factor(),
                trailers.rolling(),
                trailers.massKg(),
                STANDARD_GRAVITY,
                trailers.hitchLoadN(),
                going.gradeRad(),
                going.acceleration());
        Tug tug = input.tug();
        if (tug == null) {
            return new Effort(pull, null, null, null, null, null, null);
        }
        double drag = dragN(tug, going);
        double thrust = trace.note(
                THRUST,
                pull + ownN(tug, trailers.hitchLoadN(), going),
                pull,
                going.factor(),
                tug.rolling(),
                tug.massKg(),
                STANDARD_GRAVITY,
                trailers.hitchLoadN(),
                going.gradeRad(),
                going.acceleration(),
                drag);
        Double front = null;
        Double rear = null;
        Double use = null;
        Footing footing = tug.footing();
        if (footing != null) {
            front = front(footing, pull, going.gradeRad(), going.acceleration(), trace);
            rear = rear(footing, pull, going.gradeRad(), going.acceleration(), trace);
            double driven = switch (footing.driven()) {
                case FRONT -> front;
                case REAR -> rear;
                case ALL -> front + rear;
            };
            double held = footing.friction() * driven;
            use = held > 0 && thrust / held <= Double.MAX_VALUE
                    ? (Double) trace.note(GRIP_USE, thrust / held, thrust, footing.friction(), driven)
                    : null;
        }
        Engine engine = tug.engine();
        MotorLoad.Result motor = null;
        if (engine != null) {
            double torque = thrust * engine.radiusM() / (engine.ratio() * engine.gearEfficiency());
            trace.note(MOTOR_TORQUE, torque, thrust, engine.radiusM(), engine.ratio(), engine.gearEfficiency());
            motor = MotorLoad.of(engine, torque, going.speedMPS(), trace);
        }
        return new Effort(
                pull, thrust, front, front == null || rear == null ? null : share(front, rear), rear, use, motor);
    }

    private static double pullN(Trailers trailers, double massKg, Going going) {
        double cos = Math.cos(going.gradeRad());
        return going.factor() * trailers.rolling() * (massKg * STANDARD_GRAVITY - trailers.hitchLoadN()) * cos
                + massKg * (STANDARD_GRAVITY * Math.sin(going.gradeRad()) + going.acceleration());
    }

    /** What the vehicle itself takes, N. */
    private static double ownN(Tug tug, double hitchLoadN, Going going) {
        double cos = Math.cos(going.gradeRad());
        return going.factor() * tug.rolling() * (tug.massKg() * STANDARD_GRAVITY + hitchLoadN) * cos
                + tug.massKg() * (STANDARD_GRAVITY * Math.sin(going.gradeRad()) + going.acceleration())
                + dragN(tug, going);
    }

    private static double dragN(Tug tug, Going going) {
        return tug.dragAreaM2() == null
                ? 0
                : RoadLoad.dragN(Constants.AIR_DENSITY_ISO_2533, tug.dragAreaM2(), going.speedMPS());
    }

    static double front(Footing footing, double pullN, double gradeRad, double acceleration, Trace trace) {
        Stance stance = footing.stance();
        double alone = stance.frontLoadN(gradeRad, acceleration, trace);
        double change = footing.drawbar().frontChangeN(pullN, stance.wheelbaseM(), gradeRad, trace);
        return trace.note(FRONT, alone + change, alone, change);
    }

    static double rear(Footing footing, double pullN, double gradeRad, double acceleration, Trace trace) {
        Stance stance = footing.stance();
        double alone = stance.rearLoadN(gradeRad, acceleration, trace);
        double change = footing.drawbar().rearChangeN(pullN, stance.wheelbaseM(), gradeRad, trace);
        return trace.note(REAR, alone + change, alone, change);
    }

    private static @Nullable Double share(double frontN, double rearN) {
        double whole = frontN + rearN;
        return whole > 0 && Math.abs(frontN / whole) <= Double.MAX_VALUE ? (Double) (frontN / whole) : null;
    }

    private static List<Bound> bounds(Input input, Trace trace) {
        List<Bound> bounds = new ArrayList<>();
        Tug tug = input.tug();
        if (tug == null) {
            return bounds;
        }
        if (tug.emptyMassKg() != null && tug.emptyMassKg() > 0) {
            boolean braked = input.trailers().braked();
            double times = braked ? BRAKED_RULE : UNBRAKED_RULE;
            bounds.add(new Bound(
                    braked ? Limit.BRAKED_RULE : Limit.UNBRAKED_RULE,
                    trace.note(MASS_BY_RULE, times * tug.emptyMassKg(), times, tug.emptyMassKg())));
        }
        Double grade = input.gradeRad();
        Going level = steady(input, 0, "level");
        Going uphill = grade == null ? null : steady(input, grade, "grade");
        Going start = starting(input, 0, "start");
        Footing footing = tug.footing();
        if (footing != null) {
            add(bounds, Limit.GRIP_LEVEL, gripPullN(tug, footing, level), input, level, trace);
            add(bounds, Limit.GRIP_START, gripPullN(tug, footing, start), input, start, trace);
            add(bounds, Limit.FRONT_AXLE_LEVEL, steeringPullN(footing, level), input, level, trace);
            if (uphill != null) {
                add(bounds, Limit.GRIP_GRADE, gripPullN(tug, footing, uphill), input, uphill, trace);
                add(bounds, Limit.FRONT_AXLE_GRADE, steeringPullN(footing, uphill), input, uphill, trace);
                Double heldBack = HitchedBraking.heldBackKg(input, footing, uphill.gradeRad(), trace);
                if (heldBack != null) {
                    bounds.add(new Bound(Limit.DESCENT_GRIP, heldBack));
                }
            }
            Double rating = footing.rearRatingN();
            double height = footing.drawbar().heightM();
            if (rating != null && height > 0) {
                double standing = rear(footing, 0, 0, 0, Trace.withoutWorking());
                double pull = (rating - standing) * footing.stance().wheelbaseM() / height;
                add(bounds, Limit.REAR_RATING, pull, input, level, trace);
            }
        }
        Engine engine = tug.engine();
        if (engine != null) {
            double hitchN = input.trailers().hitchLoadN();
            if (engine.ratedTorqueNm() != null) {
                double thrust = engine.thrustN(engine.ratedTorqueNm());
                add(bounds, Limit.MOTOR_DUTY_LEVEL, thrust - ownN(tug, hitchN, level), input, level, trace);
                if (uphill != null) {
                    add(bounds, Limit.MOTOR_DUTY_GRADE, thrust - ownN(tug, hitchN, uphill), input, uphill, trace);
                }
            }
            if (engine.maximumTorqueNm() != null) {
                double thrust = engine.thrustN(engine.maximumTorqueNm());
                add(bounds, Limit.MOTOR_START, thrust - ownN(tug, hitchN, start), input, start, trace);
            }
        }
        return bounds;
    }

    /** Largest drawbar pull before the driven tyres slip, N; infinite where the front lifts before. */
    private static double gripPullN(Tug tug, Footing footing, Going going) {
        Trace silent = Trace.withoutWorking();
        double own = ownN(tug, footing.drawbar().loadN(), going);
        double frontN = front(footing, 0, going.gradeRad(), going.acceleration(), silent);
        double rearN = rear(footing, 0, going.gradeRad(), going.acceleration(), silent);
        double lever = footing.friction()
                * footing.drawbar().heightM()
                / footing.stance().wheelbaseM();
        double friction = footing.friction();
        return switch (footing.driven()) {
            case FRONT -> (friction * frontN - own) / (1 + lever);
            case REAR -> lever < 1 ? (friction * rearN - own) / (1 - lever) : Double.POSITIVE_INFINITY;
            case ALL -> friction * (frontN + rearN) - own;
        };
    }

    /** Drawbar pull at which the front axle is down to its share, N; infinite when the pull goes through the ground. */
    private static double steeringPullN(Footing footing, Going going) {
        Trace silent = Trace.withoutWorking();
        double frontN = front(footing, 0, going.gradeRad(), 0, silent);
        double rearN = rear(footing, 0, going.gradeRad(), 0, silent);
        double height = footing.drawbar().heightM();
        return height > 0
                ? (frontN - STEERING_SHARE * (frontN + rearN))
                        * footing.stance().wheelbaseM()
                        / height
                : Double.POSITIVE_INFINITY;
    }

    private static void add(List<Bound> bounds, Limit limit, double pullN, Input input, Going going, Trace trace) {
        Trailers trailers = input.trailers();
        double cos = Math.cos(going.gradeRad());
        double perKg = going.factor() * trailers.rolling() * STANDARD_GRAVITY * cos
                + STANDARD_GRAVITY * Math.sin(going.gradeRad())
                + going.acceleration();
        double mass = (pullN + going.factor() * trailers.rolling() * trailers.hitchLoadN() * cos) / perKg;
        if (!(Math.abs(mass) <= Double.MAX_VALUE)) {
            return;
        }
        if (!(pullN > 0 && mass > 0)) {
            bounds.add(new Bound(limit, 0));
            return;
        }
        finite(mass, "mass");
        bounds.add(new Bound(
                limit,
                trace.of(limit.toString())
                        .note(
                                MASS_BY_PULL,
                                mass,
                                pullN,
                                going.factor(),
                                trailers.rolling(),
                                trailers.hitchLoadN(),
                                going.gradeRad(),
                                STANDARD_GRAVITY,
                                going.acceleration())));
    }
}
