package org.axlewright.domain.drive;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.DISTANCE;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.ROTATION;
import static org.axlewright.domain.quantity.Dimension.SHAFT_POWER;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TORQUE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.drive.Drivetrain.Pull;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.motor.DutyType;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/** How fast it goes, what it climbs and how it pulls away: the pull of the drive against what resists. */
public final class DrivePerformance {

    /** Pulling away on a grade with this acceleration counts as starting, m/s²; common practice, no source. */
    static final double STARTING_ACCELERATION = 0.3;

    /** Reckoned speeds are calibrated by a measured one within these factors. */
    private static final double SPEED_SPAN = 0.2;

    private static final double LEAST_RESISTANCE_FACTOR = 0.3;
    private static final double MOST_RESISTANCE_FACTOR = 3;

    /** Below this share of its highest speed one figure of efficiency does not hold, where the winding is not known. */
    private static final double NEAR_STALL = 0.1;

    private static final int SCAN = 64;
    private static final int CURVE_POINTS = 40;
    private static final int MOST_EVALUATIONS = 300;

    private static final Source DYNAMICS =
            Source.published("longitudinal dynamics: Gillespie, Fundamentals of Vehicle Dynamics, ch. 4");
    private static final Source WHEEL =
            Source.published("NPTEL, Electric Vehicles, week 4: wheel force = motor torque x ratio / radius");
    private static final Source CIRCUIT = Source.derived("direct-current circuit: V = E − I·r, P = V·I");
    private static final Source MACHINE = Source.published("direct-current machine: T = k·φ·I, E = k·φ·ω");
    private static final Source AT_THE_PACK = Source.derived(
            "the pack gives what the wheel takes over the efficiency, and never less than shaft and winding");
    private static final Source NEWTON = Source.published("Newton's second law");
    private static final Source MOTION = Source.derived(
            "equation of motion dv/dt = (F − Fr − Fd)/(m·(1 + ε)) integrated over v, Dormand-Prince 8(5,3)");

    private static final Symbol MASS_ = new Symbol("m", MASS);
    private static final Symbol GRAVITY = new Symbol("g", ACCELERATION);
    private static final Symbol COEFFICIENT = new Symbol("f", NONE);
    private static final Symbol THETA = new Symbol("θ", ANGLE);
    private static final Symbol V = new Symbol("v", SPEED);
    private static final Symbol FACTOR = new Symbol("c", NONE);
    private static final Symbol F = new Symbol("F", FORCE);
    private static final Symbol TORQUE_ = new Symbol("T", TORQUE);
    private static final Symbol OMEGA = new Symbol("ω", ROTATION);
    private static final Symbol RATIO = new Symbol("i", NONE);
    private static final Symbol GEAR = new Symbol("ηg", NONE);
    private static final Symbol ROLLOUT = new Symbol("C", CLEARANCE);
    private static final Symbol ROTATING = new Symbol("ε", NONE);

