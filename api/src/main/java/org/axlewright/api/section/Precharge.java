package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.precharge.Closer;
import org.axlewright.domain.precharge.PrechargePart;
import org.axlewright.domain.precharge.Suppression;
import org.axlewright.domain.quantity.Capacitance;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Inductance;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** The path that fills the controller's capacitor before the main contactor closes. */
@Schema(
        description =
                "The path that fills the capacitor behind the main contactor before it closes, and the contactor's coil. Its voltage is the pack's at full charge.")
public record Precharge(
        @Schema(
                description =
                        "Capacitance of everything behind the contactor; that of `drive/controller` when left out, else from `measured`.")
        @Within(min = 0.1, max = 1_000_000, unit = "uF")
        @Nullable
        Capacitance capacitance,

        @Schema(description = "The part in the path; chosen when left out.") @Valid @Nullable
        Resistor resistor,

        @Schema(
                description =
                        "Share of the full-charge voltage at which the contactor may close, 0 to 1; 0.95 when left out.")
        @DecimalMin("0.5")
        @DecimalMax("0.9999")
        @Nullable
        Double closingShare,

        @Schema(description = "Time after which the path is opened.")
        @Within(min = 0.001, max = 3600, unit = "s")
        @Nullable
        Time timeout,

        @Schema(description = "Largest current the path may carry: relay, wiring, fuse.")
        @Within(min = 0.001, max = 5000, unit = "A")
        @Nullable
        Current currentLimit,

        @Schema(description = "How often it is repeated.") @Valid @Nullable
        Attempts attempts,

        @Schema(description = "A load that draws while the capacitor fills.") @Valid @Nullable
        HeldLoad heldLoad,

        @Schema(description = "A reading that tells an unknown capacitance.") @Valid @Nullable
        CapacitorReading measured,

        @ArraySchema(arraySchema = @Schema(description = "Everything that can close the main contactor."))
        @Size(max = 10)
        @Nullable
        List<Closer> closedBy,

        @Schema(description = "Coil of the main contactor.") @Valid @Nullable
        Coil coil) {

    /** The part in the path. */
    @Schema(name = "PrechargeResistor", description = "The part in the path.")
    public record Resistor(
            @Schema(description = "What it is; a resistor when left out.") @Nullable
            PrechargePart part,

            @Schema(description = "Its resistance, hot.") @Within(min = 0.001, max = 1_000_000, unit = "ohm") @Nullable
            Resistance resistance,

            @Schema(description = "Power it may take for as long as you like.")
            @Within(min = 0.01, max = 100_000, unit = "W")
            @Nullable
            Power powerRating,

            @Schema(description = "Energy it may take at once.")
            @Within(min = 0.001, max = 10_000_000, unit = "J")
            @Nullable
            Energy pulseEnergy) {}

    /** Repeated precharges. */
    @Schema(name = "PrechargeAttempts", description = "So many precharges in so much time.")
    public record Attempts(
            @Schema(description = "How many.") @Min(1) @Max(10_000) @Nullable
            Integer count,

            @Schema(description = "In this time.") @Within(min = 0.1, max = 86_400, unit = "s") @Nullable
            Time period) {}

    /** A load that draws meanwhile. */
    @Schema(
            name = "PrechargeLoad",
            description = "A load that draws while the capacitor fills: constant `power` or `resistance`.")
    public record HeldLoad(
            @Schema(description = "Constant power.") @Within(min = 0.01, max = 100_000, unit = "W") @Nullable
            Power power,

            @Schema(description = "Resistance.") @Within(min = 0.001, max = 1_000_000, unit = "ohm") @Nullable
            Resistance resistance) {}

    /** A reading on the capacitor. */
    @Schema(
            description =
                    "Reading on a capacitor that fills from empty through a known resistance, as an oscilloscope shows it.")
    public record CapacitorReading(
            @Schema(description = "Resistance in the path.")
            @Within(min = 0.001, max = 1_000_000, unit = "ohm")
            @Nullable
            Resistance resistance,

            @Schema(description = "Time from the start.") @Within(min = 1e-6, max = 3600, unit = "s") @Nullable
            Time time,

            @Schema(
                    description =
                            "Share of the final voltage reached then, 0 to 1; one time constant, 0.632, when left out.")
            @DecimalMin("0.01")
            @DecimalMax("0.9999")
            @Nullable
            Double share) {}

    /** Coil of the contactor. */
    @Schema(name = "ContactorCoil", description = "Coil of the main contactor.")
    public record Coil(
            @Schema(description = "Inductance.") @Within(min = 0.001, max = 1_000_000, unit = "mH") @Nullable
            Inductance inductance,

            @Schema(description = "Resistance of the winding; or `current`.")
            @Within(min = 0.01, max = 1_000_000, unit = "ohm")
            @Nullable
            Resistance resistance,

            @Schema(description = "Steady current; or `resistance`.")
            @Within(min = 0.0001, max = 100, unit = "A")
            @Nullable
            Current current,

            @Schema(description = "Voltage of its supply.") @Within(min = 1, max = 1000, unit = "V") @Nullable
            Voltage supplyVoltage,

            @Schema(description = "Time in which the switch interrupts the current.")
            @Within(min = 1e-6, max = 10, unit = "s")
            @Nullable
            Time openingTime,

            @Schema(description = "What takes the coil's energy.") @Nullable
            Suppression suppression,

            @Schema(
                    description =
                            "Voltage of the suppressor across the coil; 0.8 V for a diode, twice the supply otherwise, when left out.")
            @Within(min = 0.1, max = 5000, unit = "V")
            @Nullable
            Voltage clampVoltage) {}
}
