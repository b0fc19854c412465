package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.conductor.AmpacityTable;
import org.axlewright.domain.conductor.CircuitSide;
import org.axlewright.domain.conductor.Location;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** One pair of conductors. */
@Schema(description = "One circuit: a pair of copper conductors, out and back.")
public record Circuit(
        @Schema(description = "What it feeds.") @Size(max = 200) @Nullable
        String name,

        @Schema(description = "Nominal voltage; the pack's when left out.")
        @Within(min = 1, max = 1000, unit = "V")
        @Nullable
        Voltage voltage,

        @Schema(description = "Length of the run, one way.") @Within(min = 0.01, max = 500, unit = "m") @Nullable
        Length length,

        @ArraySchema(
                arraySchema =
                        @Schema(description = "Current over one cycle that repeats, in place of `continuousCurrent`."))
        @Size(min = 1, max = 200)
        @Nullable
        List<@Valid Segment> profile,

        @Schema(description = "Current that flows for as long as you like, in place of `profile`.")
        @Within(min = 0.01, max = 5000, unit = "A")
        @Nullable
        Current continuousCurrent,

        @Schema(
                description =
                        "`true`: what `route` draws from the pack flows here; how warm that makes the cable is answered beside. The size goes by `profile` or `continuousCurrent`, which hold the starts that the mean of a leg hides.")
        @Nullable
        Boolean routeCurrent,

        @Schema(description = "Voltage drop allowed out and back, share of the voltage, 0 to 1; 0.03 when left out.")
        @DecimalMin("0.001")
        @DecimalMax("0.5")
        @Nullable
        Double allowedDropShare,

        @Schema(
                description =
                        "Where the cable runs; selects the table's own factor and excludes `ambient`. `open` when both are left out.")
        @Nullable
        Location location,

        @Schema(description = "Temperature around the cable.") @Within(min = -60, max = 150, unit = "degC") @Nullable
        Temperature ambient,

        @Schema(description = "Temperature rating of the insulation.")
        @Within(min = 50, max = 250, unit = "degC")
        @Nullable
        Temperature insulationRating,

        @Schema(description = "Temperature rating of the terminals at both ends; caps the column of the table.")
        @Within(min = 50, max = 250, unit = "degC")
        @Nullable
        Temperature terminationRating,

        @Schema(
                description =
                        "Current-carrying conductors that lie together, this circuit's two included; 2 when left out.")
        @Min(1)
        @Max(200)
        @Nullable
        Integer bundled,

        @Schema(description = "Series of sizes to choose from.") @Nullable
        SizeSeries sizes,

        @Schema(description = "Table of continuous currents.") @Nullable
        AmpacityTable table,

        @Schema(description = "Side of the controller; motor leads take no fuse. `battery` when left out.") @Nullable
        CircuitSide side,

        @Schema(description = "Opaque text of the sender; echoed in results and findings.") @Size(max = 200) @Nullable
        String reference,

        @Schema(description = "Size that is there or chosen, to be judged, such as `2/0 AWG`; of one run.")
        @ConductorSize
        @Size(max = 40)
        @Nullable
        String size,

        @Schema(description = "Runs of `size` side by side on each pole; 1 when left out.") @Min(1) @Max(8) @Nullable
        Integer parallel,

        @Schema(description = "Diameter over the insulation; or `insulationThickness`.")
        @Within(min = 1, max = 60, unit = "mm")
        @Nullable
        Length outerDiameter,

        @Schema(description = "Thickness of the insulation; 0.8 mm when both are left out.")
        @Within(min = 0.2, max = 10, unit = "mm")
        @Nullable
        Length insulationThickness,

        @Schema(
                description =
                        "Temperature of the conductor before the peak, for `timeToLimit`; that of the repeated cycle when left out.")
        @Within(min = -60, max = 250, unit = "degC")
        @Nullable
        Temperature initialTemperature,

        @Schema(description = "The fuse that is there or chosen, to be judged.") @Valid @Nullable
        Fuse fuse) {

    /** The fuse of a circuit. */
    @Schema(name = "CircuitFuse", description = "The fuse that is there or chosen; of one run.")
    public record Fuse(
            @Schema(description = "Rated current.") @Within(min = 0.1, max = 6000, unit = "A") @Nullable
            Current rating,

            @Schema(description = "Voltage rating for direct current.")
            @Within(min = 1, max = 5000, unit = "V")
            @Nullable
            Voltage voltageRating,

            @Schema(description = "Interrupting rating for direct current at that voltage.")
            @Within(min = 1, max = 1_000_000, unit = "A")
            @Nullable
            Current interruptingRating,

            @ArraySchema(
                    arraySchema =
                            @Schema(
                                    description =
                                            "Points of the maker's melting curve by rising current; between them straight on both logarithms, nothing is read outside them."))
            @Size(min = 2, max = 100)
            @Nullable
            List<@Valid MeltingPoint> meltingCurve,

            @Schema(description = "Temperature of its compartment; 25 degC when left out.")
            @Within(min = -60, max = 125, unit = "degC")
            @Nullable
            Temperature temperature,

            @Schema(description = "Whether each parallel run has its own.") @Nullable
            Boolean perParallelRun,

            @Schema(description = "Length of conductor between the source and the fuse.")
            @Within(min = 0, max = 500, unit = "m")
            @Nullable
            Length distance,

            @Schema(description = "Whether that length is sheathed or enclosed all the way.") @Nullable
            Boolean sheathed,

            @Schema(
                    description =
                            "Resistance of the cold, flat pack over the one stated; 3 for lithium, 2 for lead-acid when left out.")
            @DecimalMin("1")
            @DecimalMax("20")
            @Nullable
            Double coldResistanceFactor) {}

    /** A point of a melting curve. */
    @Schema(description = "A point of a melting curve.")
    public record MeltingPoint(
            @Schema(description = "The current.") @Within(min = 0.1, max = 1_000_000, unit = "A") @Nullable
            Current current,

            @Schema(description = "Time to melt.") @Within(min = 1e-6, max = 1_000_000, unit = "s") @Nullable
            Time time) {}

    /** A stretch of constant current. */
    @Schema(description = "A stretch of constant current.")
    public record Segment(
            @Schema(description = "The current; 0 at rest.") @Within(min = 0, max = 5000, unit = "A") @Nullable
            Current current,

            @Schema(description = "How long it flows.") @Within(min = 0.01, max = 86_400, unit = "s") @Nullable
            Time duration) {}
}
