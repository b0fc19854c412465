package org.axlewright.domain.repack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.repack.PackWeightChange.Input;
import org.axlewright.domain.repack.PackWeightChange.Result;
import org.axlewright.domain.repack.PackWeightChange.Vehicle;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/**
 * No source prints a change of pack with its answer; what is printed are the parts: axle loads and tyre limits are held to their sources
 * with {@link org.axlewright.domain.axles.Stance}. Here are the worked numbers of mechanics and the invariants.
 */
class PackWeightChangeTest {

    /** 600 kg at 0.95 m on 1.65 m, 0.60 m high; a pack of 240 kg at 0.90 m becomes one of 60 kg there. */
    private static final Vehicle BEFORE = new Vehicle(600, 0.95, 0.60);

    private static final Vehicle AFTER = new Vehicle(420, (600 * 0.95 - 180 * 0.90) / 420, 0.60);

    private static Result ask(Vehicle before, Vehicle after) {
        return PackWeightChange.of(
                new Input(1.65, before, after, AxleSet.REAR, AxleSet.REAR, 0.7), Trace.withoutWorking());
    }

    @Test
    void theSameForceDoesMoreWithLess() {
        Result result = ask(BEFORE, AFTER);
        assertThat(result.massChangeKg()).isCloseTo(-180, within(1e-9));
        assertThat(result.sameForce()).isCloseTo(600.0 / 420, within(1e-12));
    }

    /** Moments by hand: 180 kg off at 0.90 m take 180·g·0.75/1.65 off the front axle and the rest off the rear one. */
    @Test
    void theAxlesLoseWhatTheLeverSays() {
        Result result = ask(BEFORE, AFTER);
        double g = Constants.STANDARD_GRAVITY;
        assertThat(result.after().frontLoadN() - result.before().frontLoadN())
                .isCloseTo(-180 * g * 0.75 / 1.65, within(1e-9));
        assertThat(result.after().rearLoadN() - result.before().rearLoadN())
                .isCloseTo(-180 * g * 0.90 / 1.65, within(1e-9));
    }

    /** Rear brakes alone: a = μ·g·x/(L + μ·h), 0.7·9.80665·0.95/(1.65 + 0.42) = 3.150 m/s2 before. */
    @Test
    void tyreLimitsDoNotKnowTheMassOnlyWhereItSits() {
        Result result = ask(BEFORE, AFTER);
        assertThat(Objects.requireNonNull(result.before().brakeLimit())).isCloseTo(3.1504, within(0.0001));
        Result moved = ask(BEFORE, new Vehicle(300, 0.95, 0.60));
        assertThat(Objects.requireNonNull(moved.after().brakeLimit()))
                .isCloseTo(moved.before().brakeLimit(), within(1e-12));
    }

    @Test
    void warnsWhenTheFrontGetsLight() {
        Trace trace = Trace.withoutWorking();
        PackWeightChange.of(new Input(1.65, BEFORE, new Vehicle(450, 1.40, 0.62), AxleSet.REAR, null, null), trace);
        assertThat(trace.findings()).extracting(Finding::code).contains("front-axle-light", "lifts-its-front-earlier");
    }

    @Property(seed = "20261125")
    void theAxlesCarryTheWeight(
            @ForAll @DoubleRange(min = 1, max = 20_000) double mass,
            @ForAll @DoubleRange(min = -2, max = 12) double x,
            @ForAll @DoubleRange(min = 0.01, max = 3) double height) {
        Result result = ask(BEFORE, new Vehicle(mass, x, height));
        double weightN = mass * Constants.STANDARD_GRAVITY;
        assertThat(result.after().frontLoadN() + result.after().rearLoadN())
                .isCloseTo(weightN, within(1e-9 * weightN * 12));
        assertThat(result.sameForce()).isPositive().isFinite();
    }

    @Property(seed = "20261125")
    void thereAndBackIsNoChange(
            @ForAll @DoubleRange(min = 100, max = 2000) double mass,
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double x) {
        Vehicle other = new Vehicle(mass, x, 0.5);
        assertThat(ask(BEFORE, other).sameForce() * ask(other, BEFORE).sameForce())
                .isCloseTo(1, within(1e-12));
        assertThat(ask(BEFORE, other).massChangeKg())
                .isEqualTo(-ask(other, BEFORE).massChangeKg());
    }
}
