package org.axlewright.domain.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.fit.FitCases.check;
import static org.axlewright.domain.fit.FitCases.pack;
import static org.axlewright.domain.fit.FitCases.with;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.fit.FitInput.Charger;
import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Motor;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.RotationUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fits against what is printed. */
class PackFitPublishedTest {

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/fit/checks.csv", topics);
    }

    private static Chemistry chemistry(Case row) {
        return Chemistry.valueOf(row.inText("chemistry").toUpperCase(Locale.ROOT));
    }

    static List<Case> classes() {
        return of("LFP full voltage and voltage class");
    }

    @ParameterizedTest
    @MethodSource("classes")
    void fallsIntoThePrintedVoltageClass(Case row) {
        FitResult result = FitCases.of(with(pack(Chemistry.LFP, (int) row.in("cells")), (Controller) null));
        row.check("v_full", result.voltages().fullV());
        assertThat(passed(result, VoltageClass.CLASS_B_60_V) ? "B" : "A").isEqualTo(row.outText("class"));
        assertThat(VoltageClass.CLASS_B_60_V.limitV()).isEqualTo(row.in("limit"));
    }

    private static boolean passed(FitResult result, VoltageClass limit) {
        return result.voltageClasses().stream()
                .filter(one -> one.limit() == limit)
                .findFirst()
                .orElseThrow()
                .full();
    }

    static List<Case> fuses() {
        return of("refuse: fuse voltage below full charge");
    }

    @ParameterizedTest
    @MethodSource("fuses")
    void sixteenCellsAreBeyondTheFuseClass(Case row) {
        FitResult result = FitCases.of(with(pack(Chemistry.LFP, (int) row.in("cells")), (Controller) null));
        assertThat(VoltageClass.FUSE_58_V.limitV()).isEqualTo(row.in("fuse_v"));
        assertThat(!passed(result, VoltageClass.FUSE_58_V)).isEqualTo(Boolean.parseBoolean(row.outText("accept")));
    }

    static List<Case> cables() {
        return of("refuse: cable voltage scope");
    }

    @ParameterizedTest
    @MethodSource("cables")
    void seventyTwoVoltsAreBeyondTheCableScope(Case row) {
        FitResult result = FitCases.of(with(pack(Chemistry.FLOODED, (int) (row.in("pack_v") / 2)), (Controller) null));
        assertThat(VoltageClass.CABLE_60_V.limitV()).isEqualTo(row.in("cable_v"));
        assertThat(!passed(result, VoltageClass.CABLE_60_V)).isEqualTo(Boolean.parseBoolean(row.outText("accept")));
    }

    static List<Case> frost() {
        return of("refuse: LFP charge below freezing");
    }

    @ParameterizedTest
    @MethodSource("frost")
    void noChargeBelowFreezing(Case row) {
        FitInput input = with(
                pack(Chemistry.LFP, 16, null, row.in("t"), Limits.NONE, null),
                new Charger(56.8, Chemistry.LFP, null, 18.0, null));
        FitCheck check = check(FitCases.of(input), "charge-temperature");
        assertThat(check.limit()).isNotNull();
        assertThat(check.limit().si()).isEqualTo(row.in("t_min_charge"));
        assertThat(check.verdict() == Verdict.FITS).isEqualTo(Boolean.parseBoolean(row.outText("accept")));
        assertThat(FitCases.findings(input)).contains("charge-too-cold");
    }

    static List<Case> voltages() {
        return of("voltages of LFP cells in series");
    }

    @ParameterizedTest
    @MethodSource("voltages")
    void cellsGiveThePrintedVoltages(Case row) {
        FitResult.Voltages voltages = FitCases.of(with(pack(Chemistry.LFP, (int) row.in("cells")), (Controller) null))
                .voltages();
        row.check("v_cut", voltages.cutOffV());
        row.check("v_nominal", voltages.nominalV());
        row.check("v_full", voltages.fullV());
    }

    static List<Case> modules() {
        return of("module of four at its charge voltage");
    }

    @ParameterizedTest
    @MethodSource("modules")
    void aModuleIsChargedToThePrintedVoltage(Case row) {
        FitResult result = FitCases.of(with(
                pack(Chemistry.LFP, (int) row.in("cells")),
                new Charger(row.in("v_end"), Chemistry.LFP, null, null, null)));
        row.check("v_cell", result.voltages().chargerEndPerCellV());
        assertThat(result.verdict()).isEqualTo(Verdict.FITS);
    }

    static List<Case> chargers() {
        return of("charger end voltage");
    }

    @ParameterizedTest
    @MethodSource("chargers")
    void chargersFitOrNotAsPrinted(Case row) {
        Chemistry chemistry = chemistry(row);
        FitResult result = FitCases.of(with(
                pack(chemistry, (int) row.in("cells")), new Charger(row.in("v_end"), chemistry, null, null, null)));
        row.check("v_cell", result.voltages().chargerEndPerCellV());
        assertThat(check(result, "end-voltage-per-cell").verdict()).hasToString(row.outText("verdict"));
    }

    static List<Case> spikes() {
        return of("room for spikes");
    }

    @ParameterizedTest
    @MethodSource("spikes")
    void capacitorsNeedRoomForSpikes(Case row) {
        FitResult result = FitCases.of(with(
                pack(chemistry(row), (int) row.in("cells")),
                new Controller(100.0, null, 20.0, 65.0, row.in("v_capacitor"), false, null)));
        FitCheck check = check(result, "capacitor-voltage");
        assertThat(result.voltages().fullV()).isCloseTo(row.in("v_full"), within(1e-9));
        assertThat(check.actual()).isNotNull();
        row.check("v_needed", check.actual().si());
        assertThat(check.verdict()).hasToString(row.outText("verdict"));
    }

    static List<Case> fades() {
        return of("fade of regeneration");
    }

    @ParameterizedTest
    @MethodSource("fades")
    void regenerationFadesBetweenThePrintedVoltages(Case row) {
        FitResult result = FitCases.of(with(pack(Chemistry.LFP, (int) row.in("cells")), (Controller) null));
        assertThat(result.regenerationFade()).isNotNull();
        row.check("v_from", result.regenerationFade().fromV());
        row.check("v_to", result.regenerationFade().toV());
    }

    static List<Case> powers() {
        return of("pack current at rated power");
    }

    @ParameterizedTest
    @MethodSource("powers")
    void ratedPowerTakesThePrintedCurrent(Case row) {
        boolean sags = row.inputs().containsKey("r");
        FitResult result = FitCases.of(with(
                pack(chemistry(row), (int) row.in("cells"), sags ? row.in("r") : null, null, Limits.NONE, null),
                new Motor(row.in("v"), row.in("p"), null, null, null, null),
                row.in("efficiency")));
        assertThat(result.currents().ratedPowerA()).isNotNull();
        row.check("i", result.currents().ratedPowerA());
        if (sags) {
            assertThat(result.voltages().nominalV() - result.currents().ratedPowerA() * row.in("r"))
                    .isCloseTo(row.in("v_loaded"), within(0.01));
        }
    }

    static List<Case> speeds() {
        return of("motor speed at another voltage");
    }

    @ParameterizedTest
    @MethodSource("speeds")
    void speedFollowsVoltage(Case row) {
        double plate = RotationUnit.REVOLUTION_PER_MINUTE.toSi(row.in("rpm"));
        FitResult result = FitCases.of(with(
                pack(Chemistry.FLOODED, (int) row.in("cells")),
                new Motor(row.in("v_plate"), null, null, plate, 2 * plate, null),
                null));
        FitCheck check = check(result, "motor-speed");
        assertThat(check.actual()).isNotNull();
        row.check(
                "rpm_pack",
                RotationUnit.REVOLUTION_PER_MINUTE.fromSi(check.actual().si()));
    }

    static List<Case> masses() {
        return of("mass of a pack");
    }

    @ParameterizedTest
    @MethodSource("masses")
    void aMassIsUsualOrNot(Case row) {
        List<String> codes = FitCases.findings(
                with(FitCases.weighed(chemistry(row), (int) row.in("cells"), row.in("ah"), row.in("kg")), (Controller)
                        null));
        boolean usual = codes.stream().noneMatch(code -> code.endsWith("than-usual"));
        assertThat(usual ? "yes" : "no").as(row.id()).isEqualTo(row.outText("usual"));
    }

    static List<Case> counts() {
        return of("counts sold as one voltage");
    }

    @ParameterizedTest
    @MethodSource("counts")
    void labelsBelongToTheseCounts(Case row) {
        assertThat(CellCounts.soldAs(chemistry(row), row.in("v")))
                .containsExactlyElementsOf(Arrays.stream(row.outText("counts").split("\\|"))
                        .map(Integer::valueOf)
                        .toList());
    }
}
