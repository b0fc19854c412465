package org.axlewright.api.energy;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Consumption;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** What the pack holds, and how far and how long it lasts. */
@Schema(description = "What the pack holds, and how far and how long it lasts under the route or the constant load.")
public record PackRangeResult(
        @Schema(description = "Distance until the usable energy is spent, the route repeated, km or mi.") @Nullable
        Distance range,

        @Schema(
                description =
                        "Range when every assumed value of road and drive is at its unfavourable and at its favourable end; only when something was assumed.")
        @Nullable
        RangeBand rangeBand,

        @Schema(description = "Time until the usable energy is spent, h.") @Nullable
        Time runtime,

        @Schema(
                description =
                        "Energy at the terminals until usable share and reserve are reached, at this load and temperature, Wh.")
        @Nullable
        Energy usableEnergy,

        @Schema(description = "Energy per distance at the pack over the route, Wh/km or Wh/mi; negative when it gains.")
        @Nullable
        Consumption consumption,

        @Schema(description = "Nominal voltage from chemistry and cells in series, V.") @Nullable
        Voltage nominalVoltage,

        @Schema(description = "Voltage at the end of a charge, V: what every part on the pack must bear.") @Nullable
        Voltage fullVoltage,

        @Schema(description = "Voltage full and at rest for some hours, V; flooded lead-acid only.") @Nullable
        Voltage restVoltage,

        @Schema(description = "Voltage under load at which the discharge ends, V.") @Nullable
        Voltage cutOffVoltage,

        @Schema(description = "Nominal voltage times rated capacity, Wh.") @Nullable
        Energy nominalEnergy,

        @Schema(description = "Mean power at the pack, W, waiting included.") @Nullable
        Power averagePower,

        @Schema(description = "Mean current of the pack, A, waiting included.") @Nullable
        Current averageCurrent,

        @Schema(
                description =
                        "Mean current as a multiple of the rated capacity per hour: 1 empties the rated capacity in an hour.")
        @Nullable
        Double dischargeRate,

        @Schema(description = "Greatest power at steady speed, W; starting from rest takes more.") @Nullable
        Power peakPower,

        @Schema(description = "Current at that power, A; starting from rest takes more.") @Nullable
        Current peakCurrent,

        @Schema(description = "Voltage of the pack at that current, V; needs the internal resistance.") @Nullable
        Voltage peakVoltage,

        @Schema(description = "The leg with that power: a pointer into the request.") @Nullable
        String peakLeg,

        @Schema(description = "Charge the pack delivers until usable share and reserve are reached, Ah.")
        Charge deliveredCharge,

        @Schema(description = "Leg by leg, in the order sent; empty without a route.")
        List<LegResult> legs,

        @Schema(description = "The same load on the pack when new and at the end of its life, after the reserve.")
        Life life) {

    /** Both ends of the pack's life. */
    @Schema(name = "PackLife", description = "The same load on the pack when new and at the end of its life.")
    public record Life(
            @Schema(description = "With its rated capacity.")
            LifePoint whenNew,

            @Schema(description = "With 0.8 of it, where makers count a pack as spent.")
            LifePoint endOfLife) {}

    /** The pack at one point of its life. */
    @Schema(name = "PackLifePoint", description = "The pack at one point of its life.")
    public record LifePoint(
            @Schema(description = "Share of the rated capacity that is left, 0 to 1.")
            double health,

            @Schema(description = "Usable energy at the terminals, Wh.") @Nullable
            Energy usableEnergy,

            @Schema(description = "Distance on the route repeated, km or mi.") @Nullable
            Distance range,

            @Schema(description = "Running time, h.") @Nullable
            Time runtime) {}

    /** Both ends of the range. */
    @Schema(description = "Both ends of the range, km or mi; an end is left out when there is none.")
    public record RangeBand(
            @Schema(description = "Everything assumed at its unfavourable end.") @Nullable
            Distance least,

            @Schema(description = "Everything assumed at its favourable end.") @Nullable
            Distance most) {}

    /** What one leg asks of the pack. */
    @Schema(description = "What one leg asks of the pack.")
    public record LegResult(
            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Length, km or mi.") Distance distance,

            @Schema(description = "Driving and waiting, h.") Time duration,

            @Schema(description = "Force at the wheels at steady speed, N or lbf; negative when held back downhill.")
            Force wheelForce,

            @Schema(description = "Mean power at the pack over the leg, W; negative when it gains.")
            Power power,

            @Schema(description = "Mean current over the leg, A.") @Nullable
            Current current,

            @Schema(description = "Power at the pack at steady speed, W.")
            Power drivingPower,

            @Schema(description = "Current at steady speed, A.") @Nullable
            Current drivingCurrent,

            @Schema(description = "Energy at the pack, Wh; negative when it gains.")
            Energy energy,

            @Schema(description = "Where the energy goes; the parts add up to `energy`.")
            EnergySplit split) {}

    /** Where the energy of a leg goes. */
    @Schema(description = "Where the energy of a leg goes, Wh; the parts add up.")
    public record EnergySplit(
            @Schema(description = "Into rolling resistance.")
            Energy rolling,

            @Schema(description = "Into height: m·g·h; negative downhill.")
            Energy climb,

            @Schema(description = "Into the air.") Energy drag,

            @Schema(description = "Into the brakes at stops, less what comes back.")
            Energy stops,

            @Schema(description = "Into holding back downhill, less what comes back.")
            Energy braking,

            @Schema(description = "Lost between pack and wheel while driving.")
            Energy driveLoss,

            @Schema(description = "Into everything on board that is not the drive.")
            Energy accessories) {}
}
