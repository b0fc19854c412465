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
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.ResistanceMethod;
import org.axlewright.domain.pack.ResistanceOf;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** The traction battery. */
@Schema(
        description =
                "The traction battery. Voltage follows from chemistry and cells in series, never from a name such as \"48 V\".")
public record Pack(
        @Schema(description = "Cell chemistry.") @Nullable Chemistry chemistry,

        @Schema(description = "Cells in series.") @Min(1) @Max(200) @Nullable
        Integer cellsInSeries,

        @Schema(
                description =
                        "Blocks in series, in place of `cellsInSeries`: lead-acid by their voltage, lithium by the cells of one block.")
        @Valid
        @Nullable
        Blocks blocks,

        @Schema(description = "Strings in parallel; 1 when left out.") @Min(1) @Max(100) @Nullable
        Integer strings,

        @Schema(description = "Rated capacity of one string, at `ratedHours`.")
        @Within(min = 0.1, max = 10_000, unit = "Ah")
        @Nullable
        Charge capacity,

        @Schema(
                description =
                        "Hour rate at which `capacity` holds: a plain number of hours, or a time. 20 h for lead-acid, 3 h for lithium when left out.")
        @Within(min = 0.1, max = 200, unit = "h")
        @Nullable
        RatedHours ratedHours,

        @ArraySchema(
                arraySchema =
                        @Schema(
                                description =
                                        "Maker's rows of constant current and minutes to cut-off, in place of `capacity` with `ratedHours`."))
        @Size(min = 1, max = 50)
        @Nullable
        List<@Valid CapacityRow> capacityRows,

        @Schema(description = "Peukert exponent of lead-acid; the chemistry's usual value when left out.")
        @DecimalMin("1")
        @DecimalMax("2")
        @Nullable
        Double peukertExponent,

        @Schema(
                description =
                        "Share of the capacity that daily use may take, 0 to 1; the chemistry's usual value when left out.")
        @DecimalMin("0.01")
        @DecimalMax("1")
        @Nullable
        Double usableShare,

        @Schema(description = "Share of the usable energy kept back as a reserve, 0 to 1; none when left out.")
        @DecimalMin("0")
        @DecimalMax("0.99")
        @Nullable
        Double reserveShare,

        @Schema(description = "Internal resistance.") @Valid @Nullable
        InternalResistance resistance,

        @Schema(description = "Temperature of the cells; 25 degC when left out.")
        @Within(min = -60, max = 100, unit = "degC")
        @Nullable
        Temperature temperature,

        @Schema(description = "State of charge now, 0 empty to 1 full.") @DecimalMin("0") @DecimalMax("1") @Nullable
        Double stateOfCharge,

        @Schema(
                description =
                        "Share of the rated capacity that is left, 0 to 1: 1 when new, 0.8 at the end of life as makers count it; 1 when left out.")
        @DecimalMin("0.1")
        @DecimalMax("1.1")
        @Nullable
        Double health,

        @Schema(description = "Limits of the battery management or of the maker.") @Valid @Nullable
        Limits limits,

        @Schema(description = "Mass of the whole pack, all strings, with its case.")
        @Within(min = 0.5, max = 5000, unit = "kg")
        @Nullable
        Mass mass,

        @Schema(description = "Its centre of gravity, as the vehicle was found: before `lift`.") @Valid @Nullable
        Position position,

        @Schema(description = "What is not the same all over the pack.") @Valid @Nullable
        Mixed mixed) {

    /** Blocks in series. */
    @Schema(description = "Blocks in series.")
    public record Blocks(
            @Schema(description = "Blocks in series in one string.") @Min(1) @Max(100) @Nullable
            Integer count,

            @Schema(description = "Nominal voltage of one block: 2, 4, 6, 8, 10 or 12 V and so on for lead-acid.")
            @Within(min = 2, max = 100, unit = "V")
            @Nullable
            Voltage voltage,

            @Schema(
                    description =
                            "Cells in series in one block: 4 in a lithium block sold as 12 V. The voltage of a lithium block does not tell them.")
            @Min(1)
            @Max(100)
            @Nullable
            Integer cellsInSeries) {}

    /** What differs within a pack. */
    @Schema(name = "PackMixed", description = "What is not the same all over the pack.")
    public record Mixed(
            @Schema(description = "True when cells or blocks of different age stand in series.") @Nullable
            Boolean ages,

            @Schema(description = "True when cells or blocks of different make, type or capacity stand in series.")
            @Nullable
            Boolean types) {}

    /** One row of a maker's discharge table. */
    @Schema(description = "One row of a maker's discharge table.")
    public record CapacityRow(
            @Schema(description = "Constant current.") @Within(min = 0.01, max = 5000, unit = "A") @Nullable
            Current current,

            @Schema(description = "Time to cut-off.") @Within(min = 1, max = 2_000_000, unit = "s") @Nullable
            Time time) {}

    /** Internal resistance, of what and how measured. */
    @Schema(description = "Internal resistance: of what, and how it was measured.")
    public record InternalResistance(
            @Schema(description = "The resistance.") @Within(min = 0.001, max = 100_000, unit = "mohm") @Nullable
            Resistance value,

            @Schema(description = "What it belongs to.") @Nullable
            ResistanceOf of,

            @Schema(description = "How it was measured.") @Nullable
            ResistanceMethod method) {}

    /** Limits of the battery management. */
    @Schema(description = "Limits of the battery management or of the maker, for the whole pack.")
    public record Limits(
            @Schema(description = "Continuous discharge.") @Within(min = 0.1, max = 5000, unit = "A") @Nullable
            Current continuousDischarge,

            @Schema(description = "Peak discharge.") @Valid @Nullable
            Peak peakDischarge,

            @Schema(description = "Charge, regeneration included.") @Within(min = 0.1, max = 5000, unit = "A") @Nullable
            Current charge,

            @Schema(description = "Least cell temperature at which it takes a charge.")
            @Within(min = -60, max = 100, unit = "degC")
            @Nullable
            Temperature minimumChargeTemperature,

            @Schema(description = "Highest cell temperature at which it takes a charge.")
            @Within(min = -60, max = 100, unit = "degC")
            @Nullable
            Temperature maximumChargeTemperature,

            @ArraySchema(
                    arraySchema =
                            @Schema(
                                    description =
                                            "Limits by cell temperature, by rising temperature; between two rows the lesser holds, outside them the maker says nothing."))
            @Size(min = 1, max = 50)
            @Nullable
            List<@Valid AtTemperature> byTemperature,

            @Schema(description = "Most blocks of this make that may stand in series.") @Min(1) @Max(100) @Nullable
            Integer seriesLimit,

            @Schema(description = "Voltage of a cell at which battery management stops a charge.")
            @Within(min = 0.5, max = 6, unit = "V")
            @Nullable
            Voltage overVoltage,

            @Schema(description = "Voltage of a cell at which battery management stops a discharge.")
            @Within(min = 0.1, max = 6, unit = "V")
            @Nullable
            Voltage underVoltage) {}

    /** Limits at one cell temperature. */
    @Schema(name = "LimitsAtTemperature", description = "Limits at one cell temperature, for the whole pack.")
    public record AtTemperature(
            @Schema(description = "Temperature of the cells.") @Within(min = -60, max = 100, unit = "degC") @Nullable
            Temperature temperature,

            @Schema(description = "Charge, regeneration included; 0 where none is allowed.")
            @Within(min = 0, max = 5000, unit = "A")
            @Nullable
            Current charge,

            @Schema(description = "Continuous discharge; 0 where none is allowed.")
            @Within(min = 0, max = 5000, unit = "A")
            @Nullable
            Current discharge) {}

    /** A current for a time. */
    @Schema(description = "A current and how long it may last.")
    public record Peak(
            @Schema(description = "The current.") @Within(min = 0.1, max = 10_000, unit = "A") @Nullable
            Current current,

            @Schema(description = "How long.") @Within(min = 0.001, max = 3600, unit = "s") @Nullable
            Time duration) {}
}
