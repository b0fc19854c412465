package org.axlewright.api.assessment;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Assessment.NotAssessed;
import org.axlewright.api.calculation.Answer.Engine;
import org.axlewright.api.problem.Fault;
import org.jspecify.annotations.Nullable;

/** One setup with each of several changes. */
@Schema(description = "One setup with each of several changes: verdict, leading results and deciding finding for each.")
public record Tryout(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(description = "The setup as it is.") Tried asItIs,

        @Schema(description = "Each candidate, in the order sent.")
        List<Tried> candidates) {

    /** What a candidate comes to, by its worst finding. */
    public enum Verdict {
        /** Nothing above a notice. */
        CLEAR("clear"),
        CAUTION("caution"),
        WARNING("warning"),
        DANGER("danger"),
        /** Not a setup: something of it is refused. */
        REFUSED("refused");

        private final String token;

        Verdict(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /** One candidate. */
    @Schema(description = "One candidate and what it comes to.")
    public record Tried(
            @Schema(description = "Its name, as sent.") @Nullable
            String name,

            @Schema(description = "By its worst finding; `refused` when the patched setup is not valid.")
            Verdict verdict,

            @Schema(
                    description =
                            "The worst finding; of equals one that the setup as it is does not have, then one at a changed section.")
            @Nullable
            AssessedFinding deciding,

            @Schema(description = "The leading results of every calculation that answers.")
            List<Leading> leading,

            @Schema(description = "Calculations that could not answer.")
            List<NotAssessed> notAssessed,

            @Schema(description = "What is not valid about the patched setup, with pointers into it.")
            List<Fault> faults) {}

    /** A leading result. */
    @Schema(description = "A leading result.")
    public record Leading(
            @Schema(description = "Name of the calculation.")
            String calculation,

            @Schema(description = "A pointer into its result.")
            String pointer,

            @Schema(description = "The value there: a quantity in output units, a number or a text.")
            Object value) {}
}
