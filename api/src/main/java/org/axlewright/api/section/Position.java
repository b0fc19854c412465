package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A point of the vehicle. */
@Schema(
        description =
                "A point of the vehicle: x rearward from the front axle, y to the right of the centre plane, z up from the ground (sense of ISO 4130), vehicle standing as found, before `lift`.")
public record Position(
        @Schema(description = "Behind the front axle; negative ahead of it.")
        @Within(min = -5, max = 15, unit = "m")
        @Nullable
        Length x,

        @Schema(description = "To the right of the centre plane; negative to the left.")
        @Within(min = -3, max = 3, unit = "m")
        @Nullable
        Length y,

        @Schema(description = "Above the ground.") @Within(min = 0, max = 5, unit = "m") @Nullable
        Length z) {}
