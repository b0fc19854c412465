package org.axlewright.domain.towing;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.towing.Towing.Input;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/** Stopping a train, and holding it back downhill: what its trailers push, and what is left of the rear tyres. */
public final class HitchedBraking {

    private static final int STEPS = 200;
    private static final double STEEPEST = Math.PI / 4;
    private static final double LEAST_KG = 1e-3;
    private static final double MOST_KG = 1e6;

    private static final Source MOMENTS = Source.derived(
            "forces along the road on vehicle and trailers, moments about the axles; braked tyres at their grip");

    private static final Step REAR_BRAKED =
            deceleration("b = {K + R + μ·[W·x·c + Z·c·(L + d) + h_h·K]/L}/{m + m_t + μ·(h·m + h_h·m_t)/L} − g·s");
    private static final Step FRONT_BRAKED =
            deceleration("b = {K + R + μ·[W·(L − x)·c − Z·c·d − h_h·K]/L}/{m + m_t − μ·(h·m + h_h·m_t)/L} − g·s");
    private static final Step ALL_BRAKED = deceleration("b = {K + R + μ·(W + Z)·c}/(m + m_t) − g·s");
    private static final Step STOPPING = Step.of(
            "d_b",
            "stopping distance from the moment the brakes hold",
            "d_b = v²/(2·b)",
            LENGTH,
            Source.derived("steady deceleration"),
            new Symbol("v", SPEED),
            new Symbol("b", ACCELERATION));
    private static final Step PUSH = Step.of(
            "H",
            "what the trailers push at the hitch",
            "H = m_t·(b + g·sin φ) − K",
            FORCE,
            MOMENTS,
            new Symbol("m_t", MASS),
            new Symbol("b", ACCELERATION),
            new Symbol("g", ACCELERATION),
            new Symbol("φ", ANGLE),
            new Symbol("K", FORCE));
    private static final Step REAR_USE = Step.of(
            "u_r",
            "what the rear tyres use of their grip while the speed is held",
            "u_r = √(B_r² + [H·sin δ·(L + d)/L]²)/(μ·W_r)",
            NONE,
            Source.derived(
                    "friction circle of the rear tyres; the push across the vehicle at the hitch, moments about the front axle"),
            new Symbol("B_r", FORCE),
            new Symbol("H", FORCE),
            new Symbol("δ", ANGLE),
            new Symbol("L", LENGTH),
            new Symbol("d", LENGTH),
            new Symbol("μ", NONE),
            new Symbol("W_r", LOAD));

    private static final Step JACK_KNIFE = Step.of(
            "φ_j",
            "descent on which the rear tyres hold the train with all their grip",
            "u_r(φ_j) = 1, by bracketing between 0 and 45 degrees",
            ANGLE,
            MOMENTS,
            new Symbol("m_t", MASS),
            new Symbol("μ", NONE),
            new Symbol("δ", ANGLE));
    private static final Step HELD_BACK = Step.of(
            "m_t",
            "towed mass that the rear tyres hold back down the grade with all their grip",
            "u_r(m_t) = 1 at φ, by bracketing",
            MASS,
            MOMENTS,
            new Symbol("φ", ANGLE),
            new Symbol("μ", NONE),
            new Symbol("δ", ANGLE));

    private static Step deceleration(String formula) {
        return Step.of(
                "b",
                "deceleration when the braked tyres are at their grip, downhill by φ; c = cos φ, s = sin φ",
                formula,
                ACCELERATION,
                MOMENTS,
                new Symbol("K", FORCE),
                new Symbol("R", FORCE),
                new Symbol("μ", NONE),
                new Symbol("W", LOAD),
                new Symbol("x", LENGTH),
                new Symbol("Z", LOAD),
                new Symbol("L", LENGTH),
                new Symbol("d", LENGTH),
                new Symbol("h", LENGTH),
                new Symbol("h_h", LENGTH),
                new Symbol("m", MASS),
                new Symbol("m_t", MASS),
                new Symbol("g", ACCELERATION),
                new Symbol("φ", ANGLE));
    }

    private HitchedBraking() {}

    /**
     * A stop.
     *
     * @param deceleration m/s²; 0 or less when the train does not stop; null when an axle would lift first
     * @param stoppingM from the moment the brakes hold; null when it does not stop
     * @param hitchPushN forward on the vehicle; negative when the trailers hold back
     */
    public record Stop(
            @Nullable Double deceleration,
            @Nullable Double stoppingM,
            @Nullable Double hitchPushN) {}

