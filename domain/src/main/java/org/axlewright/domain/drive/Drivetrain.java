package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.check.Check.within;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * From the pack to the ground: how hard it pulls at a road speed, and what that costs the pack.
 *
 * @param motor most torque by speed and voltage
 * @param law torque for current; null where no pair is known
 * @param windingOhm resistance of the motor; null where it is not known
 * @param ratio turns of the motor for one of the wheel
 * @param rolloutM distance rolled in one turn of the wheel, m
 * @param gearEfficiency from shaft to wheel
 * @param efficiency from pack to wheel, the motor well above standstill
 * @param supply the pack; null where it is not known
 * @param accessoriesW everything else on the pack, W
 * @param largestNm largest torque of the motor; null where nothing tells it
 * @param currentLimitNm torque at the controller's limit on the motor side; null where nothing tells it
 * @param capMPS road speed at which cap or limiter ends the drive; null without
 * @param gripN what the driven tyres pass to the ground, N; null where it is not known
 * @param speedFactor measured over reckoned speed of the motor, 1 without a measurement
 */
record Drivetrain(
        MotorModel motor,
        @Nullable TorqueLaw law,
        @Nullable Double windingOhm,
        double ratio,
        double rolloutM,
        double gearEfficiency,
        double efficiency,
        @Nullable Supply supply,
        double accessoriesW,
        @Nullable Double largestNm,
        @Nullable Double currentLimitNm,
        @Nullable Double capMPS,
        @Nullable Double gripN,
        double speedFactor) {

    private static final int MOST_EVALUATIONS = 300;

    Drivetrain {
        positive(ratio, "ratio");
        positive(rolloutM, "rolloutM");
        within(gearEfficiency, 0, 1, "gearEfficiency");
        within(efficiency, 0, gearEfficiency, "efficiency");
        positive(speedFactor, "speedFactor");
    }

    /**
     * The pull at a road speed.
     *
     * @param torqueNm at the shaft
     * @param forceN at the ground
     * @param packW from the pack, accessories included
     */
    record Pull(double torqueNm, double forceN, double packW, DriveLimit limitedBy) {}

    Drivetrain withGrip(@Nullable Double grip) {
        return new Drivetrain(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                accessoriesW,
                largestNm,
                currentLimitNm,
                capMPS,
                grip,
                speedFactor);
    }

    Drivetrain calibrated(double factor) {
        return new Drivetrain(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                accessoriesW,
                largestNm,
                currentLimitNm,
                capMPS,
                gripN,
                factor);
    }

    Drivetrain withoutCap() {
        return new Drivetrain(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                accessoriesW,
                largestNm,
                currentLimitNm,
                null,
                gripN,
                speedFactor);
    }

    /** Motor speed, rad/s. */
    double omega(double speedMPS) {
        return Gearing.motorSpeedRadPS(speedMPS, rolloutM, ratio);
    }

    double torqueNm(double forceN) {
        return forceN / Gearing.wheelForceN(1, ratio, rolloutM, gearEfficiency);
    }

    /** Whether torque or current bound the pull at standstill. */
    boolean boundAtRest() {
        return motor.boundAtRest() || largestNm != null || currentLimitNm != null;
    }

    /**
     * Power from the pack, W: by the one efficiency, but never less than what the shaft takes and the winding turns to heat, and of a
     * direct-current motor behind a step-down controller no more current than the motor's. Accessories not included.
     */
    double drivePowerW(double torqueNm, double omega) {
        double wheelW = torqueNm * omega * gearEfficiency;
        double byEfficiency = wheelW / efficiency;
        if (law == null || windingOhm == null) {
            return byEfficiency;
        }
        double amperes = law.currentA(torqueNm);
        double byCircuit = stepsDown() && supply != null ? supply.emfV() * amperes : Double.MAX_VALUE;
        return Math.max(Math.min(byEfficiency, byCircuit), torqueNm * omega + amperes * amperes * windingOhm);
    }

    /** A direct-current motor, whose controller can only lower the pack's voltage. */
    boolean stepsDown() {
        return motor instanceof MotorModel.SeriesDc || motor instanceof MotorModel.ConstantField;
    }

    /** The most it pulls at a road speed, m/s, 0 or more. */
    Pull pull(double speedMPS) {
        double omega = omega(speedMPS);
        if (capMPS != null && speedMPS > capMPS) {
            return new Pull(0, 0, accessoriesW, DriveLimit.SPEED_CAP);
        }
        double modelOmega = omega / speedFactor;
        double emf = supply == null ? Double.NaN : supply.emfV();
        double torque = motor.torqueNm(modelOmega, emf);
        DriveLimit limit = motor.limit(modelOmega, emf);
        if (largestNm != null && largestNm < torque) {
            torque = largestNm;
            limit = DriveLimit.MOTOR_TORQUE;
        }
        if (currentLimitNm != null && currentLimitNm < torque) {
            torque = currentLimitNm;
            limit = DriveLimit.MOTOR_CURRENT;
        }
        double perNm = Gearing.wheelForceN(1, ratio, rolloutM, gearEfficiency);
        if (gripN != null && gripN < torque * perNm) {
            torque = gripN / perNm;
            limit = DriveLimit.GRIP;
        }
        if (supply != null && torque > 0) {
            double available = supply.greatestW() - accessoriesW;
            if (!(drivePowerW(torque, omega) <= available)) {
                torque = available <= 0 ? 0 : mostWithin(torque, t -> available - drivePowerW(t, omega));
                limit = DriveLimit.BATTERY_CURRENT;
            }
            if (supply.ohm() > 0 && torque > 0 && sagging(torque, omega, modelOmega, supply) < 0) {
                torque = mostWithin(torque, t -> sagging(t, omega, modelOmega, supply));
                limit = DriveLimit.VOLTAGE;
            }
        }
        return new Pull(torque, torque * perNm, drivePowerW(torque, omega) + accessoriesW, limit);
    }

    /** Torque left at the voltage to which this torque pulls the pack down; falls as the torque rises. */
    private double sagging(double torqueNm, double omega, double modelOmega, Supply pack) {
        double volts = pack.terminalV(drivePowerW(torqueNm, omega) + accessoriesW);
        return Math.min(Double.MAX_VALUE / 4, motor.torqueNm(modelOmega, volts)) - torqueNm;
    }

    /** The largest torque up to {@code most} at which a falling function is not negative; 0 where there is none. */
    private static double mostWithin(double most, UnivariateFunction falling) {
        if (!(falling.value(0) > 0)) {
            return 0;
        }
        return new BracketingNthOrderBrentSolver(1e-13, 1e-13 * most, 0, 5)
                .solve(MOST_EVALUATIONS, falling, 0, most, AllowedSolution.ANY_SIDE);
    }
}
