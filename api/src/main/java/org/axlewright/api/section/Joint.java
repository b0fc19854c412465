package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** One terminal, lug, link or other joint as measured. */
@Schema(
        description =
                "One terminal, lug, link or other joint as measured: the drop across it at a known current, or its resistance.")
public record Joint(
        @Schema(description = "Where it is.") @Size(max = 200) @Nullable
        String name,

        @Schema(description = "Voltage across the joint at `current`, read on the metal on both sides of it.")
        @Within(min = 0.001, max = 10_000, unit = "mV")
        @Nullable
        Voltage voltageDrop,

        @Schema(description = "Current at which drop and temperature were read.")
        @Within(min = 0.1, max = 5000, unit = "A")
        @Nullable
        Current current,

        @Schema(description = "Resistance, when it was measured directly, in place of `voltageDrop`.")
        @Within(min = 0.0001, max = 100_000, unit = "mohm")
        @Nullable
        Resistance resistance,

        @Schema(
                description =
                        "Circuit whose current it carries: its pointer such as `/circuits/0`, or its name. In place of `profile` and `continuousCurrent`.")
        @Size(max = 200)
        @Nullable
        String circuit,

        @ArraySchema(arraySchema = @Schema(description = "Current over one cycle that repeats."))
        @Size(min = 1, max = 200)
        @Nullable
        List<Circuit.@Valid Segment> profile,

        @Schema(description = "Current that flows for as long as you like.")
        @Within(min = 0.01, max = 5000, unit = "A")
        @Nullable
        Current continuousCurrent,

        @Schema(description = "Temperature of the joint after it settled at `current`.")
        @Within(min = -60, max = 1000, unit = "degC")
        @Nullable
        Temperature temperature,

        @Schema(description = "Temperature around it at that time; the circuit's, else 20 degC, when left out.")
        @Within(min = -60, max = 150, unit = "degC")
        @Nullable
        Temperature ambient,

        @Schema(
                description =
                        "Lowest temperature rating of terminal and insulation there; the circuit's, else 75 degC, when left out.")
        @Within(min = 50, max = 250, unit = "degC")
        @Nullable
        Temperature terminationRating,

        @Schema(
                description =
                        "Size of the cable that ends there, such as `4 AWG`, for comparison; the circuit's when left out.")
        @ConductorSize
        @Size(max = 40)
        @Nullable
        String size,

        @Schema(description = "Length of current path between the probes, to be held against the same length of cable.")
        @Within(min = 1, max = 2000, unit = "mm")
        @Nullable
        Length length,

        @Schema(description = "One-way length of the cable that ends there; the circuit's when left out.")
        @Within(min = 0.01, max = 500, unit = "m")
        @Nullable
        Length cableLength,

        @Schema(description = "Opaque text of the sender; echoed in results and findings.") @Size(max = 200) @Nullable
        String reference) {}
