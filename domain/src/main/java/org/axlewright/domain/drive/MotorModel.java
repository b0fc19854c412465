package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The most torque a motor gives at full throttle, by its speed and the voltage it gets. Never rises with falling voltage. */
public sealed interface MotorModel {

    /**
     * Most torque at the shaft, N m.
     *
     * @param omega speed, rad/s, 0 or more
     * @param volts at the controller, V; NaN where the pack is not known: then as at the stated voltage
     */
    double torqueNm(double omega, double volts);

    /** What holds the torque down there. */
    DriveLimit limit(double omega, double volts);

    /** Highest speed at which the motor gives any torque, rad/s; infinite where the model has none. */
    double ceilingRadPS(double volts);

    /** Whether anything bounds the torque at standstill: power alone does not. */
    default boolean boundAtRest() {
        return true;
    }

    /** Name in answers. */
    String token();

    /** Voltage over stated voltage, 1 where one is not known. */
    private static double scale(double volts, @Nullable Double statedV) {
        return statedV == null || Double.isNaN(volts) ? 1 : volts / statedV;
    }

    /** One point of a maker's curve, rad/s and N m. */
    record Point(double omega, double torqueNm) {}

    /**
     * A maker's curve at full throttle, straight between its points, level before the first, nothing beyond the last. Another voltage
     * stretches its speeds.
     *
     * @param points by rising speed, two or more
     */
    record Curve(List<Point> points, @Nullable Double statedV) implements MotorModel {

        @Override
        public double torqueNm(double omega, double volts) {
            double scale = scale(volts, statedV);
            if (!(scale > 0)) {
                return 0;
            }
            double at = omega / scale;
            Point before = points.get(0);
            if (at <= before.omega()) {
                return before.torqueNm();
            }
            for (Point next : points) {
                if (at <= next.omega()) {
                    double width = next.omega() - before.omega();
                    return width == 0
                            ? next.torqueNm()
                            : before.torqueNm() + (next.torqueNm() - before.torqueNm()) * (at - before.omega()) / width;
                }
                before = next;
            }
            return 0;
        }

        @Override
        public DriveLimit limit(double omega, double volts) {
            double flat = 0.98 * points.get(0).torqueNm();
            return torqueNm(omega, volts) >= flat ? DriveLimit.MOTOR_TORQUE : DriveLimit.VOLTAGE;
        }

        @Override
        public double ceilingRadPS(double volts) {
            return points.get(points.size() - 1).omega() * scale(volts, statedV);
        }

        @Override
        public String token() {
            return "curve";
        }
    }

    /**
     * A series motor by direct-current circuit: U = E + I·R with E = ω·T(I)/I.
     *
     * @param law torque for current
     * @param ohm resistance between its terminals
     * @param statedV used where the pack is not known
     */
    record SeriesDc(TorqueLaw law, double ohm, @Nullable Double statedV) implements MotorModel {
        public SeriesDc {
            positive(ohm, "ohm");
        }

        @Override
        public double torqueNm(double omega, double volts) {
            return law.torqueNm(currentA(omega, volts));
        }

        /** Current at full throttle, A. */
        double currentA(double omega, double volts) {
            double u = Double.isNaN(volts) && statedV != null ? statedV : volts;
            double slope = law.torqueNm() / (law.currentA() * law.currentA());
            double unsaturated = u / (slope * omega + ohm);
            if (unsaturated <= law.currentA()) {
                return Math.max(0, unsaturated);
            }
            return (u - law.torqueNm() / law.currentA() * omega) / ohm;
        }

        @Override
        public DriveLimit limit(double omega, double volts) {
            return DriveLimit.VOLTAGE;
        }

        @Override
        public double ceilingRadPS(double volts) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public String token() {
            return "series-dc";
        }
    }

    /**
     * A motor with a constant field by direct-current circuit: U = k·ω + I·R, T = k·I.
     *
     * @param law torque for current, proportional
     * @param ohm resistance between its terminals
     * @param statedV used where the pack is not known
     */
    record ConstantField(
            TorqueLaw law, double ohm, @Nullable Double statedV) implements MotorModel {
        public ConstantField {
            positive(ohm, "ohm");
        }

        @Override
        public double torqueNm(double omega, double volts) {
            double u = Double.isNaN(volts) && statedV != null ? statedV : volts;
            double k = law.torqueNm() / law.currentA();
            return Math.max(0, k * (u - k * omega) / ohm);
        }

        @Override
        public DriveLimit limit(double omega, double volts) {
            return DriveLimit.VOLTAGE;
        }

        @Override
        public double ceilingRadPS(double volts) {
            double u = Double.isNaN(volts) && statedV != null ? statedV : volts;
            return u * law.currentA() / law.torqueNm();
        }

        @Override
        public String token() {
            return "constant-field-dc";
        }
    }

    /**
     * What a plate tells: constant torque up to the speed where the power is reached, constant power from there to the highest speed.
     *
     * @param mostNm largest torque; null when nothing tells it
     * @param powerW shaft power; null when nothing tells it
     * @param highestRadPS highest speed; null when nothing tells it
     * @param field whether the highest speed is one of the rotor, whatever the voltage
     * @param statedV voltage at which speed and power hold
     */
    record Plate(
            @Nullable Double mostNm,
            @Nullable Double powerW,
            @Nullable Double highestRadPS,
            boolean field,
            @Nullable Double statedV)
            implements MotorModel {
        public Plate {
            notNegative(mostNm == null ? 0 : mostNm, "mostNm");
            notNegative(powerW == null ? 0 : powerW, "powerW");
        }

        @Override
        public double torqueNm(double omega, double volts) {
            if (omega > ceilingRadPS(volts)) {
                return 0;
            }
            double byTorque = mostNm == null ? Double.MAX_VALUE : mostNm;
            return Math.min(byTorque, byPower(omega, volts));
        }

        private double byPower(double omega, double volts) {
            return powerW == null ? Double.MAX_VALUE : powerW * scale(volts, statedV) / Math.max(omega, 1e-6);
        }

        @Override
        public DriveLimit limit(double omega, double volts) {
            if (omega > ceilingRadPS(volts)) {
                return DriveLimit.VOLTAGE;
            }
            return mostNm != null && mostNm <= byPower(omega, volts) ? DriveLimit.MOTOR_TORQUE : DriveLimit.POWER;
        }

        @Override
        public double ceilingRadPS(double volts) {
            if (highestRadPS == null) {
                return Double.POSITIVE_INFINITY;
            }
            return field ? highestRadPS : highestRadPS * scale(volts, statedV);
        }

        @Override
        public boolean boundAtRest() {
            return mostNm != null;
        }

        @Override
        public String token() {
            return "plate";
        }
    }
}
