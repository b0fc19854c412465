package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Power;
import org.jspecify.annotations.Nullable;

/** Everything on board that is not the drive. */
@Schema(description = "Everything on board that draws from the pack and is not the drive.")
public record Accessories(
        @Schema(description = "Power at the pack, all the time; none when left out.")
        @Within(min = 0, max = 20_000, unit = "W")
        @Nullable
        Power power) {}
