package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** The driver's seat and its pedals. */
@Schema(
        description =
                "The driver's seat and its pedals, as found, and how far the seat is moved. Distances count from the heel point: where the heel of the shoe rests on the floor with the foot on the pedal.")
public record Seat(
        @Schema(description = "Hip point of the seat as found, slider at its middle.") @Valid @Nullable
        HipPoint hipPoint,

        @Schema(description = "How far the seat goes down; negative up.")
        @Within(min = -0.5, max = 0.6, unit = "m")
        @Nullable
        Length lowered,

        @Schema(description = "How far the seat goes back; negative forward.")
        @Within(min = -1, max = 1.5, unit = "m")
        @Nullable
        Length movedRearward,

        @Schema(description = "Travel of the seat slider from end to end; a fixed seat when left out.")
        @Within(min = 0, max = 0.6, unit = "m")
        @Nullable
        Length sliderTravel,

        @Schema(description = "How far the pedals and with them the heel point go forward; negative back.")
        @Within(min = -1, max = 1.5, unit = "m")
        @Nullable
        Length pedalsMovedForward) {

    /** The hip point against the heel point. */
    @Schema(description = "Hip pivot of the seated driver against the heel point.")
    public record HipPoint(
            @Schema(description = "Behind the heel point (L53).") @Within(min = 0.05, max = 1.5, unit = "m") @Nullable
            Length x,

            @Schema(description = "Above the heel point (H30).") @Within(min = 0.02, max = 0.9, unit = "m") @Nullable
            Length z) {}
}
