package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** The vehicle as weighed. */
@Schema(
        description =
                "The vehicle as weighed: before `lift`, without `items` and `occupants`. Give its weight one way only: `scales`, or `axles`, or `mass` with `frontShare`, or `mass` with `position`.")
public record Bare(
        @Schema(description = "What four scales show, one under each wheel, vehicle level.") @Valid @Nullable
        Scales scales,

        @Schema(description = "What the scales show axle by axle, vehicle level.") @Valid @Nullable
        AxleLoads axles,

        @Schema(description = "Mass, with `frontShare` or `position`.")
        @Within(min = 1, max = 20_000, unit = "kg")
        @Nullable
        Mass mass,

        @Schema(description = "Share of the weight on the front axle, 0 to 1.")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double frontShare,

        @Schema(description = "Centre of gravity; its z is the height.") @Valid @Nullable
        Position position,

        @Schema(description = "Height of the centre of gravity above the ground.")
        @Within(min = 0.01, max = 5, unit = "m")
        @Nullable
        Length height,

        @Schema(description = "Weighing with one axle raised, in place of `height`.") @Valid @Nullable
        RaisedAxle raisedAxle) {

    /** Loads under the four wheels. */
    @Schema(description = "Loads under the four wheels.")
    public record Scales(
            @Schema(description = "Left front wheel.") @Within(min = 0, max = 10_000, unit = "kg") @Nullable
            Load frontLeft,

            @Schema(description = "Right front wheel.") @Within(min = 0, max = 10_000, unit = "kg") @Nullable
            Load frontRight,

            @Schema(description = "Left rear wheel.") @Within(min = 0, max = 10_000, unit = "kg") @Nullable
            Load rearLeft,

            @Schema(description = "Right rear wheel.") @Within(min = 0, max = 10_000, unit = "kg") @Nullable
            Load rearRight) {}

    /** Loads under the two axles. */
    @Schema(description = "Loads under the two axles.")
    public record AxleLoads(
            @Schema(description = "Front axle.") @Within(min = 0, max = 20_000, unit = "kg") @Nullable
            Load front,

            @Schema(description = "Rear axle.") @Within(min = 0, max = 20_000, unit = "kg") @Nullable
            Load rear) {}

    /** One axle raised, springs blocked, the other still on its scale. */
    @Schema(description = "Weighing with one axle raised: springs blocked solid, brakes off, fluids unable to shift.")
    public record RaisedAxle(
            @Schema(description = "The axle that was raised.") @Nullable
            Axle raised,

            @Schema(
                    description =
                            "Rise of its wheel centres over the wheel centres of the other axle, compared with the level weighing.")
            @Within(min = 0.01, max = 5, unit = "m")
            @Nullable
            Length rise,

            @Schema(description = "What the axle that stays down shows while the other is raised.")
            @Within(min = 0, max = 20_000, unit = "kg")
            @Nullable
            Load load,

            @Schema(description = "Loaded radii of the wheels during the weighing.") @Valid @Nullable
            WheelRadius wheelRadius) {}

    /** Loaded radius at each axle. */
    @Schema(description = "Loaded (static) radius at each axle: wheel centre to ground.")
    public record WheelRadius(
            @Schema(description = "Front wheels.") @Within(min = 0.05, max = 1, unit = "m") @Nullable
            Length front,

            @Schema(description = "Rear wheels.") @Within(min = 0.05, max = 1, unit = "m") @Nullable
            Length rear) {}
}
