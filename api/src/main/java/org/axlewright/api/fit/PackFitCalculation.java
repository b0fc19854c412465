package org.axlewright.api.fit;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.fit.PackFitResult.CheckResult;
import org.axlewright.api.fit.PackFitResult.ClassResult;
import org.axlewright.api.fit.PackFitResult.PairResult;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.fit.FitCheck;
import org.axlewright.domain.fit.FitInput;
import org.axlewright.domain.fit.FitPair;
import org.axlewright.domain.fit.FitResult;
import org.axlewright.domain.fit.PackFit;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Fit: pack, controller, motor, charger, converter, contactor and accessories, two by two. */
public final class PackFitCalculation implements Calculation<FitInput, FitResult, PackFitResult> {

    private static final Needs NEEDS = Needs.all(Needs.value("/pack/chemistry"), PackSections.CELLS);

    @Override
    public String name() {
        return "pack-fit";
    }

    @Override
    public String question() {
        return "Do pack, controller, motor, charger, converter and contactor fit each other?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/verdict", "/pairs", "/voltages/full", "/voltages/loaded", "/currents/battery", "/voltageClasses");
    }

    @Override
    public Class<PackFitResult> resultType() {
        return PackFitResult.class;
    }

    @Override
    public FitInput resolve(Setup setup, Resolution resolution) {
        return new PackFitSections(setup, resolution).resolve();
    }

    @Override
    public FitResult calculate(FitInput input, Trace trace) {
        return PackFit.of(input, trace);
    }

    @Override
    public PackFitResult show(FitResult result, UnitSystem units) {
        return new PackFitResult(
                result.verdict(),
                result.pairs().stream().map(pair -> pair(pair, units)).toList(),
                voltages(result.voltages(), units),
                currents(result.currents(), units),
                shown(
                        result.energy(),
                        energy -> new PackFitResult.PackEnergy(
                                units.energy(energy.nominalJ()),
                                units.energy(energy.stringJ()),
                                shown(energy.blockJ(), units::energy))),
                shown(
                        result.mass(),
                        mass -> new PackFitResult.MassBand(
                                shown(mass.massKg(), units::mass),
                                units.mass(mass.leastKg()),
                                units.mass(mass.mostKg()))),
                shown(
                        result.regenerationFade(),
                        fade -> new PackFitResult.Fade(units.voltage(fade.fromV()), units.voltage(fade.toV()))),
                shown(
                        result.tap(),
                        tap -> new PackFitResult.TapResult(
                                units.voltage(tap.fullV()), shown(tap.imbalanceC(), units::charge))),
                result.voltageClasses().stream()
                        .map(one -> new ClassResult(
                                one.limit(),
                                units.voltage(one.limit().limitV()),
                                one.full(),
                                one.nominal(),
                                one.limit().meaning(),
                                one.limit().source().toString()))
                        .toList());
    }

    private static PairResult pair(FitPair pair, UnitSystem units) {
        FitCheck deciding = pair.deciding();
        return new PairResult(
                List.of(pair.one(), pair.other()),
                pair.verdict(),
                deciding.name(),
                value(deciding.actual(), units),
                value(deciding.limit(), units),
                deciding.margin(),
                pair.missing(),
                pair.checks().stream()
                        .map(check -> new CheckResult(
                                check.name(),
                                check.verdict(),
                                value(check.actual(), units),
                                value(check.limit(), units),
                                check.margin(),
                                check.missing()))
                        .toList());
    }

    private static PackFitResult.Voltages voltages(FitResult.Voltages voltages, UnitSystem units) {
        return new PackFitResult.Voltages(
                voltages.cells(),
                units.voltage(voltages.fullV()),
                units.voltage(voltages.nominalV()),
                units.voltage(voltages.cutOffV()),
                units.voltage(voltages.highestV()),
                shown(voltages.restV(), units::voltage),
                shown(voltages.equaliseV(), units::voltage),
                shown(voltages.chargerEndPerCellV(), units::voltage),
                shown(voltages.loadedV(), units::voltage),
                shown(voltages.regeneratingV(), units::voltage));
    }

    private static PackFitResult.Currents currents(FitResult.Currents currents, UnitSystem units) {
        return new PackFitResult.Currents(
                shown(currents.batteryA(), units::current),
                shown(currents.stringA(), units::current),
                shown(currents.motorA(), units::current),
                shown(currents.ratedPowerA(), units::current),
                currents.dischargeRate(),
                shown(currents.continuousLimitA(), units::current),
                shown(currents.peakLimitA(), units::current),
                shown(currents.peakTimeS(), units::eventTime),
                shown(currents.chargeLimitA(), units::current),
                shown(currents.regenerationA(), units::current),
                shown(currents.converterA(), units::current));
    }

    private static @Nullable Object value(@Nullable Measure measure, UnitSystem units) {
        return measure == null ? null : measure.dimension().show(measure.si(), units);
    }

    private static <V, Q> @Nullable Q shown(@Nullable V value, Function<V, Q> unit) {
        return value == null ? null : unit.apply(value);
    }
}