    /**
     * Holding the speed downhill.
     *
     * @param hitchPushN forward on the vehicle
     * @param rearGripUse what the rear tyres use of their grip; null when they carry nothing
     */
    public record Holding(double hitchPushN, @Nullable Double rearGripUse) {}

    /**
     * The answer.
     *
     * @param level a stop on the level
     * @param downhill a stop on the grade; null without one
     * @param holding on the grade; null without one
     * @param jackKnifeRad steepest descent, rad, on which the rear tyres can hold the train back; null when there is none up to 45 degrees
     */
    public record Result(
            Stop level,
            @Nullable Stop downhill,
            @Nullable Holding holding,
            @Nullable Double jackKnifeRad,
            boolean trailerWheelsLock) {}

    /** Null when the braked axles, or the brakes of braked trailers, aren't known. */
    static @Nullable Result of(Input input, Footing footing, Trace trace) {
        AxleSet braked = footing.braked();
        Trailers trailers = input.trailers();
        if (braked == null || input.tug() == null || (trailers.braked() && trailers.brakeForceN() == null)) {
            return null;
        }
        Train train = new Train(input, footing, braked, input.tug().rolling());
        Double grade = input.gradeRad();
        return new Result(
                train.stop(0, input.speedMPS(), trace.of("stopping on the level")),
                grade == null ? null : train.stop(grade, input.speedMPS(), trace.of("stopping downhill")),
                grade == null ? null : train.holding(grade, trace.of("holding downhill")),
                train.jackKnifeRad(trace),
                train.brakesN(0) < train.sentBrakesN());
    }

    /**
     * Towed mass that the rear tyres can just hold back down a grade at steady speed, kg; brakes of the trailers in proportion to their
     * mass. Null when it can't be told, or when there is no such mass.
     */
    static @Nullable Double heldBackKg(Input input, Footing footing, double descentRad, Trace trace) {
        AxleSet braked = footing.braked();
        Trailers trailers = input.trailers();
        if (braked == null || input.tug() == null || (trailers.braked() && trailers.brakeForceN() == null)) {
            return null;
        }
        double rolling = input.tug().rolling();
        UnivariateFunction lacking =
                massKg -> new Train(input.towing(massKg), footing, braked, rolling).shortOfGripN(descentRad);
        if (!(lacking.value(LEAST_KG) < 0)) {
            return 0.0;
        }
        if (!(lacking.value(MOST_KG) > 0)) {
            return null;
        }
        return trace.note(
                HELD_BACK,
                new BracketingNthOrderBrentSolver(1e-12, 1e-9, 5).solve(STEPS, lacking, LEAST_KG, MOST_KG),
                descentRad,
                footing.friction(),
                trailers.hitchAngleRad());
    }

    /** The train on a descent. */
    private record Train(Input input, Footing footing, AxleSet braked, double rolling) {

        private Stance stance() {
            return footing.stance();
        }

        private double mass() {
            return stance().massKg();
        }

        private double towed() {
            return input.trailers().massKg();
        }

        double sentBrakesN() {
            Double sent = input.trailers().brakeForceN();
            return input.trailers().braked() && sent != null ? sent : 0;
        }

        /** What the trailers' wheels press on the ground, N. */
        private double trailersPressN(double descentRad) {
            return (towed() * STANDARD_GRAVITY - footing.drawbar().loadN()) * Math.cos(descentRad);
        }

        /** Brakes of the trailers, at most what their tyres hold, N. */
        double brakesN(double descentRad) {
            return Math.min(sentBrakesN(), footing.friction() * Math.max(0, trailersPressN(descentRad)));
        }

        private double trailersRollN(double descentRad) {
            return input.trailers().rolling() * trailersPressN(descentRad);
        }

        private double ownRollN(double descentRad) {
            return rolling * (mass() * STANDARD_GRAVITY + footing.drawbar().loadN()) * Math.cos(descentRad);
        }

