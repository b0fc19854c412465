package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.conductor.CircuitInput.Flat;
import org.axlewright.domain.conductor.CircuitInput.Stated;
import org.axlewright.domain.trace.Trace;

/** What must hold of the check of a fuse whatever the numbers. */
class FuseCheckInvariantsTest {

    private static final List<FuseSent.Point> CURVE = List.of(
            new FuseSent.Point(150, 600),
            new FuseSent.Point(300, 20),
            new FuseSent.Point(900, 0.4),
            new FuseSent.Point(6000, 0.002));

    private static FuseSent fuse(double celsius) {
        return new FuseSent(100.0, null, null, CURVE, celsius, null, null, false);
    }

    @Provide
    Arbitrary<Double> current() {
        return Arbitraries.doubles().between(150, 6000);
    }

    /** The current that melts it in a time, and the time that current takes, are one curve. */
    @Property(tries = 300, seed = "20261125")
    void currentAndTimeAreInverse(
            @ForAll("current") double currentA, @ForAll @DoubleRange(min = -20, max = 120) double c) {
        FuseSent fuse = fuse(c);
        OptionalDouble melts = fuse.meltingS(currentA);
        melts.ifPresent(seconds ->
                assertThat(fuse.meltingA(seconds).orElseThrow()).isCloseTo(currentA, within(1e-6 * currentA)));
        assertThat(melts.isPresent()).isEqualTo(!fuse.beforeCurve(currentA) && !fuse.beyondCurve(currentA));
    }

    @Property(tries = 300, seed = "20261125")
    void moreCurrentAndMoreHeatMeltSooner(
            @ForAll("current") double currentA, @ForAll @DoubleRange(min = 25, max = 80) double c) {
        OptionalDouble melts = fuse(c).meltingS(currentA);
        OptionalDouble more = fuse(c).meltingS(currentA * 1.01);
        OptionalDouble hotter = fuse(c + 10).meltingS(currentA);
        if (melts.isPresent() && more.isPresent()) {
            assertThat(more.getAsDouble()).isLessThan(melts.getAsDouble());
        }
        if (melts.isPresent() && hotter.isPresent()) {
            assertThat(hotter.getAsDouble()).isLessThan(melts.getAsDouble());
        }
    }

    /** A longer, thinner cable, a colder pack and more runs lower the least fault; it never passes the greatest. */
    @Property(tries = 200, seed = "20261125")
    void theLeastFaultFallsWithLengthColdAndRuns(
            @ForAll @DoubleRange(min = 0.1, max = 40) double lengthM,
            @ForAll @DoubleRange(min = 1, max = 10) double cold,
            @ForAll @DoubleRange(min = 1, max = 200) double packMilliohm,
            @ForAll @IntRange(min = 1, max = 4) int runs) {
        double packOhm = packMilliohm / 1000;
        double least = least(lengthM, cold, packOhm, "2", runs);

        assertThat(least).isPositive().isLessThan(FuseWindow.shortCircuitA(58.4, packOhm));
        assertThat(least(lengthM * 1.1, cold, packOhm, "2", runs)).isLessThan(least);
        assertThat(least(lengthM, cold * 1.1, packOhm, "2", runs)).isLessThan(least);
        assertThat(least(lengthM, cold, packOhm, "4", runs)).isLessThan(least);
        assertThat(least(lengthM, cold, packOhm, "2", runs + 1)).isLessThan(least);
    }

    private static double least(double lengthM, double cold, double packOhm, String awg, int runs) {
        CircuitInput input = Circuits.steady(50)
                .supply(51.2, 58.4, packOhm)
                .drop(lengthM, 0.5)
                .with(
                        new Stated(Conductor.of(ConductorSize.parse(awg + " AWG")), runs),
                        new Flat(40, cold),
                        List.of(),
                        fuse(25));
        return Objects.requireNonNull(Objects.requireNonNull(
                        ConductorSizing.of(input, Trace.withoutWorking()).verdict())
                .leastFaultA());
    }

    /** Peaks twice as long use up twice as much; a rest between two parts them; a cycle turned round uses the same. */
    @Property(tries = 200, seed = "20261125")
    void thePeakShareAddsUpAlongOnePeak(
            @ForAll @DoubleRange(min = 160, max = 5000) double a,
            @ForAll @DoubleRange(min = 160, max = 5000) double b,
            @ForAll @DoubleRange(min = 0.01, max = 5) double s) {
        double first = share(List.of(new Segment(a, s), new Segment(10, 100)));
        double second = share(List.of(new Segment(b, s), new Segment(10, 100)));

        assertThat(share(List.of(new Segment(a, 2 * s), new Segment(10, 100))))
                .isCloseTo(2 * first, within(1e-9 * first));
        assertThat(share(List.of(new Segment(a, s), new Segment(b, s), new Segment(10, 100))))
                .isCloseTo(first + second, within(1e-9 * (first + second)));
        assertThat(share(List.of(new Segment(a, s), new Segment(10, 100), new Segment(b, s), new Segment(10, 100))))
                .isCloseTo(Math.max(first, second), within(1e-9 * (first + second)));
        assertThat(share(List.of(new Segment(b, s), new Segment(10, 100), new Segment(a, s))))
                .isCloseTo(first + second, within(1e-9 * (first + second)));
    }

    private static double share(List<Segment> segments) {
        CircuitInput input = Circuits.of(new Cycle(segments))
                .with(new Stated(Conductor.of(ConductorSize.parse("4/0 AWG")), 1), null, List.of(), fuse(25));
        return Objects.requireNonNull(Objects.requireNonNull(
                        ConductorSizing.of(input, Trace.withoutWorking()).verdict())
                .peakShare());
    }
}
