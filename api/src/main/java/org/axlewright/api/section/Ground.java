package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.roadload.Surface;
import org.jspecify.annotations.Nullable;

/** The ground under the wheels. */
@Schema(description = "The ground under the wheels.")
public record Ground(
        @Schema(description = "Tyre to ground friction coefficient.") @DecimalMin("0.01") @DecimalMax("2") @Nullable
        Double friction,

        @Schema(description = "Slope along the vehicle, uphill positive.")
        @Within(min = -45, max = 45, unit = "deg")
        @Nullable
        Grade grade,

        @Schema(description = "Slope across the vehicle, right side lower positive.")
        @Within(min = -45, max = 45, unit = "deg")
        @Nullable
        Grade sideSlope,

        @Schema(description = "What it is made of.") @Nullable
        Surface surface) {}
