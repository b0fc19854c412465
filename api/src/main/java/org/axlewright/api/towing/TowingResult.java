package org.axlewright.api.towing;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Rotation;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Torque;
import org.axlewright.domain.towing.Limit;
import org.jspecify.annotations.Nullable;

/** What towing asks of the vehicle as driven. */
@Schema(
        description =
                "What towing asks of the vehicle as driven, its driver aboard: pull, axle loads, grip and motor heat on the level, on the grade and when it pulls away; how much it may tow; how it stops. What is not known is left out.")
public record TowingResult(
        @Schema(description = "Mass of all trailers together, kg or lb.")
        Mass towedMass,

        @Schema(description = "Rolling on the level at `manoeuvre.speed`.")
        Effort level,

        @Schema(description = "Up `ground.grade` at the same pace; its sign does not matter.") @Nullable
        Effort grade,

        @Schema(description = "Pulling away on the level with `manoeuvre.acceleration`.")
        Effort start,

        @Schema(description = "Pulling away up the grade.") @Nullable
        Effort startOnGrade,

        @Schema(description = "Standing level with the trailer hitched.") @Nullable
        Axles standing,

        @Schema(
                description =
                        "Largest towed mass by the least of `limits`, kg or lb. Not a rating: the maker's towing rating binds.")
        @Nullable
        Mass towedMassLimit,

        @Schema(description = "The limit that binds.") @Nullable
        Limit limitedBy,

        @Schema(description = "Every limit of the towed mass that could be worked out.")
        List<Bound> limits,

        @Schema(description = "Stopping and holding back.") @Nullable
        Braking braking) {

    /** Axle loads. */
    @Schema(name = "TowingAxles", description = "Loads of the axles with the drawbar.")
    public record Axles(
            @Schema(description = "Front axle, kg or lb; negative when it would lift.")
            Load front,

            @Schema(description = "Share of the weight on the front axle.") @Nullable
            Double frontShare,

            @Schema(description = "Rear axle, kg or lb.") Load rear) {}

    /** What one way to go takes. */
    @Schema(description = "What one way to go takes of drawbar, tyres and motor.")
    public record Effort(
            @Schema(description = "Pull at the drawbar, N or lbf.")
            Force pull,

            @Schema(description = "Thrust at the driven wheels, N or lbf.") @Nullable
            Force thrust,

            @Schema(description = "Axle loads under that pull.") @Nullable
            Axles axles,

            @Schema(
                    description =
                            "Thrust over what the driven tyres hold; above 1 they slip. Left out where they carry nothing.")
            @Nullable
            Double gripUse,

            @Schema(description = "What the motor does.") @Nullable
            Motor motor) {}

    /** What the motor does. */
    @Schema(name = "TowingMotor", description = "What the motor does for it.")
    public record Motor(
            @Schema(description = "Torque at its shaft, Nm or lbf.ft.")
            Torque torque,

            @Schema(description = "Its speed, rpm; 0 when pulling away.")
            Rotation speed,

            @Schema(description = "Motor current, A; where a torque and its current are known.") @Nullable
            Current current,

            @Schema(description = "Copper loss over what the rating allows; above 1 it gets hotter than rated.")
            @Nullable
            Double heatRatio,

            @Schema(description = "Heat in the winding, W; where its resistance is known.") @Nullable
            Power windingLoss,

            @Schema(
                    description =
                            "For a short-time rating: how long from cold at most, h; the rated time where the load is lighter.")
            @Nullable
            Time timeFromCold) {}

    /** One limit of the towed mass. */
    @Schema(name = "TowedMassLimit", description = "One limit of the towed mass.")
    public record Bound(
            @Schema(description = "What bounds it.") Limit limit,

            @Schema(description = "Towed mass there, kg or lb; 0 when nothing may be towed.")
            Mass towedMass) {}

    /** Stopping and holding back. */
    @Schema(
            name = "TowingBraking",
            description = "Stopping and holding back; the vehicle's brakes use all the grip of their tyres.")
    public record Braking(
            @Schema(description = "A stop on the level.") Stop level,

            @Schema(description = "A stop down the grade.") @Nullable
            Stop grade,

            @Schema(description = "Holding the speed down the grade.") @Nullable
            Holding holding,

            @Schema(
                    description =
                            "Steepest descent, %, on which the rear tyres can hold the train back at steady speed; left out when there is none up to 45 degrees.")
            @Nullable
            Grade jackKnifeGrade) {}

    /** A stop. */
    @Schema(name = "TowingStop", description = "A stop from the walking pace.")
    public record Stop(
            @Schema(description = "Deceleration; 0 or less when it does not stop.") @Nullable
            Acceleration deceleration,

            @Schema(description = "Distance from the moment the brakes hold, without reaction; m or in.") @Nullable
            Length stoppingDistance,

            @Schema(description = "What the trailers push at the hitch, N or lbf; negative when they hold back.")
            @Nullable
            Force hitchPush) {}

    /** Holding the speed. */
    @Schema(name = "TowingHolding", description = "Holding the speed downhill.")
    public record Holding(
            @Schema(description = "What the trailers push at the hitch, N or lbf.")
            Force hitchPush,

            @Schema(description = "What the rear tyres use of their grip; from 1 on the train jack-knifes.") @Nullable
            Double rearGripUse) {}
}