    private static final Step ROLLING = Step.of(
            "Fr",
            "rolling resistance; c is measured over reckoned, 1 without a measurement",
            "Fr = c·m·g·f·cos θ",
            FORCE,
            DYNAMICS,
            FACTOR,
            MASS_,
            GRAVITY,
            COEFFICIENT,
            THETA);
    private static final Step GRADE_FORCE = Step.of(
            "Fg", "part of the weight along the road", "Fg = m·g·sin θ", FORCE, DYNAMICS, MASS_, GRAVITY, THETA);
    private static final Step DRAG = Step.of(
            "Fd",
            "drag in still air of 15 degC at sea level (ISO 2533)",
            "Fd = c·½·ρ·CdA·v²",
            FORCE,
            DYNAMICS,
            FACTOR,
            new Symbol("ρ in kg/m3", NONE),
            new Symbol("CdA", BODY_AREA),
            V);
    private static final Step NEEDED = Step.of(
            "F",
            "force needed at the wheels",
            "F = Fr + Fg + Fd",
            FORCE,
            DYNAMICS,
            new Symbol("Fr", FORCE),
            new Symbol("Fg", FORCE),
            new Symbol("Fd", FORCE));
    private static final Step WHEEL_TORQUE =
            Step.of("Tw", "torque at the wheels", "Tw = F·C/2π", TORQUE, WHEEL, F, ROLLOUT);
    private static final Step SHAFT_TORQUE =
            Step.of("T", "torque at the motor shaft", "T = F·C/(2π·i·ηg)", TORQUE, WHEEL, F, ROLLOUT, RATIO, GEAR);
    private static final Step MOTOR_SPEED =
            Step.of("ω", "speed of the motor", "ω = 2π·v·i/C", ROTATION, Gearing.KINEMATICS, V, RATIO, ROLLOUT);
    private static final Step WHEEL_POWER = Step.of("Pw", "power at the wheels", "Pw = F·v", POWER, DYNAMICS, F, V);
    private static final Step SHAFT_POWER_ =
            Step.of("Ps", "power at the motor shaft", "Ps = T·ω", SHAFT_POWER, DYNAMICS, TORQUE_, OMEGA);
    private static final Step PACK_POWER = Step.of(
            "P",
            "power from the pack",
            "P = F·v/η + Pa",
            POWER,
            AT_THE_PACK,
            F,
            V,
            new Symbol("η", NONE),
            new Symbol("Pa", POWER));
    private static final Step PACK_POWER_WINDING = Step.of(
            "P",
            "power from the pack, at least shaft and winding",
            "P = max(F·v/η; T·ω + I²·R) + Pa",
            POWER,
            AT_THE_PACK,
            F,
            V,
            new Symbol("η", NONE),
            TORQUE_,
            OMEGA,
            new Symbol("I", CURRENT),
            new Symbol("R", RESISTANCE),
            new Symbol("Pa", POWER));
    private static final Step PACK_POWER_CIRCUIT = Step.of(
            "P",
            "power from the pack, at least shaft and winding, at most its voltage times the motor's current",
            "P = max(min(F·v/η; E·I); T·ω + I²·R) + Pa",
            POWER,
            AT_THE_PACK,
            F,
            V,
            new Symbol("η", NONE),
            new Symbol("E", VOLTAGE),
            TORQUE_,
            OMEGA,
            new Symbol("I", CURRENT),
            new Symbol("R", RESISTANCE),
            new Symbol("Pa", POWER));
    private static final Step PACK_CURRENT = Step.of(
            "Ib",
            "current from the pack",
            "Ib = 2·P/(E + √(E² − 4·r·P))",
            CURRENT,
            CIRCUIT,
            new Symbol("P", POWER),
            new Symbol("E", VOLTAGE),
            new Symbol("r", RESISTANCE));
    private static final Step PACK_VOLTAGE = Step.of(
            "U",
            "voltage of the pack under it",
            "U = E − Ib·r",
            VOLTAGE,
            CIRCUIT,
            new Symbol("E", VOLTAGE),
            new Symbol("Ib", CURRENT),
            new Symbol("r", RESISTANCE));
    private static final Step MOTOR_CURRENT = Step.of(
            "I",
            "current of the motor",
            "I = I0·T/T0, of a series motor below T0 I0·√(T/T0)",
            CURRENT,
            MACHINE,
            TORQUE_,
            new Symbol("T0", TORQUE),
            new Symbol("I0", CURRENT));
    private static final Step TOP = Step.of(
            "v",
            "steady speed: where the pull, found by a bracketing search, equals what resists",
            "F(v) = Fr + Fg + Fd(v)",
            SPEED,
            DYNAMICS,
            F);
    private static final Step IDEAL = Step.of(
            "vi",
            "ideal speed, the motor at its highest",
            "vi = ω·C/(2π·i)",
            SPEED,
            Gearing.KINEMATICS,
            OMEGA,
            ROLLOUT,
            RATIO);
    private static final Step POWER_SPEED = Step.of(
            "vp",
            "speed to which the motor's most power suffices, whatever the ratio",
            "Ps·ηg = (Fr + Fd(vp))·vp",
            SPEED,
            DYNAMICS,
            new Symbol("Ps", SHAFT_POWER),
            GEAR);
    private static final Step FITTING_RATIO = Step.of(
            "i'",
            "ratio at which ideal and power-limited speed meet",
            "i' = i·vi/vp",
            NONE,
            Gearing.KINEMATICS,
            RATIO,
            new Symbol("vi", SPEED),
            new Symbol("vp", SPEED));
    private static final Step PULL_AT_REST = Step.of(
            "F0",
            "most pull at standstill, tyres gripping",
            "F0 = 2π·T·i·ηg/C",
            FORCE,
            WHEEL,
            TORQUE_,
            RATIO,
            GEAR,
            ROLLOUT);
    private static final Step LAUNCH = Step.of(
            "a",
            "acceleration from standstill on the level",
            "a = (F − Fr)/(m·(1 + ε))",
            ACCELERATION,
            NEWTON,
            F,
            new Symbol("Fr", FORCE),
            MASS_,
            ROTATING);
    private static final Step STALL_GRADE = grade("grade that the most pull just holds");
    private static final Step START_GRADE = Step.of(
            "θs",
            "grade on which it still pulls away with " + STARTING_ACCELERATION + " m/s²",
            "θs = asin((F − m·(1 + ε)·a)/(m·g·√(1 + f²))) − atan f",
            GRADE,
            DYNAMICS,
            F,
            MASS_,
            ROTATING,
            GRAVITY,
            COEFFICIENT,
            new Symbol("a", ACCELERATION));
    private static final Step SUSTAINED_GRADE = grade("grade that the rated torque holds");
    private static final Step GRIP_GRADE = Step.of(
            "θg",
            "grade on which the driven tyres slip",
            "θg = atan(F/(m·g) − f)",
            GRADE,
            Source.published("Jazar, Vehicle Dynamics, ch. 2: traction limit, load shift included"),
            F,
            MASS_,
            GRAVITY,
            COEFFICIENT);
    private static final Step TRIP_GRADE = grade("grade at which the pack reaches its limit of current");
    private static final Step TRIP_FORCE = Step.of(
            "F",
            "wheel force at the pack's limit of current",
            "F = (I·(E − I·r) − Pa)·η/v",
            FORCE,
            CIRCUIT,
            new Symbol("I", CURRENT),
            new Symbol("E", VOLTAGE),
            new Symbol("r", RESISTANCE),
            new Symbol("Pa", POWER),
            new Symbol("η", NONE),
            V);
    private static final Step TIME_TO_SPEED = Step.of(
            "t", "time to the speed, full throttle, level", "t = ∫ m·(1 + ε)/(F − Fr − Fd) dv", EVENT_TIME, MOTION, V);
    private static final Step DISTANCE_TO_SPEED =
            Step.of("s", "distance to the speed", "s = ∫ v·m·(1 + ε)/(F − Fr − Fd) dv", DISTANCE, MOTION, V);
    private static final Step LAUNCH_ENERGY = Step.of(
            "Eb",
            "energy from the pack to the speed: kinetic, rolling, drag, loss, accessories",
            "Eb = K + Er + Ed + El + Ea",
            ENERGY,
            Source.derived("energy balance; each part integrated beside the motion"),
            new Symbol("K", ENERGY),
            new Symbol("Er", ENERGY),
            new Symbol("Ed", ENERGY),
            new Symbol("El", ENERGY),
            new Symbol("Ea", ENERGY));
    private static final Step RATED_SHARE = Step.of(
            "u",
            "torque over rated torque",
            "u = T/Tr",
            NONE,
            Source.derived("comparison with the rating sent"),
            TORQUE_,
            new Symbol("Tr", TORQUE));
    private static final Step RMS = Step.of(
            "Trms",
            "torque that heats the motor as the route does, waiting included",
            "Trms = √(Σ T²·t/Σ t)",
            TORQUE,
            Source.published("IEC 60034-1: equivalent load by the mean of squares"));

