package org.axlewright.api.seating;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Seat and pedals for small, middle and large drivers. */
@Schema(
        description =
                "Seat and pedals for small, middle and large drivers. Lengths in mm or in, from the heel point: where the heel rests on the floor.")
public record SeatReachResult(
        @Schema(
                description =
                        "Room that the driver who lacks most needs for a comfortable knee, slider right back: pedals forward, seat back or a longer frame; 0 when nobody lacks any. An upper bound: the limbs are taken to the outside of the knee.")
        Length frameStretch,

        @Schema(description = "Slider travel that seats all three drivers in comfort.")
        Length sliderTravel,

        @Schema(description = "The drivers, small to large.")
        List<SeatedDriver> drivers,

        @Schema(description = "Hip point behind the heel point after, slider at its middle.")
        Length hipX,

        @Schema(description = "Hip point above the heel point after.")
        Length hipZ,

        @Schema(description = "Straight line from hip point to heel point.")
        PedalDistance pedalDistance,

        @Schema(
                description =
                        "Room still lacking to sit as straight-legged as before the seat was moved, whoever sits there; negative when there is more than before. Left out when the seat now is higher than the pedals were far.")
        @Nullable
        Length asFoundRoom,

        @Schema(description = "Slider travel between the 5 and 95 % seat lines of SAE J1517, class B.") @Nullable
        Length surveyTravel,

        @Schema(
                description =
                        "Where drivers put their seat, SAE J1517-2024 class B: left out when the hip point is not 405 to 530 mm above the heel.")
        @Nullable
        List<SeatPosition> positions) {

    /** Hip to heel before and after. */
    @Schema(description = "Straight line from hip point to heel point, slider at its middle.")
    public record PedalDistance(
            @Schema(description = "As found.") Length before,
            @Schema(description = "After.") Length after) {}

    /** One driver. */
    @Schema(description = "A driver of a surveyed size.")
    public record SeatedDriver(
            @Schema(
                    description =
                            "`small`: woman, 5th percentile; `middle`: midway between the middle woman and the middle man; `large`: man, 95th percentile.")
            String driver,

            @Schema(
                    description =
                            "`comfortable`, `too-close`, `too-far` or `out-of-reach`, with the slider at its better end.")
            String fit,

            @Schema(
                    description =
                            "Room lacking, slider at its better end: positive, pedals or frame farther; negative, nearer; 0 is comfort.")
            Length room,

            @Schema(
                    description =
                            "Knee angle as found, slider at its middle, deg; left out when no such leg bridges the distance.")
            @Nullable
            Angle kneeBefore,

            @Schema(
                    description =
                            "Knee angle after, slider at its middle, deg; left out when no such leg bridges the distance.")
            @Nullable
            Angle kneeAfter,

            @Schema(description = "Hip to heel in comfort, knee 110 to 140 deg.")
            ComfortRange pedalDistance,

            @Schema(description = "Hip point behind the heel point in comfort, at the height after.")
            ComfortRange hipX,

            @Schema(description = "Thigh, hip pivot to knee.")
            Length thigh,

            @Schema(description = "Shank, knee to heel, shoe included.")
            Length shank,

            @Schema(description = "Standing height, barefoot.")
            Length stature) {}

    /** From the knee bent to the knee straight. */
    @Schema(description = "From the knee bent to 110 deg to the knee at 140 deg.")
    public record ComfortRange(
            @Schema(description = "Knee at 110 deg.") Length from,
            @Schema(description = "Knee at 140 deg.") Length to) {}

    /** A line of the survey. */
    @Schema(description = "Where so many per cent of drivers put their seat, or farther forward.")
    public record SeatPosition(
            @Schema(description = "Per cent of drivers, half women, half men.")
            double percentile,

            @Schema(description = "Hip point behind the heel point.")
            Length x) {}
}
