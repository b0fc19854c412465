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
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** What meters say about the pack. */
@Schema(description = "What voltmeter, hydrometer, clamp meter and clock say about the pack.")
public record Readings(
        @Schema(description = "Time since the last charge or discharge when the voltages at rest were read.")
        @Within(min = 0, max = 31_556_952, unit = "s")
        @Nullable
        Time restTime,

        @Schema(description = "Temperature of the cells during the readings; that of the pack when left out.")
        @Within(min = -60, max = 100, unit = "degC")
        @Nullable
        Temperature temperature,

        @Schema(description = "Current of the pack while the voltages under load were read.")
        @Within(min = 0.1, max = 5000, unit = "A")
        @Nullable
        Current loadCurrent,

        @ArraySchema(
                arraySchema =
                        @Schema(description = "One reading for each block of one string, in order, all blocks alike."))
        @Size(min = 1, max = 200)
        @Nullable
        List<@Valid Block> blocks,

        @Schema(description = "Voltage of the whole pack at rest.")
        @Within(min = -200, max = 1000, unit = "V")
        @Nullable
        Voltage packRestVoltage,

        @Schema(description = "Voltage of the whole pack at `loadCurrent`, at the posts of the controller.")
        @Within(min = -200, max = 1000, unit = "V")
        @Nullable
        Voltage packLoadVoltage,

        @Schema(description = "Constant current of a timed discharge of the full pack.")
        @Within(min = 0.1, max = 5000, unit = "A")
        @Nullable
        Current dischargeCurrent,

        @Schema(description = "How long that discharge took.") @Within(min = 1, max = 2_000_000, unit = "s") @Nullable
        Time timeToCutOff,

        @Schema(description = "Voltage of the pack at which it was ended; the usual cut-off when left out.")
        @Within(min = 1, max = 1000, unit = "V")
        @Nullable
        Voltage cutOffVoltage,

        @Schema(description = "Current at the battery cable while driving steadily, by clamp meter.")
        @Within(min = 0.1, max = 5000, unit = "A")
        @Nullable
        Current clampCurrent,

        @Schema(description = "Speed at that moment.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
        Speed clampSpeed,

        @Schema(description = "Charges since the pack was new.") @Min(0) @Max(100_000) @Nullable
        Integer cycles) {

    /** Readings of one block. */
    @Schema(name = "BlockReading", description = "Readings of one block.")
    public record Block(
            @Schema(description = "Mark of your own, such as the number on the case.") @Size(max = 200) @Nullable
            String reference,

            @Schema(description = "Voltage at rest, with its sign: the red lead on the post that should be positive.")
            @Within(min = -200, max = 200, unit = "V")
            @Nullable
            Voltage restVoltage,

            @Schema(description = "Voltage at `loadCurrent`, with its sign.")
            @Within(min = -200, max = 200, unit = "V")
            @Nullable
            Voltage loadVoltage,

            @Schema(description = "Specific gravity of the acid, at rest; the lowest cell of the block.")
            @DecimalMin("1")
            @DecimalMax("1.4")
            @Nullable
            Double specificGravity) {}
}
