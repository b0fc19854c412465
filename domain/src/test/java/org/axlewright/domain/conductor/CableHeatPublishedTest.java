package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The physical model against tables of air, a textbook's tube and the tables of ampacity. */
class CableHeatPublishedTest {

    private static final Trace SILENT = Trace.withoutWorking();

    /** Sea level of the US Standard Atmosphere 1976, table I: 288.15 K, 1.7894e-5 Pa s, 2.5326e-2 W/(m K), 1.2250 kg/m3. */
    @Test
    void airAtSeaLevelIsThatOfTheStandardAtmosphere() {
        assertThat(StillAir.viscosity(288.15)).isCloseTo(1.7894e-5, within(0.00005e-5));
        assertThat(StillAir.conductivity(288.15)).isCloseTo(2.5326e-2, within(0.00005e-2));
        assertThat(StillAir.density(288.15)).isCloseTo(1.2250, within(0.00005));
    }

    /** Source: a heat-transfer textbook's table of air at one atmosphere (Incropera, Table A.4), recalled. Its densities are those of 1 bar. */
    @ParameterizedTest
    @CsvSource({
        "250, 159.6e-7, 22.3e-3, 1.3947, 0.720",
        "300, 184.6e-7, 26.3e-3, 1.1614, 0.707",
        "350, 208.2e-7, 30.0e-3, 0.9950, 0.700",
        "400, 230.1e-7, 33.8e-3, 0.8711, 0.690"
    })
    void warmAirAgreesWithATextbook(
            double kelvin, double viscosity, double conductivity, double density, double prandtl) {
        assertThat(StillAir.viscosity(kelvin)).isCloseTo(viscosity, within(viscosity * 0.01));
        assertThat(StillAir.conductivity(kelvin)).isCloseTo(conductivity, within(conductivity * 0.01));
        assertThat(StillAir.density(kelvin) * 100_000 / 101_325).isCloseTo(density, within(density * 0.01));
        assertThat(StillAir.prandtl(kelvin)).isCloseTo(prandtl, within(prandtl * 0.03));
    }

    /** Source: a heat-transfer textbook's steam pipe (Incropera, Example 9.4), recalled: 0.1 m at 165 degC in air of 23 degC has a Nusselt number of 23.3. */
    @Test
    void aSteamPipeLosesWhatTheTextbookPrints() {
        assertThat(StillAir.convectionWPerM2K(0.1, 296.15, 438.15)).isCloseTo(23.3 * 0.0313 / 0.1, within(0.15));
    }

    /**
     * Source: 33 CFR 183.425 Table 5, open air of 30 degC, from 6 AWG. The table is rounded, holds for bundles below 50 V too and says nothing
     * of wall and colour, so a single cable in still air lies from 70 to 110 % of the table's rise.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 60",
        "6, 75",
        "6, 105",
        "4, 60",
        "4, 75",
        "4, 105",
        "2, 60",
        "2, 75",
        "2, 105",
        "1/0, 60",
        "1/0, 75",
        "1/0, 105",
        "2/0, 60",
        "2/0, 75",
        "2/0, 105",
        "4/0, 60",
        "4/0, 75",
        "4/0, 90",
        "4/0, 105",
        "4/0, 125"
    })
    void theBoatTableHoldsForACableInStillAir(String awg, double columnC) {
        assertThat(shareOfRise(awg, columnC, AmpacityTable.CFR_33_183_425)).isBetween(0.70, 1.10);
    }

    /** Thin wires of the same table, 18 to 8 AWG, 105 degC: a wall of 0.8 mm gives 70 to 90 % of the rise. */
    @ParameterizedTest
    @CsvSource({"18", "16", "14", "12", "10", "8"})
    void theBoatTableHoldsForThinWiresOfTheHotColumn(String awg) {
        assertThat(shareOfRise(awg, 105, AmpacityTable.CFR_33_183_425)).isBetween(0.70, 0.90);
    }

    /** Source: NEC Table 310.16 holds for raceways and buried cable: in open air the same current never reaches its temperature. */
    @ParameterizedTest
    @CsvSource({"14, 60", "10, 75", "6, 75", "2, 60", "2, 90", "2/0, 75", "4/0, 60", "4/0, 75", "4/0, 90"})
    void theBuildingTableIsCautiousInOpenAir(String awg, double columnC) {
        assertThat(shareOfRise(awg, columnC, AmpacityTable.NEC_310_16)).isBetween(0.1, 0.75);
    }

    private static double shareOfRise(String awg, double columnC, AmpacityTable table) {
        Conductor conductor = Conductor.of(ConductorSize.parse(awg + " AWG"));
        double currentA = table.currentA(table.row(conductor.areaM2()).orElseThrow(), columnC);
        CableHeat heat =
                new CableHeat(conductor.resistanceOhmPerM(columnC, SILENT), columnC, conductor.areaM2(), 0.8e-3, 30, 1);
        return (heat.steadyC(currentA).orElseThrow() - 30) / (columnC - 30);
    }
}
