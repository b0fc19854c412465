package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.api.calculation.Answer.Engine;
import org.axlewright.api.calculation.NotAnswered;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;

/** Results over one or two varied values. */
@Schema(
        description =
                "Results over one or two varied values, in columns as plots take them. Points are counted from 0; with two variables the last one runs fastest.")
public record Sweep(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(description = "What was asked: the name of a calculation, or `assessment`.")
        String calculation,

        @Schema(description = "How many points: the product of the numbers of values.")
        int points,

        @Schema(description = "What was varied, in the order sent.")
        List<Varied> vary,

        @Schema(description = "One column for each watched result; each has a value, or null, for every point.")
        List<Series> series,

        @Schema(description = "Findings that show at any point, worst first, with the points where they do.")
        List<Marked> findings,

        @Schema(description = "Points where the input is refused or something is missing, and why.")
        List<RefusedPoints> refused,

        @Schema(description = "Watched results that were left out at some point, and what is missing for them.")
        List<NotAnswered> notAnswered) {

    /** One variable. */
    @Schema(name = "SweptVariable", description = "One variable and its values.")
    public record Varied(
            @Schema(description = "Where in the input, RFC 6901.")
            String pointer,

            @Schema(description = "Unit of the values, as sent, or their currency; absent where they have none.")
            @Nullable
            Object unit,

            @Schema(description = "The values in that unit, in order; texts and parts as sent.")
            List<Object> values) {}

    /** One watched result. */
    @Schema(name = "SweptSeries", description = "One watched result over all points.")
    public record Series(
            @Schema(
                    description =
                            "Where in the result, RFC 6901; for `assessment` the first step names the calculation.")
            String pointer,

            @Schema(description = "Unit of the values in the output units asked for, or their currency.") @Nullable
            Object unit,

            @Schema(
                    description =
                            "The values in that unit, point by point: numbers, texts or truths; null where there is no answer.")
            List<@Nullable Object> values) {}

    /** A finding and where it shows. */
    @Schema(name = "SweptFinding", description = "A finding and the points where it shows.")
    public record Marked(
            @Schema(description = "Names of the calculations that made it.")
            List<String> calculations,

            @Schema(description = "Stable name; new ones may be added.")
            String code,

            @Schema(description = "Signal word in the sense of ANSI Z535.6.")
            Level level,

            @Schema(description = "For people, as at the first point where it shows.")
            String message,

            @Schema(description = "What in the input causes it, RFC 6901.") @Nullable
            String pointer,

            @Schema(description = "`empty` or `occupied`, where the two are told apart.") @Nullable
            String state,

            @Schema(description = "What to do about it.") @Nullable
            String action,

            @Schema(description = "Where the limit comes from.")
            String source,

            @Schema(description = "Where it shows: it appears at each first point and vanishes after each last one.")
            List<Run> runs) {}

    /** Neighbouring points. */
    @Schema(name = "SweptRun", description = "Neighbouring points, both ends counted.")
    public record Run(
            @Schema(description = "First point.") int first,

            @Schema(description = "Last point.") int last,

            @Schema(description = "Value of the variable at the first point; with one variable only.") @Nullable
            Object from,

            @Schema(description = "Value of the variable at the last point; with one variable only.") @Nullable
            Object to) {}

    /** Points that were refused. */
    @Schema(name = "RefusedPoints", description = "Neighbouring points that are refused for the same reasons.")
    public record RefusedPoints(
            @Schema(description = "Name of the calculation.")
            String calculation,

            @Schema(description = "The points.") Run run,

            @Schema(description = "What its own POST would refuse, as at the first point; pointers into the input.")
            List<Fault> faults) {}
}
