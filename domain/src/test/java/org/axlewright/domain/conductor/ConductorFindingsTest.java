package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.cable.SizeSeries;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What set the size, and what is said of it. */
class ConductorFindingsTest {

    private static Limit limitedBy(Circuits circuit) {
        return Objects.requireNonNull(circuit.size().limitedBy());
    }

    private static @Nullable Double upper(Circuits circuit) {
        return Objects.requireNonNull(circuit.size().fuse()).upperA();
    }

    private static String size(Circuits circuit) {
        return Objects.requireNonNull(circuit.size().chosen())
                .conductor()
                .size()
                .toString();
    }

    /** 300 A at 105 degC: 1/0 carries 285 A, 2/0 330 A (33 CFR 183.425 Table 5). */
    @Test
    void ampacitySetsTheSizeOfAShortLead() {
        assertThat(size(Circuits.steady(300))).isEqualTo("2/0 AWG");
        assertThat(limitedBy(Circuits.steady(300))).isEqualTo(Limit.AMPACITY);
    }

    /** 300 A at 75 degC terminals: 2/0 carries 265 A, 3/0 310 A. */
    @Test
    void terminalsOfALowerRatingSetTheSize() {
        Circuits circuit = Circuits.steady(300).rated(AmpacityTable.CFR_33_183_425, 105, 75.0);

        assertThat(size(circuit)).isEqualTo("3/0 AWG");
        assertThat(limitedBy(circuit)).isEqualTo(Limit.TERMINATION);
        assertThat(circuit.size().conductorC()).isEqualTo(75);
    }

    @Test
    void aLongLeadIsSetByTheDrop() {
        Circuits circuit = Circuits.steady(50).drop(20, 0.03);

        assertThat(limitedBy(circuit)).isEqualTo(Limit.VOLTAGE_DROP);
    }

    /** 300 A for ten minutes, then rest for fifty: 122 A by RMS, which 6 AWG would carry; but ten minutes are long for it. */
    @Test
    void aLongPeakSetsTheSizeWhereTheRmsCurrentWouldPass() {
        Circuits circuit = Circuits.of(new Cycle(List.of(new Segment(300, 600), new Segment(0, 3000))));

        assertThat(circuit.size().rmsA()).isBetween(122.0, 123.0);
        assertThat(limitedBy(circuit)).isEqualTo(Limit.PEAK_HEATING);
        assertThat(circuit.candidate("4 AWG").fails()).containsExactly(Limit.PEAK_HEATING);
        assertThat(circuit.findings()).contains("cycle-not-short");
    }

    @Test
    void twoRunsAreProposedWhenNoSingleOnePasses() {
        Circuits circuit = Circuits.steady(600);
        Candidate chosen = Objects.requireNonNull(circuit.size().chosen());

        assertThat(chosen.parallel()).isEqualTo(2);
        assertThat(chosen.conductor().size()).hasToString("2/0 AWG");
        assertThat(circuit.findings()).contains("parallel-runs");
    }

    @Test
    void beyondFourRunsNothingIsProposed() {
        Circuits circuit = Circuits.steady(5000);

        assertThat(circuit.size().chosen()).isNull();
        assertThat(circuit.findings()).contains("no-size-passes");
    }

    @Test
    void motorLeadsTakeNoFuse() {
        Circuits circuit = Circuits.steady(200).side(CircuitSide.MOTOR);

        assertThat(circuit.size().fuse()).isNull();
        assertThat(circuit.findings()).contains("no-fuse-in-motor-leads");
    }

    @Test
    void motorLeadsSizedWithTheBatteryCurrentAreFound() {
        Circuits leads = Circuits.steady(180).side(CircuitSide.MOTOR);

        assertThat(leads.controller(300.0, 180.0).findings()).contains("motor-leads-below-controller");
        assertThat(leads.controller(null, 180.0).findings()).contains("battery-current-in-motor-leads");
        assertThat(leads.controller(180.0, 180.0).findings()).doesNotContain("motor-leads-below-controller");
        assertThat(Circuits.steady(300).controller(300.0, 180.0).findings()).contains("above-controller-battery-limit");
    }

