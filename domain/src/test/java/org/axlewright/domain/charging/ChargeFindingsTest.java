package org.axlewright.domain.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.charging.ChargeCases.pack;
import static org.axlewright.domain.charging.ChargeCases.window;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.charging.ChargeTime.Charge;
import org.axlewright.domain.charging.ChargeTime.Input;
import org.axlewright.domain.charging.ChargeTime.PackOnCharge;
import org.axlewright.domain.charging.ChargeTime.Plate;
import org.axlewright.domain.charging.ChargeTime.Result;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ChargeFindingsTest {

    private static final OutletRating NEMA_5_15 = OutletRating.of(Outlet.NEMA_5_15);

    @Test
    void aCordThatIsTooThinIsADangerBecauseNoBreakerProtectsIt() {
        Trace trace = asked(25, new Mains(NEMA_5_15, 120.0, null, null, 0, ChargeCases.cord(0.001, 5, 10)));
        assertThat(level("charger-above-cord", trace)).isEqualTo(Level.DANGER);
        assertThat(codes(trace)).doesNotContain("cord-voltage-drop");
    }

    @Test
    void aLongCordLosesMoreThanFivePercent() {
        Trace trace = asked(20, new Mains(NEMA_5_15, 120.0, null, null, 0, ChargeCases.cord(0.0103, 60, 18)));
        assertThat(level("cord-voltage-drop", trace)).isEqualTo(Level.WARNING);
    }

    @Test
    void aChargerWithinEveryLimitRaisesNoFinding() {
        assertThat(codes(asked(18, new Mains(NEMA_5_15, 120.0, null, null, 0, null))))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"240,true", "120,false", "104,false", "100,true"})
    void aVoltageThatIsNotTheOutletsIsWarnedOf(double voltageV, boolean warned) {
        Trace trace = asked(18, new Mains(NEMA_5_15, voltageV, null, null, 0, null));
        assertThat(codes(trace).contains("voltage-not-of-outlet")).isEqualTo(warned);
    }

    @ParameterizedTest
    @CsvSource({"20,false", "30,true"})
    void aBreakerThatDoesNotProtectTheOutletIsWarnedOf(double breakerA, boolean warned) {
        Trace trace = asked(18, new Mains(NEMA_5_15, 120.0, breakerA, 0.8, 0, null));
        assertThat(codes(trace).contains("breaker-too-large-for-outlet")).isEqualTo(warned);
    }

    @Test
    void otherLoadsAreTakenOffTheCircuitAndNotOffTheOutlet() {
        Mains twenty = new Mains(NEMA_5_15, 120.0, 20.0, 0.8, 3, null);
        assertThat(twenty.outletLimitA(Trace.withoutWorking())).isEqualTo(12);
        Mains unknown = new Mains(NEMA_5_15, 120.0, null, null, 3, null);
        assertThat(unknown.outletLimitA(Trace.withoutWorking())).isEqualTo(9);
    }

    @Test
    void ofEqualLimitsThePackIsNamedFirst() {
        Input input = new Input(
                new PackOnCharge(Chemistry.LFP, ChargeUnit.AMPERE_HOUR.toSi(105), 1, 16, 18.0, 25),
                ChargeCases.current(18),
                window(Chemistry.LFP, 0, 1),
                null,
                null,
                null);
        assertThat(charge(input).limitedBy()).isEqualTo(LimitedBy.PACK);
    }

    @Test
    void aChargerOfConstantPowerGivesItsPowerAtTheMeanVoltage() {
        Input input = new Input(
                pack(Chemistry.LFP, 105, 16),
                new Plate(ChargerType.SWITCH_MODE, null, 1088.0, 0.92, 0.98, null),
                window(Chemistry.LFP, 0, 1),
                null,
                null,
                null);
        assertThat(charge(input).packCurrentA()).isEqualTo(20);
    }

    @Test
    void moneyIsReckonedInDecimal() {
        Input input = new Input(
                pack(Chemistry.LFP, 100, 16),
                new Plate(ChargerType.SWITCH_MODE, 20.0, null, 0.85, 0.98, null),
                window(Chemistry.LFP, 0, 1),
                null,
                new Money("0.25", "EUR"),
                null);
        Charge charge = charge(input);
        // 100 Ah at 54.4 V are 5.44 kWh, over 0.85 are 6.4 kWh
        assertThat(Objects.requireNonNull(charge.cost()).currency()).isEqualTo("EUR");
        assertThat(charge.cost().decimal().doubleValue()).isCloseTo(1.6, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Outlet.class)
    void everyOutletCarriesNoMoreForHoursThanItIsRatedFor(Outlet outlet) {
        OutletRating rating = OutletRating.of(outlet);
        assertThat(rating.continuousA().value()).isBetween(1.0, rating.ratedA().value());
        assertThat(rating.nominalVoltageV().value()).isIn(100.0, 120.0, 230.0, 240.0);
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void aPackInTheWarmMayBeCharged(Chemistry chemistry) {
        assertThat(ChargeTemperature.forbids(chemistry, 20, 0)).isFalse();
        assertThat(ChargeTemperature.forbids(chemistry, -60, 1)).isTrue();
    }

    private static Trace asked(double currentA, Mains mains) {
        Trace trace = Trace.withoutWorking();
        Input input = new Input(
                pack(Chemistry.LFP, 105, 16),
                ChargeCases.current(currentA),
                window(Chemistry.LFP, 0.2, 1),
                mains,
                null,
                null);
        Result result = ChargeTime.of(input, trace);
        assertThat(result.charge()).isNotNull();
        return trace;
    }

    private static Charge charge(Input input) {
        return Objects.requireNonNull(
                ChargeTime.of(input, Trace.withoutWorking()).charge());
    }

    private static List<String> codes(Trace trace) {
        return trace.findings().stream().map(Finding::code).toList();
    }

    private static Level level(String code, Trace trace) {
        return trace.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow()
                .level();
    }
}
