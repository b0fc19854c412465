package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.conductor.CircuitInput.Breaker;
import org.axlewright.domain.conductor.CircuitInput.Flat;
import org.axlewright.domain.conductor.CircuitInput.Stated;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fuse that is there against regulations, standards and worked cases. */
class FuseCheckPublishedTest {

    /** A curve for arithmetic by hand: on both logarithms straight, ten times faster for every factor 2^0.5 up to 400 A. */
    private static final List<FuseSent.Point> CURVE =
            List.of(new FuseSent.Point(200, 100), new FuseSent.Point(400, 1), new FuseSent.Point(4000, 0.01));

    private static Fuse fuse(double ratingA) {
        return new Fuse(ratingA, null, null, List.of(), null, null, null, false);
    }

    /** What is sent of a fuse, changed by one thing at a time. */
    private record Fuse(
            double ratingA,
            @Nullable Double voltageV,
            @Nullable Double interruptingA,
            List<FuseSent.Point> curve,
            @Nullable Double temperatureC,
            @Nullable Boolean perRun,
            @Nullable Double distanceM,
            boolean sheathed) {

        Fuse rated(@Nullable Double volts, @Nullable Double amperes) {
            return new Fuse(ratingA, volts, amperes, curve, temperatureC, perRun, distanceM, sheathed);
        }

        Fuse curve(List<FuseSent.Point> points) {
            return new Fuse(ratingA, voltageV, interruptingA, points, temperatureC, perRun, distanceM, sheathed);
        }

        Fuse at(double celsius) {
            return new Fuse(ratingA, voltageV, interruptingA, curve, celsius, perRun, distanceM, sheathed);
        }

        Fuse perRun(boolean each) {
            return new Fuse(ratingA, voltageV, interruptingA, curve, temperatureC, each, distanceM, sheathed);
        }

        Fuse placed(double metres, boolean inSheath) {
            return new Fuse(ratingA, voltageV, interruptingA, curve, temperatureC, perRun, metres, inSheath);
        }

        FuseSent sent() {
            return new FuseSent(ratingA, voltageV, interruptingA, curve, temperatureC, perRun, distanceM, sheathed);
        }
    }

    private static Stated size(String awg, int runs) {
        return new Stated(Conductor.of(ConductorSize.parse(awg + " AWG")), runs);
    }

    private static List<Finding> found(CircuitInput input) {
        Trace trace = Trace.withoutWorking();
        ConductorSizing.of(input, trace);
        return trace.findings();
    }

    private static List<String> codes(CircuitInput input) {
        return found(input).stream().map(Finding::code).toList();
    }

    private static FuseCheck.Verdict verdict(CircuitInput input) {
        return Objects.requireNonNull(
                ConductorSizing.of(input, Trace.withoutWorking()).verdict());
    }

    /** Source: 33 CFR 183.455(c): a fuse of 200 A on 4 AWG of 105 degC in an engine space, 136 A: 150 A at most from 50 V on, 204 A below. */
    @ParameterizedTest
    @CsvSource({"51.2, 58.4, true", "36, 44.1, false"})
    void theLargestFuseOfAGaugeDependsOnFiftyVolts(double nominalV, double fullV, boolean tooLarge) {
        CircuitInput input = Circuits.steady(100)
                .supply(nominalV, fullV, null)
                .engineSpace()
                .with(size("4", 1), null, List.of(), fuse(200).sent());

        assertThat(codes(input).contains("fuse-above-cable")).isEqualTo(tooLarge);
        double most = Objects.requireNonNull(Objects.requireNonNull(
                        ConductorSizing.of(input, Trace.withoutWorking()).fuse())
                .upperA());
        assertThat(most).isEqualTo(tooLarge ? 150 : 204, within(1e-9));
    }

    /** Source: ISO 8820-3 and -4, classes of 32 and 58 V; 16 cells of 3.65 V are 58.4 V (cell makers' data sheets). */
    @ParameterizedTest
    @CsvSource({"32, true", "58, true", "58.4, false", "125, false"})
    void theVoltageOfTheFuseIsHeldAgainstTheFullCharge(double volts, boolean refused) {
        CircuitInput input = Circuits.steady(100)
                .supply(51.2, 58.4, null)
                .with(
                        size("2", 1),
                        null,
                        List.of(),
                        fuse(150).rated(volts, null).sent());

        assertThat(codes(input).contains("fuse-voltage-below-full-charge")).isEqualTo(refused);
    }

    /** Source: an owner's case, a common bolt-down fuse breaks 2 kA and a cell of 400 Ah delivers about 4 kA; class T, 20 kA. */
    @ParameterizedTest
    @CsvSource({"1000, true", "2000, true", "20000, false"})
    void theInterruptingRatingIsHeldAgainstTheShortCircuit(double amperes, boolean bursts) {
        CircuitInput input = Circuits.steady(100)
                .supply(48.0, 54.75, 54.75 / 4000)
                .with(
                        size("2", 1),
                        null,
                        List.of(),
                        fuse(150).rated(125.0, amperes).sent());

        assertThat(codes(input).contains("interrupting-below-fault")).isEqualTo(bursts);
    }

