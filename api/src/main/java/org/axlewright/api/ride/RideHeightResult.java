package org.axlewright.api.ride;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Frequency;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.SpringRate;
import org.axlewright.domain.quantity.Torque;
import org.jspecify.annotations.Nullable;

/** How the vehicle stands on its springs with everybody aboard, and the same without occupants under {@code empty}. */
@Schema(
        description =
                "How the vehicle stands on its springs with everybody aboard; the same without occupants under `empty`. Heights count from where the vehicle stood as weighed (`bare`), before `lift`.")
public record RideHeightResult(
        @Schema(description = "Front axle with everybody aboard.") @Nullable
        AxleRide front,

        @Schema(description = "Rear axle with everybody aboard.") @Nullable
        AxleRide rear,

        @Schema(description = "Change of pitch since found, deg; nose up positive, lift and tyres included.") @Nullable
        Angle pitchChange,

        @Schema(
                description =
                        "What springs and tyres take off the height of the centre of gravity, mm or in; negative when it stands higher. The height of `centre-of-gravity` leaves it out.")
        @Nullable
        Length centreOfGravityDrop,

        @Schema(description = "Rates of the springs.") Springs springs,

        @Schema(description = "The same without occupants.") @Nullable
        RideState empty,

        @Schema(
                description =
                        "Further ways to load it: as found, with the driver alone, and without what is marked as cargo.")
        List<Loading> loadings) {

    /** The vehicle in one loading. */
    @Schema(description = "How the vehicle stands without occupants.")
    public record RideState(
            @Schema(description = "Front axle.") @Nullable AxleRide front,
            @Schema(description = "Rear axle.") @Nullable AxleRide rear,

            @Schema(description = "Change of pitch since found, deg; nose up positive.") @Nullable
            Angle pitchChange,

            @Schema(
                    description =
                            "What springs and tyres take off the height of the centre of gravity, mm or in; negative when it stands higher.")
            @Nullable
            Length centreOfGravityDrop) {}

    /** One further way to load the vehicle. */
    @Schema(description = "How the vehicle stands in one further loading.")
    public record Loading(
            @Schema(
                    description =
                            "What is aboard: `as found`, `driver alone`, `driver alone, without cargo`, `empty, without cargo`, `occupied, without cargo`.")
            String name,

            @Schema(description = "Front axle.") @Nullable AxleRide front,
            @Schema(description = "Rear axle.") @Nullable AxleRide rear,

            @Schema(description = "Change of pitch since found, deg; nose up positive.") @Nullable
            Angle pitchChange) {}

    /** One axle in one loading. */
    @Schema(description = "One axle in one loading. What is not known is left out.")
    public record AxleRide(
            @Schema(description = "Load on the axle, kg or lb.")
            Load load,

            @Schema(description = "Load less the load when it was found, kg or lb.") @Nullable
            Load loadChange,

            @Schema(
                    description =
                            "How far the frame comes down over the axle through that load, tyres included where their rate is known; mm or in, negative when it rises. Springs without stops.")
            @Nullable
            Length squat,

            @Schema(
                    description =
                            "Rise of the frame over the ground since found: lift and change of tyre less squat; mm or in.")
            @Nullable
            Length rise,

            @Schema(description = "Wheel travel left before the bump stop, mm or in; negative when it stands on it.")
            @Nullable
            Length travelLeft,

            @Schema(description = "Ride frequency of this end of the body on springs and tyres, Hz.") @Nullable
            Frequency rideFrequency,

            @Schema(
                    description =
                            "Rate of one spring of the same free length that would stand at the height as found under this load, N/mm or lbf/in.")
            @Nullable
            SpringRate restoringRate,

            @Schema(description = "The same over the rate now.") @Nullable
            Double restoringFactor,

            @Schema(
                    description =
                            "In place of other springs: a spacer at each spring that lifts the frame back to the height as found, mm or in; negative when it stands too high.")
            @Nullable
            Length restoringSpacer) {}

    /** Rates of both axles. */
    @Schema(name = "RideSprings", description = "Rates of the springs, axle by axle.")
    public record Springs(
            @Schema(description = "Front axle.") @Nullable AxleRates front,
            @Schema(description = "Rear axle.") @Nullable AxleRates rear) {}

    /** Rates of one axle. */
    @Schema(description = "Rates of one axle.")
    public record AxleRates(
            @Schema(
                    description =
                            "Rate of one spring, N/mm or lbf/in: as sent, or what the measured drop says; with a measured drop and no `tyreRate` the tyres are in it.")
            SpringRate springRate,

            @Schema(description = "Rate at one side's wheel, without the tyre, N/mm or lbf/in.")
            SpringRate wheelRate,

            @Schema(description = "Rate of the whole axle over the ground, tyres included where known, N/mm or lbf/in.")
            SpringRate axleRate,

            @Schema(
                    description =
                            "Moment that rolls the body by one degree over this axle, its springs alone, without anti-roll bar and tyres; Nm or lbf.ft.")
            @Nullable
            Torque rollMomentPerDegree) {}
}
