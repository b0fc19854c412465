package org.axlewright.api.charging;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.charging.LimitedBy;
import org.axlewright.domain.quantity.Area;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.axlewright.domain.quantity.VolumeFlow;
import org.jspecify.annotations.Nullable;

/** How long a charge takes and what it asks of outlet and cord. Of a charge that must not be made only {@code supplyLimit} is told. */
@Schema(
        description =
                "How long a charge takes, what sets the current, and what it asks of outlet and cord. Of a charge that must not be made (below freezing, nothing left on the circuit) only `supplyLimit` is told.")
public record ChargeTimeResult(
        @Schema(description = "Charging time, both phases, h.") @Nullable
        Time time,

        @Schema(
                description =
                        "At full current (or power), up to the gassing point of lead-acid or the end voltage of lithium, h.")
        @Nullable
        Time constantCurrentTime,

        @Schema(description = "At constant voltage with falling current (absorption), h.") @Nullable
        Time constantVoltageTime,

        @Schema(description = "Current into the pack in the first phase, A.") @Nullable
        Current packCurrent,

        @Schema(description = "Mains current at the mean charging voltage, A.") @Nullable
        Current mainsCurrent,

        @Schema(description = "Mains current at the end of the first phase, where the pack's voltage is highest, A.")
        @Nullable
        Current peakMainsCurrent,

        @Schema(description = "What outlet, circuit and cord leave for hours of charging, A, whether or not it binds.")
        @Nullable
        Current supplyLimit,

        @Schema(description = "Power at the outlet in the first phase, cord included, W.") @Nullable
        Power mainsPower,

        @Schema(description = "Energy at the outlet for the whole charge, cord included, Wh.") @Nullable
        Energy mainsEnergy,

        @Schema(description = "Cost of that energy, in the currency of the price, not rounded to cents.") @Nullable
        Money cost,

        @Schema(
                description =
                        "What sets the charging current; of equals the first of pack, charger-output, charger-input, cord, outlet.")
        @Nullable
        LimitedBy limitedBy,

        @Schema(description = "Voltage lost in the cord, out and back, V.") @Nullable
        Voltage cordDrop,

        @Schema(description = "Share of the mains voltage lost in the cord, 0 to 0.5.") @Nullable
        Double cordDropShare,

        @Schema(description = "Heat in the cord, W.") @Nullable
        Power cordHeat,

        @Schema(description = "Air for the hydrogen of lead-acid; absent for lithium.") @Nullable
        Air ventilation,

        @Schema(
                description =
                        "Voltage of the pack at the end of the first phase, at its temperature, V: lead-acid wants less when warm.")
        @Nullable
        Voltage endVoltage,

        @Schema(description = "Where `mainsEnergy` goes; the parts add up to it.") @Nullable
        EnergyBalance energy,

        @Schema(description = "The equalising charge after it; flooded lead-acid only.") @Nullable
        Equalised equalising) {

    /** Where the energy from the mains goes. */
    @Schema(name = "ChargeEnergy", description = "Where the energy from the mains goes, Wh; the parts add up.")
    public record EnergyBalance(
            @Schema(description = "Stored: what comes out again at the nominal voltage.")
            Energy stored,

            @Schema(description = "Lost in the cells.") Energy packLoss,

            @Schema(description = "Lost in the charger.") Energy chargerLoss,

            @Schema(description = "Lost in the cord.") Energy cordLoss) {}

    /** An equalising charge. */
    @Schema(description = "An equalising charge: time, voltage, what it draws, and the water it splits.")
    public record Equalised(
            @Schema(description = "How long, h.") Time time,

            @Schema(description = "Voltage of the pack meanwhile, V.")
            Voltage voltage,

            @Schema(description = "Charge put through, Ah.") Charge charge,

            @Schema(description = "Energy at the charger's input, Wh; not in `mainsEnergy`.")
            Energy mainsEnergy,

            @Schema(description = "Water split into gas, all cells, kg or lb.")
            Mass water,

            @Schema(description = "Air it needs meanwhile.") Air ventilation) {}

    /** Air that a room needs while lead-acid is charged in it. */
    @Schema(name = "ChargeVentilation", description = "Air that a room needs while lead-acid is charged in it.")
    public record Air(
            @Schema(description = "Air flow, m3/h or cfm.") VolumeFlow airFlow,

            @Schema(description = "Free area of each of two openings, air in and air out, mm2.")
            Area opening) {}
}
