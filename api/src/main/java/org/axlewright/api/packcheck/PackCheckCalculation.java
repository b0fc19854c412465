package org.axlewright.api.packcheck;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.packcheck.PackCheckResult.BlockResult;
import org.axlewright.api.packcheck.PackCheckResult.ChargeState;
import org.axlewright.api.packcheck.PackCheckResult.CheckedCapacity;
import org.axlewright.api.packcheck.PackCheckResult.CheckedResistance;
import org.axlewright.api.packcheck.PackCheckResult.Next;
import org.axlewright.api.packcheck.PackCheckResult.Spread;
import org.axlewright.api.packcheck.PackCheckResult.Use;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.packcheck.PackCheck;
import org.axlewright.domain.packcheck.ReadingsInput;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Pack check: from meter readings to charge, resistance, the odd block, capacity left, and what to measure next. */
public final class PackCheckCalculation
        implements Calculation<ReadingsInput, org.axlewright.domain.packcheck.PackCheckResult, PackCheckResult> {

    private static final Needs NEEDS = Needs.all(
            Needs.value("/pack/chemistry"),
            Needs.one(
                    Needs.all(PackSections.CELLS, Needs.value("/readings/packRestVoltage")),
                    Needs.all(PackSections.CELLS, Needs.value("/readings/blocks")),
                    Needs.all(PackSections.CELLS, Needs.value("/readings/packLoadVoltage")),
                    Needs.all(PackSections.CELLS, Needs.value("/readings/clampCurrent")),
                    Needs.all("/readings/dischargeCurrent", "/readings/timeToCutOff")));

    @Override
    public String name() {
        return "pack-check";
    }

    @Override
    public String question() {
        return "What do my meter readings say about this pack, and what should I measure next?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/capacity/share", "/stateOfCharge", "/blocks", "/resistance/pack", "/spread", "/next");
    }

    @Override
    public Class<PackCheckResult> resultType() {
        return PackCheckResult.class;
    }

    @Override
    public ReadingsInput resolve(Setup setup, Resolution resolution) {
        return new PackCheckSections(setup, resolution).resolve();
    }

    @Override
    public org.axlewright.domain.packcheck.PackCheckResult calculate(ReadingsInput input, Trace trace) {
        return PackCheck.of(input, trace);
    }

    @Override
    public PackCheckResult show(org.axlewright.domain.packcheck.PackCheckResult result, UnitSystem units) {
        return new PackCheckResult(
                new Next(result.next(), result.next().pointer(), result.next().reason()),
                shown(
                        result.stateOfCharge(),
                        told -> new ChargeState(
                                told.value(),
                                told.least(),
                                told.most(),
                                told.source().toString())),
                shown(
                        result.capacity(),
                        capacity -> new CheckedCapacity(
                                units.charge(capacity.deliveredC()),
                                shown(capacity.expectedC(), units::charge),
                                capacity.share(),
                                shown(capacity.ratedC(), units::charge))),
                shown(result.chargeLeftC(), units::charge),
                shown(
                        result.resistance(),
                        resistance -> new CheckedResistance(
                                shown(resistance.packOhm(), units::resistance),
                                shown(resistance.blockOhm(), units::resistance),
                                shown(resistance.connectionsOhm(), units::resistance))),
                shown(
                        result.spread(),
                        spread -> new Spread(
                                shown(spread.restV(), units::voltage),
                                shown(spread.loadV(), units::voltage),
                                spread.resistanceShare())),
                result.blocks().stream()
                        .map(block -> new BlockResult(
                                block.block().pointer(),
                                block.block().reference(),
                                block.state(),
                                shown(block.resistanceOhm(), units::resistance),
                                block.stateOfCharge()))
                        .toList(),
                shown(result.volts().sumV(), units::voltage),
                shown(result.volts().restCellV(), units::voltage),
                shown(result.volts().loadCellV(), units::voltage),
                shown(
                        result.use(),
                        use -> new Use(
                                units.current(use.currentA()),
                                shown(use.voltageV(), units::voltage),
                                use.rate(),
                                shown(use.consumptionJPerM(), units::consumption),
                                shown(use.timeLeftS(), units::time),
                                shown(use.distanceLeftM(), units::distance))));
    }

    private static <V, Q> @Nullable Q shown(@Nullable V value, Function<V, Q> unit) {
        return value == null ? null : unit.apply(value);
    }
}