    private DrivePerformance() {}

    private static Step grade(String meaning) {
        return Step.of(
                "θ", meaning, "θ = asin(F/(m·g·√(1 + f²))) − atan f", GRADE, DYNAMICS, F, MASS_, GRAVITY, COEFFICIENT);
    }

    /**
     * What the motor may do for its duty.
     *
     * @param torqueNm rated torque
     * @param timeS minutes of a short-time rating, s
     */
    public record Duty(
            @Nullable Double torqueNm,
            @Nullable DutyType type,
            @Nullable Double timeS) {}

    /** Limits of the pack, A and s. */
    public record PackLimits(
            @Nullable Double continuousA,
            @Nullable Double peakA,
            @Nullable Double peakS) {}

    /** The vehicle on its axles, for what the tyres can pass on. */
    public record Grip(Stance stance, AxleSet driven, double friction) {}

    /**
     * A stretch asked about.
     *
     * @param pointer where it stands in the request
     * @param inDegrees whether its grade was sent in degrees
     * @param speedMPS speed wanted; null asks for the speed it reaches
     * @param durationS how long it lasts, waiting not included; null where nothing tells it
     */
    public record Stretch(
            String pointer,
            @Nullable String reference,
            double gradeRad,
            boolean inDegrees,
            double rollingResistance,
            @Nullable Double speedMPS,
            @Nullable Double durationS,
            double waitS) {}

    /**
     * The question.
     *
     * @param motor most torque by speed and voltage
     * @param law torque for current
     * @param windingOhm resistance of the motor
     * @param wheel as sent; what it is reckoned with is the rollout
     * @param largestNm largest torque of the motor
     * @param motorLimitA the controller's limit on the motor side
     * @param capMPS lowest of cap and limiter as a road speed
     * @param capPointer where that stands
     * @param maximumRadPS what the rotor must never pass
     * @param plateW the motor's power as sent
     * @param ratedPowerIsLimit whether the rated power stands for the most it gives
     * @param targetMPS speed to reach from standstill
     * @param rearwardSeats where the people who face rearward stand in the request
     */
    public record Input(
            MotorModel motor,
            @Nullable TorqueLaw law,
            @Nullable Double windingOhm,
            Reduction reduction,
            Wheel wheel,
            double rolloutM,
            double gearEfficiency,
            double efficiency,
            @Nullable Supply supply,
            double accessoriesW,
            @Nullable Double largestNm,
            @Nullable Double motorLimitA,
            @Nullable Double capMPS,
            @Nullable String capPointer,
            @Nullable Double maximumRadPS,
            @Nullable Double plateW,
            boolean ratedPowerIsLimit,
            @Nullable Double minimumV,
            Road road,
            Duty duty,
            PackLimits limits,
            @Nullable Grip grip,
            List<Stretch> stretches,
            @Nullable Double targetMPS,
            @Nullable Double measuredMPS,
            List<String> rearwardSeats) {}

    /** A steady speed and what keeps it from rising. */
    public record Steady(double speedMPS, double motorRadPS, DriveLimit limitedBy) {}

    /**
     * What a measured speed calibrated.
     *
     * @param measuredMPS as sent
     * @param reckonedMPS without it
     * @param what {@code motor-speed} or {@code resistance}
     * @param factor measured over reckoned
     */
    public record Calibration(double measuredMPS, double reckonedMPS, String what, double factor) {}

