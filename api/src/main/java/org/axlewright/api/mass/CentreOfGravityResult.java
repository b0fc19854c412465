package org.axlewright.api.mass;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** Weight and balance with everybody aboard, and the same without occupants under {@code empty}. */
@Schema(
        description =
                "Weight and balance with everybody aboard, as raised by `lift` and tyres; the same without occupants under `empty`.")
public record CentreOfGravityResult(
        @Schema(description = "Mass, kg or lb.") Mass mass,

        @Schema(description = "Centre of gravity.") Place position,

        @Schema(description = "Front axle, standing level.") AxleResult frontAxle,

        @Schema(description = "Rear axle, standing level.") AxleResult rearAxle,

        @Schema(description = "Share of the weight on the left wheels, 0 to 1.") @Nullable
        Double leftShare,

        @Schema(
                description =
                        "Share of the diagonal front-left plus rear-right, 0 to 1, of the bare vehicle as weighed on four scales. Parts and people are left out: what they do to it depends on springs and frame.")
        @Nullable
        Double crossShare,

        @Schema(description = "Rated load less load; negative when over. Only for ratings that are known.") @Nullable
        Payload payloadLeft,

        @Schema(description = "What each item and occupant does, in the order sent.")
        List<Leverage> leverage,

        @Schema(description = "The same without occupants.") @Nullable
        Empty empty) {

    /** The vehicle without occupants. */
    @Schema(name = "CentreOfGravityEmpty", description = "Weight and balance without occupants.")
    public record Empty(
            @Schema(description = "Mass, kg or lb.") Mass mass,
            @Schema(description = "Centre of gravity.") Place position,

            @Schema(description = "Front axle, standing level.")
            AxleResult frontAxle,

            @Schema(description = "Rear axle, standing level.")
            AxleResult rearAxle,

            @Schema(description = "Share of the weight on the left wheels, 0 to 1.") @Nullable
            Double leftShare,

            @Schema(description = "Share of the diagonal front-left plus rear-right as weighed, 0 to 1.") @Nullable
            Double crossShare,

            @Schema(description = "Rated load less load; negative when over.") @Nullable
            Payload payloadLeft) {}

    /** A point; what is not known is left out. */
    @Schema(
            description =
                    "A point or a shift: x rearward from the front axle, y to the right, z up from the ground; m or in. What is not known is left out.")
    public record Place(
            @Schema(description = "Behind the front axle.") @Nullable
            Length x,

            @Schema(description = "To the right of the centre plane.") @Nullable
            Length y,

            @Schema(description = "Above the ground.") @Nullable
            Length z) {}

    /** What one axle carries. */
    @Schema(description = "What one axle carries.")
    public record AxleResult(
            @Schema(description = "Load on the axle as scales show it, kg or lb; negative when it would lift.")
            Load load,

            @Schema(description = "Share of the whole weight.")
            double share) {}

    /** What may still be added. */
    @Schema(description = "Rated load less load, kg or lb.")
    public record Payload(
            @Schema(description = "On the front axle.") @Nullable
            Load front,

            @Schema(description = "On the rear axle.") @Nullable
            Load rear,

            @Schema(description = "On the whole vehicle.") @Nullable
            Load total) {}

    /** What one part does. */
    @Schema(
            description =
                    "What one item or occupant does: the change it makes when it is there (or gone, when `removed`).")
    public record Leverage(
            @Schema(description = "Its name.") @Nullable String name,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer,

            @Schema(
                    description =
                            "Change of load on the front axle, kg or lb; negative when it hangs behind the rear axle.")
            Load frontLoadChange,

            @Schema(description = "Change of load on the rear axle, kg or lb.")
            Load rearLoadChange,

            @Schema(description = "Shift of the centre of gravity.")
            Place positionChange) {}
}
