package org.axlewright.domain.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.fit.FitCases.check;
import static org.axlewright.domain.fit.FitCases.controller;
import static org.axlewright.domain.fit.FitCases.discharge;
import static org.axlewright.domain.fit.FitCases.pack;
import static org.axlewright.domain.fit.FitCases.with;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.fit.FitInput.Charger;
import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.pack.AtTemperature;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any parts. */
class PackFitInvariantsTest {

    @Property(seed = "20261125")
    void theWorstPairDecidesAndStandsFirst(
            @ForAll Chemistry chemistry,
            @ForAll @IntRange(min = 1, max = 200) int cells,
            @ForAll @DoubleRange(min = 1, max = 1000) double mostV,
            @ForAll @DoubleRange(min = 1, max = 1000) double endV,
            @ForAll @DoubleRange(min = 1, max = 5000) double currentA) {
        FitResult result = FitCases.of(new FitInput(
                pack(chemistry, cells, 0.01, 20.0, discharge(100.0, 200.0), null),
                controller(currentA, 1, mostV),
                null,
                null,
                new Charger(endV, chemistry, 20.0, 10.0, null),
                null,
                null,
                null));

        Verdict worst = Verdict.FITS;
        for (FitPair pair : result.pairs()) {
            for (FitCheck check : pair.checks()) {
                worst = worst.worse(check.verdict());
                assertThat(check.verdict().compareTo(pair.verdict())).isLessThanOrEqualTo(0);
            }
        }
        assertThat(result.verdict()).isEqualTo(worst);
        assertThat(result.pairs().get(0).verdict()).isEqualTo(worst);
        assertThat(result.pairs())
                .isSortedAccordingTo((one, other) -> other.verdict().compareTo(one.verdict()));
    }

    @Property(seed = "20261125")
    void aCellMoreNeverFitsAHighestVoltageBetter(
            @ForAll Chemistry chemistry,
            @ForAll @IntRange(min = 1, max = 199) int cells,
            @ForAll @DoubleRange(min = 5, max = 900) double mostV) {
        Verdict fewer = check(FitCases.of(with(pack(chemistry, cells), controller(50.0, 1, mostV))), "full-voltage")
                .verdict();
        Verdict more = check(FitCases.of(with(pack(chemistry, cells + 1), controller(50.0, 1, mostV))), "full-voltage")
                .verdict();

        assertThat(more.compareTo(fewer)).isGreaterThanOrEqualTo(0);
    }

    @Property(seed = "20261125")
    void moreCurrentNeverFitsBetter(
            @ForAll @DoubleRange(min = 1, max = 1000) double one,
            @ForAll @DoubleRange(min = 1, max = 1000) double other,
            @ForAll @DoubleRange(min = 1, max = 500) double continuousA,
            @ForAll @DoubleRange(min = 1, max = 3) double peakFactor) {
        Limits limits = discharge(continuousA, continuousA * peakFactor);
        Pack pack = pack(Chemistry.LFP, 16, null, null, limits, null);
        Verdict less = check(FitCases.of(with(pack, controller(Math.min(one, other), 20, 80))), "battery-current")
                .verdict();
        Verdict more = check(FitCases.of(with(pack, controller(Math.max(one, other), 20, 80))), "battery-current")
                .verdict();

        assertThat(more.compareTo(less)).isGreaterThanOrEqualTo(0);
    }

    @Property(seed = "20261125")
    void sagIsCurrentTimesResistanceAndLiftsAsMuchAsItLowers(
            @ForAll @IntRange(min = 8, max = 24) int cells,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double ohm,
            @ForAll @DoubleRange(min = 1, max = 400) double currentA) {
        FitResult result = FitCases.of(with(
                pack(Chemistry.LFP, cells, ohm, null, Limits.NONE, null),
                new Controller(currentA, null, 10.0, 200.0, null, true, currentA)));

        assertThat(result.voltages().nominalV() - result.voltages().loadedV()).isCloseTo(currentA * ohm, within(1e-9));
        assertThat(result.voltages().regeneratingV() - result.voltages().fullV())
                .isCloseTo(currentA * ohm, within(1e-9));
    }

    @Property(seed = "20261125")
    void marginsAreZeroAtTheLimitAndFall(
            @ForAll @DoubleRange(min = 10, max = 500) double limitA,
            @ForAll @DoubleRange(min = 0.1, max = 3) double factor) {
        Pack pack = pack(Chemistry.LFP, 16, null, null, FitCases.charge(limitA), null);
        FitCheck check = check(
                FitCases.of(with(pack, new Charger(56.8, Chemistry.LFP, null, limitA * factor, null))),
                "charge-current");

        assertThat(check.margin()).isCloseTo(1 - factor, within(1e-9));
        assertThat(check.verdict() == Verdict.FITS).isEqualTo(factor <= 1 + 1e-9);
    }

