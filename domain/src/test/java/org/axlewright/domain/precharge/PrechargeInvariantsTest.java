package org.axlewright.domain.precharge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.precharge.PrechargeInput.Coil;
import org.axlewright.domain.precharge.PrechargeInput.Reading;
import org.axlewright.domain.precharge.PrechargeSizing.Range;
import org.junit.jupiter.api.Test;

/** What must hold whatever the numbers. */
class PrechargeInvariantsTest {

    /** The heat of the pulse is what the first power gives over half a time constant: the integral of an exponential squared. */
    @Property(seed = "20261125", tries = 200)
    void theHeatOfAPulseDoesNotDependOnTheResistor(
            @ForAll @IntRange(min = 4, max = 40) int cells,
            @ForAll @DoubleRange(min = 0.1, max = 5000) double ohm,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double millifarad) {
        PrechargeSizing.Result one =
                Paths.of(cells).resistor(ohm).capacitance(millifarad / 1000).result();
        PrechargeSizing.Result other =
                Paths.of(cells).resistor(2 * ohm).capacitance(millifarad / 1000).result();

        double pulse = Objects.requireNonNull(one.pulseJ());
        assertThat(other.pulseJ()).isEqualTo(pulse);
        assertThat(Objects.requireNonNull(one.peakW()) * Objects.requireNonNull(one.timeConstantS()) / 2)
                .isCloseTo(pulse, within(pulse * 1e-12));
    }

    @Property(seed = "20261125", tries = 200)
    void aReadingGivesBackTheCapacitanceItCameFrom(
            @ForAll @DoubleRange(min = 0.1, max = 5000) double ohm,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double millifarad,
            @ForAll @DoubleRange(min = 0.05, max = 0.99) double share) {
        double farad = millifarad / 1000;
        double time = PrechargeSizing.timeToS(ohm * farad, share);

        assertThat(PrechargeSizing.capacitanceF(new Reading(ohm, time, share))).isCloseTo(farad, within(farad * 1e-12));
    }

    /** The suggested resistor keeps the limit, and closes in half the timeout. */
    @Property(seed = "20261125", tries = 300)
    void theSuggestedResistorMeetsBothBounds(
            @ForAll @IntRange(min = 4, max = 40) int cells,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double millifarad,
            @ForAll @DoubleRange(min = 0.01, max = 100) double timeout,
            @ForAll @DoubleRange(min = 0.05, max = 100) double limit) {
        Paths path =
                Paths.of(cells).capacitance(millifarad / 1000).timeout(timeout).limit(limit);
        PrechargeSizing.Result result = path.result();
        Range range = result.range();
        if (range.suggestedOhm() == null) {
            assertThat(path.findings()).contains("no-resistor-between");
            return;
        }
        assertThat(Objects.requireNonNull(result.peakA())).isLessThanOrEqualTo(limit * (1 + 1e-12));
        assertThat(Objects.requireNonNull(result.toClosingS())).isLessThanOrEqualTo(timeout / 2 * (1 + 1e-9));
        assertThat(range.suggestedOhm()).isGreaterThan(Objects.requireNonNull(range.mostOhm()) / 1.16);
    }

    /** The power that the resistor and a constant-power load take together is what the pack gives at that bus voltage. */
    @Property(seed = "20261125", tries = 200)
    void thePowersOfAHeldBusAddUp(
            @ForAll @DoubleRange(min = 1, max = 500) double ohm,
            @ForAll @DoubleRange(min = 0.01, max = 50) double watt) {
        PrechargeSizing.HeldBus held = Objects.requireNonNull(
                Paths.of(16).resistor(ohm).held(watt, null).result().held());
        if (held.busV() == 0) {
            assertThat(58.4 * 58.4).isLessThan(4 * ohm * watt * (1 + 1e-12));
            return;
        }
        double current = (58.4 - held.busV()) / ohm;
        assertThat(held.powerW() + watt).isCloseTo(58.4 * current, within(1e-9 * 58.4 * current + 1e-9));
    }

    @Property(seed = "20261125", tries = 200)
    void aHigherClampReleasesFaster(
            @ForAll @DoubleRange(min = 0.5, max = 100) double clampV,
            @ForAll @DoubleRange(min = 1.1, max = 10) double times) {
        assertThat(release(clampV * times)).isLessThan(release(clampV));
    }

    private static double release(double clampV) {
        return Objects.requireNonNull(Objects.requireNonNull(Paths.of(16)
                        .coil(new Coil(0.5, 0.5, 24.0, 12.0, null, Suppression.DIODE_ZENER, clampV))
                        .result()
                        .coil())
                .releaseS());
    }

    @Test
    void whatCanWeldTheContactorIsSaid() {
        assertThat(Paths.of(16).resistor(47).closed(Closer.PROTECTION).findings())
                .contains("protection-closes-again");
        assertThat(Paths.of(16).resistor(47).closed(Closer.MANUAL).findings()).contains("manual-closing");
        assertThat(Paths.of(16).resistor(47).closed(Closer.AFTER_PRECHARGE).findings())
                .doesNotContain("protection-closes-again", "manual-closing", "precharge-every-closing");
        assertThat(Paths.of(16).resistor(47).findings()).contains("precharge-every-closing", "capacitance-unknown");
    }

    @Test
    void whatThePartDoesNotStandIsSaid() {
        Paths path = Paths.of(16).resistor(22).capacitance(10e-3).timeout(2);
        assertThat(path.rated(2, 5).findings())
                .contains("hold-power-above-rating", "pulse-above-rating", "held-pulse-above-rating");
        assertThat(path.rated(2, 5).attempts(100, 60).findings()).contains("duty-above-rating");
        assertThat(path.limit(1).findings()).contains("peak-above-limit");
        assertThat(path.timeout(0.1).findings()).contains("timeout-too-short");
        assertThat(path.held(null, 22.0).findings()).contains("load-holds-bus");
        assertThat(path.part(PrechargePart.INCANDESCENT_LAMP).findings()).contains("lamp-as-precharge");
        assertThat(path.part(PrechargePart.LED_OR_FLUORESCENT_LAMP).findings()).contains("lamp-does-not-precharge");
        assertThat(Paths.of(17).resistor(22).findings()).contains("over-60-v", "no-timeout");
        assertThat(path.coil(new Coil(2.29, 0.0436, 275.0, 12.0, 0.0005, Suppression.NONE, null))
                        .findings())
                .contains("coil-not-suppressed");
        assertThat(path.coil(new Coil(2.29, 0.0436, 275.0, 12.0, null, Suppression.DIODE, 0.8))
                        .findings())
                .contains("coil-slow-release");
    }
}
