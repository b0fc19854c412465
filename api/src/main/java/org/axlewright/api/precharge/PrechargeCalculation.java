package org.axlewright.api.precharge;

import java.util.List;
import java.util.function.DoubleFunction;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.precharge.PrechargeResult.CoilOff;
import org.axlewright.api.precharge.PrechargeResult.Held;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.precharge.PrechargeInput;
import org.axlewright.domain.precharge.PrechargeSizing;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Precharge: from capacitance and full-charge voltage to a resistor, its heat, and the contactor's coil. */
public final class PrechargeCalculation
        implements Calculation<PrechargeInput, PrechargeSizing.Result, PrechargeResult> {

    private static final Needs NEEDS = Needs.all(
            Needs.value("/pack/chemistry"),
            PackSections.CELLS,
            Needs.one(
                    Needs.value("/precharge/capacitance"),
                    Needs.value("/drive/controller/capacitance"),
                    Needs.all("/precharge/measured/resistance", "/precharge/measured/time"),
                    Needs.value("/precharge/resistor/resistance"),
                    Needs.all("/precharge/coil/inductance", "/precharge/coil/current"),
                    Needs.all(
                            "/precharge/coil/inductance",
                            "/precharge/coil/resistance",
                            "/precharge/coil/supplyVoltage")));

    @Override
    public String name() {
        return "precharge";
    }

    @Override
    public String question() {
        return "Which precharge resistor, how long does it take, and what does it stand?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/suggestedResistance",
                "/suggestedPowerRating",
                "/timeToClosing",
                "/peakCurrent",
                "/pulseEnergy",
                "/holdPower",
                "/voltageLeft");
    }

    @Override
    public Class<PrechargeResult> resultType() {
        return PrechargeResult.class;
    }

    @Override
    public PrechargeInput resolve(Setup setup, Resolution resolution) {
        return PrechargeSections.resolve(setup, resolution);
    }

    @Override
    public PrechargeSizing.Result calculate(PrechargeInput input, Trace trace) {
        return PrechargeSizing.of(input, trace);
    }

    @Override
    public PrechargeResult show(PrechargeSizing.Result result, UnitSystem units) {
        return new PrechargeResult(
                shown(result.range().suggestedOhm(), units::resistance),
                shown(result.range().suggestedW(), units::power),
                shown(result.range().leastOhm(), units::resistance),
                shown(result.range().mostOhm(), units::resistance),
                shown(result.resistanceOhm(), units::resistance),
                units.voltage(result.fullV()),
                shown(result.capacitanceF(), units::capacitance),
                shown(result.timeConstantS(), units::eventTime),
                shown(result.to95S(), units::eventTime),
                shown(result.to99S(), units::eventTime),
                shown(result.toClosingS(), units::eventTime),
                shown(result.timeoutS(), units::eventTime),
                shown(result.leftV(), units::voltage),
                shown(result.peakA(), units::current),
                shown(result.peakW(), units::power),
                shown(result.pulseJ(), units::energy),
                shown(result.peakW(), units::power),
                shown(result.heldJ(), units::energy),
                shown(result.meanW(), units::power),
                shown(result.lastingA(), units::current),
                held(result.held(), units),
                coil(result.coil(), units));
    }

    private static @Nullable Held held(PrechargeSizing.@Nullable HeldBus held, UnitSystem units) {
        return held == null ? null : new Held(units.voltage(held.busV()), held.share(), units.power(held.powerW()));
    }

    private static @Nullable CoilOff coil(PrechargeSizing.@Nullable CoilOff coil, UnitSystem units) {
        return coil == null
                ? null
                : new CoilOff(
                        units.current(coil.currentA()),
                        units.energy(coil.energyJ()),
                        shown(coil.peakV(), units::voltage),
                        shown(coil.releaseS(), units::eventTime));
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, DoubleFunction<Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
