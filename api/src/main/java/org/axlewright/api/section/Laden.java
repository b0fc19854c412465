package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.axlewright.domain.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** The vehicle as driven, measured. */
@Schema(
        description =
                "The vehicle as driven, when measured: overrides what would be derived from `bare`, `items`, `occupants` and `lift`, and the answer says so.")
public record Laden(
        @Schema(description = "Mass as driven.") @Within(min = 1, max = 20_000, unit = "kg") @Nullable
        Mass mass,

        @Schema(description = "Centre of gravity as driven, the vehicle standing as it is now.") @Valid @Nullable
        Position position) {}