    @Property(seed = "20261125")
    void coldNeverAllowsMoreThanThePlainLimit(@ForAll @DoubleRange(min = -20, max = 55) double celsius) {
        Limits limits = new Limits(160.0, null, null, 80.0, null, null, ROWS, null, null, null);
        FitResult result =
                FitCases.of(with(pack(Chemistry.LFP, 23, null, celsius, limits, null), FitCases.braking(70, 110)));

        assertThat(result.currents().chargeLimitA()).isBetween(0.0, 80.0);
        assertThat(result.currents().continuousLimitA()).isBetween(80.0, 160.0);
    }

    private static final List<AtTemperature> ROWS = List.of(
            new AtTemperature(-20, 0.0, 80.0),
            new AtTemperature(0, 16.0, 160.0),
            new AtTemperature(10, 80.0, 160.0),
            new AtTemperature(55, 40.0, 120.0));

    @Test
    void takesTheLesserOfTwoRowsAndNothingOutsideThem() {
        Limits limits = new Limits(160.0, null, null, 80.0, null, null, ROWS, null, null, null);

        assertThat(chargeLimit(limits, 5)).isEqualTo(16.0);
        assertThat(chargeLimit(limits, 10)).isEqualTo(80.0);
        assertThat(chargeLimit(limits, -5)).isEqualTo(0.0);
        assertThat(chargeLimit(limits, 30)).isEqualTo(40.0);
        FitResult beyond =
                FitCases.of(with(pack(Chemistry.LFP, 23, null, -25.0, limits, null), FitCases.braking(70, 110)));
        assertThat(beyond.currents().chargeLimitA()).isNull();
        assertThat(check(beyond, "regeneration-current").missing()).containsExactly("/pack/limits/byTemperature");
    }

    private static Double chargeLimit(Limits limits, double celsius) {
        return FitCases.of(with(pack(Chemistry.LFP, 23, null, celsius, limits, null), (Controller) null))
                .currents()
                .chargeLimitA();
    }

    @Test
    void asksForTheBatterySideWhereOnlyTheMotorSideIsKnown() {
        Pack pack = pack(Chemistry.LFP, 16, null, null, discharge(100.0, 200.0), null);
        Controller motorSide = new Controller(null, 400.0, 20.0, 80.0, null, false, null);
        FitCheck check = check(FitCases.of(with(pack, motorSide)), "battery-current");

        assertThat(check.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(check.missing()).containsExactly("/drive/controller/batteryCurrent");
        assertThat(FitCases.findings(with(pack, motorSide))).contains("which-side-of-the-controller");
        assertThat(check(
                                FitCases.of(with(pack, new Controller(null, 90.0, 20.0, 80.0, null, false, null))),
                                "battery-current")
                        .verdict())
                .as("the battery side never carries more than the motor side")
                .isEqualTo(Verdict.FITS);
    }

    @Test
    void brakingOverTheChargeLimitDoesNotFit() {
        Pack pack = pack(Chemistry.LFP, 16, null, null, FitCases.charge(20), null);

        assertThat(check(FitCases.of(with(pack, FitCases.braking(60, 80))), "regeneration-current")
                        .verdict())
                .isEqualTo(Verdict.DOES_NOT_FIT);
        assertThat(FitCases.findings(with(pack, FitCases.braking(60, 60))))
                .contains("regeneration-over-charge-limit", "little-room-for-spikes", "regeneration-into-full-pack");
    }

    @Test
    void everyMarginCanBeReckonedAgainFromTheWorking() {
        Trace trace = Trace.withWorking();
        PackFit.of(
                with(pack(Chemistry.LFP, 16, 0.008, 18.0, discharge(120.0, 250.0), null), controller(180.0, 24, 62)),
                trace);
        long margins = trace.lines().stream()
                .filter(line -> line.step().symbol().equals("m"))
                .peek(line -> {
                    double actual = line.terms().get(0).value();
                    double limit = line.terms().get(1).value();
                    double left = line.step().formula().contains("(L - a)") ? limit - actual : actual - limit;
                    assertThat(line.value()).isCloseTo(left / limit, within(1e-12));
                })
                .count();

        assertThat(margins).isGreaterThanOrEqualTo(4);
    }
}
