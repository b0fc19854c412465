package org.axlewright.api.stability;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.stability.First;
import org.axlewright.domain.stability.Lengthways.Condition;
import org.axlewright.domain.stability.LimitedBy;
import org.axlewright.domain.stability.Side;
import org.jspecify.annotations.Nullable;

/** What the vehicle stands: the worst filling of seats and racks, as driven, and empty under {@code empty}. */
@Schema(
        description =
                "What the vehicle stands sideways and lengthways: first in the worst filling of its seats and racks, then as driven, and without occupants under `empty`. Rigid on its contact points; the band beside every factor says how far tests of similar vehicles fell below it.")
public record StabilityResult(
        @Schema(
                description =
                        "The filling that tips first, of all with the driver aboard. Left out when a track is not known.")
        @Nullable
        WorstFilling worstFilling,

        @Schema(
                description =
                        "The filling that tips first of all, also without the driver: parked on a side slope while people sit.")
        @Nullable
        ParkedFilling parkedFilling,

        @Schema(description = "The filling that lifts the front wheels first, of all with the driver aboard.") @Nullable
        RearmostFilling frontLiftFilling,

        @Schema(description = "The same of all fillings, also without the driver: parked nose up.") @Nullable
        RearmostFilling parkedFrontLiftFilling,

        @Schema(description = "The driver alone, to the side it goes over first.") @Nullable
        SideLimits driverAlone,

        @Schema(description = "Mass as driven, kg or lb.") Mass mass,

        @Schema(description = "Centre of gravity as driven, on lift and tyres.")
        CentreOfGravityPlace centreOfGravity,

        @Schema(
                description =
                        "Static stability factor to the weaker side: half the track at the centre of gravity's own station, less its offset to that side, over its height. Rigid. 0 or less tips standing.")
        @Nullable
        Double staticStabilityFactor,

        @Schema(description = "The side it goes over first, as the driver sees it.") @Nullable
        Side side,

        @Schema(description = "What tests of similar vehicles support of the factor.") @Nullable
        Band band,

        @Schema(description = "The factor with the body rolling on its springs; with `suspension.roll` only.") @Nullable
        Double suspendedFactor,

        @Schema(description = "Tilt sideways at which it goes over, rigid, deg.") @Nullable
        Angle tiltAngle,

        @Schema(description = "Pushed to the left.") @Nullable
        SideLimits left,

        @Schema(description = "Pushed to the right.") @Nullable
        SideLimits right,

        @Schema(description = "Turning at full lock, in the direction it stands less.") @Nullable
        TurnLimits fullLock,

        @Schema(description = "Turning on the planned radius, to its weaker side.") @Nullable
        TurnLimits turn,

        @Schema(description = "Across the planned side slope.") @Nullable
        SlopeLimits sideSlope,

        @Schema(
                description =
                        "Where the front wheels leave the ground: pulling away, climbing, rolling back on the brakes.")
        WheelLift frontLift,

        @Schema(description = "Where the rear wheels leave the ground: braking, nose down.")
        WheelLift rearLift,

        @Schema(
                description =
                        "How far the front must rise about the rear wheels before it goes over backwards by itself, on the planned grade or else the level, deg; negative when it does so standing.")
        Angle tailTip,

        @Schema(
                description =
                        "Axle loads standing, on the planned grade, with the planned acceleration, and at the limits.")
        List<AxleLoadsAt> axleLoads,

        @Schema(description = "What the driven tyres allow.") @Nullable
        TractionLimits traction,

        @Schema(description = "What the braked tyres allow.") @Nullable
        BrakingLimits braking,

        @Schema(description = "The same without occupants.") @Nullable
        Empty empty) {

    /** The vehicle without occupants. */
    @Schema(name = "StabilityEmpty", description = "What the vehicle stands without occupants.")
    public record Empty(
            @Schema(description = "Mass, kg or lb.") Mass mass,

            @Schema(description = "Centre of gravity, on lift and tyres.")
            CentreOfGravityPlace centreOfGravity,

            @Schema(description = "Static stability factor to the weaker side, rigid.") @Nullable
            Double staticStabilityFactor,

            @Schema(description = "The side it goes over first.") @Nullable
            Side side,

            @Schema(description = "What tests of similar vehicles support of the factor.") @Nullable
            Band band,

            @Schema(description = "The factor with the body rolling on its springs.") @Nullable
            Double suspendedFactor,

            @Schema(description = "Tilt sideways at which it goes over, rigid, deg.") @Nullable
            Angle tiltAngle,

            @Schema(description = "Pushed to the left.") @Nullable
            SideLimits left,

            @Schema(description = "Pushed to the right.") @Nullable
            SideLimits right,

            @Schema(description = "Turning at full lock.") @Nullable
            TurnLimits fullLock,

            @Schema(description = "Turning on the planned radius.") @Nullable
            TurnLimits turn,

            @Schema(description = "Across the planned side slope.") @Nullable
            SlopeLimits sideSlope,

            @Schema(description = "Where the front wheels leave the ground.")
            WheelLift frontLift,

            @Schema(description = "Where the rear wheels leave the ground.")
            WheelLift rearLift,

            @Schema(description = "Rise of the front before it goes over backwards by itself, deg.")
            Angle tailTip,

            @Schema(description = "Axle loads.") List<AxleLoadsAt> axleLoads,

            @Schema(description = "What the driven tyres allow.") @Nullable
            TractionLimits traction,

            @Schema(description = "What the braked tyres allow.") @Nullable
            BrakingLimits braking) {}

    /** The worst filling. */
    @Schema(
            name = "StabilityWorstFilling",
            description =
                    "Of all ways to fill seats and racks with the driver aboard, the one that tips first; found exactly, whatever their number.")
    public record WorstFilling(
            @Schema(description = "Who and what is aboard, in the order of the request; empty when nobody is.")
            List<OnBoard> who,

            @Schema(
                    description =
                            "Whether it is the vehicle as driven, as measured under `laden` or for want of anything else.")
            boolean asDriven,

            @Schema(description = "Mass so filled, kg or lb.")
            Mass mass,

            @Schema(description = "Centre of gravity so filled.")
            CentreOfGravityPlace centreOfGravity,

            @Schema(description = "Static stability factor to the weaker side, rigid.")
            double staticStabilityFactor,

            @Schema(description = "The side it goes over first.")
            Side side,

            @Schema(description = "What tests of similar vehicles support of the factor.")
            Band band,

            @Schema(description = "The factor with the body rolling on its springs.") @Nullable
            Double suspendedFactor,

            @Schema(description = "Tilt sideways at which it goes over, rigid, deg.")
            Angle tiltAngle,

            @Schema(description = "Pushed to the left.") SideLimits left,

            @Schema(description = "Pushed to the right.") SideLimits right,

            @Schema(description = "Turning at full lock.") @Nullable
            TurnLimits fullLock,

            @Schema(description = "Turning on the planned radius.") @Nullable
            TurnLimits turn,

            @Schema(description = "Across the planned side slope.") @Nullable
            SlopeLimits sideSlope) {}

    /** A filling that is only looked at parked. */
    @Schema(name = "StabilityParkedFilling", description = "The filling that goes over first, parked across a slope.")
    public record ParkedFilling(
            @Schema(description = "Who and what is aboard.") List<OnBoard> who,

            @Schema(description = "To the side it goes over first.")
            SideLimits limits) {}

    /** A filling that lifts the front wheels first. */
    @Schema(name = "StabilityRearmostFilling", description = "The filling that lifts the front wheels first.")
    public record RearmostFilling(
            @Schema(description = "Who and what is aboard.") List<OnBoard> who,

            @Schema(description = "Grade at which the front wheels leave the ground standing, %.")
            Grade grade,

            @Schema(description = "Acceleration at which they do so on the level, m/s2 or g.")
            Acceleration acceleration) {}

    /** Somebody or something aboard. */
    @Schema(name = "StabilityOnBoard", description = "An occupant or a cargo item.")
    public record OnBoard(
            @Schema(description = "Name, as sent.") @Nullable
            String name,

            @Schema(description = "Reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer) {}

    /** A point. */
    @Schema(
            name = "StabilityCentreOfGravity",
            description = "x rearward from the front axle, y to the right, z up from the ground; m or in.")
    public record CentreOfGravityPlace(
            @Schema(description = "Behind the front axle.") Length x,

            @Schema(description = "To the right of the centre plane; left out when a track is not known.") @Nullable
            Length y,

            @Schema(description = "Above the ground.") Length z) {}

    /** The span that tests support. */
    @Schema(
            name = "StabilityBand",
            description =
                    "0.85 to 0.90 of the rigid factor [derived]: calculated factors of four-wheel all-terrain vehicles lay 10 to 15 % above measured ones.")
    public record Band(
            @Schema(description = "Low end.") double low,
            @Schema(description = "High end.") double high) {}

    /** Towards one side. */
    @Schema(name = "StabilitySideLimits", description = "What the vehicle stands towards one side.")
    public record SideLimits(
            @Schema(description = "The side it is pushed to.")
            Side side,

            @Schema(
                    description =
                            "Distance straight across to the tip line over height, the track interpolated at the centre of gravity: what a steady turn, a tilt or a side slope asks for.")
            double staticStabilityFactor,

            @Schema(
                    description =
                            "Shortest distance to the tip line over height: the least over all directions of a push, for braking or pulling away in a turn. With three wheels well below the factor.")
            double leastFactor,

            @Schema(description = "What tests of similar vehicles support of the factor.")
            Band band,

            @Schema(description = "The factor with the body rolling on its springs.") @Nullable
            Double suspendedFactor,

            @Schema(description = "Tilt at which it goes over, rigid, deg.")
            Angle tiltAngle) {}

    /** A turn. */
    @Schema(name = "StabilityTurnLimits", description = "Limits of a steady turn on level ground.")
    public record TurnLimits(
            @Schema(description = "Radius of the path of the centre of gravity, m or in.")
            Length radius,

            @Schema(
                    description =
                            "Whether that radius was worked out from the path of the outer front wheel; false: the radius as sent.")
            boolean fromOuterFrontWheel,

            @Schema(description = "The outside of the turn: where it tips or slides to.")
            Side outside,

            @Schema(description = "The lower of tip and slide, km/h or mph.")
            Speed speed,

            @Schema(description = "What comes first; a slide is no safety, it trips.")
            First first,

            @Schema(description = "Speed at which it tips, rigid.")
            Speed tipSpeed,

            @Schema(description = "Speed at the low end of the band.")
            Speed tipSpeedLow,

            @Schema(description = "Speed at which the tyres let go on even ground.")
            Speed slideSpeed,

            @Schema(description = "Lateral acceleration at `manoeuvre.speed`, m/s2 or g.") @Nullable
            Acceleration lateralAcceleration,

            @Schema(
                    description =
                            "Load that goes from the inner to the outer wheels then, kg or lb: from mass times acceleration, whatever the springs do.")
            @Nullable
            Load loadTransfer,

            @Schema(
                    description =
                            "At full lock: the same with the turning radius as sent taken as the path of the centre of gravity, which really runs on a tighter circle. Left out where nothing was worked out.")
            @Nullable
            SimpleTurn simple) {}

    /** A turn on the radius as sent. */
    @Schema(
            name = "StabilitySimpleTurn",
            description =
                    "Limits on the turning radius as sent; they flatter where the outer front wheel was measured.")
    public record SimpleTurn(
            @Schema(description = "The turning radius as sent, m or in.")
            Length radius,

            @Schema(description = "Speed at which it tips, rigid, km/h or mph.")
            Speed tipSpeed,

            @Schema(description = "Speed at which the tyres let go.")
            Speed slideSpeed,

            @Schema(description = "Lateral acceleration at `manoeuvre.speed`, m/s2 or g.") @Nullable
            Acceleration lateralAcceleration) {}

    /** Across a slope. */
    @Schema(name = "StabilitySlopeLimits", description = "Limits across the planned side slope.")
    public record SlopeLimits(
            @Schema(description = "The planned side slope, deg.")
            Angle slope,

            @Schema(description = "The lower side.") Side downhill,

            @Schema(description = "Slope at which it goes over standing, rigid, deg.")
            Angle tipsAt,

            @Schema(description = "Slope at which it slides standing, deg.")
            Angle slidesAt,

            @Schema(description = "What comes first.") First first,

            @Schema(description = "Turning in the plane of the slope with the uphill side inside.") @Nullable
            SlopeTurnLimits turningUphill,

            @Schema(description = "Turning in the plane of the slope with the downhill side inside.") @Nullable
            SlopeTurnLimits turningDownhill,

            @Schema(description = "A level circle on a road banked the wrong way: outer side lower.") @Nullable
            SlopeTurnLimits offCamber,

            @Schema(description = "A level circle on a road banked the right way: outer side higher.") @Nullable
            SlopeTurnLimits banked) {}

    /** A turn on a slope. */
    @Schema(
            name = "StabilitySlopeTurnLimits",
            description =
                    "Limits of a turn on a slope or a bank; what no speed reaches is left out, 0 is reached standing.")
    public record SlopeTurnLimits(
            @Schema(description = "Radius: the planned one, else that of full lock; m or in.")
            Length radius,

            @Schema(description = "The outside of the turn.")
            Side outside,

            @Schema(description = "The lower of tip and slide, km/h or mph.") @Nullable
            Speed speed,

            @Schema(description = "What comes first.") First first,

            @Schema(description = "Speed at which it tips, rigid.") @Nullable
            Speed tipSpeed,

            @Schema(description = "Speed at which the tyres let go.") @Nullable
            Speed slideSpeed) {}

    /** Wheels of one end leaving the ground. */
    @Schema(name = "StabilityWheelLift", description = "Where the wheels of one end leave the ground.")
    public record WheelLift(
            @Schema(
                    description =
                            "Pitch coefficient: distance of the centre of gravity from the other axle over its height.")
            double pitchCoefficient,

            @Schema(
                    description =
                            "Acceleration (front) or deceleration (rear) on the level, m/s2 or g; negative when they are off the ground standing.")
            Acceleration acceleration,

            @Schema(description = "Grade, uphill (front) or downhill (rear), %.")
            Grade grade,

            @Schema(
                    description =
                            "Acceleration left on the planned grade (front), deceleration left nose down on it (rear).")
            @Nullable
            Acceleration onGrade) {}

    /** Axle loads. */
    @Schema(
            name = "StabilityAxleLoads",
            description = "Loads of both axles; negative when an axle has left the ground.")
    public record AxleLoadsAt(
            @Schema(description = "What the vehicle does meanwhile.")
            Condition condition,

            @Schema(description = "Grade, uphill positive, %.")
            Grade grade,

            @Schema(description = "Acceleration, forward positive, m/s2 or g.")
            Acceleration acceleration,

            @Schema(description = "Front axle, kg or lb.") Load front,

            @Schema(description = "Rear axle, kg or lb.") Load rear,

            @Schema(description = "Share of the front axle.")
            double frontShare) {}

    /** Traction. */
    @Schema(name = "StabilityTraction", description = "What the driven tyres allow, without rolling resistance.")
    public record TractionLimits(
            @Schema(description = "The driven axles.") AxleSet driven,

            @Schema(description = "Acceleration on the level, m/s2 or g.")
            Acceleration acceleration,

            @Schema(description = "What ends it.") LimitedBy limitedBy,

            @Schema(description = "Acceleration left up the planned grade; negative when it slips back.") @Nullable
            Acceleration onGrade,

            @Schema(description = "Steepest grade, %.") Grade grade) {}

    /** Braking. */
    @Schema(name = "StabilityBraking", description = "What the braked tyres allow, without rolling resistance.")
    public record BrakingLimits(
            @Schema(description = "The braked axles.") AxleSet braked,

            @Schema(description = "Deceleration on the level, m/s2 or g.")
            Acceleration deceleration,

            @Schema(description = "What ends it.") LimitedBy limitedBy,

            @Schema(description = "Deceleration left down the planned grade; negative when it runs away.") @Nullable
            Acceleration downhill,

            @Schema(description = "Steepest grade held parked nose up, %.")
            Grade noseUp,

            @Schema(description = "Steepest grade held parked nose down, %.")
            Grade noseDown) {}
}
