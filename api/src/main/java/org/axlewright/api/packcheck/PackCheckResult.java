package org.axlewright.api.packcheck;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.packcheck.BlockState;
import org.axlewright.domain.packcheck.Measurement;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Consumption;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** What the readings say of the pack. */
@Schema(description = "What the readings say of the pack, and what to measure next.")
public record PackCheckResult(
        @Schema(description = "The one measurement that would reduce the doubt most.")
        Next next,

        @Schema(description = "State of charge by voltage at rest or by acid.") @Nullable
        ChargeState stateOfCharge,

        @Schema(description = "Capacity by the clock.") @Nullable
        CheckedCapacity capacity,

        @Schema(description = "Charge in the pack now, at the rated current, Ah.") @Nullable
        Charge chargeLeft,

        @Schema(description = "Internal resistance.") @Nullable
        CheckedResistance resistance,

        @Schema(description = "How far apart the blocks read, without reversed ones.") @Nullable
        Spread spread,

        @ArraySchema(arraySchema = @Schema(description = "Every block, in the order sent."))
        List<BlockResult> blocks,

        @Schema(description = "Blocks at rest added up, V.") @Nullable
        Voltage sumOfBlocks,

        @Schema(description = "A cell at rest, of the middle block or of the pack, V.") @Nullable
        Voltage restPerCell,

        @Schema(description = "A cell under load, of the middle block or of the pack, V.") @Nullable
        Voltage loadPerCell,

        @Schema(description = "What driving takes, by one clamp-meter reading.") @Nullable
        Use use) {

    /** What to measure next. */
    @Schema(name = "NextMeasurement", description = "The one measurement that would reduce the doubt most.")
    public record Next(
            @Schema(description = "Its name; new ones may be added.")
            Measurement measure,

            @Schema(description = "Where to send it, RFC 6901.")
            String pointer,

            @Schema(description = "Why, for people.") String reason) {}

    /** State of charge. */
    @Schema(name = "CheckedStateOfCharge", description = "State of charge, 0 to 1.")
    public record ChargeState(
            @Schema(description = "Best estimate, 0 to 1; absent where the voltage tells bounds only.") @Nullable
            Double value,

            @Schema(description = "At least this, 0 to 1.") double least,
            @Schema(description = "At most this, 0 to 1.") double most,

            @Schema(description = "Table it was read in.") String source) {}

    /** Capacity. */
    @Schema(name = "CheckedCapacity", description = "Capacity by the clock.")
    public record CheckedCapacity(
            @Schema(description = "Current times time, Ah.") Charge delivered,

            @Schema(description = "What a new pack gives at that current and temperature, Ah.") @Nullable
            Charge expected,

            @Schema(description = "Delivered over expected; below 0.8 the pack counts as worn out.") @Nullable
            Double share,

            @Schema(description = "What is left of the rated capacity of all strings, Ah.") @Nullable
            Charge ratedLeft) {}

    /** Resistance. */
    @Schema(name = "CheckedResistance", description = "Internal resistance by the step in voltage.")
    public record CheckedResistance(
            @Schema(description = "Of the pack with its connections where the pack was read, else of its blocks, mohm.")
            @Nullable
            Resistance pack,

            @Schema(description = "Of the middle block, mohm.") @Nullable
            Resistance block,

            @Schema(description = "Of cables and joints between blocks and controller, mohm.") @Nullable
            Resistance connections) {}

    /** How far apart. */
    @Schema(name = "BlockSpread", description = "Highest less lowest block.")
    public record Spread(
            @Schema(description = "At rest, V.") @Nullable Voltage rest,

            @Schema(description = "Under load, V.") @Nullable
            Voltage load,

            @Schema(description = "Resistance, share of the middle one.") @Nullable
            Double resistanceShare) {}

    /** One block. */
    @Schema(name = "CheckedBlock", description = "What one block's readings say.")
    public record BlockResult(
            @Schema(description = "Its entry in the request, RFC 6901.")
            String pointer,

            @Schema(description = "The sender's own mark.") @Nullable
            String reference,

            @Schema(description = "What it is beside the others.")
            BlockState state,

            @Schema(description = "Its resistance, mohm.") @Nullable
            Resistance resistance,

            @Schema(description = "Its state of charge, 0 to 1.") @Nullable
            Double stateOfCharge) {}

    /** What driving takes. */
    @Schema(name = "ClampedUse", description = "What driving takes, by one clamp-meter reading.")
    public record Use(
            @Schema(description = "Current in the battery cable, A.")
            Current current,

            @Schema(description = "Voltage it is counted at: under that load where it is known, else nominal, V.")
            @Nullable
            Voltage voltage,

            @Schema(description = "Current over the capacity of all strings, times per hour.") @Nullable
            Double dischargeRate,

            @Schema(description = "Energy for each distance, Wh/km or Wh/mi.") @Nullable
            Consumption consumption,

            @Schema(description = "On the charge left, h.") @Nullable
            Time timeLeft,

            @Schema(description = "On the charge left at that speed, km or mi.") @Nullable
            Distance distanceLeft) {}
}
