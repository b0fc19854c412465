package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.jspecify.annotations.Nullable;

/** Geometry and ratings of the vehicle on its wheels. */
@Schema(description = "Geometry and ratings of the vehicle on its wheels, as found: before `lift`.")
public record Chassis(
        @Schema(description = "Front axle to rear axle (ISO 612).") @Within(min = 0.5, max = 10, unit = "m") @Nullable
        Length wheelbase,

        @Schema(description = "Front track, tyre centre to tyre centre (ISO 612).")
        @Within(min = 0.3, max = 3, unit = "m")
        @Nullable
        Length frontTrack,

        @Schema(description = "Rear track, tyre centre to tyre centre (ISO 612).")
        @Within(min = 0.3, max = 3, unit = "m")
        @Nullable
        Length rearTrack,

        @Schema(
                description =
                        "Height of the lowest point of the frame between the axles above the ground, before `lift`; taken at mid-wheelbase for the ramp-breakover angle.")
        @Within(min = 0.01, max = 1, unit = "m")
        @Nullable
        Length groundClearance,

        @Schema(description = "The point ahead of the front wheel that touches a ramp first.") @Valid @Nullable
        Overhang frontOverhang,

        @Schema(description = "The point behind the rear wheel that touches a ramp first.") @Valid @Nullable
        Overhang rearOverhang,

        @Schema(description = "Radius of the path of the outer front wheel at full lock.")
        @Within(min = 0.5, max = 30, unit = "m")
        @Nullable
        Length turningRadius,

        @Schema(description = "How the wheels stand; `four-wheels` when left out.") @Nullable
        WheelPlan wheelPlan,

        @Schema(
                description =
                        "What wheels and spacers changed since the tracks were measured. Leave it out when the tracks were measured as they are now.")
        @Valid
        @Nullable
        WheelChanges wheelChanges,

        @Schema(description = "Seats, the driver's included.") @Min(1) @Max(50) @Nullable
        Integer seats,

        @Schema(description = "Largest length over all (ISO 612).") @Within(min = 0.5, max = 15, unit = "m") @Nullable
        Length length,

        @Schema(description = "Largest width over all (ISO 612).") @Within(min = 0.3, max = 4, unit = "m") @Nullable
        Length width,

        @Schema(description = "Largest height over all (ISO 612).") @Within(min = 0.3, max = 5, unit = "m") @Nullable
        Length height,

        @Schema(description = "The axles that drive.") @Nullable
        AxleSet driven,

        @Schema(description = "The axles that brake.") @Nullable
        AxleSet braked,

        @Schema(description = "The maker's ratings; nobody else can raise them.") @Valid @Nullable
        Ratings ratings) {

    /** What changed under the vehicle since its tracks were measured. */
    @Schema(description = "What wheels and spacers changed since the tracks were measured, axle by axle.")
    public record WheelChanges(
            @Schema(description = "Front axle.") @Valid @Nullable
            WheelChange front,

            @Schema(description = "Rear axle.") @Valid @Nullable
            WheelChange rear) {}

    /** What changed at the two wheels of one axle. A spacer is told per wheel or per axle, never both. */
    @Schema(
            description =
                    "What changed at the two wheels of one axle. A spacer is told as its thickness at each wheel or as what both add to the track, never both.")
    public record WheelChange(
            @Schema(description = "Thickness of the spacer at each wheel; the track grows by twice as much.")
            @Within(min = 0, max = 0.5, unit = "m")
            @Nullable
            Length spacerPerWheel,

            @Schema(description = "What the two spacers add to the track, in place of `spacerPerWheel`.")
            @Within(min = 0, max = 1, unit = "m")
            @Nullable
            Length spacerPerAxle,

            @Schema(
                    description =
                            "How much farther out the centre plane of each rim lies than that of the former wheel: the former offset less the new one. Negative inward. The track grows by twice as much.")
            @Within(min = -0.3, max = 0.3, unit = "m")
            @Nullable
            Length wheelOutward,

            @Schema(
                    description =
                            "How far the whole axle stands to the right of the centre plane; negative to the left.")
            @Within(min = -0.5, max = 0.5, unit = "m")
            @Nullable
            Length axleToRight) {}

    /** A corner of the underside ahead of or behind the wheels. */
    @Schema(description = "A corner of the underside, measured with the vehicle standing as found, before `lift`.")
    public record Overhang(
            @Schema(description = "Horizontal distance beyond the wheel centre.")
            @Within(min = 0, max = 3, unit = "m")
            @Nullable
            Length reach,

            @Schema(description = "Height above the ground.") @Within(min = 0, max = 2, unit = "m") @Nullable
            Length height) {}

    /** What the maker allows each axle and the whole to carry. */
    @Schema(description = "Rated loads: gross axle weight ratings and gross vehicle weight rating (49 CFR 571.3).")
    public record Ratings(
            @Schema(description = "Front axle.") @Within(min = 10, max = 10_000, unit = "kg") @Nullable
            Load front,

            @Schema(description = "Rear axle.") @Within(min = 10, max = 10_000, unit = "kg") @Nullable
            Load rear,

            @Schema(description = "Whole vehicle, laden.") @Within(min = 20, max = 20_000, unit = "kg") @Nullable
            Load total) {}
}
