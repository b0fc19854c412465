package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.Copper;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Ampacity, drop, heating and fuse against regulations, standards and worked examples. */
class ConductorSizingPublishedTest {

    private static final double CIRCULAR_MIL_M2 = 5.067074790974977e-10;
    private static final double FOOT_M = 0.3048;

    /** Resistivity of the marine form, 10.75 ohm cmil/ft. Source: ABYC E-11 as quoted in a marine trade sheet. */
    private static final double MARINE_OHM_M = 10.75 * CIRCULAR_MIL_M2 / FOOT_M;

    static Stream<Case> rows() {
        return PublishedChecks.read("/conductor/checks.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheSource(Case row) {
        switch (row.topic()) {
            case "NEC ambient correction" ->
                row.check(
                        "i",
                        Circuits.steady(1)
                                .rated(AmpacityTable.NEC_310_16, row.in("column"), null)
                                .ambient(row.in("t_ambient"))
                                .candidate(row.inText("awg") + " AWG")
                                .ampacityA());
            case "marine battery cable, outside engine space" ->
                row.check("i", marine(row).candidate(row.inText("awg") + " AWG").ampacityA());
            case "marine battery cable, inside engine space" ->
                row.check(
                        "i",
                        marine(row)
                                .engineSpace()
                                .candidate(row.inText("awg") + " AWG")
                                .ampacityA());
            case "engine-space factor, 105 C" ->
                row.check(
                        "i",
                        Circuits.steady(1)
                                .engineSpace()
                                .candidate(row.inText("awg") + " AWG")
                                .ampacityA());
            case "adiabatic size" ->
                row.check("s", Math.sqrt(row.in("t") / Adiabatic.timeS(row.in("i"), 1e-6, row.in("k"))));
            case "CM form, K 10.75 ohm cmil/ft" -> marineForm(row, row.in("l_loop"));
            case "one-way length in the loop form" -> marineForm(row, 2 * row.in("l_one_way"));
            case "NEC Table 8 resistance" -> {
                Candidate candidate = Circuits.steady(row.in("i"))
                        .supply(row.in("v"), null, null)
                        .drop(row.in("l_one_way"), 0.5)
                        .rated(AmpacityTable.CFR_33_183_425, row.in("t"), null)
                        .candidate(row.inText("awg") + " AWG");
                row.check("dv", candidate.dropV());
                row.check("drop", Objects.requireNonNull(candidate.dropShare()) * 100);
            }
            case "welding circuit" -> {
                double area = Conductor.of(ConductorSize.parse(row.inText("awg") + " AWG"))
                        .areaM2();
                double areaForOneVolt =
                        ConductorSizing.dropAreaM2(Copper.resistivityOhmM(20), row.in("i"), row.in("l_loop"), 1);
                row.check("dv", areaForOneVolt / area);
            }
            case "drop index" ->
                assertThat(chosen(Circuits.steady(row.in("i"))
                                .supply(row.in("v"), null, null)
                                .drop(row.in("l_one_way"), row.in("drop") / 100)
                                .rated(AmpacityTable.CFR_33_183_425, 75, null)))
                        .isEqualTo(row.outText("awg_strict") + " AWG");
            case "parallel short-circuit current" -> {
                double ofBlock = 6 / row.in("i_sc_block");
                double ofPack = ofBlock * row.in("series") / row.in("parallel");
                row.check("i_sc", FuseWindow.shortCircuitA(6 * row.in("series"), ofPack));
            }
            case "continuous load" -> {
                row.check("ocpd", FuseWindow.lowerA(row.in("i_cont")));
                assertThat(FuseWindow.standardRating(FuseWindow.lowerA(row.in("i_cont"))))
                        .hasValue(row.out("ocpd"));
            }
            case "S3 duty factor" -> {
                double on = row.in("duty") / 100;
                Cycle cycle = new Cycle(List.of(new Segment(1, on), new Segment(0, 1 - on)));
                row.check("factor", 1 / cycle.rmsA(Trace.withoutWorking()));
            }
            case "refuse: fuse voltage below full charge" -> {
                double full = row.in("cells") * row.in("v_cell_full");
                assertThat(Circuits.steady(100)
                                .supply(row.in("cells") * 3.2, full, null)
                                .findings()
                                .contains("fuse-link-over-58-v"))
                        .isEqualTo(row.outText("accept").equals("false"));
            }
            case "refuse: cable voltage scope" ->
                assertThat(Circuits.steady(100)
                                .sizes(SizeSeries.SAE)
                                .supply(row.in("pack_v"), null, null)
                                .findings()
                                .contains("sae-cable-over-60-v"))
                        .isEqualTo(row.outText("accept").equals("false"));
            case "upper bound, 50 V and over", "upper bound, under 50 V" -> {
                double cap = FuseWindow.upperA(row.in("i_table") * row.in("factor"), row.in("v"));
                row.check("cap", cap);
                assertThat(row.in("fuse") <= cap)
                        .isEqualTo(row.outText("accept").equals("true"));
            }
            default -> {
                assertThat(row.topic()).startsWith("adiabatic k, copper");
                row.check("k", Adiabatic.constant(row.in("t_i"), row.in("t_f")));
            }
        }
    }

    private static Circuits marine(Case row) {
        return Circuits.steady(1).rated(AmpacityTable.CFR_33_183_425, row.in("insulation"), null);
    }

    private static void marineForm(Case row, double loopM) {
        double area = ConductorSizing.dropAreaM2(MARINE_OHM_M, row.in("i"), loopM, row.in("v") * row.in("drop") / 100);
        row.check("cm", area / CIRCULAR_MIL_M2);
        if (row.expected().containsKey("awg")) {
            assertThat(thinnestOf(SizeSeries.AWG, area)).isEqualTo(row.outText("awg"));
        }
        if (row.expected().containsKey("sae")) {
            assertThat(thinnestOf(SizeSeries.SAE, area)).isEqualTo(row.outText("sae"));
        }
    }

    private static String thinnestOf(SizeSeries series, double areaM2) {
        return Conductor.of(series).stream()
                .filter(conductor -> conductor.areaM2() >= areaM2)
                .filter(conductor -> series != SizeSeries.AWG || isInTheBoatTable(conductor))
                .findFirst()
                .orElseThrow()
                .size()
                .designation();
    }

    private static boolean isInTheBoatTable(Conductor conductor) {
        return AmpacityTable.CFR_33_183_425
                .row(conductor.areaM2())
                .orElseThrow()
                .size()
                .equals(conductor.size());
    }

    private static String chosen(Circuits circuit) {
        return Objects.requireNonNull(circuit.size().chosen())
                .conductor()
                .size()
                .toString();
    }

    /** Source: 33 CFR 183.425 Table 5, rows across the table. */
    @ParameterizedTest
    @CsvSource({
        "18, 60, 10", "18, 80, 15", "16, 200, 35", "14, 75, 20", "12, 80, 35", "10, 125, 70", "8, 90, 70",
        "6, 75, 95", "4, 105, 160", "3, 60, 120", "2, 80, 175", "1, 125, 265", "1/0, 90, 245", "2/0, 75, 265",
        "3/0, 200, 430", "4/0, 105, 445"
    })
    void boatWiringTableStandsAsPrinted(String awg, double columnC, double currentA) {
        assertThat(Circuits.steady(1)
                        .rated(AmpacityTable.CFR_33_183_425, columnC, null)
                        .candidate(awg + " AWG")
                        .ampacityA())
                .isEqualTo(currentA);
    }

    /** Source: NEC Table 310.16 as reprinted in IRC 2018 and 2021 Table E3705.1. */
    @ParameterizedTest
    @CsvSource({
        "14, 60, 15",
        "12, 60, 20",
        "10, 75, 35",
        "8, 90, 55",
        "6, 75, 65",
        "4, 75, 85",
        "3, 90, 115",
        "1, 90, 145",
        "1/0, 60, 125",
        "2/0, 75, 175",
        "3/0, 90, 225",
        "4/0, 75, 230"
    })
    void buildingTableStandsAsPrinted(String awg, double columnC, double currentA) {
        assertThat(Circuits.steady(1)
                        .rated(AmpacityTable.NEC_310_16, columnC, null)
                        .candidate(awg + " AWG")
                        .ampacityA())
                .isEqualTo(currentA);
    }

    /** Source: NEC 310.15(C)(1): 4/0, 75 degC, 40 degC ambient, six conductors: 230 x 0.88 x 0.80. */
    @Test
    void ambientAndBundleMultiply() {
        assertThat(Circuits.steady(1)
                        .rated(AmpacityTable.NEC_310_16, 75, null)
                        .ambient(40)
                        .bundled(6)
                        .candidate("4/0 AWG")
                        .ampacityA())
                .isCloseTo(161.9, within(0.05));
    }

    /** Source: NEC Table 310.15(B)(1): every cell is sqrt((Tc - Ta)/(Tc - 30)) at the upper end of its band, to two decimals. */
    @ParameterizedTest
    @CsvSource({"60", "75", "90"})
    void everyAmbientFactorOfTheTableFollowsTheSquareRootLaw(double columnC) {
        for (double ambientC = 10; ambientC <= AmpacityTable.NEC_310_16.hottestAmbientC(columnC); ambientC += 5) {
            assertThat(AmpacityTable.NEC_310_16.ambient(ambientC, columnC).value())
                    .as("%s degC", ambientC)
                    .isCloseTo(Math.sqrt((columnC - ambientC) / (columnC - 30)), within(0.0051));
        }
    }

    /** Source: NEC 240.6(A). */
    @ParameterizedTest
    @CsvSource({"0.4, 1", "60, 60", "61, 70", "136, 150", "187.5, 200", "600.5, 601", "6000, 6000"})
    void theNextStandardRatingIsTaken(double currentA, double rating) {
        assertThat(FuseWindow.standardRating(currentA)).hasValue(rating);
    }

    /** 150 A on 2 AWG, 105 degC, in a hot space (178.5 A): at least 187.5 A, so 200 A, which the rules of both voltages allow. */
    @ParameterizedTest
    @CsvSource({"36, 267.75", "51.2, 200"})
    void theFuseOfTheWorkedSelectionIs200A(double nominalV, double upperA) {
        double ampacity = Circuits.steady(150).engineSpace().candidate("2 AWG").ampacityA();

        assertThat(FuseWindow.standardRating(FuseWindow.lowerA(150))).hasValue(200);
        assertThat(FuseWindow.upperA(ampacity, nominalV)).isCloseTo(upperA, within(1e-9));
    }

    /** 3 AWG in a hot space carries 153 A; at 51.2 V its fuse may not exceed 175 A, while 150 A for good asks for 187.5 A. */
    @Test
    void aCableThatCarriesTheCurrentMayLeaveNoFuse() {
        Circuits circuit = Circuits.steady(150).engineSpace().supply(51.2, 58.4, null);

        FuseWindow fuse = Objects.requireNonNull(circuit.size().fuse());
        assertThat(chosen(circuit)).isEqualTo("3 AWG");
        assertThat(fuse.ratingA()).isNull();
        assertThat(fuse.lowerA()).isEqualTo(187.5);
        assertThat(fuse.upperA()).isEqualTo(175);
        assertThat(circuit.findings()).contains("no-fuse-in-window");
    }

    /** 4 AWG in a hot space carries 136 A: 150 A for good is refused whatever the fuse. */
    @Test
    void aCableBelowTheCurrentIsRefused() {
        assertThat(Circuits.steady(150).engineSpace().candidate("4 AWG").fails())
                .containsExactly(Limit.AMPACITY);
    }

    /** 250 A through 2/0 over 2 m one way, 75 degC, 48 V: 0.317 V, 0.66 %, by NEC 2011 Chapter 9 Table 8. */
    @Test
    void tractionLeadLosesAThirdOfAVolt() {
        Candidate candidate = Circuits.steady(250)
                .supply(48.0, null, null)
                .drop(2, 0.03)
                .rated(AmpacityTable.CFR_33_183_425, 75, null)
                .candidate("2/0 AWG");

        assertThat(candidate.dropV()).isCloseTo(0.317, within(0.0005));
        assertThat(candidate.dropShare()).isCloseTo(0.0066, within(0.00005));
    }

    /** RMS by hand: 300 A 10 s, 100 A 30 s, 0 A 20 s gives 141.4 A; 250 A 15 s, 120 A 45 s, 40 A 60 s gives 118.4 A. */
    @Test
    void rmsOfTheWorkedCyclesAgrees() {
        Trace silent = Trace.withoutWorking();
        assertThat(new Cycle(List.of(new Segment(300, 10), new Segment(100, 30), new Segment(0, 20))).rmsA(silent))
                .isCloseTo(141.4, within(0.05));
        assertThat(new Cycle(List.of(new Segment(250, 15), new Segment(120, 45), new Segment(40, 60))).rmsA(silent))
                .isCloseTo(118.4, within(0.05));
    }

    /** 33.6 mm2 at 400 A warms from 75 to 105 degC in about 33 s by the adiabatic balance; the fault constant 143 would allow 144 s. */
    @Test
    void aDrivingPeakIsNeverAllowedTheTimeOfAFault() {
        assertThat(Adiabatic.timeS(400, 33.6e-6, Adiabatic.constant(75, 105))).isCloseTo(33, within(0.5));
        assertThat(Adiabatic.timeS(400, 33.6e-6, 143)).isCloseTo(144, within(0.5));
    }

    /** Sixteen cells of 0.25 milliohm and 2 milliohm of leads at 53 V: 8.8 kA; the cells alone 13.3 kA. */
    @Test
    void shortCircuitOfLithiumCellsAgrees() {
        assertThat(FuseWindow.shortCircuitA(53, 16 * 0.25e-3 + 2e-3)).isCloseTo(8800, within(50.0));
        assertThat(FuseWindow.shortCircuitA(53, 16 * 0.25e-3)).isCloseTo(13300, within(50.0));
    }

    /** ISO 10133 Table A.1, 105 degC [from memory]: the table used never allows a metric size more than that one. */
    @ParameterizedTest
    @CsvSource({
        "1, 20",
        "1.5, 25",
        "2.5, 35",
        "4, 45",
        "6, 60",
        "10, 90",
        "16, 130",
        "25, 170",
        "35, 210",
        "50, 270",
        "70, 330",
        "95, 390",
        "120, 450",
        "150, 475"
    })
    void metricSizesRoundedDownStayWithinTheMetricTable(String mm2, double currentA) {
        assertThat(Circuits.steady(1)
                        .sizes(SizeSeries.MM2)
                        .candidate(mm2 + " mm2")
                        .ampacityA())
                .isLessThanOrEqualTo(currentA);
    }
}
