package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.axlewright.domain.fit.CoilSupply;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Everything on board that is not the drive. */
@Schema(description = "Everything on board that draws from the pack and is not the drive.")
public record Accessories(
        @Schema(description = "Power at the pack, all the time; none when left out.")
        @Within(min = 0, max = 20_000, unit = "W")
        @Nullable
        Power power,

        @Schema(description = "The converter that makes 12 V or the like from the whole pack.") @Valid @Nullable
        Converter converter,

        @Schema(description = "The main contactor.") @Valid @Nullable
        Contactor contactor,

        @Schema(description = "A tap: lamps or the like across some blocks of the pack instead of a converter.")
        @Valid
        @Nullable
        Tap tap) {

    /** A direct-current converter. */
    @Schema(description = "The converter that makes 12 V or the like from the whole pack.")
    public record Converter(
            @Schema(description = "Least input voltage.") @Within(min = 1, max = 1000, unit = "V") @Nullable
            Voltage minimumVoltage,

            @Schema(description = "Highest input voltage it bears.") @Within(min = 1, max = 1000, unit = "V") @Nullable
            Voltage maximumVoltage,

            @Schema(description = "Output voltage.") @Within(min = 1, max = 100, unit = "V") @Nullable
            Voltage outputVoltage,

            @Schema(description = "Largest continuous output current.")
            @Within(min = 0.1, max = 1000, unit = "A")
            @Nullable
            Current outputCurrent,

            @Schema(description = "Efficiency, output over input, 0 to 1; 0.9 when left out.")
            @DecimalMin("0.1")
            @DecimalMax("1")
            @Nullable
            Double efficiency,

            @Schema(description = "Power of all that can be switched on at its output together.")
            @Within(min = 0, max = 20_000, unit = "W")
            @Nullable
            Power load,

            @Schema(description = "The same as a current, in place of `load`.")
            @Within(min = 0, max = 1000, unit = "A")
            @Nullable
            Current loadCurrent) {}

    /** The main contactor. */
    @Schema(description = "The main contactor.")
    public record Contactor(
            @Schema(description = "Rated voltage of its coil.") @Within(min = 1, max = 1000, unit = "V") @Nullable
            Voltage coilVoltage,

            @Schema(
                    description =
                            "Least coil voltage at which it closes and holds; 85 % of the rated one when left out.")
            @Within(min = 0.5, max = 1000, unit = "V")
            @Nullable
            Voltage minimumCoilVoltage,

            @Schema(description = "Highest coil voltage for hours; 110 % of the rated one when left out.")
            @Within(min = 0.5, max = 2000, unit = "V")
            @Nullable
            Voltage maximumCoilVoltage,

            @Schema(description = "What feeds the coil; the nearer in voltage of pack and converter when left out.")
            @Nullable
            CoilSupply coilSupply,

            @Schema(description = "Rated direct voltage of its contacts.")
            @Within(min = 1, max = 2000, unit = "V")
            @Nullable
            Voltage ratedVoltage,

            @Schema(description = "Rated continuous current of its contacts.")
            @Within(min = 0.1, max = 5000, unit = "A")
            @Nullable
            Current ratedCurrent,

            @Schema(description = "Direct current at full charge that its contacts may break; not the rated one.")
            @Within(min = 0.1, max = 100_000, unit = "A")
            @Nullable
            Current breakingCurrent,

            @Schema(description = "Time from the start of a fault until its contacts open.")
            @Within(min = 0.0001, max = 3600, unit = "s")
            @Nullable
            Time openingTime) {}

    /** A tap across some blocks. */
    @Schema(description = "A tap across some blocks of the pack.")
    public record Tap(
            @Schema(description = "Blocks it stands across.") @Min(1) @Max(100) @Nullable
            Integer blocks,

            @Schema(description = "Current it takes.") @Within(min = 0.01, max = 1000, unit = "A") @Nullable
            Current current,

            @Schema(description = "How long in a day; for the charge those blocks lose against the others.")
            @Within(min = 0, max = 86_400, unit = "s")
            @Nullable
            Time timePerDay) {}
}
