package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.axlewright.domain.axles.AxleSet;
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

        @Schema(description = "The axles that drive.") @Nullable
        AxleSet driven,

        @Schema(description = "The axles that brake.") @Nullable
        AxleSet braked,

        @Schema(description = "The maker's ratings; nobody else can raise them.") @Valid @Nullable
        Ratings ratings) {

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
