package org.axlewright.api.ownership;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Cost of every option, which is cheapest, and what would turn that round. */
@Schema(
        description =
                "Cost of every option over the horizon, which is cheapest, and what would turn that round. Amounts are not rounded to cents.")
public record OwnershipCostResult(
        @Schema(description = "Name of the cheapest option.")
        String cheapest,

        @Schema(description = "By how much the next one costs more, at present value; absent with one option.")
        @Nullable
        Money lead,

        @Schema(description = "The options, in the order sent.")
        List<Cost> options,

        @Schema(description = "Of every pair: from when on the one that costs more at first has cost less in all.")
        List<BreakEven> breakEven,

        @Schema(
                description =
                        "How far one input alone must change until another option is cheapest: between its fifth and its fivefold, the discount rate from 0 to 0.3.")
        List<Sensitivity> sensitivity,

        @Schema(description = "Present value of one unit of money a year over the horizon.")
        double annuityFactor) {

    /** Cost of one option. */
    @Schema(name = "OwnershipCost", description = "Cost of one option, amounts at their present value.")
    public record Cost(
            @Schema(description = "Its name.") String name,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference,

            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer,

            @Schema(description = "Everything.") Money presentValue,

            @Schema(description = "Equal yearly payment of the same present value.")
            Money perYear,

            @Schema(description = "Each kilometre or mile.") @Nullable
            Money perDistance,

            @Schema(description = "Each kilowatt-hour out of the pack.") @Nullable
            Money perKilowattHour,

            @Schema(description = "Life of a set, years; absent for what is not replaced.") @Nullable
            Time life,

            @Schema(description = "`calendar` or `cycles`; absent for what is not replaced.") @Nullable
            String lifeLimitedBy,

            @Schema(description = "Sets after the first.") double replacements,

            @Schema(description = "First set and extras.") Money purchase,

            @Schema(description = "Later sets.") Money laterSets,

            @Schema(description = "Energy from the mains; absent when price or use is not known.") @Nullable
            Money energy,

            @Schema(description = "Labour, water, maintenance, fuel.")
            Money upkeep,

            @Schema(description = "Disposal of every set.") Money disposal,

            @Schema(description = "Resale, taken off.") Money resale,

            @Schema(description = "All sets as paid, not discounted.")
            Money purchasesWhole,

            @Schema(description = "The same with the unused life of the last set taken off, not discounted.")
            Money purchasesProRata,

            @Schema(description = "Energy from the mains in a year, Wh.") @Nullable
            Energy mainsEnergyPerYear) {}

    /** When a dearer option has overtaken a cheaper one. */
    @Schema(name = "OwnershipBreakEven", description = "When the one that costs more at first has cost less in all.")
    public record BreakEven(
            @Schema(description = "The option that costs more at first.")
            String option,

            @Schema(description = "The one it is held against.")
            String against,

            @Schema(
                    description =
                            "The payment from which on it has cost no more, to the end of the horizon, a; absent when that never comes.")
            @Nullable
            Time after) {}

    /** How far an input must change. */
    @Schema(name = "OwnershipSensitivity", description = "How far one input alone must change.")
    public record Sensitivity(
            @Schema(description = "`energy-price`, `use`, `discount-rate`, `price` or `life`.")
            String input,

            @Schema(description = "Whose price or life.") @Nullable
            String option,

            @Schema(description = "Whether the cheapest option changes within the range.")
            boolean flips,

            @Schema(
                    description =
                            "The input where it does: money, a time, or a plain number (rate, cycles a year); absent when it does not.")
            @Nullable
            Object at,

            @Schema(description = "The same over what was sent.") @Nullable
            Double factor) {}
}
