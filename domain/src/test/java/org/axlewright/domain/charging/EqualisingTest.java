package org.axlewright.domain.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** Expected values worked by hand from ZVEI leaflet 14 (3 Ah split 1 g of water) and EN IEC 62485-3 (0.055 m3/Ah). */
class EqualisingTest {

    private static final Equalising TWO_HOURS_AT_6_A =
            Equalising.of(new EqualisingPlan(TimeUnit.HOUR.toSi(2), 6), 24, 0.85, Trace.withoutWorking());

    @Test
    void splitsAGramOfWaterForEveryThreeAmpereHoursInEachCell() {
        assertThat(TWO_HOURS_AT_6_A.chargeC()).isCloseTo(ChargeUnit.AMPERE_HOUR.toSi(12), within(1e-9));
        assertThat(TWO_HOURS_AT_6_A.waterKg()).isCloseTo(24 * 0.004, within(1e-12));
    }

    @Test
    void standsAboveSixtyVoltOnATwentyFourCellPack() {
        assertThat(TWO_HOURS_AT_6_A.voltageV()).isCloseTo(63.36, within(1e-9)); // 24 cells at 2.64 V
        assertThat(TWO_HOURS_AT_6_A.mainsEnergyJ())
                .isCloseTo(EnergyUnit.WATT_HOUR.toSi(12 * 63.36 / 0.85), within(1e-6));
    }

    @Test
    void needsAirForAllOfItsCurrent() {
        assertThat(TWO_HOURS_AT_6_A.ventilation().airFlowM3PerS() * 3600)
                .isCloseTo(7.92, within(1e-9)); // 0.055 x 24 x 6
    }

    @Test
    void leadAcidWantsMoreVoltageInTheColdAndLithiumTheSame() {
        assertThat(24 * ChargeTemperature.compensationV(Chemistry.FLOODED, 0)).isCloseTo(2.4, within(1e-9));
        assertThat(24 * ChargeTemperature.compensationV(Chemistry.AGM, 35)).isCloseTo(-0.96, within(1e-9));
        assertThat(ChargeTemperature.compensationV(Chemistry.LFP, 0)).isZero();
    }
}
