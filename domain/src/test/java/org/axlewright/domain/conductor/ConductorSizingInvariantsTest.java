package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.conductor.Cycle.Hottest;
import org.axlewright.domain.trace.Trace;

/** What must hold whatever the numbers. */
class ConductorSizingInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();

    @Provide
    Arbitrary<Cycle> cycles() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 900),
                        Arbitraries.doubles().between(0.5, 900))
                .as(Segment::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .filter(segments -> segments.stream().anyMatch(segment -> segment.currentA() > 1))
                .map(Cycle::new);
    }

    @Property(seed = "20261125", tries = 300)
    void moreCurrentNeverTakesACableThatCarriesLess(
            @ForAll @DoubleRange(min = 1, max = 1500) double currentA,
            @ForAll @DoubleRange(min = 1, max = 2) double more) {
        Candidate less = Circuits.steady(currentA).size().chosen();
        Candidate greater = Circuits.steady(currentA * more).size().chosen();

        if (greater != null) {
            assertThat(Objects.requireNonNull(less).ampacityA()).isLessThanOrEqualTo(greater.ampacityA());
        }
    }

    @Property(seed = "20261125", tries = 200)
    void theChosenCableStandsEveryLimitAndTheOneBeforeItDoesNot(@ForAll("cycles") Cycle cycle) {
        ConductorSizing.Result result = Circuits.of(cycle).drop(3, 0.03).size();
        Candidate chosen = result.chosen();

        if (chosen == null) {
            assertThat(result.candidates()).noneMatch(Candidate::passes);
            return;
        }
        assertThat(result.rmsA()).isLessThanOrEqualTo(chosen.ampacityA() * 1.000001);
        assertThat(chosen.dropShare()).isLessThanOrEqualTo(0.03);
        assertThat(result.peakC()).isLessThanOrEqualTo(105.000001);
        List<Candidate> before = result.candidates().subList(0, indexOfFirstPass(result.candidates()));
        assertThat(before).allMatch(candidate -> !candidate.fails().isEmpty());
        if (!before.isEmpty()) {
            assertThat(before.get(before.size() - 1).fails()).contains(Objects.requireNonNull(result.limitedBy()));
        }
    }

    /** A cycle short against the time constant is decided by its RMS current alone; a long one by its largest. */
    @Property(seed = "20261125", tries = 200)
    void shortCyclesFollowTheRmsCurrentLongOnesThePeak(
            @ForAll @DoubleRange(min = 1, max = 500) double a, @ForAll @DoubleRange(min = 0, max = 500) double b) {
        Cycle fast = new Cycle(List.of(new Segment(a, 1), new Segment(b, 1)));
        Cycle slow = new Cycle(List.of(new Segment(a, 80_000), new Segment(b, 80_000)));

        double rms = fast.rmsA(SILENT);
        assertThat(fast.hottest(100, 1e6, SILENT).share()).isCloseTo(rms * rms / 1e4, within(rms * rms / 1e4 * 1e-4));
        assertThat(slow.hottest(100, 10, SILENT).share())
                .isCloseTo(Math.max(a * a, b * b) / 1e4, within(Math.max(a * a, b * b) * 1e-9));
    }

    @Property(seed = "20261125", tries = 200)
    void theHottestMomentLiesBetweenTheMeanHeatAndTheSteadyPeak(
            @ForAll("cycles") Cycle cycle, @ForAll @DoubleRange(min = 20, max = 2000) double timeConstantS) {
        Hottest hottest = cycle.hottest(200, timeConstantS, SILENT);
        double mean = Math.pow(cycle.rmsA(SILENT) / 200, 2);
        double peak = Math.pow(cycle.peakA() / 200, 2);

        assertThat(hottest.share()).isBetween(mean * (1 - 1e-9), peak * (1 + 1e-9));
        assertThat(hottest.startShare()).isLessThanOrEqualTo(hottest.share() + 1e-12);
    }

    /** The repeated cycle closes: stepped on for many cycles from cold it comes to the same hottest moment. */
    @Property(seed = "20261125", tries = 100)
    void theRepeatedCycleIsWhatManyCyclesFromColdLeadTo(
            @ForAll("cycles") Cycle cycle, @ForAll @DoubleRange(min = 20, max = 300) double timeConstantS) {
        double share = 0;
        double hottest = 0;
        int cycles = 1 + (int) Math.ceil(40 * timeConstantS / cycle.durationS());
        for (int i = 0; i < cycles; i++) {
            hottest = 0;
            for (Segment segment : cycle.segments()) {
                double target = Math.pow(segment.currentA() / 200, 2);
                share = target + (share - target) * Math.exp(-segment.durationS() / timeConstantS);
                hottest = Math.max(hottest, share);
            }
        }
        assertThat(cycle.hottest(200, timeConstantS, SILENT).share())
                .isCloseTo(hottest, within(1e-6 * Math.max(1, hottest)));
    }

    @Property(seed = "20261125", tries = 100)
    void whereTheCycleBeginsDoesNotMatter(@ForAll("cycles") Cycle cycle, @ForAll @IntRange(min = 0, max = 5) int turn) {
        List<Segment> turned = new ArrayList<>(cycle.segments());
        Collections.rotate(turned, turn);
        Cycle other = new Cycle(turned);

        assertThat(other.rmsA(SILENT)).isCloseTo(cycle.rmsA(SILENT), within(1e-9 * cycle.peakA()));
        assertThat(other.hottest(200, 300, SILENT).share())
                .isCloseTo(cycle.hottest(200, 300, SILENT).share(), within(1e-9 * Math.pow(cycle.peakA() / 200, 2)));
    }

    /** Heat lost in a segment slows the warming: the adiabatic time is never longer than the first-order one. */
    @Property(seed = "20261125", tries = 200)
    void noCableWarmsFasterThanAnInsulatedOne(
            @ForAll @DoubleRange(min = 350, max = 3000) double currentA,
            @ForAll @DoubleRange(min = 31, max = 104) double startC) {
        Candidate cable = Circuits.steady(1).candidate("2/0 AWG");
        double steady = Math.pow(currentA / cable.ampacityA(), 2);
        double start = (startC - 30) / 75;
        double firstOrder = cable.timeConstantS() * Math.log((steady - start) / (steady - 1));
        double adiabatic = Adiabatic.timeS(currentA, cable.conductor().areaM2(), Adiabatic.constant(startC, 105));

        // the first-order law takes the resistance at the limit throughout, at most 28 % above that at the start
        assertThat(adiabatic).isLessThanOrEqualTo(firstOrder * 1.30);
    }

    @Property(seed = "20261125", tries = 100)
    void dropAndLossGrowWithTheLength(
            @ForAll @DoubleRange(min = 0.1, max = 50) double lengthM,
            @ForAll @DoubleRange(min = 1, max = 10) double times) {
        Candidate near = Circuits.steady(50).drop(lengthM, 0.5).candidate("4 AWG");
        Candidate far = Circuits.steady(50).drop(lengthM * times, 0.5).candidate("4 AWG");

        assertThat(far.dropV()).isCloseTo(near.dropV() * times, within(1e-9 * far.dropV()));
        assertThat(far.lossW()).isCloseTo(near.lossW() * times, within(1e-9 * far.lossW()));
        assertThat(far.lossW()).isCloseTo(far.dropV() * 50, within(1e-9 * far.lossW()));
    }

    @Property(seed = "20261125", tries = 200)
    void theFuseCarriesTheCurrentAndProtectsTheCable(
            @ForAll @DoubleRange(min = 1, max = 700) double currentA,
            @ForAll @DoubleRange(min = 12, max = 96) double nominalV) {
        ConductorSizing.Result result = Circuits.steady(currentA)
                .supply(nominalV, nominalV * 1.14, 0.01)
                .size();
        FuseWindow fuse = Objects.requireNonNull(result.fuse());
        Candidate cable = Objects.requireNonNull(result.chosen());

        assertThat(fuse.upperA()).isLessThanOrEqualTo(1.5 * cable.ampacityA() / cable.parallel() * 1.000001);
        if (fuse.ratingA() != null) {
            assertThat(fuse.ratingA()).isBetween(fuse.lowerA(), Objects.requireNonNull(fuse.upperA()));
            assertThat(fuse.ratingA() * cable.parallel()).isGreaterThanOrEqualTo(1.25 * currentA * 0.999999);
        }
    }

    @Property(seed = "20261125", tries = 100)
    void aHotterPlaceAndAFullerBundleNeverAllowMore(
            @ForAll @DoubleRange(min = 30, max = 55) double ambientC,
            @ForAll @IntRange(min = 1, max = 60) int bundled,
            @ForAll AmpacityTable table,
            @ForAll SizeSeries series) {
        Circuits plain = Circuits.steady(1)
                .rated(table, 75, null)
                .supply(72.0, null, null)
                .sizes(series);
        double open = plain.size().candidates().get(3).ampacityA();

        assertThat(plain.ambient(ambientC).size().candidates().get(3).ampacityA())
                .isLessThanOrEqualTo(open);
        assertThat(plain.bundled(bundled).size().candidates().get(3).ampacityA())
                .isLessThanOrEqualTo(open);
        assertThat(plain.engineSpace().size().candidates().get(3).ampacityA()).isLessThan(open);
    }

    private static int indexOfFirstPass(List<Candidate> candidates) {
        int i = 0;
        while (!candidates.get(i).passes()) {
            i++;
        }
        return i;
    }
}
