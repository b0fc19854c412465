package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** What is towed. */
@Schema(description = "What is towed: one trailer, or a train of equal ones.")
public record Trailer(
        @Schema(description = "Mass of one trailer with its load.")
        @Within(min = 1, max = 20_000, unit = "kg")
        @Nullable
        Mass mass,

        @Schema(description = "How many such trailers; 1 when left out.") @Min(1) @Max(50) @Nullable
        Integer count,

        @Schema(description = "Whether they have brakes of their own that work while towed; false when left out.")
        @Nullable
        Boolean braked,

        @Schema(description = "Largest brake force at the ground of one braked trailer.")
        @Within(min = 1, max = 200_000, unit = "N")
        @Nullable
        Force brakeForce,

        @Schema(
                description =
                        "Vertical load on the vehicle's hitch, standing level; negative when the trailer lifts it. 0 when left out, as of a trolley on four wheels; a trailer on one axle puts about a tenth of its weight there.")
        @Within(min = -2000, max = 2000, unit = "kg")
        @Nullable
        Load hitchLoad,

        @Schema(description = "Height of the hitch above the ground.") @Within(min = 0, max = 2, unit = "m") @Nullable
        Length hitchHeight,

        @Schema(description = "Distance of the hitch behind the rear axle; negative ahead of it.")
        @Within(min = -2, max = 3, unit = "m")
        @Nullable
        Length hitchOverhang,

        @Schema(
                description =
                        "Rolling resistance coefficient of the trailers' wheels; that of the vehicle when left out. Small hard castors on a rough floor have more.")
        @DecimalMin("0.001")
        @DecimalMax("0.5")
        @Nullable
        Double rollingResistance,

        @Schema(
                description =
                        "Resistance at the first movement over that when rolling; 2 when left out. Turned castors and flat-spotted tyres take more.")
        @DecimalMin("1")
        @DecimalMax("20")
        @Nullable
        Double startingFactor,

        @Schema(
                description =
                        "Angle between drawbar and vehicle in plan, in the bend looked at; straight when left out.")
        @Within(min = 0, max = 90, unit = "deg")
        @Nullable
        Angle hitchAngle) {}
