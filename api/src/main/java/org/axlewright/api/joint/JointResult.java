package org.axlewright.api.joint;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.TemperatureDifference;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Every joint with its resistance, heat and temperature. */
@Schema(description = "Every joint with its resistance, heat and temperature, in the order sent, and how they compare.")
public record JointResult(
        @Schema(description = "The joints, in the order sent.")
        List<MeasuredJoint> joints,

        @Schema(description = "Place of the joint that stands out most, a pointer; left out when none does.") @Nullable
        String odd,

        @Schema(description = "Median of the resistances, mohm; from three joints.") @Nullable
        Resistance medianResistance,

        @Schema(description = "Heat of all joints whose current is known, mean over their cycles, W.") @Nullable
        Power heat) {

    /** One joint. */
    @Schema(description = "One joint.")
    public record MeasuredJoint(
            @Schema(description = "Its name, as sent.") @Nullable
            String name,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Resistance, mohm.") Resistance resistance,

            @Schema(description = "Heat at the current of the reading, W.") @Nullable
            Power readingHeat,

            @Schema(description = "Current of the same mean heat over the cycle, A.") @Nullable
            Current rmsCurrent,

            @Schema(description = "Largest current of the cycle, A.") @Nullable
            Current peakCurrent,

            @Schema(description = "Heat, mean over the cycle, W.") @Nullable
            Power meanHeat,

            @Schema(description = "Heat at the largest current, W.") @Nullable
            Power peakHeat,

            @Schema(description = "Voltage lost in the joint at the largest current, V.") @Nullable
            Voltage peakDrop,

            @Schema(description = "Measured temperature above the air, K.") @Nullable
            TemperatureDifference rise,

            @Schema(description = "Temperature at which it settles with the cycle's mean heat, degC or degF.") @Nullable
            Temperature settledTemperature,

            @Schema(description = "Temperature if the largest current lasted, degC or degF.") @Nullable
            Temperature peakTemperature,

            @Schema(description = "Length of its cable with the same resistance, copper at 20 degC, m or in.") @Nullable
            Length sameAsCable,

            @Schema(description = "Resistance over that of the same length of cable; 1 for a sound crimp.") @Nullable
            Double cableFactor,

            @Schema(description = "Resistance over the median of all joints; from three joints.") @Nullable
            Double medianRatio,

            @Schema(
                    description =
                            "Measured rise above the mean rise of the others, at its own current, K; from three joints with temperature.")
            @Nullable
            TemperatureDifference aboveOthers) {}
}
