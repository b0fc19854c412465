package org.axlewright.api.assessment;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.axlewright.api.calculation.Answer.Engine;
import org.axlewright.api.calculation.Answer.ShownCaution;
import org.axlewright.api.calculation.Answer.ShownStep;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;

/** One setup through every calculation whose needs are met. */
@Schema(description = "One setup through every calculation whose needs are met.")
public record Assessment(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(
                description =
                        "The result of each calculation that answered, by its name; the same as its own POST gives.")
        Map<String, Object> results,

        @Schema(description = "What a good foreman would say about the whole vehicle, worst first.")
        List<AssessedFinding> findings,

        @Schema(description = "Calculations that could not answer, and why.")
        List<NotAssessed> notAssessed,

        @Schema(description = "Results that were left out of an answer, and what is missing for them.")
        List<LeftOut> notAnswered,

        @Schema(description = "Every default and derived value that the answers stand on.")
        List<Assumed> assumptions,

        @Schema(description = "The working of each calculation, by its name; left out with `working=false`.") @Nullable
        Map<String, List<ShownStep>> working,

        @Schema(description = "The usual cautions of this work.")
        List<ShownCaution> cautions) {

    /** A finding with the calculations that made it and the part that causes it. */
    @Schema(description = "A finding, the calculations that made it, and the part that causes it.")
    public record AssessedFinding(
            @Schema(description = "Names of the calculations that made it.")
            List<String> calculations,

            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "Signal word in the sense of ANSI Z535.6.")
            Level level,

            @Schema(description = "For people.") String message,

            @Schema(description = "What in the request causes it, RFC 6901.") @Nullable
            String pointer,

            @Schema(description = "The part that causes it, where the pointer leads to one.") @Nullable
            Part part,

            @Schema(description = "`empty` or `occupied`, where the two are told apart.") @Nullable
            String state,

            @Schema(description = "The value found: a quantity in output units or a plain number.") @Nullable
            Object actual,

            @Schema(description = "The value it is held against: a quantity in output units or a plain number.")
            @Nullable
            Object limit,

            @Schema(description = "What to do about it.") @Nullable
            String action,

            @Schema(description = "Where the limit comes from; marks such as [weak] tell its standing.")
            String source) {}

    /** A part of the vehicle: an entry of a list, or a section. */
    @Schema(name = "CausingPart", description = "A part of the vehicle: an entry of a list, or a section.")
    public record Part(
            @Schema(description = "Where it stands in the request, RFC 6901.")
            String pointer,

            @Schema(description = "Its name, as sent.") @Nullable
            String name,

            @Schema(description = "Its reference, as sent.") @Nullable
            String reference) {}

    /** A calculation that could not answer. */
    @Schema(description = "A calculation that could not answer.")
    public record NotAssessed(
            @Schema(description = "Its name.") String calculation,

            @Schema(description = "What it lacks: pointers into the request.")
            List<String> missing,

            @Schema(description = "What it refuses; its own POST answers 422 with the same.")
            List<Fault> faults) {}

    /** A result that an answer left out. */
    @Schema(description = "A result that an answer left out for want of an optional input.")
    public record LeftOut(
            @Schema(description = "Name of the calculation.")
            String calculation,

            @Schema(description = "The result, a pointer into the calculation's own result.")
            String result,

            @Schema(description = "What would answer it: pointers into the request, the usual one first.")
            List<String> missing) {}

    /** An assumption with the calculations that made it. */
    @Schema(description = "A default or a derived value, and the calculations that stand on it.")
    public record Assumed(
            @Schema(description = "Names of the calculations that stand on it.")
            List<String> calculations,

            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "Where it could have been sent, RFC 6901.")
            String pointer,

            @Schema(description = "Exactly what could be sent at the pointer.")
            Object value,

            @Schema(description = "Why this value.") String reason,

            @Schema(description = "Where it comes from; marks such as [weak] tell its standing.")
            String source) {}
}
