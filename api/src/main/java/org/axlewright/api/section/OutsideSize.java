package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Outside dimensions of a part, along the axes of the vehicle. */
@Schema(description = "Outside dimensions of a part, along the axes of the vehicle.")
public record OutsideSize(
        @Schema(description = "Along the vehicle, x.") @Within(min = 0.001, max = 10, unit = "m") @Nullable
        Length length,

        @Schema(description = "Across the vehicle, y.") @Within(min = 0.001, max = 10, unit = "m") @Nullable
        Length width,

        @Schema(description = "Upright, z.") @Within(min = 0.001, max = 10, unit = "m") @Nullable
        Length height) {}
