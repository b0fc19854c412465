package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.jspecify.annotations.Nullable;

/** A constant load in place of a route. */
@Schema(
        description =
                "A constant load in place of a route, as in the trade's \"minutes at 75 A\": `current` or `power`.")
public record ConstantLoad(
        @Schema(description = "Constant current at the pack.") @Within(min = 0.01, max = 5000, unit = "A") @Nullable
        Current current,

        @Schema(description = "Constant power at the pack.") @Within(min = 0.1, max = 500_000, unit = "W") @Nullable
        Power power) {}
