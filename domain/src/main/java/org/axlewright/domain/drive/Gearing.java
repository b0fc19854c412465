package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.ROTATION;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.motor.MotorType;
import org.axlewright.domain.quantity.RotationUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** From the motor's speed to the road's: tyre, reduction, voltage; limiter, towing, display, and the share of each change. */
public final class Gearing {

    /** Road speed over ideal speed where the motor's speed was stated without load. */
    static final double SHORTFALL_MOST = 0.08;

    static final double SHORTFALL_LEAST = 0.03;

    /** A measured rollout within this share of the reckoned one calibrates it; beyond it something else is wrong. */
    public static final double CALIBRATION_SPAN = 0.15;

    static final Source KINEMATICS = Source.published(
            "French arrete of 27 March 1979, art. 2: speed = distance rolled in a turn x motor speed x reduction");

    private static final Source LINEAR =
            Source.published("NPTEL, Electric Vehicles: speed without load is proportional to voltage");
    private static final Source ROLLING = Source.derived("one turn of the wheel, one circumference");
    private static final Source LOGARITHMS =
            Source.derived("logarithms of a product add up, so each factor has an exact share of the whole");
    private static final Source FORCE =
            Source.published("NPTEL, Electric Vehicles, week 4: wheel force = motor torque x ratio / radius");

    private static final Symbol C = new Symbol("C", CLEARANCE);
    private static final Symbol I = new Symbol("i", NONE);
    private static final Symbol OMEGA = new Symbol("ω", ROTATION);
    private static final Symbol V = new Symbol("v", SPEED);

    private static final Step PER_THOUSAND = speed("v1000", "road speed at 1000 turns of the motor a minute");
    private static final Step IDEAL = speed("vi", "ideal speed, the motor at its full speed");
    private static final Step CAP_SPEED = speed("vc", "road speed at the controller's cap");
    private static final Step TOW_SPEED = speed("vt", "road speed at which the rotor reaches its limit");
    private static final Step MOTOR_SPEED =
            Step.of("ω", "motor speed at that road speed", "ω = 2π·v·i/C", ROTATION, KINEMATICS, V, I, C);
    private static final Step LIMITER =
            Step.of("ωc", "motor speed at the wanted top speed", "ωc = 2π·v·i/C", ROTATION, KINEMATICS, V, I, C);
    private static final Step WHEEL_SPEED =
            Step.of("Ω", "speed of the wheel at that road speed", "Ω = 2π·v/C", ROTATION, ROLLING, V, C);
    private static final Step AT_VOLTAGE = Step.of(
            "ωV",
            "motor speed at the pack's voltage",
            "ωV = ω·U/U0",
            ROTATION,
            LINEAR,
            OMEGA,
            new Symbol("U", VOLTAGE),
            new Symbol("U0", VOLTAGE));
    private static final Step SHARE_OF_FULL = Step.of(
            "s",
            "limiter as a share of the motor's full speed",
            "s = ωc/ωV",
            NONE,
            ROLLING,
            new Symbol("ωc", ROTATION),
            new Symbol("ωV", ROTATION));
    private static final Step IMPLIED = Step.of(
            "C'",
            "distance rolled in a turn that the measured speed implies",
            "C' = 2π·v·i/ω",
            CLEARANCE,
            KINEMATICS,
            V,
            I,
            OMEGA);
    private static final Step MEASURED_SHARE =
            Step.of("q", "measured speed over ideal speed", "q = v/vi", NONE, ROLLING, V, new Symbol("vi", SPEED));
    private static final Step SHOWN = Step.of(
            "k",
            "speed shown over true speed",
            "k = vs/v",
            NONE,
            Source.derived("comparison of the two"),
            new Symbol("vs", SPEED),
            V);
    private static final Step PREDICTED = Step.of(
            "kp",
            "speed shown over true speed that pulses, tyre and ratio make, sensor at the motor",
            "kp = kn·kC·ki",
            NONE,
            Source.derived("the display counts pulses, and every pulse stands for a distance"),
            new Symbol("kn, pulses given over expected", NONE),
            new Symbol("kC, rollout before over now", NONE),
            new Symbol("ki, ratio now over before", NONE));
    private static final Step TYRE_FACTOR =
            Step.of("fC", "speed now over before, by tyre", "fC = C/C0", NONE, ROLLING, C, new Symbol("C0", CLEARANCE));
    private static final Step RATIO_FACTOR =
            Step.of("fi", "speed now over before, by ratio", "fi = i0/i", NONE, KINEMATICS, new Symbol("i0", NONE), I);
    private static final Step VOLTAGE_FACTOR = Step.of(
            "fU",
            "speed now over before, by voltage",
            "fU = U/U0",
            NONE,
            LINEAR,
            new Symbol("U", VOLTAGE),
            new Symbol("U0", VOLTAGE));
    private static final Step MASS_FACTOR = Step.of(
            "fm",
            "acceleration now over before at the same wheel force, by mass",
            "fm = m0/m",
            NONE,
            Source.published("Newton's second law"),
            new Symbol("m0", MASS),
            new Symbol("m", MASS));
    private static final Step SPEED_FACTOR =
            Step.of("fv", "speed now over before: the product over all parts", "fv = Π f", NONE, KINEMATICS);
    private static final Step FORCE_FACTOR =
            Step.of("fF", "wheel force now over before at the same motor torque", "fF = (i/i0)/(C/C0)", NONE, FORCE);
    private static final Step PULL_FACTOR =
            Step.of("fa", "wheel force per mass now over before at the same motor torque", "fa = fF·fm", NONE, FORCE);
    private static final Step SPEED_SHARE = share("share of the change of speed");
    private static final Step PULL_SHARE = share("share of the change of wheel force per mass");

