package org.axlewright.api.drive;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.drive.DisplayCause;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Rotation;
import org.axlewright.domain.quantity.Speed;
import org.jspecify.annotations.Nullable;

/** Road speeds by tyre, ratio and motor speed. */
@Schema(description = "Road speeds by tyre, ratio and motor speed, and what limiter and display must be set to.")
public record GearingResult(
        @Schema(description = "Road speed with the motor at its full speed, km/h or mph; limits may stop it before.")
        @Nullable
        Speed idealSpeed,

        @Schema(description = "What is normal on the road where the motor's speed holds without load.") @Nullable
        SpeedBand roadSpeed,

        @Schema(description = "Motor speed at the pack's nominal voltage, rpm; as stated where a voltage is missing.")
        @Nullable
        Rotation fullMotorSpeed,

        @Schema(description = "What to set for the wanted top speed.") @Nullable
        LimiterSetting limiter,

        @Schema(description = "Road speed at the cap set in the controller, km/h or mph.") @Nullable
        Speed capSpeed,

        @Schema(description = "Road speed at 1000 turns of the motor a minute, km/h or mph.") @Nullable
        Speed speedPer1000Rpm,

        @Schema(description = "Distance rolled in one turn of the wheel, as reckoned with, mm or in.") @Nullable
        Length rollout,

        @Schema(description = "At the road speed asked for.") @Nullable
        TurnsAtSpeed atSpeed,

        @Schema(description = "Road speed at which the rotor passes its limit, driven or towed, km/h or mph.") @Nullable
        Speed towSpeed,

        @Schema(description = "The display against the true speed.") @Nullable
        DisplayReading display,

        @Schema(description = "What the change did, and the share of each part.") @Nullable
        GearingChange change,

        @Schema(description = "What a measured speed says of the wheel.") @Nullable
        MeasuredWheel measured) {

    /** Both ends of a speed. */
    @Schema(description = "Both ends of a speed, km/h or mph.")
    public record SpeedBand(
            @Schema(description = "Slow end.") Speed least,
            @Schema(description = "Fast end.") Speed most) {}

    /** Limiter settings. */
    @Schema(description = "What to set for a wanted top speed.")
    public record LimiterSetting(
            @Schema(description = "The wanted top speed, km/h or mph.")
            Speed speed,

            @Schema(description = "Motor speed at which the controller must stop driving, rpm.")
            Rotation motorSpeedCap,

            @Schema(description = "The same as a share of the motor's full speed, 0 to 1; above 1 it never acts.")
            @Nullable
            Double shareOfFull) {}

    /** Turns at a road speed. */
    @Schema(description = "Turns at a road speed.")
    public record TurnsAtSpeed(
            @Schema(description = "The road speed, km/h or mph.")
            Speed speed,

            @Schema(description = "The wheel, rpm.") Rotation wheelSpeed,

            @Schema(description = "The motor, rpm.") Rotation motorSpeed) {}

    /** The display. */
    @Schema(description = "The display against the true speed.")
    public record DisplayReading(
            @Schema(description = "Speed shown over true speed, as observed.") @Nullable
            Double shownShare,

            @Schema(description = "The same as pulses, tyre and ratio make it, the sensor at the motor.") @Nullable
            Double predictedShare,

            @Schema(description = "Factor that turns what it shows into the true speed; 0 when it shows nothing.")
            double correction,

            @Schema(description = "What such a reading points to.")
            DisplayCause cause) {}

    /** A change as a whole and in its parts. */
    @Schema(description = "What the change did: factors, now over before, and the share of each part.")
    public record GearingChange(
            @Schema(description = "Ideal speed now over before.")
            double speedFactor,

            @Schema(description = "Wheel force now over before at the same motor torque.")
            double wheelForceFactor,

            @Schema(description = "Wheel force per mass now over before at the same motor torque.")
            double pullFactor,

            @Schema(description = "The parts; the factors multiply, the shares add up to 1.")
            List<ChangePart> parts) {}

    /** One part of a change. */
    @Schema(description = "One part of a change: `tyre`, `ratio`, `voltage` or `mass`.")
    public record ChangePart(
            @Schema(description = "Which part.") String name,

            @Schema(description = "Its factor on the ideal speed.")
            double speedFactor,

            @Schema(
                    description =
                            "Its share of the change of speed, by logarithms; negative when it works against the whole, left out when the whole changed nothing.")
            @Nullable
            Double speedShare,

            @Schema(description = "Its factor on the wheel force per mass.")
            double pullFactor,

            @Schema(description = "Its share of the change of wheel force per mass, by logarithms.") @Nullable
            Double pullShare) {}

    /** What a measured speed says. */
    @Schema(description = "What a measured speed says of the wheel.")
    public record MeasuredWheel(
            @Schema(description = "Distance rolled in one turn that speed and motor speed imply, mm or in.") @Nullable
            Length impliedRollout,

            @Schema(description = "Diameter of a circle of that circumference, mm or in.") @Nullable
            Length impliedDiameter,

            @Schema(description = "Speed of the wheel at the measurement, rpm.") @Nullable
            Rotation wheelSpeed,

            @Schema(description = "Implied rollout over the one reckoned or measured.") @Nullable
            Double rolloutFactor,

            @Schema(description = "Whether everything else is reckoned with the implied rollout.")
            boolean calibrates,

            @Schema(description = "Measured speed over the ideal one.") @Nullable
            Double shareOfIdeal) {}
}
