package org.axlewright.api.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.energy.PackRangeResult.EnergySplit;
import org.axlewright.api.energy.PackRangeResult.LegResult;
import org.axlewright.api.energy.PackRangeResult.Life;
import org.axlewright.api.energy.PackRangeResult.LifePoint;
import org.axlewright.api.energy.PackRangeResult.RangeBand;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.energy.LegDemand;
import org.axlewright.domain.energy.PackRange;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Energy, range and running time of a pack. */
public final class PackRangeCalculation implements Calculation<PackRange.Input, PackRange.Result, PackRangeResult> {

    private static final Needs NEEDS = Needs.all(
            Needs.value("/pack/chemistry"),
            PackSections.CAPACITY,
            Needs.one(PackSections.CELLS, Needs.value("/load/current")),
            Needs.completed("/load/power", PackSections.CELLS),
            Needs.completed(
                    "/route",
                    Needs.all(
                            PackSections.CELLS,
                            MassSections.MASS_ONLY,
                            Needs.each("/route", Needs.all("/route/0/distance", "/route/0/speed")))));

    @Override
    public String name() {
        return "pack-range";
    }

    @Override
    public String question() {
        return "How much energy is really in the pack, and how far and how long does it last on this route or load?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/range", "/runtime", "/usableEnergy", "/consumption", "/averageCurrent", "/peakCurrent");
    }

    @Override
    public Class<PackRangeResult> resultType() {
        return PackRangeResult.class;
    }

    @Override
    public PackRange.Input resolve(Setup setup, Resolution resolution) {
        return new PackRangeSections(setup, resolution).resolve();
    }

    @Override
    public PackRange.Result calculate(PackRange.Input input, Trace trace) {
        return PackRange.of(input, trace);
    }

    @Override
    public PackRangeResult show(PackRange.Result result, UnitSystem units) {
        PackVoltages voltages = result.voltages();
        List<LegResult> legs = new ArrayList<>();
        for (int i = 0; i < result.legs().size(); i++) {
            legs.add(leg(i, result.legs().get(i), units));
        }
        return new PackRangeResult(
                shown(result.rangeM(), units::distance),
                result.rangeLeastM() == null && result.rangeMostM() == null
                        ? null
                        : new RangeBand(
                                shown(result.rangeLeastM(), units::distance),
                                shown(result.rangeMostM(), units::distance)),
                shown(result.runtimeS(), units::time),
                shown(result.usableEnergyJ(), units::energy),
                shown(result.consumptionJPerM(), units::consumption),
                voltages == null ? null : units.voltage(voltages.nominalV()),
                voltages == null ? null : units.voltage(voltages.fullV()),
                voltages == null ? null : shown(voltages.restV(), units::voltage),
                voltages == null ? null : units.voltage(voltages.cutOffV()),
                shown(result.nominalEnergyJ(), units::energy),
                shown(result.averagePowerW(), units::power),
                shown(result.averageCurrentA(), units::current),
                result.dischargeRate(),
                shown(result.peakPowerW(), units::power),
                shown(result.peakCurrentA(), units::current),
                shown(result.peakVoltageV(), units::voltage),
                result.peakLeg() == null ? null : "/route/" + result.peakLeg(),
                units.charge(result.deliveredChargeC()),
                legs,
                new Life(
                        lifePoint(result.life().whenNew(), units),
                        lifePoint(result.life().endOfLife(), units)));
    }

    private static LifePoint lifePoint(PackRange.LifePoint point, UnitSystem units) {
        return new LifePoint(
                point.health(),
                shown(point.usableEnergyJ(), units::energy),
                shown(point.rangeM(), units::distance),
                shown(point.runtimeS(), units::time));
    }

    private static LegResult leg(int index, LegDemand demand, UnitSystem units) {
        boolean within = demand.withinPack();
        LegDemand.Split split = demand.split();
        return new LegResult(
                "/route/" + index,
                demand.leg().reference(),
                units.distance(demand.leg().distanceM()),
                units.time(demand.durationS()),
                units.force(demand.wheelForceN()),
                units.power(demand.powerW()),
                within ? units.current(demand.currentA()) : null,
                units.power(demand.drivingPowerW()),
                within ? units.current(demand.drivingCurrentA()) : null,
                units.energy(demand.energyJ()),
                new EnergySplit(
                        units.energy(split.rollingJ()),
                        units.energy(split.climbJ()),
                        units.energy(split.dragJ()),
                        units.energy(split.stopsJ()),
                        units.energy(split.brakingJ()),
                        units.energy(split.driveLossJ()),
                        units.energy(split.accessoriesJ())));
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, Function<Double, Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
