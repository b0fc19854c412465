package org.axlewright.api.drive;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.drive.DrivePerformanceResult.Climb;
import org.axlewright.api.drive.DrivePerformanceResult.LimitedGrade;
import org.axlewright.api.drive.DrivePerformanceResult.PackLoad;
import org.axlewright.api.drive.DrivePerformanceResult.PullAway;
import org.axlewright.api.drive.DrivePerformanceResult.RouteTorque;
import org.axlewright.api.drive.DrivePerformanceResult.SpeedCalibration;
import org.axlewright.api.drive.DrivePerformanceResult.SteadySpeed;
import org.axlewright.api.drive.DrivePerformanceResult.ThrustPoint;
import org.axlewright.api.drive.DrivePerformanceResult.TimeToSpeed;
import org.axlewright.api.drive.DrivePerformanceResult.TripGrade;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.drive.DrivePerformance;
import org.axlewright.domain.drive.DrivePerformance.GradeLimit;
import org.axlewright.domain.drive.DrivePerformance.Input;
import org.axlewright.domain.drive.DrivePerformance.Result;
import org.axlewright.domain.drive.DrivePerformance.Steady;
import org.axlewright.domain.drive.Launch;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Top speed, climbing and pulling away. */
public final class DrivePerformanceCalculation implements Calculation<Input, Result, DrivePerformanceResult> {

    private static final Needs NEEDS = Needs.all(
            MassSections.MASS_ONLY,
            DrivenWheel.TYRE,
            DrivenWheel.RATIO,
            Needs.one(
                    Needs.value("/drive/motor/power"),
                    Needs.value("/drive/motor/maximumTorque"),
                    Needs.value("/drive/motor/ratedTorque"),
                    Needs.value("/drive/motor/curve")));

    @Override
    public String name() {
        return "drive-performance";
    }

    @Override
    public String question() {
        return "How fast will it go, what will it climb, and how does it pull away?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/topSpeed/speed",
                "/topSpeed/limitedBy",
                "/startGrade/grade",
                "/sustainedGrade",
                "/launch/acceleration",
                "/toSpeed/time",
                "/greatestPackCurrent");
    }

    @Override
    public Class<DrivePerformanceResult> resultType() {
        return DrivePerformanceResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        return new DriveSections(setup, resolution).resolve();
    }

    @Override
    public Result calculate(Input input, Trace trace) {
        return DrivePerformance.of(input, trace);
    }

    @Override
    public DrivePerformanceResult show(Result result, UnitSystem units) {
        DrivePerformance.PullAway away = result.pullAway();
        DrivePerformance.Trip trip = result.trip();
        DrivePerformance.Calibration calibration = result.calibration();
        return new DrivePerformanceResult(
                steady(result.top(), units),
                result.levelPackW() == null
                        ? null
                        : new PackLoad(
                                units.power(result.levelPackW()),
                                shown(result.levelPackA(), units::current),
                                shown(result.levelPackV(), units::voltage)),
                shown(result.idealMPS(), units::speed),
                shown(result.powerLimitedMPS(), units::speed),
                result.fittingRatio(),
                grade(result.startGrade(), units),
                grade(result.stallGrade(), units),
                shown(result.sustainedGradeRad(), units::grade),
                shown(result.gripGradeRad(), units::grade),
                shown(result.gripForceN(), units::force),
                away == null
                        ? null
                        : new PullAway(
                                units.force(away.forceN()),
                                units.torque(away.motorTorqueNm()),
                                units.torque(away.wheelTorqueNm()),
                                units.acceleration(away.acceleration()),
                                away.limitedBy(),
                                shown(away.frontLoadN(), units::load),
                                away.frontShare()),
                toSpeed(result.launch(), units),
                trip == null
                        ? null
                        : new TripGrade(
                                units.grade(trip.gradeRad()),
                                units.speed(trip.speedMPS()),
                                units.current(trip.currentA())),
                shown(result.greatestPackA(), units::current),
                result.climbs().stream().map(climb -> climb(climb, units)).toList(),
                result.rmsTorqueNm() == null
                        ? null
                        : new RouteTorque(units.torque(result.rmsTorqueNm()), result.rmsShare()),
                result.model(),
                calibration == null
                        ? null
                        : new SpeedCalibration(
                                units.speed(calibration.measuredMPS()),
                                units.speed(calibration.reckonedMPS()),
                                calibration.what(),
                                calibration.factor()),
                result.curve().stream().map(point -> point(point, units)).toList());
    }

    private static @Nullable SteadySpeed steady(@Nullable Steady steady, UnitSystem units) {
        return steady == null
                ? null
                : new SteadySpeed(
                        units.speed(steady.speedMPS()), units.rotation(steady.motorRadPS()), steady.limitedBy());
    }

    private static @Nullable LimitedGrade grade(@Nullable GradeLimit limit, UnitSystem units) {
        return limit == null ? null : new LimitedGrade(units.grade(limit.gradeRad()), limit.limitedBy());
    }

    private static @Nullable TimeToSpeed toSpeed(@Nullable Launch launch, UnitSystem units) {
        return launch == null
                ? null
                : new TimeToSpeed(
                        units.eventTime(launch.timeS()),
                        units.distance(launch.distanceM()),
                        units.energy(launch.packJ()),
                        units.energy(launch.kineticJ()),
                        units.energy(launch.rollingJ()),
                        units.energy(launch.dragJ()),
                        units.energy(launch.lossJ()),
                        units.energy(launch.accessoriesJ()));
    }

    private static Climb climb(DrivePerformance.Climb climb, UnitSystem units) {
        return new Climb(
                climb.stretch().pointer(),
                climb.stretch().reference(),
                climb.possible(),
                units.grade(climb.stretch().gradeRad()),
                units.speed(climb.speedMPS()),
                steady(climb.reachable(), units),
                units.force(climb.forceN()),
                units.torque(climb.wheelTorqueNm()),
                units.torque(climb.torqueNm()),
                climb.ratedShare(),
                units.rotation(climb.motorRadPS()),
                units.power(climb.wheelW()),
                units.shaftPower(climb.shaftW()),
                units.power(climb.packW()),
                shown(climb.packA(), units::current),
                shown(climb.packV(), units::voltage),
                shown(climb.motorA(), units::current),
                climb.limitedBy(),
                climb.nearStall(),
                shown(climb.frontLoadN(), units::load));
    }

    private static ThrustPoint point(DrivePerformance.CurvePoint point, UnitSystem units) {
        return new ThrustPoint(
                units.speed(point.speedMPS()),
                units.rotation(point.motorRadPS()),
                units.torque(point.torqueNm()),
                units.torque(point.wheelTorqueNm()),
                units.force(point.forceN()),
                units.force(point.resistanceN()),
                units.power(point.packW()),
                shown(point.packA(), units::current),
                shown(point.motorA(), units::current),
                point.limitedBy());
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, Function<Double, Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
