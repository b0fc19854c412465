package org.axlewright.api.repack;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.repack.PackWeightChangeResult.PackState;
import org.axlewright.api.repack.PackWeightChangeResult.RangeChange;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.energy.PackRange;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.repack.PackWeightChange;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Another pack in the same vehicle: mass, axle loads, braking, acceleration, climb and range side by side. */
public final class PackWeightChangeCalculation
        implements Calculation<
                PackWeightChangeCalculation.Question, PackWeightChangeCalculation.Found, PackWeightChangeResult> {

    private static final Needs NEEDS = Needs.all(
            Needs.value("/chassis/wheelbase"),
            MassSections.POSITION_IN_PLAN,
            Needs.all("/pack/mass", "/pack/position/x", "/formerPack/mass", "/formerPack/position/x"));

    /**
     * The change, and the three ranges it takes to share it out.
     *
     * @param rangeBefore former pack, former mass; null where it can't be asked
     * @param rangeMixed pack of now, former mass
     * @param rangeAfter pack of now, mass of now
     */
    public record Question(
            PackWeightChange.Input change,
            PackRange.@Nullable Input rangeBefore,
            PackRange.@Nullable Input rangeMixed,
            PackRange.@Nullable Input rangeAfter) {}

    /** What was found; the ranges are null where they were not asked. */
    public record Found(
            PackWeightChange.Result change,
            PackRange.@Nullable Result rangeBefore,
            PackRange.@Nullable Result rangeMixed,
            PackRange.@Nullable Result rangeAfter) {}

    @Override
    public String name() {
        return "pack-weight-change";
    }

    @Override
    public String question() {
        return "What does the other pack do to mass, axle loads, braking, acceleration and range?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/massChange", "/after/frontShare", "/accelerationFactor", "/stoppingDistanceFactor", "/after/range");
    }

    @Override
    public Class<PackWeightChangeResult> resultType() {
        return PackWeightChangeResult.class;
    }

    @Override
    public Question resolve(Setup setup, Resolution resolution) {
        return new PackWeightChangeSections(setup, resolution).resolve();
    }

    @Override
    public Found calculate(Question question, Trace trace) {
        PackWeightChange.Result change = PackWeightChange.of(question.change(), trace);
        return new Found(
                change, range(question.rangeBefore()), range(question.rangeMixed()), range(question.rangeAfter()));
    }

    /** Its working and findings are those of pack-range with the same vehicle; here only the figures are set side by side. */
    private static PackRange.@Nullable Result range(PackRange.@Nullable Input input) {
        return input == null ? null : PackRange.of(input, Trace.withoutWorking());
    }

    @Override
    public PackWeightChangeResult show(Found found, UnitSystem units) {
        PackWeightChange.Result change = found.change();
        return new PackWeightChangeResult(
                units.mass(change.massChangeKg()),
                state(change.before(), found.rangeBefore(), units),
                state(change.after(), found.rangeAfter(), units),
                change.sameForce(),
                1 / change.sameForce(),
                rangeChange(found, units));
    }

    private static @Nullable RangeChange rangeChange(Found found, UnitSystem units) {
        Double before = found.rangeBefore() == null ? null : found.rangeBefore().rangeM();
        Double mixed = found.rangeMixed() == null ? null : found.rangeMixed().rangeM();
        Double after = found.rangeAfter() == null ? null : found.rangeAfter().rangeM();
        return before == null || mixed == null || after == null
                ? null
                : new RangeChange(
                        units.distance(after - before), units.distance(mixed - before), units.distance(after - mixed));
    }

    private static PackState state(PackWeightChange.State state, PackRange.@Nullable Result range, UnitSystem units) {
        PackWeightChange.Vehicle vehicle = state.vehicle();
        return new PackState(
                units.mass(vehicle.massKg()),
                units.length(vehicle.xM()),
                vehicle.heightM() == null ? null : units.length(vehicle.heightM()),
                units.load(state.frontLoadN()),
                units.load(state.rearLoadN()),
                state.frontShare(),
                state.frontLiftRad() == null ? null : units.grade(state.frontLiftRad()),
                state.launchLimit() == null ? null : units.acceleration(state.launchLimit()),
                state.brakeLimit() == null ? null : units.acceleration(state.brakeLimit()),
                range == null || range.voltages() == null
                        ? null
                        : units.voltage(range.voltages().nominalV()),
                range == null || range.usableEnergyJ() == null ? null : units.energy(range.usableEnergyJ()),
                range == null || range.consumptionJPerM() == null ? null : units.consumption(range.consumptionJPerM()),
                range == null || range.rangeM() == null ? null : units.distance(range.rangeM()),
                range == null || range.runtimeS() == null ? null : units.time(range.runtimeS()),
                range == null || range.life().endOfLife().rangeM() == null
                        ? null
                        : units.distance(range.life().endOfLife().rangeM()));
    }
}
