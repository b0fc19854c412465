package org.axlewright.domain.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.axlewright.domain.charging.ChargeCases.hours;
import static org.axlewright.domain.charging.ChargeCases.input;
import static org.axlewright.domain.charging.ChargeCases.outlet;
import static org.axlewright.domain.charging.ChargeCases.pack;
import static org.axlewright.domain.charging.ChargeCases.window;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.charging.ChargeTime.Charge;
import org.axlewright.domain.charging.ChargeTime.Input;
import org.axlewright.domain.charging.ChargeTime.PackOnCharge;
import org.axlewright.domain.charging.ChargeTime.Plate;
import org.axlewright.domain.charging.ChargeTime.Result;
import org.axlewright.domain.charging.ChargeTime.Window;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.quantity.VolumeFlowUnit;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChargeTimePublishedTest {

    private static final String CHECKS = "/charging/checks.csv";

    private static List<Case> leadAcidTimes() {
        return PublishedChecks.read(CHECKS, "lead-acid time");
    }

    @ParameterizedTest
    @MethodSource("leadAcidTimes")
    void takesAsLongAsTheManualPrints(Case one) {
        double factor = one.inputs().containsKey("charge_factor")
                ? one.in("charge_factor")
                : ChargeProfile.of(Chemistry.FLOODED).chargeFactor().value();
        Input input = new Input(
                pack(Chemistry.FLOODED, one.in("c"), null),
                ChargeCases.current(one.in("i")),
                new Window(0, 1, factor, TimeUnit.HOUR.toSi(one.in("t_absorption"))),
                null,
                null,
                null);
        Charge charge = charge(input);
        one.check("t_bulk", hours(charge.time().constantCurrentTimeS()));
        one.check("t_full", hours(charge.time().timeS()));
        assertThat(charge.limitedBy()).isEqualTo(LimitedBy.CHARGER_OUTPUT);
    }

    private static List<Case> supplyLimited() {
        return PublishedChecks.read(CHECKS, "supply limited");
    }

    @ParameterizedTest
    @MethodSource("supplyLimited")
    void anOutletHoldsTheCurrentBack(Case one) {
        Charge charge = charge(lfpOnOutlet(one, Outlet.NEMA_5_15, 100));
        double packVoltage = one.in("cells")
                * ChargeProfile.of(Chemistry.LFP).averageVoltageV().value();
        one.check("v_pack", packVoltage);
        one.check("i_dc", charge.packCurrentA());
        one.check("p_dc", charge.packCurrentA() * packVoltage);
        one.check("t_cc", hours(charge.time().constantCurrentTimeS()));
        one.check("t", hours(charge.time().timeS()));
        assertThat(charge.limitedBy()).isEqualTo(LimitedBy.OUTLET);
        assertThat(Objects.requireNonNull(charge.draw()).currentA()).isEqualTo(12);
    }

    private static List<Case> chargerLimited() {
        return PublishedChecks.read(CHECKS, "charger limited");
    }

    @ParameterizedTest
    @MethodSource("chargerLimited")
    void aChargerHoldsTheCurrentBack(Case one) {
        Charge held = charge(lfpOnOutlet(one, Outlet.BS_1363, one.in("i_charger")));
        one.check("i_dc", held.packCurrentA());
        one.check("t_cc", hours(held.time().constantCurrentTimeS()));
        one.check("t", hours(held.time().timeS()));
        assertThat(held.limitedBy()).isEqualTo(LimitedBy.CHARGER_OUTPUT);
        one.check("i_outlet_dc", charge(lfpOnOutlet(one, Outlet.BS_1363, 100)).packCurrentA());
    }

    private static Input lfpOnOutlet(Case one, Outlet outlet, double chargerA) {
        return new Input(
                pack(Chemistry.LFP, one.in("c"), (int) one.in("cells")),
                new Plate(ChargerType.SWITCH_MODE, chargerA, null, one.in("eta"), one.in("pf"), null),
                window(Chemistry.LFP, one.in("from"), one.in("to")),
                outlet(outlet),
                null,
                null);
    }

    private static List<Case> tapers() {
        return PublishedChecks.read(CHECKS, "constant-voltage taper");
    }

    @ParameterizedTest
    @MethodSource("tapers")
    void theTaperTakesAsLongAsItsChargeNeeds(Case one) {
        ChargePhases phases = ChargePhases.of(
                1 - one.in("q_cv"),
                1 - one.in("q_cv"),
                1,
                ChargeUnit.AMPERE_HOUR.toSi(1),
                1,
                0,
                one.in("i0"),
                one.in("i_end"),
                Trace.withoutWorking());
        one.check("t_cv", hours(phases.constantVoltageTimeS()));
        assertThat(phases.constantCurrentTimeS()).isZero();
    }

    private static List<Case> receptacles() {
        return PublishedChecks.read(CHECKS, "receptacle limit");
    }

    @ParameterizedTest
    @MethodSource("receptacles")
    void anOutletCarriesFourFifthsForHours(Case one) {
        Outlet outlet = one.in("v") == 240
                ? Outlet.NEMA_14_30
                : one.in("receptacle") == 15 ? Outlet.NEMA_5_15 : Outlet.NEMA_5_20;
        Mains mains = new Mains(OutletRating.of(outlet), one.in("v"), one.in("circuit"), 0.8, 0, null);
        assertThat(OutletRating.of(outlet).ratedA().value()).isEqualTo(one.in("receptacle"));
        Input input = new Input(
                pack(Chemistry.LFP, 105, 16),
                new Plate(ChargerType.SWITCH_MODE, 500.0, null, 0.92, 1, null),
                window(Chemistry.LFP, 0, 1),
                mains,
                null,
                null);
        Result result = ChargeTime.of(input, Trace.withoutWorking());
        one.check("i_max", Objects.requireNonNull(result.supplyLimitA()));
        one.check("p", Objects.requireNonNull(result.charge()).draw().powerW());
    }

    @Test
    void aChargerAboveTheOutletIsWarnedOf() {
        for (Case one : PublishedChecks.read(CHECKS, "refuse: charger draw on a 15 A receptacle")) {
            Input input = new Input(
                    pack(Chemistry.LFP, 105, 16),
                    new Plate(ChargerType.SWITCH_MODE, 25.0, null, 0.92, 0.98, one.in("i_charger")),
                    window(Chemistry.LFP, 0, 1),
                    outlet(Outlet.NEMA_5_15),
                    null,
                    null);
            Trace trace = Trace.withoutWorking();
            Result result = ChargeTime.of(input, trace);
            one.check("i_max", Objects.requireNonNull(result.supplyLimitA()));
            Finding finding = finding("charger-above-outlet", trace);
            assertThat(one.outText("accept")).isEqualTo("false");
            assertThat(finding.level()).isEqualTo(Level.WARNING);
            assertThat(finding.actual().si()).isEqualTo(one.in("i_charger"));
        }
    }

    @Test
    void lithiumBelowFreezingIsGivenNoTime() {
        for (Case one : PublishedChecks.read(CHECKS, "refuse: LFP charge below freezing")) {
            PackOnCharge cold =
                    new PackOnCharge(Chemistry.LFP, ChargeUnit.AMPERE_HOUR.toSi(105), 1, 16, null, one.in("t"));
            Input input = new Input(
                    cold, ChargeCases.current(25), window(Chemistry.LFP, 0, 1), outlet(Outlet.NEMA_5_15), null, null);
            Trace trace = Trace.withoutWorking();
            Result result = ChargeTime.of(input, trace);
            assertThat(one.outText("accept")).isEqualTo("false");
            assertThat(result.charge()).isNull();
            assertThat(result.supplyLimitA()).isEqualTo(12);
            Finding finding = finding("lithium-charge-below-freezing", trace);
            assertThat(finding.level()).isEqualTo(Level.DANGER);
            assertThat(finding.limit().si()).isEqualTo(one.in("t_min_charge"));
        }
    }

    private static List<Case> cordPowers() {
        return PublishedChecks.read(CHECKS, "cord power");
    }

    @ParameterizedTest
    @MethodSource("cordPowers")
    void aCordHoldsThePowerBack(Case one) {
        ConductorSize size = ConductorSize.parse(one.inText("awg") + " AWG");
        Cord cord = Cord.of(size, Cord.UNMARKED_RATING_C, null, false).orElseThrow();
        assertThat(cord.ampacity().value()).isEqualTo(one.in("i"));
        Input input = new Input(
                pack(Chemistry.LFP, 105, 16),
                new Plate(ChargerType.SWITCH_MODE, 500.0, null, 0.92, 1, null),
                window(Chemistry.LFP, 0, 1),
                new Mains(OutletRating.of(Outlet.NEMA_TT_30), one.in("v"), null, null, 0, cord),
                null,
                null);
        Charge charge = charge(input);
        one.check("p", Objects.requireNonNull(charge.draw()).powerW());
        assertThat(charge.limitedBy()).isEqualTo(LimitedBy.CORD);
    }

    private static List<Case> cordDrops() {
        return PublishedChecks.read(CHECKS, "cord drop");
    }

    @ParameterizedTest
    @MethodSource("cordDrops")
    void aCordLosesVoltageOutAndBack(Case one) {
        Trace trace = Trace.withoutWorking();
        double loop = ChargeCases.cord(one.in("r") / 1000, one.in("l"), 20).loopResistanceOhm(trace);
        Cord.Loss loss = Cord.loss(one.in("i"), loop, one.in("v"), trace);
        one.check("drop", loss.dropV());
        one.check("heat", loss.heatW());
        one.check("share", loss.dropShare() * 100);
    }

    private static List<Case> airFlows() {
        return PublishedChecks.read(CHECKS, "ventilation, stationary", "finishing current");
    }

    @ParameterizedTest
    @MethodSource("airFlows")
    void airFlowFollowsFromTheGassingCurrent(Case one) {
        double gasA = one.inputs().containsKey("c") ? one.in("i_gas") / 1000 * one.in("c") : one.in("i_gas");
        Ventilation air = Ventilation.of((int) one.in("cells"), gasA, one.in("factor"), Trace.withoutWorking());
        one.check("q", VolumeFlowUnit.CUBIC_METRE_PER_HOUR.fromSi(air.airFlowM3PerS()));
        if (one.expected().containsKey("hydrogen")) {
            one.check("hydrogen", VolumeFlowUnit.CUBIC_METRE_PER_HOUR.fromSi(air.hydrogenM3PerS()));
        }
    }

    private static List<Case> traction() {
        return PublishedChecks.read(CHECKS, "ventilation, traction");
    }

    @ParameterizedTest
    @MethodSource("traction")
    void aVentedTractionPackNeedsAirAndAnOpening(Case one) {
        Charge charge = charge(input(Chemistry.FLOODED, one.in("c"), (int) one.in("cells"), 0, 1, 22));
        Ventilation air = Objects.requireNonNull(charge.ventilation());
        one.check("q", VolumeFlowUnit.CUBIC_METRE_PER_HOUR.fromSi(air.airFlowM3PerS()));
        one.check("opening", air.openingM2() * 1e4);
    }

    private static List<Case> freezingPoints() {
        return PublishedChecks.read(CHECKS, "freezing point");
    }

    @ParameterizedTest
    @MethodSource("freezingPoints")
    void acidFreezesAsTheManualsPrint(Case one) {
        one.check("t", ChargeTemperature.freezingPointC(one.in("soc")));
        assertThat(ChargeTemperature.forbids(Chemistry.FLOODED, one.out("t") - 0.5, one.in("soc")))
                .isTrue();
        assertThat(ChargeTemperature.forbids(Chemistry.FLOODED, one.out("t") + 0.5, one.in("soc")))
                .isFalse();
    }

    private static Charge charge(Input input) {
        return Objects.requireNonNull(
                ChargeTime.of(input, Trace.withoutWorking()).charge());
    }

    private static Finding finding(String code, Trace trace) {
        return trace.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
