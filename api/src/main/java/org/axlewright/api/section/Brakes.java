package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.braking.BrakeKind;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Torque;
import org.jspecify.annotations.Nullable;

/** The brakes. Which axles have service brakes stands in {@code chassis.braked}. */
@Schema(description = "The brakes. Which axles have service brakes stands in `chassis.braked`.")
public record Brakes(
        @Schema(description = "Service brakes of the front axle.") @Valid @Nullable
        AxleBrakes front,

        @Schema(description = "Service brakes of the rear axle.") @Valid @Nullable
        AxleBrakes rear,

        @Schema(description = "The parking brake.") @Valid @Nullable
        ParkingBrake parking,

        @Schema(description = "A spring-applied brake on the motor shaft, which falls in when the power trips.")
        @Valid
        @Nullable
        MotorBrake motorBrake,

        @Schema(description = "A full stop that was measured; it overrides the figures of the brakes.") @Valid @Nullable
        MeasuredStop measuredStop,

        @Schema(description = "Time from seeing to braking; 1 s when left out.")
        @Within(min = 0, max = 10, unit = "s")
        @Nullable
        Time reactionTime) {

    /** The service brakes of one axle, both wheels together. */
    @Schema(
            description =
                    "The service brakes of one axle, both wheels together. Strength as `torque` or `force`, never both.")
    public record AxleBrakes(
            @Schema(description = "Largest torque of both wheel brakes together.")
            @Within(min = 1, max = 50_000, unit = "Nm")
            @Nullable
            Torque torque,

            @Schema(description = "Largest retarding force of both wheels at the ground, with the tyres on it now.")
            @Within(min = 1, max = 200_000, unit = "N")
            @Nullable
            Force force,

            @Schema(description = "How they are built.") @Nullable
            BrakeKind kind,

            @Schema(description = "Mass of both drums or discs together: the metal that takes the heat.")
            @Within(min = 0.1, max = 500, unit = "kg")
            @Nullable
            Mass mass) {}

    /** The parking brake. */
    @Schema(description = "The parking brake. Strength as `torque` or `force`, never both.")
    public record ParkingBrake(
            @Schema(description = "Axles it holds; the rear axle when left out.") @Nullable
            AxleSet holds,

            @Schema(description = "Largest torque at the held wheels together.")
            @Within(min = 1, max = 50_000, unit = "Nm")
            @Nullable
            Torque torque,

            @Schema(description = "Largest force at the ground of the held wheels together, with the tyres on it now.")
            @Within(min = 1, max = 200_000, unit = "N")
            @Nullable
            Force force) {}

    /** A brake on the motor shaft. */
    @Schema(
            description =
                    "A spring-applied brake on the motor shaft. It acts through `drive.ratio` on the axles of `chassis.driven`.")
    public record MotorBrake(
            @Schema(description = "Torque at the motor shaft when it has fallen in.")
            @Within(min = 0.1, max = 2000, unit = "Nm")
            @Nullable
            Torque torque) {}

    /** A measured stop. */
    @Schema(description = "A full stop that was measured, brakes hard on, from the point where they came on.")
    public record MeasuredStop(
            @Schema(description = "Speed when the brakes came on.") @Within(min = 0.5, max = 60, unit = "m/s") @Nullable
            Speed speed,

            @Schema(description = "Distance from there to a standstill; the reaction left out.")
            @Within(min = 0.1, max = 2000, unit = "m")
            @Nullable
            Distance distance,

            @Schema(description = "Slope of the ground along the stop, uphill positive; level when left out.")
            @Within(min = -45, max = 45, unit = "deg")
            @Nullable
            Grade grade,

            @Schema(description = "Mass during the stop, people included; as driven when left out.")
            @Within(min = 1, max = 20_000, unit = "kg")
            @Nullable
            Mass mass,

            @Schema(description = "True when it was measured on the tyres before the change in `lift`.") @Nullable
            Boolean onTyreBefore) {}
}
