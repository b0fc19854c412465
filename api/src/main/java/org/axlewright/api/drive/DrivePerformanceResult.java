package org.axlewright.api.drive;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.drive.DriveLimit;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Rotation;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Torque;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** How fast it goes, what it climbs and how it pulls away. */
@Schema(description = "How fast it goes, what it climbs and how it pulls away, with what limits it each time.")
public record DrivePerformanceResult(
        @Schema(description = "Top speed on the level; left out when it does not move.") @Nullable
        SteadySpeed topSpeed,

        @Schema(description = "The pack at that speed.") @Nullable
        PackLoad atTopSpeed,

        @Schema(description = "Road speed with the motor at its highest speed, whatever the power, km/h or mph.")
        @Nullable
        Speed idealSpeed,

        @Schema(
                description =
                        "Speed on the level to which the motor's most power suffices, whatever the ratio, km/h or mph.")
        @Nullable
        Speed powerLimitedSpeed,

        @Schema(description = "Ratio at which ideal and power-limited speed meet.") @Nullable
        Double fittingRatio,

        @Schema(description = "Steepest grade on which it still pulls away with 0.3 m/s2.") @Nullable
        LimitedGrade startGrade,

        @Schema(description = "Grade that the most pull at standstill just holds.") @Nullable
        LimitedGrade stallGrade,

        @Schema(description = "Grade that the motor's rated torque holds, %, for as long as its duty allows.") @Nullable
        Grade sustainedGrade,

        @Schema(description = "Grade on which the driven tyres slip, %.") @Nullable
        Grade gripGrade,

        @Schema(description = "Most thrust the driven tyres pass on at standstill on the level, N or lbf.") @Nullable
        Force gripLimit,

        @Schema(description = "Pulling away on the level at full throttle.") @Nullable
        PullAway launch,

        @Schema(description = "From standstill to `manoeuvre.speed` on the level at full throttle.") @Nullable
        TimeToSpeed toSpeed,

        @Schema(description = "Grade at which the pack reaches its limit of current.") @Nullable
        TripGrade tripGrade,

        @Schema(description = "Most current of the pack at full throttle up to top speed, A.") @Nullable
        Current greatestPackCurrent,

        @Schema(description = "What `ground.grade` and the legs of the route ask of the drive; descents are left out.")
        List<Climb> climbs,

        @Schema(description = "The route's heating of the motor.") @Nullable
        RouteTorque routeTorque,

        @Schema(
                description =
                        "The motor model used: `curve`, `series-dc`, `constant-field-dc`, or `plate` (constant torque, then constant power, up to its highest speed).")
        String model,

        @Schema(description = "What a measured speed calibrated.") @Nullable
        SpeedCalibration calibration,

        @Schema(description = "Torque and thrust at full throttle over the speed, on the level, enough to plot.")
        List<ThrustPoint> thrust) {

    /** A steady speed. */
    @Schema(description = "A steady speed and what keeps it from rising.")
    public record SteadySpeed(
            @Schema(description = "The speed, km/h or mph.") Speed speed,

            @Schema(description = "The motor there, rpm.") Rotation motorSpeed,

            @Schema(description = "What limits it.") DriveLimit limitedBy) {}

    /** The pack under load. */
    @Schema(description = "What the pack gives.")
    public record PackLoad(
            @Schema(description = "Power from the pack, W.") Power power,

            @Schema(description = "Its current, A.") @Nullable
            Current current,

            @Schema(description = "Its voltage under load, V; needs the internal resistance.") @Nullable
            Voltage voltage) {}

    /** A grade and what limits it. */
    @Schema(description = "A grade and what limits it.")
    public record LimitedGrade(
            @Schema(description = "The grade, %; negative downhill.")
            Grade grade,

            @Schema(description = "What limits it.") DriveLimit limitedBy) {}

    /** Pulling away. */
    @Schema(description = "Pulling away on the level at full throttle.")
    public record PullAway(
            @Schema(description = "Thrust at the ground, N or lbf.")
            Force thrust,

            @Schema(
                    description =
                            "Torque at the motor shaft, Nm or lbf.ft; over the ratio it is what motor and axle mounts hold against.")
            Torque motorTorque,

            @Schema(description = "Torque at the driven wheels together, Nm or lbf.ft.")
            Torque wheelTorque,

            @Schema(description = "Acceleration, m/s2 or g.")
            Acceleration acceleration,

            @Schema(description = "What limits the thrust.") DriveLimit limitedBy,

            @Schema(description = "Load left on the front axle, kg or lb; negative when the wheels lift.") @Nullable
            Load frontAxleLoad,

            @Schema(description = "The same as a share of the weight.") @Nullable
            Double frontShare) {}

    /** From standstill to a speed. */
    @Schema(description = "From standstill to a speed on the level at full throttle.")
    public record TimeToSpeed(
            @Schema(description = "Time, s.") Time time,

            @Schema(description = "Distance, km or mi.") Distance distance,

            @Schema(description = "Energy from the pack, Wh; the parts add up to it.")
            Energy packEnergy,

            @Schema(description = "Into the moving vehicle and its rotating parts, Wh.")
            Energy kinetic,

            @Schema(description = "Into rolling resistance, Wh.")
            Energy rolling,

            @Schema(description = "Into the air, Wh.") Energy drag,

            @Schema(description = "Lost between pack and wheel, Wh.")
            Energy losses,

            @Schema(description = "Into everything else on the pack, Wh.")
            Energy accessories) {}

    /** Where the pack cuts out. */
    @Schema(description = "Grade at which the pack reaches its peak limit, else its continuous one, at a speed.")
    public record TripGrade(
            @Schema(description = "The grade, %.") Grade grade,

            @Schema(description = "`manoeuvre.speed`, else top speed, km/h or mph.")
            Speed speed,

            @Schema(description = "The limit, A.") Current current) {}

    /** What a stretch asks. */
    @Schema(description = "What a stretch asks of the drive at its speed.")
    public record Climb(
            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Whether the drive holds the speed, or pulls at all where none was asked for.")
            boolean possible,

            @Schema(description = "The grade, %.") Grade grade,

            @Schema(description = "The speed asked for, else the one it reaches, km/h or mph; 0 when it does not pull.")
            Speed speed,

            @Schema(description = "Steady speed at full throttle; left out when it does not pull away.") @Nullable
            SteadySpeed reachable,

            @Schema(description = "Force needed at the wheels, N or lbf.")
            Force force,

            @Schema(description = "Torque at the wheels, all driven ones together, Nm or lbf.ft.")
            Torque wheelTorque,

            @Schema(description = "Torque at the motor shaft, Nm or lbf.ft.")
            Torque motorTorque,

            @Schema(description = "Torque over rated torque.") @Nullable
            Double ratedShare,

            @Schema(description = "Motor speed, rpm.") Rotation motorSpeed,

            @Schema(description = "Power at the wheels, W.") Power wheelPower,

            @Schema(description = "Power at the motor shaft, W or hp.")
            Power shaftPower,

            @Schema(description = "Power from the pack, W.") Power packPower,

            @Schema(description = "Current from the pack, A.") @Nullable
            Current packCurrent,

            @Schema(description = "Voltage of the pack under it, V.") @Nullable
            Voltage packVoltage,

            @Schema(description = "Current of the motor, A; at part throttle more than the pack's.") @Nullable
            Current motorCurrent,

            @Schema(description = "What limits the pull there.")
            DriveLimit limitedBy,

            @Schema(description = "Whether one figure of efficiency can't hold because the motor hardly turns.")
            boolean nearStall,

            @Schema(description = "Load on the front axle on the grade at steady speed, kg or lb.") @Nullable
            Load frontAxleLoad) {}

    /** The route's heating. */
    @Schema(description = "The route's heating of the motor, legs with a length and a speed, waiting included.")
    public record RouteTorque(
            @Schema(description = "Torque that heats alike without end: root of the mean square, Nm or lbf.ft.")
            Torque rootMeanSquare,

            @Schema(description = "The same over the rated torque.") @Nullable
            Double ratedShare) {}

    /** A calibration. */
    @Schema(description = "What a measured speed calibrated.")
    public record SpeedCalibration(
            @Schema(description = "Measured top speed, km/h or mph.")
            Speed measured,

            @Schema(description = "Top speed without the measurement, km/h or mph.")
            Speed reckoned,

            @Schema(description = "`motor-speed`, or `resistance` (rolling and drag).")
            String what,

            @Schema(description = "Measured over reckoned.") double factor) {}

    /** One point of the thrust. */
    @Schema(description = "One point of torque and thrust over the speed.")
    public record ThrustPoint(
            @Schema(description = "Road speed, km/h or mph.")
            Speed speed,

            @Schema(description = "Motor speed, rpm.") Rotation motorSpeed,

            @Schema(description = "Torque at the motor shaft, Nm or lbf.ft.")
            Torque motorTorque,

            @Schema(description = "Torque at the driven wheels together, Nm or lbf.ft.")
            Torque wheelTorque,

            @Schema(description = "Thrust at the ground, N or lbf.")
            Force thrust,

            @Schema(description = "What resists on the level, N or lbf.")
            Force resistance,

            @Schema(description = "Power from the pack, W.") Power packPower,

            @Schema(description = "Current from the pack, A.") @Nullable
            Current packCurrent,

            @Schema(description = "Current of the motor, A.") @Nullable
            Current motorCurrent,

            @Schema(description = "What limits the pull.") DriveLimit limitedBy) {}
}
