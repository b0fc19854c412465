package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.roadload.Surface;
import org.jspecify.annotations.Nullable;

/** A hill to go down. */
@Schema(
        description =
                "A hill to go down at one speed; two of `length`, `drop` and `grade` suffice. Without it the downhill legs of `route` are taken.")
public record Hill(
        @Schema(description = "Length along the road.") @Within(min = 0.1, max = 1_000_000, unit = "m") @Nullable
        Distance length,

        @Schema(description = "Height lost from top to bottom.") @Within(min = 0.01, max = 10_000, unit = "m") @Nullable
        Length drop,

        @Schema(description = "How steeply it falls: positive downhill, as on a road sign.")
        @Within(min = 0.05, max = 45, unit = "deg")
        @Nullable
        Grade grade,

        @Schema(description = "Speed to be held.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
        Speed speed,

        @Schema(description = "What the road is made of.") @Nullable
        Surface surface) {}
