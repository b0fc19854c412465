package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.charging.Outlet;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Where the charger is plugged in. */
@Schema(
        description =
                "Where the charger is plugged in: an `outlet` by name, or its `voltage`, `rating` and `continuousShare`.")
public record Supply(
        @Schema(description = "Household outlet.") @Nullable Outlet outlet,

        @Schema(description = "Mains voltage; overrides the outlet's nominal voltage.")
        @Within(min = 90, max = 500, unit = "V")
        @Nullable
        Voltage voltage,

        @Schema(description = "Rating of the breaker or fuse of the circuit.")
        @Within(min = 1, max = 200, unit = "A")
        @Nullable
        Current rating,

        @Schema(description = "Share of the rating that may be drawn for hours, 0 to 1.")
        @DecimalMin("0.1")
        @DecimalMax("1")
        @Nullable
        Double continuousShare,

        @Schema(description = "Extension cord.") @Valid @Nullable
        Cord cord,

        @Schema(description = "Current that other loads on the same circuit draw; none when left out.")
        @Within(min = 0, max = 200, unit = "A")
        @Nullable
        Current sharedCurrent) {

    /** An extension cord. */
    @Schema(description = "An extension cord.")
    public record Cord(
            @Schema(description = "Conductor size, such as `14 AWG` or `1.5 mm2`.")
            @Size(max = 40)
            @ConductorSize
            @Nullable
            String size,

            @Schema(description = "Length of the cord, one way.") @Within(min = 0.1, max = 300, unit = "m") @Nullable
            Length length,

            @Schema(
                    description =
                            "Temperature of its conductors; 60 degC, the rating of an unmarked cord, when left out.")
            @Within(min = -40, max = 105, unit = "degC")
            @Nullable
            Temperature temperature,

            @Schema(description = "True when it stays wound on its reel or in a coil; false when left out.") @Nullable
            Boolean wound) {}
}
