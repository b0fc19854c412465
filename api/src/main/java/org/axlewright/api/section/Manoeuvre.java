package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Speed;
import org.jspecify.annotations.Nullable;

/** What the driver does. */
@Schema(description = "What the driver does.")
public record Manoeuvre(
        @Schema(description = "Speed.") @Within(min = 0, max = 60, unit = "m/s") @Nullable
        Speed speed,

        @Schema(description = "Radius of the turn.") @Within(min = 0.5, max = 10_000, unit = "m") @Nullable
        Length radius,

        @Schema(description = "Acceleration forward; negative when braking.")
        @Within(min = -20, max = 20, unit = "m/s2")
        @Nullable
        Acceleration acceleration) {}