    /** Source: 33 CFR 183.455(b): 7 in, 40 in where the conductor is sheathed all the way. */
    @ParameterizedTest
    @CsvSource({"0.177, false, false", "0.178, false, true", "1.016, true, false", "1.017, true, true"})
    void theFuseSitsAtTheSource(double metres, boolean sheathed, boolean tooFar) {
        CircuitInput input = Circuits.steady(100)
                .with(
                        size("2", 1),
                        null,
                        List.of(),
                        fuse(150).placed(metres, sheathed).sent());

        assertThat(codes(input).contains("fuse-too-far")).isEqualTo(tooFar);
    }

    /** Source: UL 248-14: 200 % of the rating opens within minutes; less may take an hour. A fault of 300 A on 150 A is the edge. */
    @ParameterizedTest
    @CsvSource({"0.10, true", "0.08, false"})
    void aFaultThatDrawsLessThanTwiceTheFuseMayLast(double coldOhm, boolean lasts) {
        // 24 V at cut-off; the cable of 1 m of 4/0, out and back, adds 0.44 milliohm
        CircuitInput input = Circuits.steady(100)
                .supply(30.0, 33.0, coldOhm)
                .with(size("4/0", 1), new Flat(30, 1), List.of(), fuse(150).sent());

        assertThat(codes(input).contains("fault-may-not-clear")).isEqualTo(lasts);
        assertThat(Objects.requireNonNull(verdict(input).leastFaultA())).isLessThan(30 / coldOhm);
    }

    /** By hand: 15 mohm flat and cold twice over, 10 m of 6 AWG out and back at 105 degC, 1.767 mohm/m (NEC Chapter 9 Table 8). */
    @Test
    void theLeastFaultIsThatOfTheFlatColdPackAndTheHotCable() {
        CircuitInput input = Circuits.steady(60)
                .supply(36.0, 43.8, 0.015)
                .drop(10, 0.5)
                .with(size("6", 1), new Flat(30, 2), List.of(), fuse(80).sent());

        assertThat(Objects.requireNonNull(verdict(input).leastFaultA()))
                .isCloseTo(30 / (0.030 + 20 * 0.001767), within(0.1));
    }

    /**
     * Source: a controller maker's note, a fuse of 100 A carries 200 A for two seconds. On the curve here 100 A is good for 100 s at 200 A: two
     * seconds use up a fiftieth.
     */
    @Test
    void aPeakTwiceTheRatingMayBeCarriedForSeconds() {
        Cycle hill = new Cycle(List.of(new Segment(200, 2), new Segment(40, 60)));
        CircuitInput input = Circuits.of(hill)
                .with(size("2", 1), null, List.of(), fuse(100).curve(CURVE).sent());

        assertThat(Objects.requireNonNull(verdict(input).peakShare())).isCloseTo(0.02, within(1e-12));
        assertThat(codes(input)).doesNotContain("peak-melts-fuse", "peak-above-fuse", "fuse-below-load");
    }

    /** By hand: 282.84 A is midway between 200 and 400 A on the logarithm, so 10 s; half a minute of it is three times too long. */
    @Test
    void aPeakThatOutlastsTheCurveMeltsTheFuse() {
        Cycle hill = new Cycle(List.of(new Segment(200 * Math.sqrt(2), 30), new Segment(0, 600)));
        CircuitInput input = Circuits.of(hill)
                .with(size("2/0", 1), null, List.of(), fuse(150).curve(CURVE).sent());

        assertThat(Objects.requireNonNull(verdict(input).peakShare())).isCloseTo(3, within(1e-9));
        assertThat(codes(input)).contains("peak-melts-fuse");
    }

    /** A peak that spans the end of the cycle is one peak: 6 s and 5 s of 282.84 A are 11 s against 10 s. */
    @Test
    void aPeakAcrossTheEndOfTheCycleIsCountedWhole() {
        double each = 200 * Math.sqrt(2);
        Cycle cycle = new Cycle(List.of(new Segment(each, 5), new Segment(20, 600), new Segment(each, 6)));
        CircuitInput input = Circuits.of(cycle)
                .with(size("2/0", 1), null, List.of(), fuse(150).curve(CURVE).sent());

        assertThat(Objects.requireNonNull(verdict(input).peakShare())).isCloseTo(1.1, within(1e-9));
        assertThat(codes(input)).contains("peak-melts-fuse");
    }

