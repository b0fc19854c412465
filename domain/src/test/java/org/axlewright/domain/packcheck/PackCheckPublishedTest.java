package org.axlewright.domain.packcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.packcheck.ReadingsInput.Block;
import org.axlewright.domain.packcheck.ReadingsInput.Clamp;
import org.axlewright.domain.packcheck.ReadingsInput.Discharge;
import org.axlewright.domain.packcheck.ReadingsInput.Pack;
import org.axlewright.domain.quantity.ConsumptionUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Readings against what is printed. */
class PackCheckPublishedTest {

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/packcheck/checks.csv", topics);
    }

    static List<Case> acids() {
        return of("rest voltage from specific gravity");
    }

    @ParameterizedTest
    @MethodSource("acids")
    void acidGivesTheHandbooksVoltage(Case row) {
        Trace trace = Trace.withWorking();
        PackCheck.of(
                PackCheckCases.blocks(
                        Chemistry.FLOODED,
                        (int) row.in("cells"),
                        null,
                        List.of(new Block("/readings/blocks/0", null, null, null, row.in("sg")))),
                trace);
        double perCellV = trace.lines().stream()
                .filter(line -> line.step().formula().equals("u = SG + 0.845"))
                .findFirst()
                .orElseThrow()
                .value();
        row.check("v", perCellV * row.in("cells"));
    }

    static List<Case> discharges() {
        return of("capacity at current");
    }

    @ParameterizedTest
    @MethodSource("discharges")
    void countsTheChargeOfATimedDischarge(Case row) {
        PackCheckResult result = PackCheckCases.of(PackCheckCases.discharge(
                Chemistry.FLOODED, null, 25, new Discharge(row.in("i"), 60 * row.in("t"), null)));
        assertThat(result.capacity()).isNotNull();
        row.check("ah", result.capacity().deliveredC() / 3600);
    }

    static List<Case> fresh() {
        return of("new block by the clock");
    }

    @ParameterizedTest
    @MethodSource("fresh")
    void aNewBlockOfTheMakersTableIsWhole(Case row) {
        PackCheckResult result = PackCheckCases.of(PackCheckCases.discharge(
                Chemistry.FLOODED,
                DischargeCapacity.rated(3600 * row.in("c"), 3600 * row.in("h"), row.in("k")),
                25,
                new Discharge(row.in("i"), 60 * row.in("t"), null)));
        assertThat(result.capacity()).isNotNull();
        assertThat(result.capacity().share()).isNotNull();
        row.check("share", result.capacity().share());
    }

    static List<Case> charges() {
        return of("state of charge of a flooded 12 V block");
    }

    @ParameterizedTest
    @MethodSource("charges")
    void aRestedBlockShowsThePrintedCharge(Case row) {
        PackCheckResult result = PackCheckCases.of(
                PackCheckCases.pack(Chemistry.FLOODED, 6, new Pack(36_000.0, row.in("v") + 1e-9, null, null)));
        assertThat(result.stateOfCharge()).isNotNull();
        assertThat(result.stateOfCharge().value()).isNotNull();
        row.check("soc", result.stateOfCharge().value());
    }

    static List<Case> gravities() {
        return of("charge from the gravity of the acid");
    }

    @ParameterizedTest
    @MethodSource("gravities")
    void acidShowsThePrintedBandOfCharge(Case row) {
        PackCheckResult result = PackCheckCases.of(PackCheckCases.blocks(
                Chemistry.FLOODED, 3, null, List.of(new Block("/readings/blocks/0", null, null, null, row.in("sg")))));
        assertThat(result.stateOfCharge()).isNotNull();
        row.check("soc_from", result.stateOfCharge().least());
        row.check("soc_to", result.stateOfCharge().most());
    }

    static List<Case> steps() {
        return of("resistance from a step");
    }

    @ParameterizedTest
    @MethodSource("steps")
    void aStepGivesThePrintedResistance(Case row) {
        PackCheckResult result = PackCheckCases.of(
                PackCheckCases.pack(Chemistry.FLOODED, 6, new Pack(36_000.0, row.in("e"), row.in("v"), row.in("i"))));
        assertThat(result.resistance()).isNotNull();
        assertThat(result.resistance().packOhm()).isNotNull();
        row.check("r", result.resistance().packOhm());
    }

    static List<Case> uses() {
        return of("consumption by clamp meter");
    }

    @ParameterizedTest
    @MethodSource("uses")
    void amperesAndSpeedGiveThePrintedConsumption(Case row) {
        PackCheckResult result = PackCheckCases.of(PackCheckCases.clamp(
                Chemistry.FLOODED,
                (int) row.in("cells"),
                new Clamp(row.in("i"), SpeedUnit.KILOMETRE_PER_HOUR.toSi(row.in("v")))));
        assertThat(result.use()).isNotNull();
        assertThat(result.use().consumptionJPerM()).isNotNull();
        row.check(
                "w", ConsumptionUnit.WATT_HOUR_PER_KILOMETRE.fromSi(result.use().consumptionJPerM()));
    }

    static List<Case> loads() {
        return of("cell under load");
    }

    @ParameterizedTest
    @MethodSource("loads")
    void aPackUnderLoadIsReadByTheCell(Case row) {
        ReadingsInput input =
                PackCheckCases.pack(Chemistry.FLOODED, (int) row.in("cells"), new Pack(null, null, row.in("v"), null));
        assertThat(PackCheckCases.of(input).volts().loadCellV()).isNotNull();
        row.check("v_cell", PackCheckCases.of(input).volts().loadCellV());
        assertThat(PackCheckCases.findings(input)).contains("below-cut-off-under-load");
    }

    static List<Case> reversed() {
        return of("one of six blocks reversed");
    }

    @ParameterizedTest
    @MethodSource("reversed")
    void aReversedBlockTakesTwiceItsVoltageFromTheSum(Case row) {
        double volts = row.in("v_block");
        ReadingsInput input = PackCheckCases.blocks(
                Chemistry.GEL,
                36,
                null,
                PackCheckCases.atRest(volts, volts, row.in("v_reversed"), volts, volts, volts));
        PackCheckResult result = PackCheckCases.of(input);
        assertThat(result.volts().sumV()).isNotNull();
        row.check("sum", result.volts().sumV());
        assertThat(result.blocks().get(2).state()).isEqualTo(BlockState.REVERSED);
        assertThat(result.next()).isEqualTo(Measurement.POLARITY);
        assertThat(PackCheckCases.findings(input)).contains("block-reversed");
        assertThat(PackCheckCases.findings(new ReadingsInput(
                        Chemistry.GEL,
                        36,
                        1,
                        null,
                        25,
                        List.of(),
                        6,
                        null,
                        new Pack(36_000.0, row.out("sum"), null, null),
                        null,
                        null,
                        null,
                        null)))
                .as("from the sum alone")
                .contains("reversed-block-suspected");
    }
}
