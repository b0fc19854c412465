package org.axlewright.domain.drive;

import java.util.List;
import org.axlewright.domain.drive.DrivePerformance.Duty;
import org.axlewright.domain.drive.DrivePerformance.Input;
import org.axlewright.domain.drive.DrivePerformance.PackLimits;
import org.axlewright.domain.drive.DrivePerformance.Stretch;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.motor.DutyType;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Drives for tests: a plain one, changed one thing at a time. */
record Drives(
        MotorModel motor,
        @Nullable TorqueLaw law,
        @Nullable Double windingOhm,
        double ratio,
        double rolloutM,
        double gearEfficiency,
        double efficiency,
        @Nullable Supply supply,
        @Nullable Double motorLimitA,
        @Nullable Double capMPS,
        Road road,
        List<Stretch> stretches,
        @Nullable Double targetMPS,
        @Nullable Double measuredMPS) {

    /** 3 kW, at most 40 N m, 3000 rpm; 600 kg; no pack. */
    static Drives plain() {
        return new Drives(
                new MotorModel.Plate(40.0, 3000.0, 314.0, false, null),
                null,
                null,
                12,
                1.4,
                0.9,
                0.7,
                null,
                null,
                null,
                new Road(600, 0.05, 0.02, 1.4, 1),
                List.of(),
                null,
                null);
    }

    Drives motor(MotorModel other) {
        return new Drives(
                other,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives circuit(TorqueLaw other, double ohm) {
        return new Drives(
                motor,
                other,
                ohm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives geared(double otherRatio, double otherRolloutM) {
        return new Drives(
                motor,
                law,
                windingOhm,
                otherRatio,
                otherRolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives losses(double gear, double whole) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gear,
                whole,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives supply(Supply other) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                other,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives motorLimit(double amperes) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                amperes,
                capMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives cap(double speedMPS) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                speedMPS,
                road,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives road(Road other) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                other,
                stretches,
                targetMPS,
                measuredMPS);
    }

    Drives stretch(double gradeRad, @Nullable Double speedMPS) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                List.of(new Stretch(
                        "/ground/grade", null, gradeRad, false, road.rollingResistance(), speedMPS, null, 0)),
                targetMPS,
                measuredMPS);
    }

    Drives target(double speedMPS) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                speedMPS,
                measuredMPS);
    }

    Drives measured(double speedMPS) {
        return new Drives(
                motor,
                law,
                windingOhm,
                ratio,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                motorLimitA,
                capMPS,
                road,
                stretches,
                targetMPS,
                speedMPS);
    }

    Input input() {
        return new Input(
                motor,
                law,
                windingOhm,
                new Reduction(ratio, null),
                new Wheel("/tyres/rear", rolloutM, true, null, null),
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                0,
                null,
                motorLimitA,
                capMPS,
                null,
                null,
                null,
                false,
                null,
                road,
                new Duty(10.0, DutyType.S1, null),
                new PackLimits(null, null, null),
                null,
                stretches,
                targetMPS,
                measuredMPS,
                List.of());
    }

    DrivePerformance.Result ask() {
        return DrivePerformance.of(input(), Trace.withoutWorking());
    }

    Trace trace() {
        Trace trace = Trace.withWorking();
        DrivePerformance.of(input(), trace);
        return trace;
    }
}