    /**
     * NEC 210.20(A): 100 A of continuous load take 125 A. A fuse of 110 A carries it without that margin, one of 90 A opens; at 65 degC a fifth
     * of the rating is lost [from memory], so that 125 A are 100 A and carry it just so, and 110 A are 88 A and open.
     */
    @ParameterizedTest
    @CsvSource({
        "125, 25, ''",
        "110, 25, fuse-without-margin",
        "90, 25, fuse-below-load",
        "125, 65, fuse-without-margin",
        "110, 65, fuse-below-load",
        "175, 65, ''"
    })
    void carryingTheLoadAndCarryingItForHoursAreTwoThings(double ratingA, double celsius, String code) {
        CircuitInput input = Circuits.steady(100)
                .with(size("2", 1), null, List.of(), fuse(ratingA).at(celsius).sent());

        assertThat(codes(input).stream()
                        .filter(found -> found.equals("fuse-below-load") || found.equals("fuse-without-margin")))
                .containsExactlyElementsOf(code.isEmpty() ? List.of() : List.of(code));
    }

    @Test
    void oneFuseForTwoRunsIsWarnedOf() {
        CircuitInput input = Circuits.steady(300)
                .with(size("1/0", 2), null, List.of(), fuse(400).perRun(false).sent());

        assertThat(codes(input)).contains("one-fuse-for-parallel-runs");
    }

    @Test
    void aFuseRatingIsNoTripCurrentAndACarryRatingNoMakeRating() {
        Breaker contactor = new Breaker("contactor", "/accessories/contactor/ratedCurrent", 200, null, null);
        CircuitInput input = Circuits.steady(100)
                .supply(36.0, 43.8, 0.010)
                .with(size("2", 1), null, List.of(contactor), fuse(150).sent());
        List<Finding> found = found(input);

        assertThat(found).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo("rating-is-no-trip-current");
            assertThat(Objects.requireNonNull(finding.limit()).si()).isEqualTo(1.35 * 150);
        });
        assertThat(found).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo("carry-rating-is-no-make-rating");
            assertThat(finding.pointer()).isEqualTo("/accessories/contactor/ratedCurrent");
            assertThat(Objects.requireNonNull(finding.limit()).si()).isEqualTo(4380, within(1e-9));
        });
    }

    /** A contactor good for 1500 A that opens after 0.1 s: the fuse melts in that time from 1265 A on, so it goes first in time. */
    @ParameterizedTest
    @CsvSource({"1500, 0.1, ''", "600, 0.1, breaker-before-fuse", "600, , fuse-before-breaker", "5000, 0.1, ''"})
    void theFuseMeltsBeforeTheContactorBreaksMoreThanItMay(double breaksA, @Nullable Double opensS, String code) {
        Breaker contactor = new Breaker("contactor", "/accessories/contactor/ratedCurrent", 200, breaksA, opensS);
        CircuitInput input = Circuits.steady(100)
                .supply(36.0, 43.8, 0.010)
                .with(
                        size("2", 1),
                        null,
                        List.of(contactor),
                        fuse(150).curve(CURVE).sent());

        assertThat(codes(input).stream().filter(found -> found.endsWith("breaker") || found.startsWith("breaker-")))
                .containsExactlyElementsOf(code.isEmpty() ? List.of() : List.of(code));
        assertThat(codes(input)).doesNotContain("carry-rating-is-no-make-rating");
    }

    /** Source: IEC 60949: at 1000 A 6 AWG of 105 degC stands a fault to 160 degC for 1.36 s (13.30 mm2, k = 87.6); this fuse takes a minute. */
    @Test
    void theFuseClearsBeforeTheCableBurns() {
        List<FuseSent.Point> slow = List.of(new FuseSent.Point(400, 600), new FuseSent.Point(4000, 6));
        CircuitInput input = Circuits.steady(60)
                .supply(36.0, 43.8, 0.015)
                .with(
                        size("6", 1),
                        new Flat(33.534, 2),
                        List.of(),
                        fuse(200).curve(slow).sent());

        assertThat(Objects.requireNonNull(verdict(input).leastFaultA())).isCloseTo(1000, within(1.0));
        assertThat(found(input)).anySatisfy(finding -> {
            assertThat(finding.code()).isEqualTo("cable-burns-before-fuse");
            assertThat(Objects.requireNonNull(finding.limit()).si()).isEqualTo(1.357, within(0.01));
            assertThat(Objects.requireNonNull(finding.actual()).si()).isEqualTo(96, within(0.5));
        });
    }

    /** A hot cable says nothing sure of its fuse, but says what to ask. */
    @Test
    void theFuseOfACableInTheHeatIsAskedForItsTemperature() {
        assertThat(codes(Circuits.steady(100).engineSpace().input())).contains("fuse-temperature-unknown");
        assertThat(codes(Circuits.steady(100).input())).doesNotContain("fuse-temperature-unknown");
        assertThat(codes(Circuits.steady(100)
                        .engineSpace()
                        .with(null, null, List.of(), fuse(175).at(50).sent())))
                .doesNotContain("fuse-temperature-unknown");
    }
}