        Stop stop(double descentRad, double speedMPS, Trace trace) {
            double cos = Math.cos(descentRad);
            double downhill = STANDARD_GRAVITY * Math.sin(descentRad);
            double length = stance().wheelbaseM();
            double x = stance().xM();
            double h = stance().heightM();
            double hitch = footing.drawbar().heightM();
            double d = footing.drawbar().overhangM();
            double z = footing.drawbar().loadN();
            double weight = mass() * STANDARD_GRAVITY;
            double held = brakesN(descentRad) + trailersRollN(descentRad);
            double roll = ownRollN(descentRad);
            double mu = footing.friction();
            double transfer = mu * (h * mass() + hitch * towed()) / length;
            double whole = mass() + towed();
            double q = switch (braked) {
                case REAR ->
                    (held + roll + mu * (weight * x * cos + z * cos * (length + d) + hitch * held) / length)
                            / (whole + transfer);
                case FRONT ->
                    transfer < whole
                            ? (held + roll + mu * (weight * (length - x) * cos - z * cos * d - hitch * held) / length)
                                    / (whole - transfer)
                            : Double.POSITIVE_INFINITY;
                case ALL -> (held + roll + mu * (weight + z) * cos) / whole;
            };
            if (!(q <= Double.MAX_VALUE)) {
                return new Stop(null, null, null);
            }
            double b = q - downhill;
            double push = towed() * q - held;
            if (rearN(descentRad, b, push) < 0 || frontN(descentRad, b, push) < 0) {
                return new Stop(null, null, null);
            }
            trace.note(
                    braked == AxleSet.REAR ? REAR_BRAKED : braked == AxleSet.FRONT ? FRONT_BRAKED : ALL_BRAKED,
                    b,
                    held,
                    roll,
                    mu,
                    weight,
                    x,
                    z,
                    length,
                    d,
                    h,
                    hitch,
                    mass(),
                    towed(),
                    STANDARD_GRAVITY,
                    descentRad);
            trace.note(PUSH, push, towed(), b, STANDARD_GRAVITY, descentRad, held);
            double distance = speedMPS * speedMPS / (2 * b);
            boolean stops = b > 0 && distance <= Double.MAX_VALUE;
            return new Stop(b, stops ? (Double) trace.note(STOPPING, distance, speedMPS, b) : null, push);
        }

        private double rearN(double descentRad, double b, double pushN) {
            return Towing.rear(footing, -pushN, -descentRad, -b, Trace.withoutWorking());
        }

        private double frontN(double descentRad, double b, double pushN) {
            return Towing.front(footing, -pushN, -descentRad, -b, Trace.withoutWorking());
        }

        /** What the trailers push while the speed is held: their brakes hold back what they can, and never pull. */
        private double holdingPushN(double descentRad) {
            double along = towed() * STANDARD_GRAVITY * Math.sin(descentRad) - trailersRollN(descentRad);
            return Math.max(0, along - brakesN(descentRad));
        }

        /** Brake force of the rear tyres while the speed is held. */
        private double rearBrakeN(double descentRad, double pushN, double rearN) {
            double needed =
                    Math.max(0, mass() * STANDARD_GRAVITY * Math.sin(descentRad) + pushN - ownRollN(descentRad));
            double whole = rearN + frontN(descentRad, 0, pushN);
            return switch (braked) {
                case FRONT -> 0;
                case REAR -> needed;
                case ALL -> needed * rearN / whole;
            };
        }

        private double acrossN(double pushN) {
            double length = stance().wheelbaseM();
            return pushN
                    * Math.sin(input.trailers().hitchAngleRad())
                    * (length + footing.drawbar().overhangM())
                    / length;
        }

        Holding holding(double descentRad, Trace trace) {
            double push = holdingPushN(descentRad);
            double rear = rearN(descentRad, 0, push);
            double held = footing.friction() * rear;
            if (!(held > 0)) {
                return new Holding(push, null);
            }
            double brake = rearBrakeN(descentRad, push, rear);
            double use = Math.hypot(brake, acrossN(push)) / held;
            if (!(use <= Double.MAX_VALUE)) {
                return new Holding(push, null);
            }
            return new Holding(
                    push,
                    trace.note(
                            REAR_USE,
                            use,
                            brake,
                            push,
                            input.trailers().hitchAngleRad(),
                            stance().wheelbaseM(),
                            footing.drawbar().overhangM(),
                            footing.friction(),
                            rear));
        }

        /** Grip asked of the rear tyres less grip they have, N. */
        private double shortOfGripN(double descentRad) {
            double push = holdingPushN(descentRad);
            double rear = rearN(descentRad, 0, push);
            return Math.hypot(rearBrakeN(descentRad, push, rear), acrossN(push)) - footing.friction() * rear;
        }

        @Nullable
        Double jackKnifeRad(Trace trace) {
            UnivariateFunction lacking = this::shortOfGripN;
            if (!(lacking.value(0) < 0)) {
                return 0.0;
            }
            if (!(lacking.value(STEEPEST) > 0)) {
                return null;
            }
            return trace.note(
                    JACK_KNIFE,
                    new BracketingNthOrderBrentSolver(1e-12, 5).solve(STEPS, lacking, 0, STEEPEST),
                    towed(),
                    footing.friction(),
                    input.trailers().hitchAngleRad());
        }
    }
}
