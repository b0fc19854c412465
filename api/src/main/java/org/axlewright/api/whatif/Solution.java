package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.api.calculation.Answer.Engine;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.whatif.Crossings.Course;
import org.jspecify.annotations.Nullable;

/** Where a result meets a target. */
@Schema(
        name = "GoalSolution",
        description =
                "Where a result meets its target while one value of the input varies. That it does nowhere is an answer too: see `reached`.")
public record Solution(
        @Schema(description = "What calculated.") Engine engine,

        @Schema(description = "What was asked: the name of a calculation, or `assessment`.")
        String calculation,

        @Schema(description = "Where in the input the value varies, RFC 6901.")
        String vary,

        @Schema(description = "Where in the result the target is, RFC 6901.")
        String target,

        @Schema(description = "Whether the target is met anywhere in the range.")
        boolean solved,

        @Schema(
                description =
                        "The first value that meets the target: the smallest of a range, the first of values told one by one. Put back into the input it meets the target.")
        @Nullable
        Object first,

        @Schema(
                description =
                        "Whether the result only rises or only falls over the range, as far as the points looked at show.")
        boolean monotonic,

        @Schema(description = "How it runs.") Course course,

        @Schema(
                description =
                        "Every place where the result crosses the target, in order, refined and looked at on both sides. Of values told one by one: where it begins or ceases to meet the target.")
        List<Crossed> crossings,

        @Schema(description = "Where the target is met, in order; a single value for `equals`.")
        List<Met> met,

        @Schema(description = "The lowest and the highest result in the range.") @Nullable
        Reached reached,

        @Schema(description = "Values that are refused or get no answer, and why.")
        List<RefusedValues> refused,

        @Schema(description = "How often the question was asked.")
        int asked) {

    /** A value of the input and what it gives. */
    @Schema(name = "TriedValue", description = "A value of the input and what it gives.")
    public record Tried(
            @Schema(description = "As it can be sent.") Object value,

            @Schema(description = "The result, in output units; absent when it is refused or gets no answer.") @Nullable
            Object result,

            @Schema(description = "Whether the target is met.")
            boolean meets) {}

    /** A crossing with its two sides. */
    @Schema(name = "GoalCrossing", description = "A crossing with its two sides.")
    public record Crossed(
            @Schema(
                    description =
                            "The crossing, on the side that meets an `atMost` or `atLeast` where the function is continuous.")
            Tried at,

            @Schema(
                    description =
                            "A little below: a billionth of the range, or the neighbour of values told one by one.")
            @Nullable
            Tried below,

            @Schema(description = "A little above.") @Nullable
            Tried above,

            @Schema(
                    description =
                            "True where the result leaps over the target and never has its value: no solution for `equals`.")
            boolean jump) {}

    /** Values that meet the target. */
    @Schema(name = "MetRange", description = "Values that meet the target, both ends counted.")
    public record Met(
            @Schema(description = "First value.") Object from,
            @Schema(description = "Last value.") Object to) {}

    /** What the result gets to. */
    @Schema(name = "ReachedRange", description = "The lowest and the highest result in the range, and where.")
    public record Reached(
            @Schema(description = "Lowest.") Tried least,
            @Schema(description = "Highest.") Tried greatest) {}

    /** Values without an answer. */
    @Schema(name = "RefusedValues", description = "Neighbouring values that get no answer.")
    public record RefusedValues(
            @Schema(description = "First value.") Object from,
            @Schema(description = "Last value.") Object to,

            @Schema(
                    description =
                            "What its own POST would refuse at the first value, pointers into the input; empty where the result is left out for want of an optional input.")
            List<Fault> faults) {}
}
