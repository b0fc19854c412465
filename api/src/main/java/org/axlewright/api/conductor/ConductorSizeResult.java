package org.axlewright.api.conductor;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.conductor.CircuitSide;
import org.axlewright.domain.conductor.Limit;
import org.axlewright.domain.quantity.Area;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.ResistancePerLength;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Every circuit with its cable and its fuse. */
@Schema(description = "Every circuit with the thinnest cable that passes, and its fuse, in the order sent.")
public record ConductorSizeResult(
        @Schema(description = "The circuits, in the order sent.")
        List<Sized> circuits) {

    /** One circuit sized. */
    @Schema(
            name = "SizedCircuit",
            description =
                    "One circuit. What is said of the cable is left out when no size passes; a finding then says so.")
    public record Sized(
            @Schema(description = "Its name, as sent.") @Nullable
            String name,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Side of the controller.") CircuitSide side,

            @Schema(description = "Nominal voltage used, V: the circuit's, else the pack's.") @Nullable
            Voltage voltage,

            @Schema(description = "Current of the same mean heat over the cycle, A.")
            Current rmsCurrent,

            @Schema(description = "Largest current of the cycle, A.")
            Current peakCurrent,

            @Schema(
                    description =
                            "Designation of the thinnest size that passes, such as `2/0 AWG`, `35 mm2` or `4 SAE`; of one run when there are several.")
            @Nullable
            String size,

            @Schema(description = "Copper area of one run, mm2.") @Nullable
            Area area,

            @Schema(description = "Runs side by side on each pole, 1 to 4.") @Nullable
            Integer parallel,

            @Schema(description = "Current allowed for good, all runs together, A.") @Nullable
            Current ampacity,

            @Schema(
                    description =
                            "What the next thinner size fails: what set the size. `ampacity` also when the thinnest of the table passes.")
            @Nullable
            Limit limitedBy,

            @Schema(description = "Resistance of one run for its length at `conductorTemperature`, ohm/km or ohm/kft.")
            @Nullable
            ResistancePerLength resistance,

            @Schema(
                    description =
                            "Temperature at which resistance, drop and loss hold: the column of the table used, the lower of insulation and terminals, degC or degF.")
            Temperature conductorTemperature,

            @Schema(
                    description =
                            "Highest temperature of the conductor over the repeated cycle, degC or degF: an upper bound, first-order heating of the copper alone.")
            @Nullable
            Temperature peakTemperature,

            @Schema(
                    description =
                            "Time in which the peak current would bring the conductor from the temperature it starts at to `conductorTemperature` if no heat left it, s. Left out for a steady current.")
            @Nullable
            Time peakHeatingTime,

            @Schema(description = "Thermal time constant of the cable, copper alone, s.") @Nullable
            Time timeConstant,

            @Schema(description = "Voltage lost out and back at the peak current, V.") @Nullable
            Voltage drop,

            @Schema(description = "The same as a share of the nominal voltage, 0 to 1.") @Nullable
            Double dropShare,

            @Schema(description = "Heat in the cable, mean over the cycle, W.") @Nullable
            Power loss,

            @Schema(
                    description =
                            "Copper area of all runs at which the drop is just allowed, by the resistivity of pure copper at `conductorTemperature`, mm2.")
            @Nullable
            Area areaForDrop,

            @Schema(
                    description =
                            "Every size of the series that the table covers, thinnest first; with parallel runs behind them when no single one passes.")
            List<SizeCandidate> candidates,

            @Schema(
                    description =
                            "The fuse, one in each run: of the cable judged, else of the one proposed. Left out on the motor side and when there is no cable.")
            @Nullable
            Fuse fuse,

            @Schema(
                    description =
                            "Hottest moment of the conductor over the repeated cycle by the physical model of conductor and insulation in still air, degC or degF. The table governs the size. Left out beyond 300 degC.")
            @Nullable
            Temperature finalTemperature,

            @Schema(
                    description =
                            "Time in which the peak current brings the conductor to `conductorTemperature` by the same model, s. Left out when it never does.")
            @Nullable
            Time timeToLimit,

            @Schema(description = "The size sent, judged.") @Nullable
            JudgedSize judged,

            @Schema(
                    description =
                            "What the route does to the cable judged, else to the one proposed; with `routeCurrent`.")
            @Nullable
            RouteHeat route) {}

    /** The route, leg by leg, as a cycle that repeats. */
    @Schema(
            name = "RouteHeatOfCable",
            description = "The route as a cycle that repeats: its mean current on each leg, driving and waiting.")
    public record RouteHeat(
            @Schema(description = "Current of the same mean heat, A.")
            Current rmsCurrent,

            @Schema(description = "Highest mean current of a leg, A.")
            Current peakCurrent,

            @Schema(
                    description =
                            "Hottest moment of the conductor by the physical model, degC or degF. Left out beyond 300 degC.")
            @Nullable
            Temperature finalTemperature) {}

    /** The size that was sent. */
    @Schema(description = "The size that was sent, and how it stands.")
    public record JudgedSize(
            @Schema(description = "Designation.") String size,

            @Schema(description = "Runs side by side on each pole.")
            int parallel,

            @Schema(description = "Current allowed for good, all runs together, A.")
            Current ampacity,

            @Schema(description = "Voltage lost out and back at the peak current, V.")
            Voltage drop,

            @Schema(description = "The same as a share of the nominal voltage; may pass 1 for a size far too thin.")
            @Nullable
            Double dropShare,

            @Schema(description = "Heat in the cable, mean over the cycle, W.")
            Power loss,

            @Schema(description = "Whether it stands every limit.")
            boolean passes,

            @Schema(description = "The limits it fails; none when it passes.")
            List<Limit> fails,

            @Schema(
                    description =
                            "Hottest moment over the repeated cycle by the physical model, degC or degF. Left out beyond 300 degC.")
            @Nullable
            Temperature finalTemperature,

            @Schema(
                    description =
                            "Time in which the peak current brings it to `conductorTemperature` by the same model, s. Left out when it never does.")
            @Nullable
            Time timeToLimit) {}

    /** One size and how it stands. */
    @Schema(description = "One size and how it stands.")
    public record SizeCandidate(
            @Schema(description = "Designation.") String size,

            @Schema(description = "Runs side by side on each pole, 1 to 4.")
            int parallel,

            @Schema(description = "Copper area of one run, mm2.")
            Area area,

            @Schema(description = "Resistance of one run for its length at `conductorTemperature`, ohm/km or ohm/kft.")
            ResistancePerLength resistance,

            @Schema(description = "Temperature at which the resistance holds, degC or degF.")
            Temperature conductorTemperature,

            @Schema(description = "Current allowed for good, all runs together, A.")
            Current ampacity,

            @Schema(description = "Voltage lost out and back at the peak current, V.")
            Voltage drop,

            @Schema(description = "The same as a share of the nominal voltage; may pass 1 for a size far too thin.")
            @Nullable
            Double dropShare,

            @Schema(description = "Heat in the cable, mean over the cycle, W.")
            Power loss,

            @Schema(description = "Whether it stands every limit.")
            boolean passes,

            @Schema(description = "The limits it fails; none when it passes.")
            List<Limit> fails) {}

    /** The fuse of one run. */
    @Schema(name = "FuseChoice", description = "The fuse of one run.")
    public record Fuse(
            @Schema(
                    description =
                            "Smallest standard rating from `lowerBound` to `upperBound`, A; left out when there is none, a finding says why.")
            @Nullable
            Current rating,

            @Schema(description = "Least rating that carries the current, A.")
            Current lowerBound,

            @Schema(description = "Largest rating that protects the cable, A.") @Nullable
            Current upperBound,

            @Schema(description = "Least direct-current voltage rating: the pack at full charge, V.") @Nullable
            Voltage minimumVoltageRating,

            @Schema(description = "Least interrupting rating: a short circuit right behind the fuse at full charge, A.")
            @Nullable
            Current minimumInterruptingRating,

            @Schema(
                    description =
                            "Time within which the fuse must end that short circuit, s; left out where the cable stands it for longer than 5 s.")
            @Nullable
            Time maximumClearingTime,

            @Schema(description = "Share of a rating left in its compartment, 0 to 1; 1 at 25 degC and below.")
            double temperatureFactor,

            @Schema(
                    description =
                            "Least current of a fault at the far end, through one fuse: pack flat and cold, cable at its hottest, A.")
            @Nullable
            Current leastFaultCurrent,

            @Schema(description = "Time in which the fuse sent melts at that current by its curve, s.") @Nullable
            Time leastFaultClearing,

            @Schema(
                    description =
                            "Share of its melting that the worst normal peak uses up, by the curve sent; it must stay below 1.")
            @Nullable
            Double peakShare) {}
}
