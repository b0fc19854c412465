package org.axlewright.api.braking;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.braking.BrakingResult.AtSpeedResult;
import org.axlewright.api.braking.BrakingResult.AxleStopResult;
import org.axlewright.api.braking.BrakingResult.CalibrationResult;
import org.axlewright.api.braking.BrakingResult.CostResult;
import org.axlewright.api.braking.BrakingResult.Empty;
import org.axlewright.api.braking.BrakingResult.HoldResult;
import org.axlewright.api.braking.BrakingResult.MotorBrakeResult;
import org.axlewright.api.braking.BrakingResult.RampResult;
import org.axlewright.api.braking.BrakingResult.RegenerationResult;
import org.axlewright.api.braking.BrakingResult.RetarderResult;
import org.axlewright.api.braking.BrakingResult.StopResult;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.braking.Braking;
import org.axlewright.domain.braking.Braking.Holds;
import org.axlewright.domain.braking.Braking.OfState;
import org.axlewright.domain.braking.Braking.Retarders;
import org.axlewright.domain.braking.Hold;
import org.axlewright.domain.braking.MeasuredStop.Calibration;
import org.axlewright.domain.braking.Retarder;
import org.axlewright.domain.braking.Stop;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Stopping and holding. */
public final class BrakingCalculation implements Calculation<Braking.Input, Braking.Result, BrakingResult> {

    private static final Needs NEEDS = Needs.all(
            MassSections.MASS_ONLY,
            Needs.value("/chassis/braked"),
            Needs.completed(
                    "/brakes/measuredStop", Needs.all("/brakes/measuredStop/speed", "/brakes/measuredStop/distance")));

    @Override
    public String name() {
        return "braking";
    }

    @Override
    public String question() {
        return "Will it stop, how hot do the brakes get, and does it stay on the ramp, nose up and nose down?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/level/totalDistance",
                "/onGrade/totalDistance",
                "/level/deceleration",
                "/parking/noseUp/grade",
                "/parking/noseDown/grade",
                "/level/firstToLock");
    }

    @Override
    public Class<BrakingResult> resultType() {
        return BrakingResult.class;
    }

    @Override
    public Braking.Input resolve(Setup setup, Resolution resolution) {
        return new BrakingSections(setup, resolution).resolve();
    }

    @Override
    public Braking.Result calculate(Braking.Input input, Trace trace) {
        return Braking.of(input, trace);
    }

    @Override
    public BrakingResult show(Braking.Result result, UnitSystem units) {
        OfState occupied = result.occupied();
        OfState empty = result.empty();
        return new BrakingResult(
                units.mass(occupied.massKg()),
                shown(result.reactionM(), units::length),
                stop(occupied.level(), units),
                stop(occupied.grade(), units),
                stop(occupied.opposite(), units),
                holds(occupied.parking(), units),
                motorBrake(occupied, units),
                regeneration(occupied, units),
                result.costs().stream()
                        .map(cost -> new CostResult(
                                cost.change(),
                                units.length(cost.withoutM()),
                                units.length(cost.withM()),
                                cost.factor()))
                        .toList(),
                result.bySpeed().stream()
                        .map(row -> new AtSpeedResult(
                                units.speed(row.speedMPS()),
                                units.length(row.reactionM()),
                                units.length(row.levelM()),
                                shown(row.gradeM(), units::length)))
                        .toList(),
                calibration(result.calibration(), units),
                empty == null
                        ? null
                        : new Empty(
                                units.mass(empty.massKg()),
                                stop(empty.level(), units),
                                stop(empty.grade(), units),
                                stop(empty.opposite(), units),
                                holds(empty.parking(), units),
                                motorBrake(empty, units),
                                regeneration(empty, units)));
    }

    private static @Nullable StopResult stop(@Nullable Stop stop, UnitSystem units) {
        if (stop == null) {
            return null;
        }
        return new StopResult(
                shown(stop.totalDistanceM(), units::length),
                shown(stop.brakingDistanceM(), units::length),
                shown(stop.brakingTimeS(), units::eventTime),
                units.acceleration(stop.decelerationMPS2()),
                units.force(stop.forceN()),
                stop.firstToLock(),
                shown(stop.decelerationUnlockedMPS2(), units::acceleration),
                axle(stop.front(), units),
                axle(stop.rear(), units),
                shown(stop.heatJ(), units::energy));
    }

    private static @Nullable AxleStopResult axle(Stop.@Nullable AxleStop axle, UnitSystem units) {
        return axle == null
                ? null
                : new AxleStopResult(
                        units.load(axle.loadN()),
                        units.force(axle.forceN()),
                        axle.limit(),
                        shown(axle.heatJ(), units::energy),
                        shown(axle.riseK(), units::temperatureDifference));
    }

    private static @Nullable HoldResult holds(@Nullable Holds holds, UnitSystem units) {
        return holds == null ? null : new HoldResult(ramp(holds.noseUp(), units), ramp(holds.noseDown(), units));
    }

    private static RampResult ramp(Hold hold, UnitSystem units) {
        return new RampResult(units.grade(hold.gradeRad()), hold.limit());
    }

    private static @Nullable MotorBrakeResult motorBrake(OfState state, UnitSystem units) {
        Retarders brake = state.motorBrake();
        return brake == null
                ? null
                : new MotorBrakeResult(
                        retarder(brake.level(), units),
                        brake.downhill() == null ? null : retarder(brake.downhill(), units),
                        holds(state.motorBrakeHolds(), units));
    }

    private static @Nullable RegenerationResult regeneration(OfState state, UnitSystem units) {
        Retarders regeneration = state.regeneration();
        return regeneration == null
                ? null
                : new RegenerationResult(
                        retarder(regeneration.level(), units),
                        regeneration.downhill() == null ? null : retarder(regeneration.downhill(), units));
    }

    private static RetarderResult retarder(Retarder retarder, UnitSystem units) {
        return new RetarderResult(
                units.force(retarder.forceN()),
                units.force(retarder.wantedN()),
                retarder.limit(),
                shown(retarder.gripN(), units::force),
                retarder.frictionNeeded(),
                units.acceleration(retarder.decelerationMPS2()),
                shown(retarder.distanceM(), units::length));
    }

    private static @Nullable CalibrationResult calibration(@Nullable Calibration calibration, UnitSystem units) {
        return calibration == null
                ? null
                : new CalibrationResult(
                        units.acceleration(calibration.decelerationMPS2()),
                        units.force(calibration.forceN()),
                        units.force(calibration.forceNowN()),
                        calibration.frictionAtLeast(),
                        calibration.limit());
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, Function<Double, Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
