package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** From which to which state of charge. */
@Schema(
        name = "ChargeWindow",
        description = "State of charge at the start and at the end, 0 to 1, and how the charger gets there.")
public record ChargeWindow(
        @Schema(description = "State of charge at the start, 0 to 1.") @DecimalMin("0") @DecimalMax("1") @Nullable
        Double from,

        @Schema(description = "State of charge at the end, 0 to 1.") @DecimalMin("0") @DecimalMax("1") @Nullable
        Double to,

        @Schema(
                description =
                        "Charge put in for each charge taken out, 1 to 2; the chemistry's usual value when left out.")
        @DecimalMin("1")
        @DecimalMax("2")
        @Nullable
        Double factor,

        @Schema(
                description =
                        "The charger's own time at constant voltage (absorption) up to full; the chemistry's usual value when left out.")
        @Within(min = 0, max = 48, unit = "h")
        @Nullable
        Time constantVoltageTime,

        @Schema(description = "An equalising charge after it, of flooded lead-acid.") @Valid @Nullable
        Equalising equalising) {

    /** A controlled overcharge that brings all cells of a flooded string up to each other. */
    @Schema(description = "An equalising charge: flooded lead-acid held above its gassing voltage at a small current.")
    public record Equalising(
            @Schema(description = "How long it is held.") @Within(min = 0.1, max = 24, unit = "h") @Nullable
            Time time,

            @Schema(description = "Its current; the usual one for the capacity when left out.")
            @Within(min = 0.1, max = 200, unit = "A")
            @Nullable
            Current current) {}
}
