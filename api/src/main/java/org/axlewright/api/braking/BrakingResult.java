package org.axlewright.api.braking;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.braking.BrakeLimit;
import org.axlewright.domain.braking.Braking;
import org.axlewright.domain.braking.FirstToLock;
import org.axlewright.domain.braking.HoldLimit;
import org.axlewright.domain.braking.RetarderLimit;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.TemperatureDifference;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Stops and holds with everybody aboard, and the same without occupants under {@code empty}. */
@Schema(
        description =
                "Stops and holds with everybody aboard, as raised by `lift` and tyres; the same without occupants under `empty`.")
public record BrakingResult(
        @Schema(description = "Mass as driven, kg or lb.") Mass mass,

        @Schema(description = "Distance until the brakes come on, m or in; the same on every slope.") @Nullable
        Length reactionDistance,

        @Schema(description = "A full stop on the level.") @Nullable
        StopResult level,

        @Schema(description = "A full stop on the slope sent as `ground.grade`, uphill positive.") @Nullable
        StopResult onGrade,

        @Schema(description = "A full stop on the same slope taken the other way.") @Nullable
        StopResult onOppositeGrade,

        @Schema(description = "The steepest ramps on which the parking brake holds it.") @Nullable
        HoldResult parking,

        @Schema(description = "The brake on the motor shaft when the power trips, all other brakes off.") @Nullable
        MotorBrakeResult motorBrake,

        @Schema(description = "Regeneration alone, all other brakes off; the stops do not count on it.") @Nullable
        RegenerationResult regeneration,

        @Schema(description = "What each change does to the braking distance on the level.")
        List<CostResult> costs,

        @Schema(description = "Stopping distances at half to one and a half times the speed sent.")
        List<AtSpeedResult> bySpeed,

        @Schema(description = "What the measured stop tells.") @Nullable
        CalibrationResult calibration,

        @Schema(description = "The same without occupants.") @Nullable
        Empty empty) {

    /** The vehicle without occupants. */
    @Schema(name = "BrakingEmpty", description = "Stops and holds without occupants.")
    public record Empty(
            @Schema(description = "Mass, kg or lb.") Mass mass,

            @Schema(description = "A full stop on the level.") @Nullable
            StopResult level,

            @Schema(description = "A full stop on the slope sent.") @Nullable
            StopResult onGrade,

            @Schema(description = "A full stop on the same slope taken the other way.") @Nullable
            StopResult onOppositeGrade,

            @Schema(description = "The steepest ramps on which the parking brake holds it.") @Nullable
            HoldResult parking,

            @Schema(description = "The brake on the motor shaft when the power trips.") @Nullable
            MotorBrakeResult motorBrake,

            @Schema(description = "Regeneration alone.") @Nullable
            RegenerationResult regeneration) {}

    /** One stop. */
    @Schema(
            name = "BrakingStop",
            description =
                    "One full stop, brakes right down. Distances are left out where the brakes do not stop the vehicle.")
    public record StopResult(
            @Schema(description = "Stopping distance from seeing to standing, m or in.") @Nullable
            Length totalDistance,

            @Schema(description = "Braking distance, from where the brakes come on, m or in.") @Nullable
            Length brakingDistance,

            @Schema(description = "Time from there to a standstill, s.") @Nullable
            Time brakingTime,

            @Schema(
                    description =
                            "Slowing down, m/s2 or g; negative where the slope pulls harder than the brakes hold.")
            Acceleration deceleration,

            @Schema(description = "Retarding force at the ground, N or lbf.")
            Force force,

            @Schema(description = "Which wheels lock first as the pedal goes down.") @Nullable
            FirstToLock firstToLock,

            @Schema(description = "Slowing down without locking any wheel, m/s2 or g.") @Nullable
            Acceleration decelerationWithoutLocking,

            @Schema(description = "Front axle.") @Nullable AxleStopResult frontAxle,

            @Schema(description = "Rear axle.") @Nullable AxleStopResult rearAxle,

            @Schema(description = "Energy that the brakes take, Wh.") @Nullable
            Energy heat) {}

    /** One axle in a stop. */
    @Schema(name = "BrakingAxle", description = "One axle in a full stop: the least of its brakes and its tyres.")
    public record AxleStopResult(
            @Schema(description = "Load on the axle meanwhile, kg or lb.")
            Load load,

            @Schema(description = "Its retarding force, N or lbf.")
            Force force,

            @Schema(description = "What ends it.") BrakeLimit limitedBy,

            @Schema(description = "Energy its brakes take, Wh; an upper bound where the wheels slide.") @Nullable
            Energy heat,

            @Schema(description = "Temperature rise of its drums or discs in one stop, K; an upper bound.") @Nullable
            TemperatureDifference temperatureRise) {}

    /** Nose up and nose down. */
    @Schema(name = "BrakingHold", description = "The steepest ramps on which it stays, nose up and nose down.")
    public record HoldResult(
            @Schema(description = "Parked nose up.") RampResult noseUp,

            @Schema(description = "Parked nose down.") RampResult noseDown) {}

    /** One ramp. */
    @Schema(name = "BrakingRamp", description = "The steepest ramp, and what gives way beyond it.")
    public record RampResult(
            @Schema(description = "The ramp, %.") Grade grade,

            @Schema(description = "What gives way first.") HoldLimit limitedBy) {}

    /** A brake through the motor on one slope. */
    @Schema(
            name = "BrakingThroughMotor",
            description =
                    "A brake that acts through the motor: it reaches the driven axle and has that axle's grip only.")
    public record RetarderResult(
            @Schema(description = "Force at the ground, N or lbf.")
            Force force,

            @Schema(description = "Force that the motor asks for, N or lbf.")
            Force wanted,

            @Schema(description = "What bounds the force; `tyres`: the wheels lock or slide.")
            RetarderLimit limitedBy,

            @Schema(description = "What the tyres of the axle could pass on, N or lbf.") @Nullable
            Force grip,

            @Schema(
                    description =
                            "Friction that the wanted force takes; left out where the axle would leave the ground first.")
            @Nullable
            Double frictionNeeded,

            @Schema(description = "Slowing down, m/s2 or g; negative where the slope pulls harder.")
            Acceleration deceleration,

            @Schema(description = "Distance to a standstill, reaction left out, m or in.") @Nullable
            Length distance) {}

    /** The brake on the motor shaft. */
    @Schema(name = "BrakingMotorBrake", description = "The spring-applied brake on the motor shaft.")
    public record MotorBrakeResult(
            @Schema(description = "On the level.") RetarderResult level,

            @Schema(description = "Down the slope sent, whichever sign it has.") @Nullable
            RetarderResult downhill,

            @Schema(description = "The steepest ramps that it holds.") @Nullable
            HoldResult parking) {}

    /** Regeneration alone. */
    @Schema(name = "BrakingRegeneration", description = "Regeneration alone, as far as controller and pack allow.")
    public record RegenerationResult(
            @Schema(description = "On the level.") RetarderResult level,

            @Schema(description = "Down the slope sent, whichever sign it has.") @Nullable
            RetarderResult downhill) {}

    /** What one change costs. */
    @Schema(name = "BrakingCost", description = "What one change does to the braking distance on the level.")
    public record CostResult(
            @Schema(
                    description =
                            "`tyres`: the change of tyres in `lift`; `plan`: from the bare vehicle as weighed to the planned one without people, items and lift together; `occupants`: the people; `tenth-faster`: a tenth more speed.")
            Braking.Change change,

            @Schema(description = "Braking distance without the change, m or in.")
            Length without,

            @Schema(description = "Braking distance with it, m or in.")
            Length with,

            @Schema(description = "With over without.") double factor) {}

    /** Stopping distance at another speed. */
    @Schema(name = "BrakingAtSpeed", description = "Stopping distance at another speed, reaction included.")
    public record AtSpeedResult(
            @Schema(description = "The speed, km/h or mph.") Speed speed,

            @Schema(description = "Distance until the brakes come on, m or in.")
            Length reactionDistance,

            @Schema(description = "Stopping distance on the level, m or in.")
            Length level,

            @Schema(description = "Stopping distance on the slope sent, m or in.") @Nullable
            Length onGrade) {}

    /** What the measured stop tells. */
    @Schema(name = "BrakingCalibration", description = "What the measured stop tells of brakes and tyres.")
    public record CalibrationResult(
            @Schema(description = "Mean deceleration of the stop, m/s2 or g.")
            Acceleration deceleration,

            @Schema(description = "Mean retarding force of the stop, N or lbf.")
            Force force,

            @Schema(description = "The same with the tyres now, N or lbf: the brakes give at least this.")
            Force forceNow,

            @Schema(description = "The ground gave at least this friction.") @Nullable
            Double frictionAtLeast,

            @Schema(
                    description =
                            "What ended the stop; left out when it can't be told, and then both give at least what was measured.")
            @Nullable
            BrakeLimit limitedBy) {}
}
