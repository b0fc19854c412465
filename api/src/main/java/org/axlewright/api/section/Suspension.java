package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.SpringRate;
import org.jspecify.annotations.Nullable;

/** Suspension of the two axles. */
@Schema(description = "Suspension, axle by axle.")
public record Suspension(
        @Schema(description = "Front axle.") @Valid @Nullable
        AxleSuspension front,

        @Schema(description = "Rear axle.") @Valid @Nullable AxleSuspension rear) {

    /** Suspension of one axle, right-hand side. */
    @Schema(
            description =
                    "Suspension of one axle. The four joints of a double wishbone are points of the right-hand side in front view, measured as found, before `lift`.")
    public record AxleSuspension(
            @Schema(description = "Lower arm, joint at the frame.") @Valid @Nullable
            Point lowerInner,

            @Schema(description = "Lower arm, ball joint.") @Valid @Nullable
            Point lowerOuter,

            @Schema(description = "Upper arm, joint at the frame.") @Valid @Nullable
            Point upperInner,

            @Schema(description = "Upper arm, ball joint.") @Valid @Nullable
            Point upperOuter,

            @Schema(description = "Tie rod, for the change of toe.") @Valid @Nullable
            TieRod tieRod,

            @Schema(description = "Rate of one spring.") @Within(min = 0.1, max = 2000, unit = "N/mm") @Nullable
            SpringRate springRate,

            @Schema(description = "Wheel travel left before the bump stop.")
            @Within(min = 0, max = 1, unit = "m")
            @Nullable
            Length freeTravel) {}

    /** A point in front view. */
    @Schema(description = "A point in front view: y outward from the centre plane, z up from the ground.")
    public record Point(
            @Schema(description = "Outward from the centre plane.") @Within(min = -1, max = 3, unit = "m") @Nullable
            Length y,

            @Schema(description = "Above the ground.") @Within(min = -1, max = 3, unit = "m") @Nullable
            Length z) {}

    /** The tie rod of the right-hand wheel. */
    @Schema(description = "The tie rod of the right-hand wheel, in front view, and the steering arm it turns.")
    public record TieRod(
            @Schema(description = "Inner joint, at the rack or drag link.") @Valid @Nullable
            Point inner,

            @Schema(description = "Outer joint, at the steering arm.") @Valid @Nullable
            Point outer,

            @Schema(
                    description =
                            "Distance of the outer joint behind the line through the ball joints, in plan; negative when it lies ahead.")
            @Within(min = -0.5, max = 0.5, unit = "m")
            @Nullable
            Length armLength) {}
}
