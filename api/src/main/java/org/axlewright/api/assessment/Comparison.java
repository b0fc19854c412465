package org.axlewright.api.assessment;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.calculation.Answer.Engine;
import org.jspecify.annotations.Nullable;

/** Two setups side by side. */
@Schema(description = "Two setups side by side: results, findings, and which section did what.")
public record Comparison(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(description = "Every result that both setups have, in the order of the calculations.")
        List<Change> changes,

        @Schema(description = "Findings of one setup and not of the other.")
        FindingChanges findings,

        @Schema(description = "Calculations that only one of the two can answer, or neither.")
        List<NotCompared> notCompared,

        @Schema(description = "What each changed section does to the leading results.")
        Shares shares) {

    /** One result in both setups. */
    @Schema(name = "ComparedResult", description = "One result in both setups.")
    public record Change(
            @Schema(description = "Name of the calculation.")
            String calculation,

            @Schema(description = "The result, a pointer into the calculation's own result.")
            String pointer,

            @Schema(description = "Its value before: a quantity in output units, a number, a text or a truth.")
            Object before,

            @Schema(description = "Its value after, in the same unit.")
            Object after,

            @Schema(description = "After less before, in the same unit; left out for texts and truths.") @Nullable
            Object change,

            @Schema(description = "The change over the size of the value before; left out when that is zero.") @Nullable
            Double relative) {}

    /** Findings of one setup and not of the other. */
    @Schema(description = "Findings of one setup and not of the other, worst first.")
    public record FindingChanges(
            @Schema(description = "Only after.") List<AssessedFinding> gained,

            @Schema(description = "Only before.") List<AssessedFinding> lost,

            @Schema(description = "In both, as after.") List<AssessedFinding> kept) {}

    /** A calculation that is not compared. */
    @Schema(description = "A calculation that is not compared.")
    public record NotCompared(
            @Schema(description = "Its name.") String calculation,

            @Schema(description = "What it lacks before: pointers; empty when it answers.")
            List<String> missingBefore,

            @Schema(description = "What it lacks after: pointers; empty when it answers.")
            List<String> missingAfter) {}

    /** How a change is shared out. */
    public enum Method {
        /** Every order in which the sections could have been changed counts alike (Shapley value). */
        SHAPLEY("shapley"),
        /** Each section changed by itself; what they do together beyond that is the interaction. */
        ONE_AT_A_TIME("one-at-a-time");

        private final String token;

        Method(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /** What each changed section does to the leading results. */
    @Schema(name = "SectionShares", description = "What each changed section does to the leading results.")
    public record Shares(
            @Schema(
                    description =
                            "`shapley` up to six changed sections: the mean over all orders of changing them, after L. S. Shapley, A value for n-person games, 1953. `one-at-a-time` above that, with the interaction beside it.")
            Method method,

            @Schema(description = "The sections that differ.")
            List<String> sections,

            @Schema(description = "The leading results that changed.")
            List<Shared> results) {}

    /** One leading result and who changed it. */
    @Schema(name = "SharedChange", description = "One leading result and what each changed section did to it.")
    public record Shared(
            @Schema(description = "Name of the calculation.")
            String calculation,

            @Schema(description = "The result, a pointer into the calculation's own result.")
            String pointer,

            @Schema(description = "After less before.") Object change,

            @Schema(
                    description =
                            "What each section did to it; empty when a mixture of the two setups can't be answered.")
            List<Part> parts,

            @Schema(description = "What the sections do only together; with `one-at-a-time` alone.") @Nullable
            Object interaction) {}

    /** What one section did. */
    @Schema(name = "SectionShare", description = "What one section did to a result.")
    public record Part(
            @Schema(description = "The section.") String section,

            @Schema(description = "Its part of the change, in the unit of the change.")
            Object change,

            @Schema(description = "Its part over the whole change.")
            double share) {}
}
