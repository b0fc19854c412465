package org.axlewright.api.precharge;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Capacitance;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** A precharge path: which resistor, how long, how hot. */
@Schema(
        description =
                "A precharge path. Everything holds at full charge. Figures of the path are of the resistor sent, else of the suggested one.")
public record PrechargeResult(
        @Schema(description = "Largest standard resistance that fits (IEC 60063, series E24), mohm.") @Nullable
        Resistance suggestedResistance,

        @Schema(
                description =
                        "Least usual power rating for it, W: stands the bus held at nothing for good. Left out above 2500 W.")
        @Nullable
        Power suggestedPowerRating,

        @Schema(description = "Least resistance that keeps the first current within `currentLimit`, mohm.") @Nullable
        Resistance leastResistance,

        @Schema(description = "Largest resistance that reaches `closingShare` in half the timeout, mohm.") @Nullable
        Resistance mostResistance,

        @Schema(description = "Resistance that the figures below hold for, mohm.") @Nullable
        Resistance resistance,

        @Schema(description = "Voltage of the pack at the end of a charge, V.")
        Voltage fullVoltage,

        @Schema(description = "Capacitance used, uF.") @Nullable
        Capacitance capacitance,

        @Schema(description = "Time constant, s.") @Nullable Time timeConstant,

        @Schema(description = "Time to 95 % of the full-charge voltage, s.") @Nullable
        Time timeTo95,

        @Schema(description = "Time to 99 % of the full-charge voltage, s.") @Nullable
        Time timeTo99,

        @Schema(description = "Time to `closingShare`, s.") @Nullable
        Time timeToClosing,

        @Schema(description = "Timeout used, s.") @Nullable Time timeout,

        @Schema(description = "Voltage left across the contacts when they close at the timeout, V.") @Nullable
        Voltage voltageLeft,

        @Schema(description = "Current at the first moment, A.") @Nullable
        Current peakCurrent,

        @Schema(description = "Power in the resistor at the first moment, W.") @Nullable
        Power peakPower,

        @Schema(description = "Heat in the resistor of one precharge, Wh, whatever its resistance.") @Nullable
        Energy pulseEnergy,

        @Schema(description = "Power in the resistor for as long as something holds the bus at nothing, W.") @Nullable
        Power holdPower,

        @Schema(description = "Heat in the resistor when that lasts until the timeout, Wh.") @Nullable
        Energy holdEnergy,

        @Schema(description = "Mean power of the repeated precharges, W.") @Nullable
        Power dutyPower,

        @Schema(description = "Current that the resistor bears for good, A.") @Nullable
        Current lastingCurrent,

        @Schema(description = "The bus with the load that draws meanwhile.") @Nullable
        Held held,

        @Schema(description = "The contactor's coil when it is switched off.") @Nullable
        CoilOff coil) {

    /** The bus with a load. */
    @Schema(name = "HeldBus", description = "The bus with the load that draws while the capacitor fills.")
    public record Held(
            @Schema(description = "Voltage at which it stays, V; 0 when the load holds it down.")
            Voltage voltage,

            @Schema(description = "The same as a share of the full-charge voltage, 0 to 1.")
            double share,

            @Schema(description = "Power in the resistor for as long as that lasts, W.")
            Power power) {}

    /** The coil. */
    @Schema(description = "The contactor's coil when it is switched off.")
    public record CoilOff(
            @Schema(description = "Steady current before, A.")
            Current current,

            @Schema(description = "Energy stored, Wh.") Energy energy,

            @Schema(description = "Voltage across the opening switch, V.") @Nullable
            Voltage peakVoltage,

            @Schema(
                    description =
                            "Time in which the current falls to nothing, s; the contactor opens somewhere within it.")
            @Nullable
            Time release) {}
}
