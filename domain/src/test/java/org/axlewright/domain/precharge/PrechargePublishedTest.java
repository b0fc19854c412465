package org.axlewright.domain.precharge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.Stream;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.precharge.PrechargeInput.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Precharge and coil against textbooks, a reference design and worked examples. */
class PrechargePublishedTest {

    static Stream<Case> rows() {
        return PublishedChecks.read("/precharge/checks.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheSource(Case row) {
        switch (row.topic()) {
            case "capacitor energy" -> {
                double ofOneVolt = PrechargeSizing.energyJ(row.in("c") * 1e-6, 1);
                row.check("v", Math.sqrt(row.in("w") / ofOneVolt));
            }
            case "coil over-voltage" -> {
                double currentA = row.in("v_supply") / row.in("r");
                row.check("i", currentA * 1000);
                row.check(
                        "v_peak",
                        PrechargeSizing.coilPeakV(row.in("v_supply"), row.in("l"), currentA, row.in("t") / 1000));
            }
            case "RC pre-charge" -> {
                double farad = row.in("c") / 1000;
                row.check("e", PrechargeSizing.energyJ(farad, row.in("v")));
                row.check("t_5tau", PrechargeSizing.timeToS(row.in("r") * farad, -Math.expm1(-5)));
                row.check("i0", row.in("v") / row.in("r"));
            }
            case "share after time constants" ->
                assertThat(PrechargeSizing.timeToS(1, row.out("share") / 100))
                        .isCloseTo(row.in("n"), within(0.0005 / Math.exp(-row.in("n"))));
            case "resistor for a time of five time constants" -> {
                double farad = row.in("c") / 1000;
                double ofOneOhm = PrechargeSizing.timeToS(farad, -Math.expm1(-5));
                double ohm = row.in("t") / ofOneOhm;
                row.check("r", ohm);
                row.check("e", PrechargeSizing.energyJ(farad, row.in("v")));
                row.check("i0", row.in("v") / ohm);
                row.check("p0", row.in("v") * row.in("v") / ohm);
            }
            case "capacitor energy at a voltage" ->
                row.check("e", PrechargeSizing.energyJ(row.in("c") / 1000, row.in("v")));
            case "unknown capacitance" -> {
                double farad =
                        PrechargeSizing.capacitanceF(new Reading(row.in("r"), row.in("tau") / 1000, -Math.expm1(-1)));
                row.check("c", farad * 1e6);
                row.check("e", PrechargeSizing.energyJ(farad, row.in("v")));
                row.check("i0", row.in("v") / row.in("r"));
            }
            default -> {
                assertThat(row.topic()).isEqualTo("hold power");
                row.check("p", row.in("v") * row.in("v") / row.in("r"));
            }
        }
    }

    /** Source: IEC 60063, series E24: 4.7, 3.9, 1.0, 9.1 in any decade. */
    @ParameterizedTest
    @CsvSource({"4.7, 4.7", "4.69, 4.3", "470, 470", "0.05, 0.047", "1000, 1000", "999, 910", "1e-4, 1e-4", "38.9, 36"})
    void theStandardValueIsTheLargestThatIsNotAbove(double ohm, double standard) {
        assertThat(PreferredValues.e24AtMost(ohm)).isEqualTo(standard);
    }

    /** Sixteen LFP cells stand at 58.4 V, not at 51.2 V: 47 ohm passes 1.243 A at first. Data sheets: 3.65 V a cell at full charge. */
    @Test
    void theFullChargeDecidesNotTheName() {
        PrechargeSizing.Result result =
                Paths.of(16).resistor(47).capacitance(2e-3).timeout(0.47).result();

        assertThat(result.fullV()).isCloseTo(58.4, within(1e-9));
        assertThat(result.peakA()).isCloseTo(1.243, within(0.0005));
        assertThat(result.pulseJ()).isCloseTo(3.41, within(0.005));
        assertThat(result.peakW()).isCloseTo(72.6, within(0.05));
        assertThat(result.leftV()).isCloseTo(0.393, within(0.0005));
    }

    /** Owner's measurement: one of three 15 ohm 25 W resistors bears sqrt(25/15) = 1.29 A. */
    @Test
    void aResistorLeftInLineBearsLittle() {
        PrechargeSizing.Result result = Paths.of(16).resistor(15).rated(25, 100).result();

        assertThat(Objects.requireNonNull(result.lastingA())).isCloseTo(1.29, within(0.005));
        assertThat(Paths.of(16).resistor(15).rated(25, 100).findings()).contains("resistor-left-in-line");
    }

    /** A hand-made list of resistors by pack voltage: 250 ohm 10 W on 58.4 V takes 13.6 W when the bus stays down; 470 ohm 7.3 W. */
    @Test
    void theBusHeldDownDecidesTheWatts() {
        assertThat(Paths.of(16).resistor(250).rated(10, 100).findings()).contains("hold-power-above-rating");
        assertThat(Paths.of(16).resistor(470).rated(10, 100).findings()).doesNotContain("hold-power-above-rating");
    }
}