    /** One point of the pull over the speed. */
    public record CurvePoint(
            double speedMPS,
            double motorRadPS,
            double torqueNm,
            double wheelTorqueNm,
            double forceN,
            double resistanceN,
            double packW,
            @Nullable Double packA,
            @Nullable Double motorA,
            DriveLimit limitedBy) {}

    /** A grade and what holds it there. */
    public record GradeLimit(double gradeRad, DriveLimit limitedBy) {}

    /** Pulling away on the level; torques at the motor shaft and at the wheels together. */
    public record PullAway(
            double forceN,
            double motorTorqueNm,
            double wheelTorqueNm,
            double acceleration,
            DriveLimit limitedBy,
            @Nullable Double frontLoadN,
            @Nullable Double frontShare) {}

    /** Grade at which the pack reaches its limit, at a speed. */
    public record Trip(double gradeRad, double speedMPS, double currentA) {}

    /** What a stretch asks of the drive. */
    public record Climb(
            Stretch stretch,
            double speedMPS,
            double forceN,
            double wheelTorqueNm,
            double torqueNm,
            double motorRadPS,
            double wheelW,
            double shaftW,
            double packW,
            @Nullable Double packA,
            @Nullable Double packV,
            @Nullable Double motorA,
            @Nullable Double ratedShare,
            boolean possible,
            @Nullable Steady reachable,
            DriveLimit limitedBy,
            boolean nearStall,
            @Nullable Double frontLoadN) {}

    /** The answer, SI. */
    public record Result(
            String model,
            @Nullable Calibration calibration,
            @Nullable Steady top,
            @Nullable Double idealMPS,
            @Nullable Double powerLimitedMPS,
            @Nullable Double fittingRatio,
            @Nullable Double levelPackW,
            @Nullable Double levelPackA,
            @Nullable Double levelPackV,
            @Nullable PullAway pullAway,
            @Nullable Double gripForceN,
            @Nullable GradeLimit startGrade,
            @Nullable GradeLimit stallGrade,
            @Nullable Double sustainedGradeRad,
            @Nullable Double gripGradeRad,
            @Nullable Trip trip,
            @Nullable Launch launch,
            List<Climb> climbs,
            @Nullable Double rmsTorqueNm,
            @Nullable Double rmsShare,
            @Nullable Double greatestPackA,
            List<CurvePoint> curve) {}

    /** Works it out. Pure. */
    public static Result of(Input input, Trace trace) {
        Drivetrain train = drivetrain(input);
        Road road = input.road();
        Steady reckoned = steady(train, road, 0, road.rollingResistance());
        Calibration calibration = calibration(input.measuredMPS(), reckoned, train, road);
        if (calibration != null && calibration.what().equals("resistance")) {
            road = road.calibrated(calibration.factor());
        } else if (calibration != null) {
            train = train.calibrated(calibration.factor());
        }
        Steady top = calibration == null ? reckoned : steady(train, road, 0, road.rollingResistance());
        Double ideal = ideal(train, input, trace);
        Double mostW = mostShaftW(train.withoutCap(), road);
        Double powerLimited = mostW == null ? null : powerLimited(mostW, train, road);
        Double fitting = null;
        if (powerLimited != null && mostW != null) {
            trace.note(POWER_SPEED, powerLimited, mostW, train.gearEfficiency());
            if (ideal != null && powerLimited > 0) {
                fitting = trace.note(
                        FITTING_RATIO, train.ratio() * ideal / powerLimited, train.ratio(), ideal, powerLimited);
            }
        }
        Climb level = null;
        if (top != null) {
            trace.note(TOP, top.speedMPS(), road.levelN(top.speedMPS()));
            Stretch flat = new Stretch("", null, 0, false, road.rollingResistance(), top.speedMPS(), null, 0);
            level = climb(flat, input, train, road, trace.of("level at top speed"));
        }
        Grip grip = input.grip();
        Double gripForce = grip == null ? null : gripN(grip, 0, trace);
        Drivetrain gripping = train.withGrip(gripForce);
        List<Climb> climbs = new ArrayList<>();
        for (Stretch stretch : input.stretches()) {
            Trace noted = trace.of(stretch.pointer());
            Drivetrain there = train.withGrip(grip == null ? null : gripN(grip, stretch.gradeRad(), noted));
            Climb climb = climb(stretch, input, there, road, noted);
            if (climb != null) {
                climbs.add(climb);
            }
        }
        Double rms = rms(input, train, road, trace);
        Result result = new Result(
                train.motor().token(),
                calibration,
                top,
                ideal,
                powerLimited,
                fitting,
                level == null ? null : level.packW(),
                level == null ? null : level.packA(),
                level == null ? null : level.packV(),
                pullAway(input, gripping, road, trace),
                gripForce,
                startGrade(train, road, gripForce, trace),
                stallGrade(train, road, gripForce, trace),
                sustained(input, train, road, trace),
                gripForce == null
                        ? null
                        : (Double) trace.note(
                                GRIP_GRADE,
                                Math.atan(gripForce / road.weightN() - road.rollingResistance()),
                                gripForce,
                                road.massKg(),
                                Constants.STANDARD_GRAVITY,
                                road.rollingResistance()),
                trip(input, train, road, top, trace),
                launch(input, gripping, road, top, trace),
                climbs,
                rms,
                rms == null || input.duty().torqueNm() == null
                        ? null
                        : (Double) trace.note(
                                RATED_SHARE,
                                rms / input.duty().torqueNm(),
                                rms,
                                input.duty().torqueNm()),
                greatestPackA(gripping, top),
                curve(gripping, road, top, ideal));
        DriveFindings.find(input, result, train, trace);
        return result;
    }

