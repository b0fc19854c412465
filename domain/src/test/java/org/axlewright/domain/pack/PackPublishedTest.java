package org.axlewright.domain.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.pack.DischargeCapacity.Row;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Batteries against what is printed. */
class PackPublishedTest {

    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> times() {
        return of("Peukert time");
    }

    static List<Case> exponents() {
        return of("Peukert exponent");
    }

    static List<Case> twoRates() {
        return of("Peukert exponent from two rates");
    }

    static List<Case> discharges() {
        return of("capacity at current");
    }

    static List<Case> rests() {
        return of("rest voltage from specific gravity");
    }

    static List<Case> sags() {
        return of("internal resistance");
    }

    static List<Case> lithiumVoltages() {
        return of("LFP full voltage and voltage class");
    }

    static List<Case> blocks() {
        return of("voltages of a row of blocks");
    }

    static List<Case> leadAcidTemperatures() {
        return of("lead-acid temperature, traction rate", "lead-acid temperature, slow rate");
    }

    static List<Case> lithiumTemperatures() {
        return of("LFP capacity in the cold");
    }

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/pack/checks.csv", topics);
    }

    private static double coulombs(double ampereHours) {
        return 3600 * ampereHours;
    }

    @ParameterizedTest
    @MethodSource("times")
    void lastsAsLongAsPrinted(Case row) {
        DischargeCapacity block = DischargeCapacity.rated(coulombs(row.in("c")), 3600 * row.in("h"), row.in("k"));
        row.check("t", block.at(row.in("i"), SILENT) / row.in("i") / 3600);
    }

    @ParameterizedTest
    @MethodSource("exponents")
    void fitsThePrintedExponent(Case row) {
        Row rated = new Row(row.in("c") / row.in("h"), 3600 * row.in("h"));
        Row reserve = new Row(row.in("i"), 60 * row.in("t"));
        row.check("k", DischargeCapacity.exponent(rated, reserve));
        assertThat(DischargeCapacity.rows(List.of(reserve, rated)).at(row.in("i"), SILENT))
                .as("the law goes through the row it was fitted to")
                .isCloseTo(reserve.capacityC(), org.assertj.core.api.Assertions.within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("twoRates")
    void fitsAnExponentToTwoRates(Case row) {
        Row slow = new Row(row.in("c1") / row.in("h1"), 3600 * row.in("h1"));
        Row fast = new Row(row.in("c2") / row.in("h2"), 3600 * row.in("h2"));
        row.check("k", DischargeCapacity.exponent(slow, fast));
    }

    @ParameterizedTest
    @MethodSource("discharges")
    void countsTheChargeOfATimedDischarge(Case row) {
        row.check("ah", new Row(row.in("i"), 60 * row.in("t")).capacityC() / 3600);
    }

    @ParameterizedTest
    @MethodSource("rests")
    void restsAtThePrintedVoltage(Case row) {
        row.check("v", PackVoltages.restV((int) row.in("cells"), row.in("sg")));
    }

    @ParameterizedTest
    @MethodSource("sags")
    void sagsAsPrinted(Case row) {
        double powerW = row.out("i") * row.out("i") * row.in("r_load");
        double currentA = Sag.currentA(row.in("e"), row.in("r"), powerW);
        row.check("i", currentA);
        row.check("v", Sag.terminalV(row.in("e"), row.in("r"), currentA));
    }

    @ParameterizedTest
    @MethodSource("lithiumVoltages")
    void fillsToThePrintedVoltage(Case row) {
        PackVoltages voltages = PackVoltages.of(Chemistry.LFP, (int) row.in("cells"), SILENT);
        row.check("v_full", voltages.fullV());
        assertThat(voltages.fullV() > row.in("limit") ? "B" : "A").isEqualTo(row.outText("class"));
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void countsTheCellsInBlocks(Case row) {
        int cells = PackVoltages.cellsInBlocks(Chemistry.FLOODED, (int) row.in("count"), row.in("block"))
                .orElseThrow();
        PackVoltages voltages = PackVoltages.of(Chemistry.FLOODED, cells, SILENT);
        row.check("v_cut", voltages.cutOffV());
        row.check("v_nominal", voltages.nominalV());
    }

    @ParameterizedTest
    @MethodSource("leadAcidTemperatures")
    void losesCapacityInTheColdAsPrinted(Case row) {
        double hours = row.in("lambda") > 0.008 ? 2 : 15;
        row.check("factor", TemperatureFactor.of(Chemistry.FLOODED, row.in("t"), 3600 * hours, SILENT));
    }

    @ParameterizedTest
    @MethodSource("lithiumTemperatures")
    void keepsTheLeastThatIsGuaranteed(Case row) {
        row.check("factor", TemperatureFactor.of(Chemistry.LFP, row.in("t"), 3 * 3600, SILENT));
    }
}
