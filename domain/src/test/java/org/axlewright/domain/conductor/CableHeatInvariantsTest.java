package org.axlewright.domain.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What must hold of the heat of a cable whatever the numbers. */
class CableHeatInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();

    @Provide
    Arbitrary<List<Segment>> cycles() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 150),
                        Arbitraries.doubles().between(0.5, 2000))
                .as(Segment::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6)
                .filter(segments -> segments.stream().anyMatch(segment -> segment.currentA() > 1));
    }

    private static CableHeat cable(String awg, double ambientC, double bundle) {
        Conductor conductor = Conductor.of(ConductorSize.parse(awg + " AWG"));
        return new CableHeat(conductor.resistanceOhmPerM(75, SILENT), 75, conductor.areaM2(), 0.8e-3, ambientC, bundle);
    }

    /** Heat made in the copper is kept or given off. */
    @Property(tries = 300, seed = "20261125")
    void heatInIsHeatStoredAndLost(
            @ForAll("cycles") List<Segment> segments, @ForAll @DoubleRange(min = -20, max = 120) double startC) {
        CableHeat.Balance balance = cable("6", 25, 1).over(segments, startC);

        double turnover = balance.inJ() + Math.abs(balance.outJ()) + Math.abs(balance.storedJ());
        assertThat(balance.inJ()).isCloseTo(balance.outJ() + balance.storedJ(), within(1e-9 * turnover));
        assertThat(balance.inJ()).isPositive();
    }

    /** Over a repeated cycle nothing stays: what is made is given off, and the hottest moment lies between least and largest current. */
    @Property(tries = 200, seed = "20261125")
    void aRepeatedCycleKeepsNothing(@ForAll("cycles") List<Segment> segments) {
        CableHeat heat = cable("6", 25, 1);
        Cycle cycle = new Cycle(segments);
        double rms = cycle.rmsA(SILENT);
        CableHeat.Settled settled = heat.settled(cycle, rms, 1);
        OptionalDouble atPeak = heat.steadyC(cycle.peakA());
        if (settled == null) {
            assertThat(atPeak).isEmpty();
            return;
        }
        CableHeat.Balance balance = settled.balance();
        assertThat(balance.storedJ()).isCloseTo(0, within(1e-3 * balance.inJ() + 0.05));
        double air = 25 - 1e-6;
        assertThat(settled.hottestC()).isGreaterThan(air);
        atPeak.ifPresent(most -> assertThat(settled.hottestC()).isLessThanOrEqualTo(most + 0.01));
        assertThat(settled.hottestC()).isGreaterThanOrEqualTo(settled.peakStartC() - 1e-9);
    }

    /** A cycle short against the time constant warms the cable as its RMS current does; a long one as its largest. */
    @Property(tries = 100, seed = "20261125")
    void shortCyclesFollowTheRmsCurrentLongOnesThePeak(
            @ForAll @DoubleRange(min = 5, max = 120) double a, @ForAll @DoubleRange(min = 0, max = 120) double b) {
        CableHeat heat = cable("6", 30, 1);
        Cycle brief = new Cycle(List.of(new Segment(a, 0.5), new Segment(b, 0.5)));
        double rms = brief.rmsA(SILENT);
        assertThat(Objects.requireNonNull(heat.settled(brief, rms, 1)).hottestC())
                .isCloseTo(heat.steadyC(rms).orElseThrow(), within(0.3));
        Cycle lasting = new Cycle(List.of(new Segment(a, 50_000), new Segment(b, 50_000)));
        assertThat(Objects.requireNonNull(heat.settled(lasting, rms, 1)).hottestC())
                .isCloseTo(heat.steadyC(Math.max(a, b)).orElseThrow(), within(0.01));
    }

    /** The time to a temperature is never shorter than if no heat left the copper, and longer from a colder start. */
    @Property(tries = 200, seed = "20261125")
    void heatThatLeavesTakesTime(
            @ForAll @DoubleRange(min = 150, max = 900) double currentA,
            @ForAll @DoubleRange(min = 30, max = 90) double startC) {
        CableHeat heat = cable("6", 30, 1);
        double area = Conductor.of(ConductorSize.parse("6 AWG")).areaM2();
        OptionalDouble time = heat.timeS(currentA, startC, 105);
        if (time.isEmpty()) {
            assertThat(heat.steadyC(currentA).orElseThrow()).isLessThanOrEqualTo(105.001);
            return;
        }
        assertThat(time.getAsDouble())
                .isGreaterThan(0.97 * Adiabatic.timeS(currentA, area, Adiabatic.constant(startC, 105)));
        heat.timeS(currentA, startC - 5, 105)
                .ifPresent(colder -> assertThat(colder).isGreaterThan(time.getAsDouble()));
    }

    /** The quadrature of the time and the step-by-step solution of the same equation meet. */
    @Property(tries = 100, seed = "20261125")
    void theTimeToATemperatureLeadsThere(@ForAll @DoubleRange(min = 200, max = 900) double currentA) {
        CableHeat heat = cable("6", 30, 1);
        double time = heat.timeS(currentA, 40, 105).orElseThrow();
        assertThat(heat.over(List.of(new Segment(currentA, time)), 40).endC()).isCloseTo(105, within(0.3));
    }

    @Property(tries = 200, seed = "20261125")
    void hotterAirBundlesAndThinnerCopperMakeItHotter(
            @ForAll @DoubleRange(min = 10, max = 110) double currentA,
            @ForAll @DoubleRange(min = -20, max = 60) double airC) {
        double alone = cable("6", airC, 1).steadyC(currentA).orElseThrow();
        cable("6", airC + 5, 1).steadyC(currentA).ifPresent(t -> assertThat(t).isGreaterThan(alone));
        cable("6", airC, 0.7).steadyC(currentA).ifPresent(t -> assertThat(t).isGreaterThan(alone));
        cable("8", airC, 1).steadyC(currentA).ifPresent(t -> assertThat(t).isGreaterThan(alone));
        assertThat(alone).isGreaterThan(airC);
    }

    /** At the corners of what can be sent nothing is neither number nor nothing. */
    @Test
    void extremesGiveANumberOrNothing() {
        for (double air : new double[] {-60, 150}) {
            for (double wall : new double[] {0.1e-3, 10e-3}) {
                for (String size : new String[] {"18", "4/0"}) {
                    Conductor conductor = Conductor.of(ConductorSize.parse(size + " AWG"));
                    CableHeat heat = new CableHeat(
                            conductor.resistanceOhmPerM(75, SILENT), 75, conductor.areaM2(), wall, air, 0.35);
                    for (double current : new double[] {0.01, 5000}) {
                        for (double duration : new double[] {0.01, 86_400}) {
                            Cycle cycle = new Cycle(List.of(new Segment(current, duration), new Segment(0, 86_400)));
                            CableHeat.Settled settled = heat.settled(cycle, cycle.rmsA(SILENT), 1);
                            if (settled != null) {
                                assertThat(settled.hottestC()).isBetween(air - 0.01, CableHeat.ENDS_C);
                            }
                            heat.timeS(current, -60, 200)
                                    .ifPresent(seconds ->
                                            assertThat(seconds).isFinite().isPositive());
                        }
                    }
                }
            }
        }
    }
}
