package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/** The tyres on the vehicle now. */
@Schema(description = "The tyres on the vehicle now, one description for each axle.")
public record Tyres(
        @Schema(description = "Front wheels.") @Valid @Nullable
        Tyre front,

        @Schema(description = "Rear wheels.") @Valid @Nullable
        Tyre rear) {

    /** One tyre. */
    @Schema(
            description =
                    "One tyre: its `size` as moulded on the sidewall, or its free `diameter`. Measured radii override what the size says.")
    public record Tyre(
            @Schema(
                    description =
                            "Size marking: metric such as `205/50-10` or `185/70R14`, or diameter x width - rim such as `22x11-10` or `18x8.50-8`.")
            @Size(max = 40)
            @TyreSize
            @Nullable
            String size,

            @Schema(description = "Free outer diameter, in place of `size`.")
            @Within(min = 0.1, max = 2, unit = "m")
            @Nullable
            Length diameter,

            @Schema(description = "Static loaded radius, wheel centre to ground; for heights.")
            @Within(min = 0.05, max = 1, unit = "m")
            @Nullable
            Length loadedRadius,

            @Schema(description = "Distance rolled in one turn of the wheel under load; for speed and gearing.")
            @Within(min = 0.3, max = 6, unit = "m")
            @Nullable
            Length rollout,

            @Schema(description = "Inflation pressure.") @Within(min = 10, max = 1000, unit = "kPa") @Nullable
            Pressure pressure,

            @Schema(description = "Maximum load of one tyre, from its load index or sidewall.")
            @Within(min = 10, max = 5_000, unit = "kg")
            @Nullable
            Load maximumLoad) {}
}