    private Gearing() {}

    private static Step speed(String symbol, String meaning) {
        return Step.of(symbol, meaning, symbol + " = ω·C/(2π·i)", SPEED, KINEMATICS, OMEGA, C, I);
    }

    private static Step share(String meaning) {
        return Step.of(
                "p", meaning, "p = ln f/ln Π f", NONE, LOGARITHMS, new Symbol("f", NONE), new Symbol("Π f", NONE));
    }

    /** Road speed, m/s, at a speed of the motor. */
    public static double roadSpeedMPS(double motorRadPS, double rolloutM, double ratio) {
        return motorRadPS * rolloutM / (2 * Math.PI * ratio);
    }

    /** Speed of the motor, rad/s, at a road speed. */
    public static double motorSpeedRadPS(double speedMPS, double rolloutM, double ratio) {
        return 2 * Math.PI * speedMPS * ratio / rolloutM;
    }

    /** Distance rolled in one turn, m, that a road speed at a motor speed implies. */
    public static double impliedRolloutM(double speedMPS, double motorRadPS, double ratio) {
        return 2 * Math.PI * speedMPS * ratio / motorRadPS;
    }

    /** Wheel force, N, of a torque at the motor shaft; the wheel rolls what its circumference says. */
    public static double wheelForceN(double torqueNm, double ratio, double rolloutM, double gearEfficiency) {
        return 2 * Math.PI * torqueNm * ratio * gearEfficiency / rolloutM;
    }

    /**
     * The driven wheel.
     *
     * @param pointer where its tyre stands in the request
     * @param rolloutM distance rolled in one turn, m
     * @param measured whether that was measured
     * @param rolloutBeforeM before a change of tyre, by the same method; null when it did not change
     * @param reckonedM as its size or diameter says; null when it has neither
     */
    public record Wheel(
            String pointer,
            double rolloutM,
            boolean measured,
            @Nullable Double rolloutBeforeM,
            @Nullable Double reckonedM) {
        public Wheel {
            positive(rolloutM, "rolloutM");
        }
    }

    /**
     * The motor's plate.
     *
     * @param speedRadPS stated speed, rad/s
     * @param statedV voltage at which it holds, V
     * @param loaded whether it was stated under load
     * @param fixed whether the speed is one of the rotor that the drive reaches at any voltage, its field weakened
     */
    public record MotorPlate(
            double speedRadPS,
            @Nullable Double statedV,
            boolean loaded,
            boolean fixed,
            @Nullable MotorType type) {
        public MotorPlate {
            positive(speedRadPS, "speedRadPS");
        }
    }

    /** Measured at the same time: road speed, m/s; motor speed, rad/s; pack voltage, V. */
    public record Measured(
            @Nullable Double speedMPS,
            @Nullable Double motorRadPS,
            @Nullable Double packV) {}

    /** Before the change; null did not change. */
    public record Before(
            @Nullable Reduction reduction,
            @Nullable Double packV,
            @Nullable Double massKg) {}

    /** Pulses for one turn, and speeds shown and true, m/s. */
    public record Sensor(
            @Nullable Double pulsesExpected,
            @Nullable Double pulsesGiven,
            @Nullable Double shownMPS,
            @Nullable Double trueMPS) {}

