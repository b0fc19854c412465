package org.axlewright.domain.axles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** Heights by hand, and what must hold whatever the numbers. */
class RiseTest {

    private static final LoadedRadii TALLER = new LoadedRadii(0.22, 0.27);

    @Test
    void addsTheTyreToTheLift() {
        Rise rise = new Rise(new AxleLift(0.1, 1, false, 1, TALLER), new AxleLift(0.2, 2, false, 1, null));
        Trace trace = Trace.withWorking();

        assertThat(rise.frontM(trace)).isCloseTo(0.15, within(1e-12));
        assertThat(rise.rearM(trace)).isCloseTo(0.1, within(1e-12));
        assertThat(trace.lines())
                .extracting(line -> line.step().symbol())
                .containsExactly("Δz_l,f", "Δr_f", "Δz_f", "Δz_l,r", "Δz_r");
    }

    @Test
    void raisesOnlyWhatIsAboveTheSpringsWithTheLift() {
        AxleLift front = new AxleLift(0.1, 1, false, 0.5, TALLER);
        Rise rise = new Rise(front, AxleLift.none(null));

        assertThat(rise.centreOfGravityM(0.4, Trace.withoutWorking())).isCloseTo(0.4 * (0.05 + 0.05), within(1e-12));
    }

    @Test
    void leavesTheFrameWhereItIsWhenTheBodyAloneIsRaised() {
        AxleLift body = new AxleLift(0.1, 1, true, 0.7, null);
        Rise rise = new Rise(body, body);

        assertThat(rise.frontM(Trace.withoutWorking())).isZero();
        assertThat(rise.frameAtM(0.5)).isZero();
        assertThat(rise.centreOfGravityM(0.4, Trace.withoutWorking())).isCloseTo(0.07, within(1e-12));
        assertThat(rise.isNone()).isFalse();
    }

    @Property(seed = "20261125")
    void theCentreOfGravityOfASprungVehicleRisesWithTheFrameAboveIt(
            @ForAll @DoubleRange(min = -0.3, max = 0.6) double front,
            @ForAll @DoubleRange(min = -0.3, max = 0.6) double rear,
            @ForAll @DoubleRange(min = 0, max = 1) double frontShare) {
        Rise rise = new Rise(new AxleLift(front, 1, false, 1, TALLER), new AxleLift(rear, 1, false, 1, null));

        assertThat(rise.centreOfGravityM(frontShare, Trace.withoutWorking()))
                .isCloseTo(rise.frameAtM(1 - frontShare), within(1e-12));
    }

    @Property(seed = "20261125")
    void frontAndRearMirror(
            @ForAll @DoubleRange(min = -0.3, max = 0.6) double front,
            @ForAll @DoubleRange(min = -0.3, max = 0.6) double rear,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 1) double sprung) {
        AxleLift one = new AxleLift(front, 1.5, false, sprung, TALLER);
        AxleLift other = new AxleLift(rear, 0.7, true, sprung, null);

        assertThat(new Rise(one, other).centreOfGravityM(share, Trace.withoutWorking()))
                .isCloseTo(new Rise(other, one).centreOfGravityM(1 - share, Trace.withoutWorking()), within(1e-12));
    }
}
