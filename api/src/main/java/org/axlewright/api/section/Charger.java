package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.charging.ChargerType;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.jspecify.annotations.Nullable;

/** The charger's data plate. */
@Schema(
        description =
                "The charger's data plate: output `current`, or output `power` for a charger that holds its power.")
public record Charger(
        @Schema(
                description =
                        "How it is built: decides usual efficiency and power factor, and the gassing of lead-acid; `switch-mode` when left out.")
        @Nullable
        ChargerType type,

        @Schema(description = "Output current, constant-current charger.")
        @Within(min = 0.1, max = 1000, unit = "A")
        @Nullable
        Current current,

        @Schema(description = "Output power, constant-power charger.")
        @Within(min = 1, max = 100_000, unit = "W")
        @Nullable
        Power power,

        @Schema(description = "Efficiency, output over input, 0 to 1.") @DecimalMin("0.1") @DecimalMax("1") @Nullable
        Double efficiency,

        @Schema(description = "Power factor at the mains, 0 to 1.") @DecimalMin("0.1") @DecimalMax("1") @Nullable
        Double powerFactor,

        @Schema(description = "Largest mains current the charger draws.")
        @Within(min = 0.1, max = 500, unit = "A")
        @Nullable
        Current maximumInput) {}