    /**
     * The question.
     *
     * @param packV nominal voltage of the pack, V
     * @param massKg as driven, kg
     * @param speedMPS road speed asked for, m/s
     * @param speedLimitMPS wanted top speed, m/s
     * @param speedCapRadPS cap set in the controller, rad/s
     * @param maximumRadPS what the rotor must never pass, rad/s
     * @param blocks the pack's blocks in series
     */
    public record Input(
            @Nullable Wheel wheel,
            @Nullable Reduction reduction,
            @Nullable MotorPlate motor,
            @Nullable Double packV,
            @Nullable Double cutOffV,
            @Nullable Integer blocks,
            @Nullable Double massKg,
            @Nullable Double speedMPS,
            @Nullable Double speedLimitMPS,
            @Nullable Double speedCapRadPS,
            @Nullable Double maximumRadPS,
            @Nullable Measured measured,
            @Nullable Before before,
            @Nullable Sensor sensor) {}

    /** At the road speed asked for. */
    public record AtSpeed(double speedMPS, double wheelRadPS, double motorRadPS) {}

    /** What to set for a wanted top speed; the share needs the motor's full speed. */
    public record Limiter(
            double speedMPS, double motorRadPS, @Nullable Double shareOfFull) {}

    /**
     * What a measured speed says.
     *
     * @param impliedRolloutM distance rolled in a turn, m
     * @param wheelRadPS speed of the wheel
     * @param rolloutFactor implied over reckoned rollout
     * @param calibrates whether everything else is reckoned with the implied rollout
     * @param shareOfIdeal measured speed over ideal speed at the voltage of the measurement
     */
    public record MeasuredWheel(
            @Nullable Double impliedRolloutM,
            @Nullable Double wheelRadPS,
            @Nullable Double rolloutFactor,
            boolean calibrates,
            @Nullable Double shareOfIdeal) {}

    /** What the display makes of the true speed. */
    public record Display(
            @Nullable Double shownShare, @Nullable Double predictedShare, double correction, DisplayCause cause) {}

    /** One part of a change; the shares are null where the whole changed nothing. */
    public record Part(
            String name,
            double speedFactor,
            @Nullable Double speedShare,
            double pullFactor,
            @Nullable Double pullShare) {}

    /** The change as a whole: speed, wheel force and wheel force per mass, now over before. */
    public record Change(double speedFactor, double forceFactor, double pullFactor, List<Part> parts) {}

    /**
     * The answer, SI.
     *
     * @param rolloutM reckoned with, m
     * @param speedPerThousandMPS road speed at 1000 rpm of the motor
     * @param fullMotorRadPS motor speed at the pack's voltage
     * @param idealMPS road speed there
     */
    public record Result(
            @Nullable Double rolloutM,
            @Nullable Double speedPerThousandMPS,
            @Nullable AtSpeed atSpeed,
            @Nullable Double fullMotorRadPS,
            @Nullable Double idealMPS,
            @Nullable Double roadLeastMPS,
            @Nullable Double roadMostMPS,
            @Nullable Limiter limiter,
            @Nullable Double capMPS,
            @Nullable Double towMPS,
            @Nullable MeasuredWheel measured,
            @Nullable Display display,
            @Nullable Change change) {}

    /** Works it out. Pure. */
    public static Result of(Input input, Trace trace) {
        Reduction reduction = input.reduction();
        MeasuredWheel wheelAsMeasured = implied(input, trace);
        Double rollout = rolloutM(input, wheelAsMeasured);
        Result result;
        if (rollout == null || reduction == null) {
            result = new Result(
                    rollout,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    wheelAsMeasured,
                    display(input, trace),
                    change(input, trace));
        } else {
            result = geared(input, rollout, reduction.ratio(), wheelAsMeasured, trace);
        }
        GearingFindings.find(input, result, trace);
        return result;
    }

