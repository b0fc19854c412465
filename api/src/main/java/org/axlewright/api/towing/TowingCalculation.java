package org.axlewright.api.towing;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Setup;
import org.axlewright.api.towing.TowingResult.Axles;
import org.axlewright.api.towing.TowingResult.Bound;
import org.axlewright.api.towing.TowingResult.Braking;
import org.axlewright.api.towing.TowingResult.Effort;
import org.axlewright.api.towing.TowingResult.Holding;
import org.axlewright.api.towing.TowingResult.Motor;
import org.axlewright.api.towing.TowingResult.Stop;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.towing.HitchedBraking;
import org.axlewright.domain.towing.MotorLoad;
import org.axlewright.domain.towing.Towing;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Towing: pull, axle loads, grip, motor heat, towed mass, stopping. */
public final class TowingCalculation implements Calculation<Towing.Input, Towing.Result, TowingResult> {

    private static final Needs NEEDS = Needs.value("/trailer/mass");

    @Override
    public String name() {
        return "towing";
    }

    @Override
    public String question() {
        return "What may it tow, how hard does it pull, what does the drawbar do to the front, and does the train stop downhill?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/towedMassLimit",
                "/limitedBy",
                "/level/pull",
                "/grade/pull",
                "/start/pull",
                "/startOnGrade/axles/frontShare",
                "/braking/jackKnifeGrade",
                "/braking/grade/stoppingDistance",
                "/grade/motor/heatRatio");
    }

    @Override
    public Class<TowingResult> resultType() {
        return TowingResult.class;
    }

    @Override
    public Towing.Input resolve(Setup setup, Resolution resolution) {
        return new TowingSections(setup, resolution).resolve();
    }

    @Override
    public Towing.Result calculate(Towing.Input input, Trace trace) {
        return Towing.of(input, trace);
    }

    @Override
    public TowingResult show(Towing.Result result, UnitSystem units) {
        Towing.Bound least = result.least();
        return new TowingResult(
                units.mass(result.towedKg()),
                effort(result.level(), units),
                result.grade() == null ? null : effort(result.grade(), units),
                effort(result.start(), units),
                result.startOnGrade() == null ? null : effort(result.startOnGrade(), units),
                axles(result.standingFrontN(), result.standingFrontShare(), result.standingRearN(), units),
                least == null ? null : units.mass(least.massKg()),
                least == null ? null : least.limit(),
                result.bounds().stream()
                        .map(bound -> new Bound(bound.limit(), units.mass(bound.massKg())))
                        .toList(),
                result.braking() == null ? null : braking(result.braking(), units));
    }

    private static Effort effort(Towing.Effort effort, UnitSystem units) {
        return new Effort(
                units.force(effort.pullN()),
                effort.thrustN() == null ? null : units.force(effort.thrustN()),
                axles(effort.frontN(), effort.frontShare(), effort.rearN(), units),
                effort.gripUse(),
                effort.motor() == null ? null : motor(effort.motor(), units));
    }

    private static @Nullable Axles axles(
            @Nullable Double frontN, @Nullable Double share, @Nullable Double rearN, UnitSystem units) {
        return frontN == null || rearN == null ? null : new Axles(units.load(frontN), share, units.load(rearN));
    }

    private static Motor motor(MotorLoad.Result motor, UnitSystem units) {
        return new Motor(
                units.torque(motor.torqueNm()),
                units.rotation(motor.speed()),
                motor.currentA() == null ? null : units.current(motor.currentA()),
                motor.heatRatio(),
                motor.windingLossW() == null ? null : units.power(motor.windingLossW()),
                motor.timeS() == null ? null : units.time(motor.timeS()));
    }

    private static Braking braking(HitchedBraking.Result braking, UnitSystem units) {
        HitchedBraking.Holding holding = braking.holding();
        return new Braking(
                stop(braking.level(), units),
                braking.downhill() == null ? null : stop(braking.downhill(), units),
                holding == null ? null : new Holding(units.force(holding.hitchPushN()), holding.rearGripUse()),
                braking.jackKnifeRad() == null ? null : units.grade(braking.jackKnifeRad()));
    }

    private static Stop stop(HitchedBraking.Stop stop, UnitSystem units) {
        return new Stop(
                stop.deceleration() == null ? null : units.acceleration(stop.deceleration()),
                stop.stoppingM() == null ? null : units.length(stop.stoppingM()),
                stop.hitchPushN() == null ? null : units.force(stop.hitchPushN()));
    }
}
