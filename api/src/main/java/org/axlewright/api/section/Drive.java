package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Rotation;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** From the pack to the wheel. */
@Schema(description = "Motor, reduction, controller and what is lost between pack and wheel.")
public record Drive(
        @Schema(description = "The motor's data plate.") @Valid @Nullable
        Motor motor,

        @Schema(description = "Overall reduction: turns of the motor for one turn of the wheel.")
        @DecimalMin("0.1")
        @DecimalMax("200")
        @Nullable
        Double ratio,

        @Schema(description = "The controller's current limits.") @Valid @Nullable
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
        Speed speedLimit) {

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
            Power power) {}

    /** The controller. Battery-side and motor-side current are two things. */
    @Schema(
            description =
                    "Current limits of the controller. Battery-side and motor-side current are two things: at part throttle the motor carries more than the pack gives.")
    public record Controller(
            @Schema(description = "Limit on the motor side.") @Within(min = 1, max = 5000, unit = "A") @Nullable
            Current motorCurrent,

            @Schema(description = "Limit on the battery side.") @Within(min = 1, max = 5000, unit = "A") @Nullable
            Current batteryCurrent) {}
}
