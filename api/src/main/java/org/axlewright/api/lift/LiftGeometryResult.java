package org.axlewright.api.lift;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What lift and tyres do to heights, clearance angles, gearing and front suspension. */
@Schema(
        description =
                "What lift and tyres do to heights, clearance angles, gearing and, with the points of a double wishbone, to the front suspension. `before` is the vehicle as found.")
public record LiftGeometryResult(
        @Schema(
                description =
                        "Rise of the frame at the front axle: lift over the wheel plus change of loaded radius; mm or in, negative when lowered.")
        Length frontRise,

        @Schema(
                description =
                        "Rise of the frame at the rear axle: lift over the wheel plus change of loaded radius; mm or in, negative when lowered.")
        Length rearRise,

        @Schema(
                description =
                        "Rise of the centre of gravity of the vehicle as weighed (`laden` if sent, else `bare`); mm or in.")
        @Nullable
        Length centreOfGravityRise,

        @Schema(description = "Rise of the axles themselves, of a differential: change of loaded radius alone.")
        AxleClearanceRise axleClearanceRise,

        @Schema(description = "Ground clearance at mid-wheelbase.") @Nullable
        GroundClearance groundClearance,

        @Schema(
                description =
                        "How far springs and tyres bring the frame down under the load aboard; only where the springs of both axles are known. Heights and angles `after` leave it out.")
        @Nullable
        Squat squat,

        @Schema(description = "Approach angle.") @Nullable ClearanceAngle approachAngle,

        @Schema(description = "Ramp-breakover angle.") @Nullable
        ClearanceAngle breakoverAngle,

        @Schema(description = "Departure angle.") @Nullable ClearanceAngle departureAngle,

        @Schema(
                description =
                        "True speed now over true speed before at the same motor speed; 1 when the driven tyres stay.")
        @Nullable
        Double speedFactor,

        @Schema(description = "Force at the driven wheels now over before at the same motor torque.") @Nullable
        Double tractionFactor,

        @Schema(
                description =
                        "Speed shown over true speed, less 1, by a speedometer that was right before and that nobody corrected: 0.067 reads 6.7 % high, negative reads low.")
        @Nullable
        Double speedometerError,

        @Schema(
                description =
                        "Change of camber of each front wheel at the lifted ride height, deg; negative when the top leans in (ISO 8855).")
        @Nullable
        Angle camberChange,

        @Schema(description = "Change of front track, both wheels together, at the lifted ride height; mm or in.")
        @Nullable
        Length trackChange,

        @Schema(description = "Height of the front roll centre above the ground.") @Nullable
        LengthChange rollCentreHeight,

        @Schema(
                description =
                        "Change of toe of each front wheel at the lifted ride height, deg; positive when the front of the wheel turns in (ISO 8855).")
        @Nullable
        Angle toeChange,

        @Schema(
                description =
                        "What camber, track and toe do when a front wheel moves from its ride height, as found and lifted.")
        @Nullable
        List<FrontTravel> frontTravel) {

    /** Rise of the axles themselves. */
    @Schema(
            description =
                    "Rise of the axles themselves, mm or in: a lift kit does not raise an axle, a taller tyre does.")
    public record AxleClearanceRise(
            @Schema(description = "Front axle.") Length front,
            @Schema(description = "Rear axle.") Length rear) {}

    /** How far the frame comes down under the load. */
    @Schema(
            name = "LiftSquat",
            description =
                    "How far springs and tyres bring the frame down under the load aboard, mm or in; negative when it rises. `ride-height` shows the working.")
    public record Squat(
            @Schema(description = "Over the front axle.") Length front,
            @Schema(description = "Over the rear axle.") Length rear) {}

    /** Ground clearance before, after, and as loaded. */
    @Schema(description = "Ground clearance at mid-wheelbase, mm or in.")
    public record GroundClearance(
            @Schema(description = "As found.") Length before,
            @Schema(description = "As lifted.") Length after,

            @Schema(
                    description =
                            "As lifted and loaded: less the squat of springs and tyres; negative when it would rest on the ground.")
            @Nullable
            Length laden) {}

    /** A height before and after. */
    @Schema(description = "A height before and after, mm or in.")
    public record LengthChange(
            @Schema(description = "As found.") @Nullable Length before,
            @Schema(description = "As lifted.") @Nullable Length after) {}

    /** A clearance angle. */
    @Schema(
            description =
                    "A clearance angle, deg: `before` and `after` by the tangent to the arc of the loaded tyre (49 CFR 523.2), left out when the tyre is not known or its outline hides the point; `simple` from the point under the wheel centre, which never gives more.")
    public record ClearanceAngle(
            @Schema(description = "As found, tangent construction.") @Nullable
            Angle before,

            @Schema(description = "As lifted, tangent construction.") @Nullable
            Angle after,

            @Schema(description = "From the point under the wheel centre.")
            SimpleAngle simple) {}

    /** A clearance angle by the simple construction. */
    @Schema(description = "A clearance angle from the point under the wheel centre, deg.")
    public record SimpleAngle(
            @Schema(description = "As found.") Angle before,
            @Schema(description = "As lifted.") Angle after) {}

    /** One place of the front wheel's travel. */
    @Schema(description = "Changes when a front wheel moves from its ride height.")
    public record FrontTravel(
            @Schema(description = "Travel of the wheel from its ride height, mm or in; bump is positive.")
            Length travel,

            @Schema(description = "As found; left out where the linkage does not reach.") @Nullable
            WheelChange before,

            @Schema(description = "As lifted; left out where the linkage does not reach.") @Nullable
            WheelChange after) {}

    /** What a wheel's travel changes. */
    @Schema(name = "ChangeAtWheels", description = "Changes since the ride height; signs as of the leading results.")
    public record WheelChange(
            @Schema(description = "Camber of the wheel, deg; negative when the top leans in.")
            Angle camberChange,

            @Schema(description = "Track, both wheels, mm or in.")
            Length trackChange,

            @Schema(description = "Toe of the wheel, deg; positive when the front turns in.") @Nullable
            Angle toeChange) {}
}