    private static Drivetrain drivetrain(Input input) {
        Double byCurrent = input.law() == null || input.motorLimitA() == null
                ? null
                : (Double) input.law().torqueNm(input.motorLimitA());
        return new Drivetrain(
                input.motor(),
                input.law(),
                input.windingOhm(),
                input.reduction().ratio(),
                input.rolloutM(),
                input.gearEfficiency(),
                input.efficiency(),
                input.supply(),
                input.accessoriesW(),
                input.largestNm(),
                byCurrent,
                input.capMPS(),
                null,
                1);
    }

    /** Where the pull first no longer exceeds what resists; null where it does not even start. */
    private static @Nullable Steady steady(Drivetrain train, Road road, double gradeRad, double coefficient) {
        UnivariateFunction excess =
                v -> Math.min(train.pull(v).forceN(), 1e15) - road.resistanceN(v, coefficient, gradeRad);
        if (!(excess.value(0) > 0)) {
            return null;
        }
        double highest = highestMPS(train, excess);
        double before = 0;
        for (int i = 1; i <= SCAN; i++) {
            double at = highest * i / SCAN;
            if (!(excess.value(at) > 0)) {
                double v = at;
                if (excess.value(at) < 0) {
                    v = new BracketingNthOrderBrentSolver(1e-14, 1e-13 * highest, 0, 5)
                            .solve(MOST_EVALUATIONS, excess, before, at);
                }
                return new Steady(v, train.omega(v), limitAt(v, train, road, gradeRad, coefficient));
            }
            before = at;
        }
        return null;
    }

    /** A road speed at which nothing pulls it any faster, m/s. */
    private static double highestMPS(Drivetrain train, UnivariateFunction excess) {
        double emf = train.supply() == null ? Double.NaN : train.supply().emfV();
        double ceiling = train.motor().ceilingRadPS(emf) * train.speedFactor();
        double highest = Gearing.roadSpeedMPS(ceiling, train.rolloutM(), train.ratio());
        if (train.capMPS() != null) {
            highest = Math.min(highest, train.capMPS());
        }
        if (highest < 1e4) {
            return highest * (1 + 1e-9) + 1e-9;
        }
        double bound = 10;
        while (excess.value(bound) > 0 && bound < 1e6) {
            bound *= 2;
        }
        return bound;
    }

    /** The limit that ends the drive just there: what lies beyond, where the pull breaks off; else what holds the pull down. */
    private static DriveLimit limitAt(double v, Drivetrain train, Road road, double gradeRad, double coefficient) {
        Pull below = train.pull(v * (1 - 1e-6));
        double resistance = road.resistanceN(v, coefficient, gradeRad);
        if (below.forceN() > resistance * (1 + 1e-3) + 1e-9) {
            return train.pull(v * (1 + 1e-6) + 1e-9).limitedBy();
        }
        return below.limitedBy();
    }

    private static @Nullable Calibration calibration(
            @Nullable Double measured, @Nullable Steady reckoned, Drivetrain train, Road road) {
        if (measured == null || reckoned == null) {
            return null;
        }
        double factor = measured / reckoned.speedMPS();
        boolean bySpeed = reckoned.limitedBy() == DriveLimit.VOLTAGE;
        if (bySpeed && Math.abs(factor - 1) <= SPEED_SPAN) {
            return new Calibration(measured, reckoned.speedMPS(), "motor-speed", factor);
        }
        double pull = train.pull(measured).forceN();
        double resistance = pull / road.levelN(measured);
        if (!bySpeed
                && reckoned.limitedBy() != DriveLimit.SPEED_CAP
                && resistance >= LEAST_RESISTANCE_FACTOR
                && resistance <= MOST_RESISTANCE_FACTOR) {
            return new Calibration(measured, reckoned.speedMPS(), "resistance", resistance);
        }
        return null;
    }

    private static @Nullable Double ideal(Drivetrain train, Input input, Trace trace) {
        double emf = input.supply() == null ? Double.NaN : input.supply().emfV();
        double omega = train.motor().ceilingRadPS(emf) * train.speedFactor();
        if (!(omega < 1e6)) {
            return null;
        }
        return trace.note(
                IDEAL,
                Gearing.roadSpeedMPS(omega, train.rolloutM(), train.ratio()),
                omega,
                train.rolloutM(),
                train.ratio());
    }

