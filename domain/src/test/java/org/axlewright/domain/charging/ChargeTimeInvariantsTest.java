package org.axlewright.domain.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.charging.ChargeCases.input;
import static org.axlewright.domain.charging.ChargeCases.outlet;
import static org.axlewright.domain.charging.ChargeCases.pack;
import static org.axlewright.domain.charging.ChargeCases.window;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.charging.ChargeTime.Charge;
import org.axlewright.domain.charging.ChargeTime.Draw;
import org.axlewright.domain.charging.ChargeTime.Input;
import org.axlewright.domain.charging.ChargeTime.Plate;
import org.axlewright.domain.charging.ChargeTime.Result;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.trace.Trace;

class ChargeTimeInvariantsTest {

    @Property(seed = "20261125")
    void twoChargesInARowTakeAsLongAsOne(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.98) double from,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double between,
            @ForAll @DoubleRange(min = 0.5, max = 200) double currentA) {
        double middle = from + (1 - from) * between;
        double whole = seconds(input(chemistry, 150, null, from, 1, currentA));
        double parts = seconds(input(chemistry, 150, null, from, middle, currentA))
                + seconds(input(chemistry, 150, null, middle, 1, currentA));
        assertThat(parts).isCloseTo(whole, within(1e-9 * whole));
    }

    /** From below the constant-voltage phase: inside it the time is a share of the charger's own timer, whatever the current was. */
    @Property(seed = "20261125")
    void moreCurrentNeverTakesLonger(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.80) double from,
            @ForAll @DoubleRange(min = 0.5, max = 200) double currentA,
            @ForAll @DoubleRange(min = 1, max = 3) double more) {
        double slow = seconds(input(chemistry, 150, null, from, 1, currentA));
        double fast = seconds(input(chemistry, 150, null, from, 1, currentA * more));
        assertThat(fast).isLessThanOrEqualTo(slow * (1 + 1e-12));
    }

    @Property(seed = "20261125")
    void sizeDoesNotMatterAtEqualRate(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.99) double from,
            @ForAll @DoubleRange(min = 0.01, max = 2) double rate,
            @ForAll @DoubleRange(min = 1, max = 50) double scale) {
        double small = seconds(input(chemistry, 20, null, from, 1, 20 * rate));
        double large = seconds(input(chemistry, 20 * scale, null, from, 1, 20 * scale * rate));
        assertThat(large).isCloseTo(small, within(1e-9 * small));
    }

    @Property(seed = "20261125")
    void theCurrentMeetsEveryLimitAndOneOfThemExactly(
            @ForAll @DoubleRange(min = 1, max = 100) double chargerA,
            @ForAll @DoubleRange(min = 1, max = 100) double packA,
            @ForAll @DoubleRange(min = 0.5, max = 40) double inputA,
            @ForAll @DoubleRange(min = 0.5, max = 200) double lengthM,
            @ForAll Outlet outlet,
            @ForAll @IntRange(min = 12, max = 24) int cells) {
        Cord cord = ChargeCases.cord(0.01, lengthM, 13);
        Mains plug = outlet(outlet);
        Input input = new Input(
                new ChargeTime.PackOnCharge(Chemistry.LFP, ChargeUnit.AMPERE_HOUR.toSi(100), 1, cells, packA, 25),
                new Plate(ChargerType.SWITCH_MODE, chargerA, null, 0.92, 0.98, inputA),
                window(Chemistry.LFP, 0.2, 1),
                new Mains(plug.outlet(), plug.voltageV(), null, null, 0, cord),
                null,
                null);
        Result result = ChargeTime.of(input, Trace.withoutWorking());
        Charge charge = Objects.requireNonNull(result.charge());
        Draw draw = Objects.requireNonNull(charge.draw());
        double supplyA = Objects.requireNonNull(result.supplyLimitA());
        double slack = 1 + 1e-9;
        assertThat(charge.packCurrentA()).isLessThanOrEqualTo(Math.min(chargerA, packA));
        assertThat(draw.currentA()).isLessThanOrEqualTo(Math.min(supplyA, inputA) * slack);
        assertThat(draw.peakCurrentA()).isBetween(draw.currentA() / slack, Math.min(supplyA, inputA) * slack);
        double voltageV = Objects.requireNonNull(plug.voltageV());
        double reachA = voltageV / (2 * 2 * lengthM * 0.01);
        double binding = switch (charge.limitedBy()) {
            case PACK -> charge.packCurrentA() / packA;
            case CHARGER_OUTPUT -> charge.packCurrentA() / chargerA;
            case CHARGER_INPUT -> draw.currentA() / inputA;
            case CORD -> draw.currentA() / Math.min(13, reachA);
            case OUTLET -> draw.currentA() / plug.outlet().continuousA().value();
        };
        assertThat(binding).isCloseTo(1, within(1e-9));
    }

    @Property(seed = "20261125")
    void whatIsDrawnIsChargedOrLost(
            @ForAll @DoubleRange(min = 1, max = 60) double chargerA,
            @ForAll @DoubleRange(min = 0.5, max = 100) double lengthM,
            @ForAll @DoubleRange(min = 0.5, max = 1) double efficiency,
            @ForAll @DoubleRange(min = 0.5, max = 1) double powerFactor) {
        Cord cord = ChargeCases.cord(0.01, lengthM, 13);
        Input input = new Input(
                pack(Chemistry.LFP, 100, 16),
                new Plate(ChargerType.SWITCH_MODE, chargerA, null, efficiency, powerFactor, null),
                window(Chemistry.LFP, 0.2, 1),
                new Mains(OutletRating.of(Outlet.NEMA_5_20), 120.0, null, null, 0, cord),
                null,
                null);
        Charge charge = Objects.requireNonNull(
                ChargeTime.of(input, Trace.withoutWorking()).charge());
        Draw draw = Objects.requireNonNull(charge.draw());
        double outputW = charge.packCurrentA()
                * 16
                * ChargeProfile.of(Chemistry.LFP).averageVoltageV().value();
        double atChargerW = outputW / efficiency;
        double lostW = Objects.requireNonNull(draw.cordLoss()).dropV() * draw.currentA() * powerFactor;
        assertThat(draw.powerW()).isCloseTo(atChargerW + lostW, within(1e-9 * draw.powerW()));
        double energyJ = Objects.requireNonNull(charge.energyJ());
        ChargeTime.Balance balance = Objects.requireNonNull(charge.balance());
        assertThat(balance.storedJ() + balance.packLossJ() + balance.chargerLossJ() + balance.cordLossJ())
                .isCloseTo(energyJ, within(1e-9 * energyJ));
        assertThat(balance.packLossJ()).isPositive();
        assertThat(balance.chargerLossJ()).isNotNegative();
        assertThat(balance.cordLossJ()).isNotNegative();
        double bulkShare = (0.95 - 0.2) / 0.8;
        assertThat(energyJ * bulkShare)
                .isCloseTo(draw.powerW() * charge.time().constantCurrentTimeS(), within(1e-9 * energyJ));
    }

    @Property(seed = "20261125")
    void otherLoadsAndTheBreakerOnlyEverLowerTheLimit(
            @ForAll Outlet outlet,
            @ForAll @DoubleRange(min = 1, max = 60) double breakerA,
            @ForAll @DoubleRange(min = 0, max = 60) double sharedA) {
        OutletRating rating = OutletRating.of(outlet);
        double alone = rating.continuousA().value();
        Mains circuit = new Mains(rating, null, breakerA, 0.8, sharedA, null);
        double limit = circuit.outletLimitA(Trace.withoutWorking());
        assertThat(limit).isBetween(0.0, alone);
        assertThat(limit).isLessThanOrEqualTo(Math.max(0, 0.8 * breakerA - sharedA));
    }

    @Property(seed = "20261125")
    void noCornerGivesAnythingButAFiniteAnswer(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0.1, max = 1e6) double capacityAh,
            @ForAll @DoubleRange(min = 0.1, max = 1000) double currentA,
            @ForAll @DoubleRange(min = 1, max = 1e5) double powerW,
            @ForAll @DoubleRange(min = 0.1, max = 300) double lengthM,
            @ForAll @IntRange(min = 1, max = 200) int cells) {
        Cord cord = ChargeCases.cord(0.03, lengthM, 13);
        Input input = new Input(
                pack(chemistry, capacityAh, cells),
                new Plate(ChargerType.LINE_FREQUENCY, currentA, powerW, 0.1, 0.1, null),
                window(chemistry, 0, 1),
                new Mains(OutletRating.of(Outlet.NEMA_14_50), 90.0, 200.0, 1.0, 0, cord),
                null,
                null);
        Charge charge =
                Objects.requireNonNull(ChargeTime.of(input, Trace.withWorking()).charge());
        Draw draw = Objects.requireNonNull(charge.draw());
        assertThat(charge.time().timeS()).isPositive().isFinite();
        assertThat(charge.packCurrentA()).isPositive().isFinite();
        assertThat(Objects.requireNonNull(charge.energyJ())).isPositive().isFinite();
        assertThat(draw.wantedA()).isPositive().isFinite();
        assertThat(Objects.requireNonNull(draw.cordLoss()).dropShare()).isBetween(0.0, 0.5 + 1e-12);
    }

    private static double seconds(Input input) {
        return Objects.requireNonNull(
                        ChargeTime.of(input, Trace.withoutWorking()).charge())
                .time()
                .timeS();
    }
}
