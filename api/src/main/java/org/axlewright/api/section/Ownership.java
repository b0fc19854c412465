package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.Consumption;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Ways to own, side by side. */
@Schema(description = "Ways to own, side by side over a horizon. All amounts, `energyPrice` too, in one currency.")
public record Ownership(
        @Schema(description = "Years looked at.") @Within(min = 0.25, max = 50, unit = "a") @Nullable
        Time horizon,

        @Schema(description = "Discount rate, a share for each year, 0 to 1; none when left out.")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double discountRate,

        @Schema(description = "Charges in a year.") @DecimalMin("0.1") @DecimalMax("5000") @Nullable
        Double cyclesPerYear,

        @Schema(description = "Distance driven in a year.") @Within(min = 1, max = 1_000_000, unit = "km") @Nullable
        Distance distancePerYear,

        @Schema(description = "What a kilometre takes out of the pack.")
        @Within(min = 1, max = 5000, unit = "Wh/km")
        @Nullable
        Consumption consumption,

        @Schema(description = "What an hour of labour costs.") @Price(max = 10_000_000) @Nullable
        Money labourRate,

        @ArraySchema(arraySchema = @Schema(description = "The options.")) @Size(min = 1, max = 20) @Nullable
        List<@Valid Option> options) {

    /** One way to own. */
    @Schema(name = "OwnershipOption", description = "One way to own.")
    public record Option(
            @Schema(description = "What it is.") @Size(max = 200) @Nullable
            String name,

            @Schema(description = "Opaque text of the sender; echoed in results.") @Size(max = 200) @Nullable
            String reference,

            @Schema(
                    description =
                            "Chemistry of its pack: usual life and efficiencies where they are left out. Without it nothing is replaced that has no life of its own.")
            @Nullable
            Chemistry chemistry,

            @Schema(description = "Price of the first set.") @Price(max = 10_000_000) @Nullable
            Money price,

            @Schema(description = "Paid once at the start: charger, mounting; none when left out.")
            @Price(max = 10_000_000)
            @Nullable
            Money extras,

            @Schema(description = "Price of each later set; `price` when left out.") @Price(max = 10_000_000) @Nullable
            Money replacementPrice,

            @Schema(description = "Paid for each set when it goes; none when left out.")
            @Price(max = 10_000_000)
            @Nullable
            Money disposal,

            @Schema(description = "What it still brings at the end of the horizon; nothing when left out.")
            @Price(max = 10_000_000)
            @Nullable
            Money resale,

            @Schema(description = "Maintenance, water, fuel, insurance in a year; none when left out.")
            @Price(max = 10_000_000)
            @Nullable
            Money upkeepPerYear,

            @Schema(description = "Hours of watering and care in a year, at `labourRate`; none when left out.")
            @Within(min = 0, max = 8766, unit = "h")
            @Nullable
            Time labourPerYear,

            @Schema(description = "Life by the calendar.") @Within(min = 0.1, max = 100, unit = "a") @Nullable
            Time calendarLife,

            @Schema(description = "Life in charges at the depth of daily use.")
            @DecimalMin("1")
            @DecimalMax("1000000")
            @Nullable
            Double cycleLife,

            @Schema(description = "Energy taken out of the pack in one cycle.")
            @Within(min = 1, max = 1_000_000, unit = "Wh")
            @Nullable
            Energy energyPerCycle,

            @Schema(description = "Energy out of the pack over energy in, 0 to 1.")
            @DecimalMin("0.1")
            @DecimalMax("1")
            @Nullable
            Double batteryEfficiency,

            @Schema(description = "Efficiency of its charger, 0 to 1.") @DecimalMin("0.1") @DecimalMax("1") @Nullable
            Double chargerEfficiency) {}
}
