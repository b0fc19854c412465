package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** From which to which state of charge. */
@Schema(name = "ChargeWindow", description = "State of charge at the start and at the end, 0 to 1.")
public record ChargeWindow(
        @Schema(description = "State of charge at the start, 0 to 1.") @DecimalMin("0") @DecimalMax("1") @Nullable
        Double from,

        @Schema(description = "State of charge at the end, 0 to 1.") @DecimalMin("0") @DecimalMax("1") @Nullable
        Double to) {}
