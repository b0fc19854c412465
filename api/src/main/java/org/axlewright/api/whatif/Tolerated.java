package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.api.calculation.Answer.Engine;
import org.axlewright.domain.whatif.Uncertainty.Distribution;
import org.jspecify.annotations.Nullable;

/** Results with their uncertainty. */
@Schema(
        description =
                "Results with the uncertainty that the inputs' tolerances give them, and what each input adds to it.")
public record Tolerated(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(description = "What was asked: the name of a calculation, or `assessment`.")
        String calculation,

        @Schema(description = "How it was propagated.") Method method,

        @Schema(description = "Probability that the interval of a result covers its value.")
        double coverage,

        @Schema(
                description =
                        "Half-width of the interval over the standard uncertainty, with `first-order`: that of a normal distribution.")
        @Nullable
        Double coverageFactor,

        @Schema(description = "Draws made, with `monte-carlo`.") @Nullable
        Integer trials,

        @Schema(description = "Seed of the draws, with `monte-carlo`.") @Nullable
        Integer seed,

        @Schema(description = "What was taken as uncertain.")
        List<Uncertain> inputs,

        @Schema(description = "The watched results.") List<Sure> results,

        @Schema(description = "Where the method is printed.")
        String source) {

    /** How tolerances are propagated. */
    public enum Method {
        /** JCGM 100:2008 (GUM). */
        FIRST_ORDER("first-order"),
        /** JCGM 101:2008. */
        MONTE_CARLO("monte-carlo");

        private final String token;

        Method(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /** An uncertain input. */
    @Schema(name = "UncertainInput", description = "An uncertain input; numbers in its own unit.")
    public record Uncertain(
            @Schema(description = "Where in the input, RFC 6901.")
            String pointer,

            @Schema(description = "Its unit, as sent; absent for plain numbers.") @Nullable
            Object unit,

            @Schema(description = "Its value.") double value,

            @Schema(description = "Half-width of its limits.")
            double plusMinus,

            @Schema(description = "How it is spread within them.")
            Distribution distribution,

            @Schema(description = "Standard uncertainty.") double standardUncertainty) {}

    /** A result with its uncertainty. */
    @Schema(
            name = "ResultWithTolerance",
            description = "A result with its uncertainty; numbers in output units. What can't be answered is left out.")
    public record Sure(
            @Schema(description = "Where in the result, RFC 6901.")
            String pointer,

            @Schema(description = "Its unit; absent for plain numbers.") @Nullable
            Object unit,

            @Schema(description = "Its value, as without tolerances.") @Nullable
            Double value,

            @Schema(description = "Half-width of the interval that covers it with the probability `coverage`.")
            @Nullable
            Double plusMinus,

            @Schema(description = "Standard uncertainty.") @Nullable
            Double standardUncertainty,

            @Schema(description = "Lower end of the interval.") @Nullable
            Double low,

            @Schema(description = "Upper end of the interval.") @Nullable
            Double high,

            @Schema(description = "Mean of the draws, with `monte-carlo`.") @Nullable
            Double mean,

            @Schema(
                    description =
                            "Draws that gave an answer, with `monte-carlo`; the others are refused or unanswered and count for nothing.")
            @Nullable
            Integer answered,

            @Schema(description = "What each input adds, first order, largest first.")
            List<Contribution> budget) {}

    /** What one input adds. */
    @Schema(name = "UncertaintyContribution", description = "What one input adds to the uncertainty of a result.")
    public record Contribution(
            @Schema(description = "The input, RFC 6901.") String pointer,

            @Schema(
                    description =
                            "Change of the result when the input rises by its standard uncertainty, in the unit of the result.")
            double contribution,

            @Schema(description = "Its share of the variance of the result, 0 to 1.")
            double share) {}
}