    private static Result geared(
            Input input, double c, double i, @Nullable MeasuredWheel wheelAsMeasured, Trace trace) {
        double thousand = RotationUnit.REVOLUTION_PER_MINUTE.toSi(1000);
        double perThousand = trace.note(PER_THOUSAND, roadSpeedMPS(thousand, c, i), thousand, c, i);
        AtSpeed atSpeed = null;
        if (input.speedMPS() != null) {
            double v = input.speedMPS();
            double wheel = trace.note(WHEEL_SPEED, 2 * Math.PI * v / c, v, c);
            atSpeed = new AtSpeed(v, wheel, trace.note(MOTOR_SPEED, motorSpeedRadPS(v, c, i), v, i, c));
        }
        Double full = null;
        Double ideal = null;
        Double least = null;
        Double most = null;
        MotorPlate motor = input.motor();
        if (motor != null) {
            full = fullSpeed(motor, input.packV(), trace);
            ideal = trace.note(IDEAL, roadSpeedMPS(full, c, i), full, c, i);
            if (!motor.loaded()) {
                least = (1 - SHORTFALL_MOST) * ideal;
                most = (1 - SHORTFALL_LEAST) * ideal;
            }
        }
        Limiter limiter = null;
        if (input.speedLimitMPS() != null) {
            double v = input.speedLimitMPS();
            double cap = trace.note(LIMITER, motorSpeedRadPS(v, c, i), v, i, c);
            limiter = new Limiter(
                    v, cap, full == null ? null : (Double) trace.note(SHARE_OF_FULL, cap / full, cap, full));
        }
        Double capSpeed = input.speedCapRadPS() == null
                ? null
                : (Double)
                        trace.note(CAP_SPEED, roadSpeedMPS(input.speedCapRadPS(), c, i), input.speedCapRadPS(), c, i);
        Double towSpeed = input.maximumRadPS() == null
                ? null
                : (Double) trace.note(TOW_SPEED, roadSpeedMPS(input.maximumRadPS(), c, i), input.maximumRadPS(), c, i);
        return new Result(
                c,
                perThousand,
                atSpeed,
                full,
                ideal,
                least,
                most,
                limiter,
                capSpeed,
                towSpeed,
                shareOfIdeal(input, wheelAsMeasured, c, i, trace),
                display(input, trace),
                change(input, trace));
    }

    /** Speed of the motor at the pack's voltage, rad/s; as stated where one of the voltages is not known. */
    private static double fullSpeed(MotorPlate motor, @Nullable Double packV, Trace trace) {
        if (packV == null || motor.statedV() == null || motor.fixed()) {
            return motor.speedRadPS();
        }
        return trace.note(
                AT_VOLTAGE, motor.speedRadPS() * packV / motor.statedV(), motor.speedRadPS(), packV, motor.statedV());
    }

    private static @Nullable MeasuredWheel implied(Input input, Trace trace) {
        Measured measured = input.measured();
        Reduction reduction = input.reduction();
        if (measured == null || measured.speedMPS() == null) {
            return null;
        }
        if (measured.motorRadPS() == null || reduction == null) {
            return new MeasuredWheel(null, null, null, false, null);
        }
        double v = measured.speedMPS();
        double omega = measured.motorRadPS();
        double rollout = trace.note(IMPLIED, impliedRolloutM(v, omega, reduction.ratio()), v, reduction.ratio(), omega);
        Wheel wheel = input.wheel();
        Double factor = wheel == null ? null : (Double) (rollout / wheel.rolloutM());
        boolean calibrates =
                factor == null || wheel == null || (!wheel.measured() && Math.abs(factor - 1) <= CALIBRATION_SPAN);
        return new MeasuredWheel(rollout, omega / reduction.ratio(), factor, calibrates, null);
    }

    private static @Nullable Double rolloutM(Input input, @Nullable MeasuredWheel measured) {
        if (measured != null && measured.calibrates()) {
            return measured.impliedRolloutM();
        }
        return input.wheel() == null ? null : (Double) input.wheel().rolloutM();
    }

    /** The ideal speed at the voltage of the measurement, else at the pack's. */
    private static @Nullable MeasuredWheel shareOfIdeal(
            Input input, @Nullable MeasuredWheel wheel, double c, double i, Trace trace) {
        Measured measured = input.measured();
        MotorPlate motor = input.motor();
        if (wheel == null || measured == null || measured.speedMPS() == null || motor == null) {
            return wheel;
        }
        Double volts = measured.packV() != null ? measured.packV() : input.packV();
        double ideal = roadSpeedMPS(fullSpeed(motor, volts, Trace.withoutWorking()), c, i);
        double share = trace.note(MEASURED_SHARE, measured.speedMPS() / ideal, measured.speedMPS(), ideal);
        return new MeasuredWheel(
                wheel.impliedRolloutM(), wheel.wheelRadPS(), wheel.rolloutFactor(), wheel.calibrates(), share);
    }