    /** Most power of the shaft at any speed, W. */
    private static @Nullable Double mostShaftW(Drivetrain train, Road road) {
        double highest = highestMPS(train, v -> train.pull(v).forceN() - road.levelN(v));
        double low = 0;
        double width = highest / SCAN;
        double best = 0;
        double at = 0;
        for (int pass = 0; pass < 5; pass++) {
            for (int i = 0; i <= SCAN; i++) {
                double v = low + width * i;
                double shaft = train.pull(v).torqueNm() * train.omega(v);
                if (shaft > best) {
                    best = shaft;
                    at = v;
                }
            }
            low = Math.max(0, at - width);
            width = Math.min(2 * width, highest - low) / SCAN;
        }
        return best > 0 ? (Double) best : null;
    }

    private static double powerLimited(double mostW, Drivetrain train, Road road) {
        UnivariateFunction left = v -> mostW * train.gearEfficiency() - road.levelN(v) * v;
        double bound = 1;
        while (left.value(bound) > 0) {
            bound *= 2;
        }
        return new BracketingNthOrderBrentSolver(1e-14, 1e-12 * bound, 0, 5).solve(MOST_EVALUATIONS, left, 0, bound);
    }

    private static @Nullable Double gripN(Grip grip, double gradeRad, Trace trace) {
        double limit = grip.stance().thrustLimitN(grip.driven(), grip.friction(), gradeRad, trace);
        return limit < Double.MAX_VALUE ? (Double) limit : null;
    }

    private static @Nullable PullAway pullAway(Input input, Drivetrain train, Road road, Trace trace) {
        if (!train.boundAtRest()) {
            return null;
        }
        Pull pull = train.pull(0);
        trace.note(
                PULL_AT_REST, pull.forceN(), pull.torqueNm(), train.ratio(), train.gearEfficiency(), train.rolloutM());
        double wheelNm = trace.note(WHEEL_TORQUE, wheelNm(pull.forceN(), train), pull.forceN(), train.rolloutM());
        double rolling = road.rollingN(road.rollingResistance(), 0);
        double net = pull.forceN() - rolling;
        if (!(net > 0)) {
            return new PullAway(pull.forceN(), pull.torqueNm(), wheelNm, 0, pull.limitedBy(), null, null);
        }
        double a =
                trace.note(LAUNCH, net / road.movingKg(), pull.forceN(), rolling, road.massKg(), road.rotatingShare());
        Grip grip = input.grip();
        Double front = grip == null ? null : (Double) grip.stance().frontLoadN(0, a, trace.of("pulling away"));
        return new PullAway(
                pull.forceN(),
                pull.torqueNm(),
                wheelNm,
                a,
                pull.limitedBy(),
                front,
                front == null ? null : (Double) (front / road.weightN()));
    }

    private static double wheelNm(double forceN, Drivetrain train) {
        return forceN * train.rolloutM() / (2 * Math.PI);
    }

    private static @Nullable Double gradeRad(Step step, double forceN, Road road, Trace trace) {
        double f = road.factor() * road.rollingResistance();
        double sine = forceN / (road.weightN() * Math.sqrt(1 + f * f));
        if (!(sine < 1 && sine > -1)) {
            return null;
        }
        return trace.note(step, Math.asin(sine) - Math.atan(f), forceN, road.massKg(), Constants.STANDARD_GRAVITY, f);
    }

    private static @Nullable GradeLimit stallGrade(
            Drivetrain train, Road road, @Nullable Double gripForce, Trace trace) {
        if (!train.boundAtRest()) {
            return null;
        }
        Pull pull = train.pull(0);
        return gripped(gradeRad(STALL_GRADE, pull.forceN(), road, trace), pull.limitedBy(), gripForce, 0, road);
    }

    private static @Nullable GradeLimit startGrade(
            Drivetrain train, Road road, @Nullable Double gripForce, Trace trace) {
        if (!train.boundAtRest()) {
            return null;
        }
        Pull pull = train.pull(0);
        double f = road.factor() * road.rollingResistance();
        double sine =
                (pull.forceN() - road.movingKg() * STARTING_ACCELERATION) / (road.weightN() * Math.sqrt(1 + f * f));
        Double theta = null;
        if (sine < 1 && sine > -1) {
            theta = trace.note(
                    START_GRADE,
                    Math.asin(sine) - Math.atan(f),
                    pull.forceN(),
                    road.massKg(),
                    road.rotatingShare(),
                    Constants.STANDARD_GRAVITY,
                    f,
                    STARTING_ACCELERATION);
        }
        return gripped(
                theta,
                pull.limitedBy(),
                gripForce,
                (1 + road.rotatingShare()) * STARTING_ACCELERATION / Constants.STANDARD_GRAVITY,
                road);
    }

    /** The lesser of what the drive pulls and what the tyres pass on. */
    private static @Nullable GradeLimit gripped(
            @Nullable Double thetaRad, DriveLimit limit, @Nullable Double gripForce, double reserve, Road road) {
        if (gripForce == null) {
            return thetaRad == null ? null : new GradeLimit(thetaRad, limit);
        }
        double f = road.factor() * road.rollingResistance();
        double grip = Math.atan(gripForce / road.weightN() - f - reserve);
        return thetaRad != null && thetaRad <= grip
                ? new GradeLimit(thetaRad, limit)
                : new GradeLimit(grip, DriveLimit.GRIP);
    }

