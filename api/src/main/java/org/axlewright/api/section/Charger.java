package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.charging.ChargerType;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Voltage;
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
        Current maximumInput,

        @Schema(description = "Voltage at its terminals at the end of a charge, the highest of its profile.")
        @Within(min = 1, max = 1000, unit = "V")
        @Nullable
        Voltage endVoltage,

        @Schema(description = "Chemistry its profile is set for.") @Nullable
        Chemistry profile,

        @Schema(description = "Least pack voltage at which it starts a charge by itself.")
        @Within(min = 0, max = 1000, unit = "V")
        @Nullable
        Voltage startVoltage,

        @Schema(description = "Power it takes from the pack, all the time, while it does not charge.")
        @Within(min = 0, max = 1000, unit = "W")
        @Nullable
        Power standbyPower) {}