    private static @Nullable Display display(Input input, Trace trace) {
        Sensor sensor = input.sensor();
        Wheel wheel = input.wheel();
        Before before = input.before();
        Double byPulses = sensor != null && sensor.pulsesExpected() != null && sensor.pulsesGiven() != null
                ? (Double) (sensor.pulsesGiven() / sensor.pulsesExpected())
                : null;
        Double byTyre = wheel != null && wheel.rolloutBeforeM() != null
                ? (Double) (wheel.rolloutBeforeM() / wheel.rolloutM())
                : null;
        Double byRatio = before != null && before.reduction() != null && input.reduction() != null
                ? (Double) (input.reduction().ratio() / before.reduction().ratio())
                : null;
        Double predicted = null;
        if (byPulses != null || byTyre != null || byRatio != null) {
            double pulses = byPulses == null ? 1 : byPulses;
            double tyre = byTyre == null ? 1 : byTyre;
            double ratio = byRatio == null ? 1 : byRatio;
            predicted = trace.note(PREDICTED, pulses * tyre * ratio, pulses, tyre, ratio);
        }
        Double shown = null;
        if (sensor != null && sensor.shownMPS() != null && sensor.trueMPS() != null) {
            shown = trace.note(SHOWN, sensor.shownMPS() / sensor.trueMPS(), sensor.shownMPS(), sensor.trueMPS());
        }
        Double share = shown != null ? shown : predicted;
        if (share == null || share == 0) {
            return share == null ? null : new Display(shown, predicted, 0, DisplayCause.FAULT);
        }
        return new Display(shown, predicted, 1 / share, DisplayCause.of(share));
    }

    /** One factor on the speed and one on the wheel force per mass. */
    private record Factor(String name, double speed, double pull) {}

    private static @Nullable Change change(Input input, Trace trace) {
        List<Factor> factors = new ArrayList<>();
        Wheel wheel = input.wheel();
        Before before = input.before();
        if (wheel != null && wheel.rolloutBeforeM() != null) {
            double factor = trace.note(
                    TYRE_FACTOR, wheel.rolloutM() / wheel.rolloutBeforeM(), wheel.rolloutM(), wheel.rolloutBeforeM());
            factors.add(new Factor("tyre", factor, 1 / factor));
        }
        if (before != null && before.reduction() != null && input.reduction() != null) {
            double former = before.reduction().ratio();
            double now = input.reduction().ratio();
            factors.add(new Factor("ratio", trace.note(RATIO_FACTOR, former / now, former, now), now / former));
        }
        if (before != null && before.packV() != null && input.packV() != null) {
            double factor = trace.note(VOLTAGE_FACTOR, input.packV() / before.packV(), input.packV(), before.packV());
            factors.add(new Factor("voltage", factor, 1));
        }
        if (before != null && before.massKg() != null && input.massKg() != null) {
            double factor = trace.note(MASS_FACTOR, before.massKg() / input.massKg(), before.massKg(), input.massKg());
            factors.add(new Factor("mass", 1, factor));
        }
        return factors.isEmpty() ? null : shares(factors, trace);
    }

    private static Change shares(List<Factor> factors, Trace trace) {
        double speed = 1;
        double force = 1;
        double pull = 1;
        for (Factor factor : factors) {
            speed *= factor.speed();
            pull *= factor.pull();
            force *= factor.name().equals("mass") ? 1 : factor.pull();
        }
        trace.noteTerms(SPEED_FACTOR, speed, terms(factors, true));
        trace.noteTerms(FORCE_FACTOR, force, List.of());
        trace.noteTerms(PULL_FACTOR, pull, terms(factors, false));
        List<Part> parts = new ArrayList<>();
        for (Factor factor : factors) {
            parts.add(new Part(
                    factor.name(),
                    factor.speed(),
                    share(SPEED_SHARE, factor.speed(), speed, trace),
                    factor.pull(),
                    share(PULL_SHARE, factor.pull(), pull, trace)));
        }
        return new Change(speed, force, pull, parts);
    }

    private static List<Trace.Term> terms(List<Factor> factors, boolean speed) {
        return factors.stream()
                .map(one -> new Trace.Term(new Symbol("f, " + one.name(), NONE), speed ? one.speed() : one.pull()))
                .toList();
    }

    /** Null where the whole is one: nothing can be shared out. */
    private static @Nullable Double share(Step step, double factor, double whole, Trace trace) {
        double log = Math.log(whole);
        if (!(Math.abs(log) > 1e-9)) {
            return null;
        }
        // nothing over a whole below 1 would read -0
        double share = factor == 1 ? 0 : Math.log(factor) / log;
        return trace.note(step, share, factor, whole);
    }
}
