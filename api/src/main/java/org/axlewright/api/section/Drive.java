package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.motor.DutyType;
import org.axlewright.domain.motor.MotorType;
import org.axlewright.domain.quantity.Capacitance;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Rotation;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Torque;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** From the pack to the wheel. */
@Schema(description = "Motor, reduction, controller and what is lost between pack and wheel.")
public record Drive(
        @Schema(description = "The motor's data plate.") @Valid @Nullable
        Motor motor,

        @Schema(
                description =
                        "Overall reduction, turns of the motor for one turn of the wheel: a number such as 12.44, or tooth counts as text such as `14:60`, either way round.")
        @DecimalMin("0.1")
        @DecimalMax("200")
        @Nullable
        Ratio ratio,

        @Schema(description = "Efficiency of the reduction between motor shaft and wheel, 0 to 1.")
        @DecimalMin("0.3")
        @DecimalMax("1")
        @Nullable
        Double gearEfficiency,

        @Schema(description = "The controller's limits.") @Valid @Nullable
        Controller controller,

        @Schema(description = "Efficiency from pack to wheel while driving, 0 to 1.")
        @DecimalMin("0.05")
        @DecimalMax("1")
        @Nullable
        Double efficiency,

        @Schema(
                description =
                        "Share of the braking energy at the wheel that comes back into the pack, 0 to 1; nothing when left out.")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double regenerationShare,

        @Schema(description = "Speed the controller is set to hold.")
        @Within(min = 0.1, max = 60, unit = "m/s")
        @Nullable
        Speed speedLimit,

        @Schema(description = "The resistor that takes braking energy the pack must not take.") @Valid @Nullable
        BrakingResistor brakingResistor,

        @Schema(description = "A top speed that was measured on the level, by satellite or stop watch.")
        @Valid
        @Nullable
        MeasuredSpeed measured,

        @Schema(
                description =
                        "The drive before the change, for the share of each change; tyres before are told in `lift`.")
        @Valid
        @Nullable
        FormerDrive before,

        @Schema(description = "The speed sensor and the display, where the display reads wrong.") @Valid @Nullable
        SpeedSensor speedSensor) {

    /** Data plate of the motor. */
    @Schema(description = "Data plate of the motor.")
    public record Motor(
            @Schema(description = "Rated speed of rotation.") @Within(min = 10, max = 30_000, unit = "rpm") @Nullable
            Rotation speed,

            @Schema(description = "Voltage at which the speed holds.")
            @Within(min = 6, max = 1000, unit = "V")
            @Nullable
            Voltage voltage,

            @Schema(description = "Rated shaft power.") @Within(min = 10, max = 500_000, unit = "W") @Nullable
            Power power,

            @Schema(description = "How the motor is built.") @Nullable
            MotorType type,

            @Schema(description = "True when `speed` was stated under load; false when it is the speed without load.")
            @Nullable
            Boolean loaded,

            @Schema(description = "Largest torque at the shaft, from the maker or a test.")
            @Within(min = 0.1, max = 2000, unit = "Nm")
            @Nullable
            Torque maximumTorque,

            @Schema(description = "Torque at the shaft that the duty rating allows.")
            @Within(min = 0.1, max = 2000, unit = "Nm")
            @Nullable
            Torque ratedTorque,

            @Schema(description = "Motor current at which `maximumTorque` or, without it, `ratedTorque` holds.")
            @Within(min = 1, max = 5000, unit = "A")
            @Nullable
            Current torqueCurrent,

            @Schema(description = "Resistance of the winding between its terminals.")
            @Within(min = 0.01, max = 10_000, unit = "mohm")
            @Nullable
            Resistance resistance,

            @Schema(description = "Speed the rotor must never pass, driven or towed.")
            @Within(min = 10, max = 50_000, unit = "rpm")
            @Nullable
            Rotation maximumSpeed,

            @Schema(description = "Duty for which the motor is rated (IEC 60034-1).") @Nullable
            DutyType duty,

            @Schema(description = "Minutes of the short-time rating `s2`.")
            @Within(min = 10, max = 21_600, unit = "s")
            @Nullable
            Time dutyTime,

            @Schema(description = "Rated current of the motor, as its duty allows.")
            @Within(min = 0.1, max = 5000, unit = "A")
            @Nullable
            Current ratedCurrent,

            @ArraySchema(
                    arraySchema =
                            @Schema(description = "The maker's curve at full throttle and `voltage`, by rising speed."))
            @Size(min = 2, max = 100)
            @Nullable
            List<@Valid CurvePoint> curve) {}

    /** One point of a motor's curve. */
    @Schema(description = "One point of a motor's curve.")
    public record CurvePoint(
            @Schema(description = "Speed of rotation.") @Within(min = 0, max = 50_000, unit = "rpm") @Nullable
            Rotation speed,

            @Schema(description = "Torque at the shaft.") @Within(min = 0, max = 2000, unit = "Nm") @Nullable
            Torque torque,

            @Schema(description = "Motor current there.") @Within(min = 0, max = 5000, unit = "A") @Nullable
            Current current) {}

    /** The controller. Battery-side and motor-side current are two things. */
    @Schema(
            description =
                    "Limits of the controller. Battery-side and motor-side current are two things: at part throttle the motor carries more than the pack gives.")
    public record Controller(
            @Schema(description = "Limit on the motor side.") @Within(min = 1, max = 5000, unit = "A") @Nullable
            Current motorCurrent,

            @Schema(description = "Limit on the battery side.") @Within(min = 1, max = 5000, unit = "A") @Nullable
            Current batteryCurrent,

            @Schema(description = "Least voltage at which it works.") @Within(min = 1, max = 1000, unit = "V") @Nullable
            Voltage minimumVoltage,

            @Schema(description = "Highest voltage it bears, regeneration included.")
            @Within(min = 1, max = 1000, unit = "V")
            @Nullable
            Voltage maximumVoltage,

            @Schema(description = "Limit of the current it sends back to the battery.")
            @Within(min = 0, max = 5000, unit = "A")
            @Nullable
            Current regenerationCurrent,

            @Schema(description = "Largest braking torque at the motor shaft while it regenerates.")
            @Within(min = 0, max = 2000, unit = "Nm")
            @Nullable
            Torque regenerationTorque,

            @Schema(description = "Motor speed at which it stops driving.")
            @Within(min = 10, max = 50_000, unit = "rpm")
            @Nullable
            Rotation speedCap,

            @Schema(description = "Capacitance between its battery terminals.")
            @Within(min = 0.1, max = 1_000_000, unit = "uF")
            @Nullable
            Capacitance capacitance,

            @Schema(
                    description =
                            "Rated voltage of those capacitors, or the absolute maximum of its power parts: what a spike must never reach.")
            @Within(min = 1, max = 1000, unit = "V")
            @Nullable
            Voltage capacitorVoltage) {}

    /** The resistor that takes braking energy. */
    @Schema(description = "The resistor that takes braking energy the pack must not take.")
    public record BrakingResistor(
            @Schema(description = "Its resistance.") @Within(min = 1, max = 100_000, unit = "mohm") @Nullable
            Resistance resistance,

            @Schema(description = "Power it may take for as long as you like.")
            @Within(min = 1, max = 100_000, unit = "W")
            @Nullable
            Power continuousPower,

            @Schema(description = "Mass of the resistor with its heat sink.")
            @Within(min = 0.01, max = 200, unit = "kg")
            @Nullable
            Mass heatSinkMass) {}

    /** A measured speed. */
    @Schema(
            description =
                    "A speed that was measured with this drive, on the level at full throttle; it calibrates the model.")
    public record MeasuredSpeed(
            @Schema(description = "True speed.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
            Speed speed,

            @Schema(description = "Motor speed read at the same time.")
            @Within(min = 10, max = 50_000, unit = "rpm")
            @Nullable
            Rotation motorSpeed,

            @Schema(description = "Pack voltage read at the same time.")
            @Within(min = 1, max = 1000, unit = "V")
            @Nullable
            Voltage voltage) {}

    /** The drive before a change. */
    @Schema(description = "The drive before the change; what is left out did not change.")
    public record FormerDrive(
            @Schema(description = "Overall reduction: a number, or tooth counts as text.")
            @DecimalMin("0.1")
            @DecimalMax("200")
            @Nullable
            Ratio ratio,

            @Schema(description = "Pack voltage, nominal.") @Within(min = 6, max = 1000, unit = "V") @Nullable
            Voltage voltage,

            @Schema(description = "Mass as driven.") @Within(min = 1, max = 20_000, unit = "kg") @Nullable
            Mass mass) {}

    /** The speed sensor and what the display shows. */
    @Schema(description = "The speed sensor and what the display shows.")
    public record SpeedSensor(
            @Schema(description = "Pulses for one turn of the sensor that the display was set for.")
            @DecimalMin("0.01")
            @DecimalMax("10000")
            @Nullable
            Double pulsesExpected,

            @Schema(description = "Pulses for one turn that the sensor gives.")
            @DecimalMin("0.01")
            @DecimalMax("10000")
            @Nullable
            Double pulsesGiven,

            @Schema(description = "Speed the display shows.") @Within(min = 0, max = 100, unit = "m/s") @Nullable
            Speed shown,

            @Schema(description = "True speed at the same time.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
            Speed trueSpeed) {}
}