    private static @Nullable Double sustained(Input input, Drivetrain train, Road road, Trace trace) {
        Double rated = input.duty().torqueNm();
        if (rated == null) {
            return null;
        }
        double force = Gearing.wheelForceN(rated, train.ratio(), train.rolloutM(), train.gearEfficiency());
        return gradeRad(SUSTAINED_GRADE, force, road, trace);
    }

    private static @Nullable Trip trip(Input input, Drivetrain train, Road road, @Nullable Steady top, Trace trace) {
        Supply supply = input.supply();
        PackLimits limits = input.limits();
        Double amperes = limits.peakA() != null ? limits.peakA() : limits.continuousA();
        Double speed = input.targetMPS() != null && input.targetMPS() > 0
                ? input.targetMPS()
                : top == null ? null : (Double) top.speedMPS();
        if (supply == null || amperes == null || speed == null) {
            return null;
        }
        if (supply.ohm() > 0 && amperes > supply.emfV() / (2 * supply.ohm())) {
            return null;
        }
        double power = amperes * (supply.emfV() - amperes * supply.ohm()) - train.accessoriesW();
        double force = trace.note(
                TRIP_FORCE,
                power * train.efficiency() / speed,
                amperes,
                supply.emfV(),
                supply.ohm(),
                train.accessoriesW(),
                train.efficiency(),
                speed);
        Double theta = gradeRad(TRIP_GRADE, force - road.dragN(speed), road, trace);
        return theta == null ? null : new Trip(theta, speed, amperes);
    }

    private static @Nullable Launch launch(
            Input input, Drivetrain train, Road road, @Nullable Steady top, Trace trace) {
        Double target = input.targetMPS();
        if (target == null || !(target > 0) || top == null || !train.boundAtRest()) {
            return null;
        }
        boolean breaksOff = top.limitedBy() == DriveLimit.SPEED_CAP;
        if (!(breaksOff ? target <= top.speedMPS() * (1 + 1e-9) : target <= 0.999 * top.speedMPS())) {
            return null;
        }
        Launch launch = Launch.to(target, train.withoutCap(), road);
        if (launch != null) {
            trace.note(TIME_TO_SPEED, launch.timeS(), target);
            trace.note(DISTANCE_TO_SPEED, launch.distanceM(), target);
            trace.note(
                    LAUNCH_ENERGY,
                    launch.packJ(),
                    launch.kineticJ(),
                    launch.rollingJ(),
                    launch.dragJ(),
                    launch.lossJ(),
                    launch.accessoriesJ());
        }
        return launch;
    }

    /** What a stretch asks; null where nothing drives it because it goes downhill. */
    private static @Nullable Climb climb(Stretch stretch, Input input, Drivetrain train, Road road, Trace trace) {
        double theta = stretch.gradeRad();
        double f = stretch.rollingResistance();
        Steady reachable = steady(train, road, theta, f);
        double v = stretch.speedMPS() != null ? stretch.speedMPS() : reachable == null ? 0 : reachable.speedMPS();
        double rolling = road.rollingN(f, theta);
        double grade = road.gradeN(theta);
        double drag = road.dragN(v);
        double force = rolling + grade + drag;
        if (!(force > 0)) {
            return null;
        }
        trace.note(ROLLING, rolling, road.factor(), road.massKg(), Constants.STANDARD_GRAVITY, f, theta);
        trace.note(GRADE_FORCE, grade, road.massKg(), Constants.STANDARD_GRAVITY, theta);
        trace.note(DRAG, drag, road.factor(), Constants.AIR_DENSITY_ISO_2533, road.dragAreaM2(), v);
        trace.note(NEEDED, force, rolling, grade, drag);
        double c = train.rolloutM();
        double wheelTorque = trace.note(WHEEL_TORQUE, force * c / (2 * Math.PI), force, c);
        double torque =
                trace.note(SHAFT_TORQUE, train.torqueNm(force), force, c, train.ratio(), train.gearEfficiency());
        double omega = trace.note(MOTOR_SPEED, train.omega(v), v, train.ratio(), c);
        double wheelW = trace.note(WHEEL_POWER, force * v, force, v);
        double shaftW = trace.note(SHAFT_POWER_, torque * omega, torque, omega);
        TorqueLaw law = train.law();
        Double motorA = law == null
                ? null
                : (Double) trace.note(MOTOR_CURRENT, law.currentA(torque), torque, law.torqueNm(), law.currentA());
        double packW = train.drivePowerW(torque, omega) + train.accessoriesW();
        Supply pack = train.supply();
        if (motorA != null && train.windingOhm() != null && pack != null && train.stepsDown()) {
            trace.note(
                    PACK_POWER_CIRCUIT,
                    packW,
                    force,
                    v,
                    train.efficiency(),
                    pack.emfV(),
                    torque,
                    omega,
                    motorA,
                    train.windingOhm(),
                    train.accessoriesW());
        } else if (motorA != null && train.windingOhm() != null) {
            trace.note(
                    PACK_POWER_WINDING,
                    packW,
                    force,
                    v,
                    train.efficiency(),
                    torque,
                    omega,
                    motorA,
                    train.windingOhm(),
                    train.accessoriesW());
        } else {
            trace.note(PACK_POWER, packW, force, v, train.efficiency(), train.accessoriesW());
        }
        Double packA = null;
        Double packV = null;
        if (pack != null && packW <= Sag.greatestPowerW(pack.emfV(), pack.ohm())) {
            packA = trace.note(PACK_CURRENT, pack.currentA(packW), packW, pack.emfV(), pack.ohm());
            packV = pack.ohm() == 0
                    ? null
                    : (Double) trace.note(PACK_VOLTAGE, pack.terminalV(packW), pack.emfV(), packA, pack.ohm());
        }
        Double rated = input.duty().torqueNm();
        Double share = rated == null ? null : (Double) trace.note(RATED_SHARE, torque / rated, torque, rated);
        Pull most = train.pull(v);
        boolean possible = stretch.speedMPS() == null
                ? reachable != null
                : most.forceN() >= force * (1 - 1e-9) || (reachable != null && reachable.speedMPS() >= v * (1 - 1e-9));
        Double front =
                input.grip() == null ? null : (Double) input.grip().stance().frontLoadN(theta, 0, trace);
        return new Climb(
                stretch,
                v,
                force,
                wheelTorque,
                torque,
                omega,
                wheelW,
                shaftW,
                packW,
                packA,
                packV,
                motorA,
                share,
                possible,
                reachable,
                stretch.speedMPS() == null && reachable != null ? reachable.limitedBy() : most.limitedBy(),
                nearStall(train, torque, omega, motorA),
                front);
    }

