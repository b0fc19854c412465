package org.axlewright.api.repack;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Consumption;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** The same vehicle with its former pack and with the one it has now. */
@Schema(description = "The same vehicle with its former pack and with the one it has now.")
public record PackWeightChangeResult(
        @Schema(description = "Mass after less mass before, kg or lb; negative when lighter.")
        Mass massChange,

        @Schema(description = "With the former pack.") PackState before,

        @Schema(description = "With the pack it has now.") PackState after,

        @Schema(
                description =
                        "Acceleration and climb under the same force, after over before: above 1 it pulls away better.")
        double accelerationFactor,

        @Schema(
                description =
                        "Stopping distance under the same brake force, after over before: below 1 it stops sooner.")
        double stoppingDistanceFactor,

        @Schema(
                description =
                        "How the range changes: by the pack in the vehicle as heavy as before, and by the mass; the two add up.")
        @Nullable
        RangeChange rangeChange) {

    /** The vehicle with one of the packs. */
    @Schema(description = "The vehicle as driven, with one of the packs.")
    public record PackState(
            @Schema(description = "Mass as driven, kg or lb.")
            Mass mass,

            @Schema(description = "Centre of gravity behind the front axle, m or in.")
            Length centreOfGravity,

            @Schema(description = "Height of the centre of gravity, m or in.") @Nullable
            Length height,

            @Schema(description = "Load on the front axle, kg or lb.")
            Load frontAxle,

            @Schema(description = "Load on the rear axle, kg or lb.")
            Load rearAxle,

            @Schema(description = "Share of the weight on the front axle.")
            double frontShare,

            @Schema(description = "Grade on which the front wheels leave the ground, standing or at steady speed.")
            @Nullable
            Grade frontLiftGrade,

            @Schema(description = "Acceleration at which the driven tyres slip, level, m/s2 or g.") @Nullable
            Acceleration launchLimit,

            @Schema(description = "Deceleration at which the braked tyres slip, level, m/s2 or g.") @Nullable
            Acceleration brakeLimit,

            @Schema(description = "Nominal voltage of the pack, V.") @Nullable
            Voltage nominalVoltage,

            @Schema(description = "Usable energy of the pack under the route or load, Wh.") @Nullable
            Energy usableEnergy,

            @Schema(description = "Energy per distance on the route, Wh/km or Wh/mi.") @Nullable
            Consumption consumption,

            @Schema(description = "Range on the route, km or mi.") @Nullable
            Distance range,

            @Schema(description = "Running time, h.") @Nullable
            Time runtime,

            @Schema(description = "Range at the end of the pack's life, km or mi.") @Nullable
            Distance rangeAtEndOfLife) {}

    /** How the range changes. */
    @Schema(name = "RangeChange", description = "How the range changes, km or mi; the parts add up to the whole.")
    public record RangeChange(
            @Schema(description = "After less before.") Distance whole,

            @Schema(description = "By the other pack in the vehicle as heavy as before.")
            Distance byPack,

            @Schema(description = "By the change of mass.") Distance byMass) {}
}
