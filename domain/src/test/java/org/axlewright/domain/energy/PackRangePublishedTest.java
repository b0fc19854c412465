package org.axlewright.domain.energy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.energy.PackRange.ConstantCurrent;
import org.axlewright.domain.energy.PackRange.ConstantPower;
import org.axlewright.domain.energy.PackRange.Duty;
import org.axlewright.domain.energy.PackRange.Input;
import org.axlewright.domain.energy.PackRange.Limits;
import org.axlewright.domain.energy.PackRange.Pack;
import org.axlewright.domain.energy.PackRange.Result;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.pack.DischargeCapacity.Row;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole packs against what is printed or was worked by hand. */
class PackRangePublishedTest {

    private static final Limits NO_LIMITS = new Limits(null, null, null, null);

    static List<Case> times() {
        return of("Peukert time", "constant current from minutes");
    }

    static List<Case> traps() {
        return of("rated-time form and its trap");
    }

    static List<Case> rows() {
        return of("rows of a maker at the current of the vehicle");
    }

    static List<Case> currents() {
        return of("current of a power");
    }

    static List<Case> energies() {
        return of("energy is voltage times charge");
    }

    static List<Case> sags() {
        return of("sag");
    }

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/energy/checks.csv", topics);
    }

    private static Result ask(
            Chemistry chemistry,
            @Nullable Integer cells,
            DischargeCapacity string,
            @Nullable Double ohm,
            @Nullable Duty duty) {
        Pack pack = new Pack(chemistry, cells, 1, string, 1, 1, 0, ohm, false, 25, NO_LIMITS);
        return PackRange.of(new Input(pack, duty, false), Trace.withWorking());
    }

    private static DischargeCapacity rated(Case row) {
        return DischargeCapacity.rated(3600 * row.in("c"), 3600 * row.in("h"), row.in("k"));
    }

    @ParameterizedTest
    @MethodSource("times")
    void runsAsLongAsPrinted(Case row) {
        Result result = ask(Chemistry.FLOODED, null, rated(row), null, new ConstantCurrent(row.in("i")));
        row.check("t", result.runtimeS() / 3600);
        assertThat(result.voltages()).isNull();
        assertThat(result.usableEnergyJ()).isNull();
    }

    @ParameterizedTest
    @MethodSource("traps")
    void takesTheCapacityAtItsHourRate(Case row) {
        Result result = ask(Chemistry.FLOODED, 24, rated(row), null, new ConstantCurrent(row.in("i")));
        row.check("t", result.runtimeS() / 3600);
        assertThat(result.runtimeS() / 3600 - row.out("wrong")).isGreaterThan(5);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void carriesTheLawOnThroughTheRowsOfTheMaker(Case row) {
        DischargeCapacity string = DischargeCapacity.rows(List.of(
                new Row(row.in("c1") / row.in("h1"), 3600 * row.in("h1")),
                new Row(row.in("c2") / row.in("h2"), 3600 * row.in("h2"))));
        Result result = ask(Chemistry.FLOODED, 24, string, null, new ConstantCurrent(row.in("i")));
        row.check("ah", result.deliveredChargeC() / 3600);
        row.check("t", result.runtimeS() / 3600);
    }

    @ParameterizedTest
    @MethodSource("currents")
    void dividesThePowerByTheVoltageOfTheCells(Case row) {
        DischargeCapacity string = DischargeCapacity.rated(105 * 3600, 3 * 3600, 1);
        Result result = ask(Chemistry.LFP, 16, string, null, new ConstantPower(row.in("p")));
        row.check("i", result.averageCurrentA());
        assertThat(result.voltages().nominalV()).isEqualTo(row.in("v"));
    }

    @ParameterizedTest
    @MethodSource("energies")
    void countsEveryWattHourOnce(Case row) {
        DischargeCapacity string = DischargeCapacity.rated(3600 * row.in("c"), 3 * 3600, 1);
        Result result = ask(Chemistry.LFP, (int) row.in("cells"), string, null, null);
        row.check("wh", result.nominalEnergyJ() / 3600);
        row.check("wh", result.usableEnergyJ() / 3600);
    }

    @ParameterizedTest
    @MethodSource("sags")
    void sagsWithCellsAndLeads(Case row) {
        double ohm = (row.in("cells") * row.in("r_cell") + row.in("r_leads")) / 1000;
        DischargeCapacity string = DischargeCapacity.rated(280 * 3600, 3 * 3600, 1);
        Result result = ask(Chemistry.LFP, 16, string, ohm, new ConstantCurrent(row.in("i")));
        row.check("v", result.peakVoltageV());
    }
}
