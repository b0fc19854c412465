package org.axlewright.api.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;

/**
 * The envelope of every calculation (contract R6).
 *
 * @param <R> the result of the calculation
 */
@Schema(description = "The envelope of every calculation.")
public record Answer<R>(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(
                description =
                        "The results. A value that lacks an optional input is left out and listed in `notAnswered`.")
        R result,

        @Schema(description = "Results left out, and what is missing for them.")
        List<NotAnswered> notAnswered,

        @Schema(description = "What a good foreman would say, worst first.")
        List<ShownFinding> findings,

        @Schema(description = "Every default and derived value that the answer stands on.")
        List<ShownAssumption> assumptions,

        @Schema(description = "The steps with their numbers, in coherent SI; left out with `working=false`.") @Nullable
        List<ShownStep> working,

        @Schema(description = "The usual cautions of this work.")
        List<ShownCaution> cautions) {

    /** What calculated. */
    @Schema(description = "What calculated.")
    public record Engine(
            @Schema(description = "Version of the service.") String version) {}

    /** A finding in output units. */
    @Schema(
            name = "Finding",
            description = "A finding: what stands out, the value, the limit it is held against, and what to do.")
    public record ShownFinding(
            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "Signal word in the sense of ANSI Z535.6.")
            Level level,

            @Schema(description = "For people.") String message,

            @Schema(description = "What in the request causes it, RFC 6901.") @Nullable
            String pointer,

            @Schema(description = "`empty` or `occupied`, where the two are told apart.") @Nullable
            String state,

            @Schema(description = "The value found: a quantity in output units or a plain number.") @Nullable
            Object actual,

            @Schema(description = "The value it is held against: a quantity in output units or a plain number.")
            @Nullable
            Object limit,

            @Schema(description = "What to do about it.") @Nullable
            String action,

            @Schema(
                    description =
                            "Where the limit comes from; marks such as [weak] or [from memory] tell its standing.")
            String source) {}

    /** An assumption in output units. */
    @Schema(name = "Assumption", description = "A default or a derived value that the answer stands on.")
    public record ShownAssumption(
            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "Where it could have been sent, RFC 6901.")
            String pointer,

            @Schema(description = "Exactly what could be sent at the pointer.")
            Object value,

            @Schema(description = "Why this value.") String reason,

            @Schema(description = "Where it comes from; marks such as [weak] or [from memory] tell its standing.")
            String source) {}

    /** A step of the working with its numbers. */
    @Schema(
            name = "Step",
            description = "A step of the working. All values in coherent SI; temperatures in degrees Celsius.")
    public record ShownStep(
            @Schema(description = "Letter of the result.") String symbol,

            @Schema(description = "What it is.") String meaning,

            @Schema(description = "The formula in letters.") String formula,

            @Schema(description = "The numbers put in.") List<ShownTerm> inputs,

            @Schema(description = "The result of the step.") double value,

            @Schema(description = "Its unit; 1 for a pure number.")
            String unit,

            @Schema(description = "Where the formula is printed.")
            String source) {}

    /** A letter with its number. */
    @Schema(name = "Term", description = "A letter with its number.")
    public record ShownTerm(
            @Schema(description = "The letter.") String symbol,
            @Schema(description = "Its value, coherent SI.") double value,

            @Schema(description = "Its unit; 1 for a pure number.")
            String unit) {}

    /** A caution. */
    @Schema(name = "Caution", description = "The usual caution of this work.")
    public record ShownCaution(
            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "For people.") String message) {}
}