    /** Half of the power or more turns to heat in the winding; or, where it is not known, the motor hardly turns. */
    private static boolean nearStall(Drivetrain train, double torque, double omega, @Nullable Double motorA) {
        if (motorA != null && train.windingOhm() != null) {
            return torque * omega < motorA * motorA * train.windingOhm();
        }
        double emf = train.supply() == null ? Double.NaN : train.supply().emfV();
        double ceiling = train.motor().ceilingRadPS(emf);
        return ceiling < 1e6 ? omega < NEAR_STALL * ceiling : omega == 0;
    }

    /** Over the legs of the route with a length and a speed; null without any. */
    private static @Nullable Double rms(Input input, Drivetrain train, Road road, Trace trace) {
        double squares = 0;
        double time = 0;
        List<Trace.Term> terms = new ArrayList<>();
        for (Stretch leg : input.stretches()) {
            if (leg.durationS() == null || leg.speedMPS() == null) {
                continue;
            }
            double force = road.resistanceN(leg.speedMPS(), leg.rollingResistance(), leg.gradeRad());
            double torque = train.torqueNm(Math.max(0, force));
            squares += torque * torque * leg.durationS();
            time += leg.durationS() + leg.waitS();
            if (trace.keepsWorking()) {
                terms.add(new Trace.Term(new Symbol("T, " + leg.pointer(), TORQUE), torque));
                terms.add(new Trace.Term(new Symbol("t, " + leg.pointer(), EVENT_TIME), leg.durationS()));
                terms.add(new Trace.Term(new Symbol("waiting, " + leg.pointer(), EVENT_TIME), leg.waitS()));
            }
        }
        return time > 0 ? (Double) trace.noteTerms(RMS, Math.sqrt(squares / time), terms) : null;
    }

    private static @Nullable Double greatestPackA(Drivetrain train, @Nullable Steady top) {
        Supply supply = train.supply();
        if (supply == null || top == null) {
            return null;
        }
        double most = 0;
        for (int i = train.boundAtRest() ? 0 : 1; i <= SCAN; i++) {
            most = Math.max(
                    most, supply.currentA(train.pull(top.speedMPS() * i / SCAN).packW()));
        }
        return most;
    }

    private static List<CurvePoint> curve(
            Drivetrain train, Road road, @Nullable Steady top, @Nullable Double idealMPS) {
        double end = idealMPS != null ? idealMPS : top != null ? 1.25 * top.speedMPS() : 10;
        List<CurvePoint> points = new ArrayList<>();
        for (int i = train.boundAtRest() ? 0 : 1; i <= CURVE_POINTS; i++) {
            double v = end * i / CURVE_POINTS;
            Pull pull = train.pull(v);
            points.add(new CurvePoint(
                    v,
                    train.omega(v),
                    pull.torqueNm(),
                    wheelNm(pull.forceN(), train),
                    pull.forceN(),
                    road.levelN(v),
                    pull.packW(),
                    train.supply() == null ? null : (Double) train.supply().currentA(pull.packW()),
                    train.law() == null ? null : (Double) train.law().currentA(pull.torqueNm()),
                    pull.limitedBy()));
        }
        return points;
    }
}
