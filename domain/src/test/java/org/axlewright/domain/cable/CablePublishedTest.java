package org.axlewright.domain.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes, areas and resistances against standards and tables. */
class CablePublishedTest {

    private static final double CIRCULAR_MIL_MM2 = 5.067074790974977e-4;

    static Stream<Case> rows() {
        return PublishedChecks.read("/cable/checks.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheSource(Case row) {
        switch (row.id()) {
            case "E01" -> {
                double diameter = Conductor.awgDiameterM(Conductor.gauge(row.inText("awg")));
                row.check("d", diameter * 1e3);
                double area = Conductor.of(ConductorSize.parse(row.inText("awg") + " AWG"))
                                .areaM2()
                        * 1e6;
                row.check("area", area);
                row.check("area_cm", area / CIRCULAR_MIL_MM2);
            }
            case "E02" -> {
                row.check("d", Conductor.awgDiameterM(Conductor.gauge(row.inText("awg"))) * 1e3);
                double area = Conductor.of(ConductorSize.parse(row.inText("awg") + " AWG"))
                        .areaM2();
                row.check("area", area * 1e6);
                row.check("r20", Copper.resistivityOhmM(20) / area * 1e3);
            }
            case "E03" ->
                row.check(
                        "r75",
                        Conductor.of(ConductorSize.parse(row.inText("awg") + " AWG"))
                                        .resistanceOhmPerM(row.in("t"), Trace.withoutWorking())
                                * 1e3);
            case "E04" ->
                row.check(
                        "r75",
                        Copper.atTemperature(row.in("r20") * 1e-3, 20, row.in("t2"), Trace.withoutWorking()) * 1e3);
            case "E05" ->
                row.check(
                        "r20",
                        Conductor.of(ConductorSize.parse(row.inText("area")))
                                        .resistanceOhmPerM(row.in("t"), Trace.withoutWorking())
                                * 1e3);
            default -> throw new IllegalStateException("no test for " + row.id());
        }
    }

    /** Source: university AWG table, hyperphysics.gsu.edu/hbase/Tables/wirega.html: diameter mm, resistance of solid wire ohm/km at 20 degC. */
    @ParameterizedTest
    @CsvSource({
        "18, 1.024, 20.95",
        "16, 1.291, 13.17",
        "14, 1.628, 8.286",
        "12, 2.053, 5.211",
        "8, 3.264, 2.061",
        "6, 4.115, 1.296",
        "4, 5.189, 0.8152",
        "3, 5.827, 0.6465",
        "2, 6.544, 0.5127",
        "1, 7.348, 0.4066",
        "1/0, 8.252, 0.3224",
        "2/0, 9.266, 0.2557",
        "3/0, 10.40, 0.2028",
        "4/0, 11.68, 0.1608"
    })
    void gaugesAgreeWithTheUniversityTable(String awg, double diameterMm, double ohmPerKm) {
        double diameter = Conductor.awgDiameterM(Conductor.gauge(awg));
        double area = Conductor.of(new ConductorSize(SizeSeries.AWG, awg)).areaM2();

        assertThat(diameter * 1e3).isCloseTo(diameterMm, within(diameterMm * 0.0005));
        assertThat(Copper.resistivityOhmM(20) / area * 1e3).isCloseTo(ohmPerKm, within(ohmPerKm * 0.0006));
    }

    /** Source: cable maker's IEC 60228 data: factor that brings a measured resistance to 20 degC; it is 250/(230 + T), hence 0.5 %. */
    @ParameterizedTest
    @CsvSource({
        "5, 1.064",
        "10, 1.042",
        "15, 1.020",
        "25, 0.980",
        "30, 0.962",
        "40, 0.926",
        "50, 0.893",
        "60, 0.862",
        "70, 0.833",
        "75, 0.820",
        "80, 0.806",
        "90, 0.781",
        "100, 0.758"
    })
    void temperatureLawAgreesWithTheFactorsOfIec60228(double temperatureC, double factor) {
        assertThat(Copper.ratio(20, temperatureC)).isCloseTo(factor, within(factor * 0.005));
    }

    /** Source: NEC Chapter 9 Table 8 note, 0.00323 for a degree from 75 degC [from memory]. */
    @ParameterizedTest
    @CsvSource({"20", "60", "90", "105", "200"})
    void temperatureLawAgreesWithTheFormOfTheNec(double temperatureC) {
        assertThat(Copper.ratio(temperatureC, 75)).isCloseTo(1 + 0.00323 * (temperatureC - 75), within(0.0005));
    }

    /** Table check: every stranded gauge lies within 12.84 and 12.93 ohm cmil/ft at 75 degC (NEC 2011 Chapter 9 Table 8). */
    @Test
    void noGaugeIsMistypedInTheTable() {
        for (Conductor conductor : Conductor.of(SizeSeries.AWG)) {
            double constant = conductor.tableResistanceOhmPerM() * 0.3048 * conductor.areaM2() * 1e6 / CIRCULAR_MIL_MM2;
            assertThat(constant).as(conductor.size().toString()).isBetween(12.84, 12.93);
        }
    }

    /** Source: IEC 60228; class 5 lies between the pure metal and 20 % above it. */
    @Test
    void noMetricSizeIsMistypedInTheTable() {
        for (Conductor conductor : Conductor.of(SizeSeries.MM2)) {
            double overMetal = conductor.tableResistanceOhmPerM() * conductor.areaM2() / Copper.RESISTIVITY_IACS_20;
            assertThat(overMetal).as(conductor.size().toString()).isBetween(1.0, 1.2);
        }
    }

    /** Source: NEC Table 400.5(A)(1) column B. */
    @ParameterizedTest
    @CsvSource({
        "18 AWG, 10",
        "17 AWG, 12",
        "16 AWG, 13",
        "14 AWG, 18",
        "12 AWG, 25",
        "1.5 mm2, 13",
        "2.5 mm2, 18",
        "1 mm2, 10",
        "16 SAE, 12"
    })
    void cordsCarryWhatTheRowOfNoLargerCopperAllows(String size, double currentA) {
        assertThat(CordAmpacity.of(ConductorSize.parse(size)).orElseThrow().currentA())
                .isEqualTo(currentA);
    }

    @Test
    void aCordThinnerThanTheTableHasNoAmpacity() {
        assertThat(CordAmpacity.of(ConductorSize.parse("0.75 mm2"))).isEmpty();
    }
}
