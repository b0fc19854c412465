package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.quantity.Area;
import org.jspecify.annotations.Nullable;

/** What resists on the level. */
@Schema(
        description =
                "What resists on the level. A leg's `surface` gives the rolling resistance where `rollingResistance` is left out.")
public record RoadLoad(
        @Schema(description = "Rolling resistance coefficient.") @DecimalMin("0.001") @DecimalMax("0.5") @Nullable
        Double rollingResistance,

        @Schema(description = "Drag coefficient times frontal area.")
        @Within(min = 0.05, max = 10, unit = "m2")
        @Nullable
        Area dragArea,

        @Schema(
                description =
                        "What wheels, gears and rotor add to the mass when the speed changes, as a share of the mass; 0.05 when left out.")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double rotatingMassShare) {}