    /** 14 AWG carries 25 A at 90 degC, but building rules allow a fuse of 15 A (NEC 240.4(D)). */
    @Test
    void aSmallConductorIsHeldToItsOwnFuse() {
        Circuits circuit = Circuits.steady(16).rated(AmpacityTable.NEC_310_16, 90, null);

        assertThat(size(circuit)).isEqualTo("14 AWG");
        assertThat(Objects.requireNonNull(circuit.size().fuse()).upperA()).isEqualTo(15);
        assertThat(circuit.findings()).contains("no-fuse-in-window");
        assertThat(Circuits.steady(20).findings()).contains("small-conductor-fuse");
    }

    /** 48 V of lead-acid is under 50 V by name and over it on charge: 1.5 times 265 A of 2/0 AWG by name, 300 A by the full charge. */
    @Test
    void theFullChargeSelectsTheRuleOfTheFuse() {
        Circuits circuit = Circuits.steady(250).rated(AmpacityTable.CFR_33_183_425, 75, null);

        assertThat(upper(circuit.supply(36.0, 44.1, null))).isCloseTo(397.5, within(1e-9));
        assertThat(upper(circuit.supply(48.0, 58.8, null))).isEqualTo(300);
        assertThat(circuit.supply(48.0, 58.8, null).findings()).contains("full-charge-over-50-v");
        assertThat(circuit.supply(36.0, 44.1, null).findings()).doesNotContain("full-charge-over-50-v");
    }

    @Test
    void bundlesAreDeratedFrom50VInTheBoatTableAndAlwaysInTheBuildingTable() {
        Circuits six = Circuits.steady(1).bundled(6);

        assertThat(six.candidate("2/0 AWG").ampacityA()).isEqualTo(330);
        assertThat(six.supply(51.2, null, null).candidate("2/0 AWG").ampacityA())
                .isEqualTo(330 * 0.6);
        assertThat(six.rated(AmpacityTable.NEC_310_16, 75, null)
                        .candidate("2/0 AWG")
                        .ampacityA())
                .isEqualTo(175 * 0.8);
    }

    @Test
    void aRatingBetweenTwoColumnsTakesTheCoolerOne() {
        Circuits circuit = Circuits.steady(1).rated(AmpacityTable.NEC_310_16, 105, null);

        assertThat(circuit.size().conductorC()).isEqualTo(90);
        assertThat(circuit.candidate("2/0 AWG").ampacityA()).isEqualTo(195);
        assertThat(circuit.findings()).contains("column-below-rating", "termination-rating-unknown");
    }

    /** 125 100 circular mils are less than the 133 100 of 2/0 AWG: the row of 1/0 holds. */
    @Test
    void automotiveSizesTakeTheRowOfNoLargerCopper() {
        Circuits circuit = Circuits.steady(200).sizes(SizeSeries.SAE);

        assertThat(circuit.candidate("2/0 SAE").ampacityA()).isEqualTo(285);
        assertThat(circuit.findings()).contains("ampacity-of-thinner-gauge");
    }

    /** Sixteen cells of 0.25 milliohm at 58.4 V: 14.6 kA. */
    @Test
    void shortCircuitsBeyondVehicleFusesAreFound() {
        Circuits circuit = Circuits.steady(150).supply(51.2, 58.4, 0.004);
        FuseWindow fuse = Objects.requireNonNull(circuit.size().fuse());

        assertThat(fuse.interruptingA()).isEqualTo(14_600);
        assertThat(fuse.clearingS()).isBetween(0.0, 5.0);
        assertThat(circuit.findings()).contains("fault-above-vehicle-fuse", "fuse-link-over-58-v");
    }

    @Test
    void aPeakAboveTheFuseAsksForItsMeltingCurve() {
        Circuits circuit = Circuits.of(new Cycle(List.of(new Segment(300, 5), new Segment(50, 60))));

        assertThat(circuit.findings()).contains("peak-above-fuse");
    }

    @Test
    void withoutAVoltageNeitherDropNorFuseIsJudged() {
        Circuits circuit = Circuits.steady(100).supply(null, null, null);

        assertThat(circuit.findings()).contains("voltage-drop-not-checked");
        assertThat(Objects.requireNonNull(circuit.size().fuse()).ratingA()).isNull();
        assertThat(circuit.candidate("2/0 AWG").dropShare()).isNull();
    }
}
