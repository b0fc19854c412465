package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code POST /v1/solutions}. */
@RestController
@Tag(name = "whatif")
final class SolutionResource {

    private static final int USUAL_INTERVALS = 200;
    private static final int MOST_INTERVALS = 5_000;
    private static final String CHEAPER = "Ask for fewer steps, or for one calculation in place of the assessment";

    private final Calculations calculations;
    private final JsonMapper json;

    SolutionResource(Calculations calculations, JsonMapper json) {
        this.calculations = calculations;
        this.json = json;
    }

    /** What is looked for. */
    @Schema(name = "SolutionRequest", description = "A question, its input, the value that varies, and the target.")
    record Sent(
            @Schema(description = "Name of a calculation, or `assessment`.", example = "centre-of-gravity")
            String calculation,

            @Schema(description = "A setup, whole or in part: the body of the calculation's own POST.")
            Setup input,

            @Schema(description = "What varies.") SentRange vary,

            @Schema(description = "What the result shall be.")
            Goal.Sent target) {}

    /** What varies, as sent. */
    @Schema(
            name = "VariedWithin",
            description = "What varies: between two values, or among values told one by one. Give it one way.")
    record SentRange(
            @Schema(description = "A place in `input`, RFC 6901, as in a sweep.", example = "/items/0/position/x")
            String pointer,

            @Schema(
                    description =
                            "The two ends, lower first, as the place takes them. Of whole numbers every one is tried, at most 2000.")
            @Nullable
            List<JsonNode> between,

            @Schema(
                    description =
                            "The values one by one, in the order in which the first that satisfies is wanted: wire or tyre sizes from the smallest; at most 2000.")
            @Nullable
            List<JsonNode> values,

            @Schema(
                    description =
                            "How finely the range is scanned: number of intervals, 10 to 5000; 200 when left out. Two crossings closer together than that may be missed.")
            @Nullable
            Integer steps) {}

    @PostMapping(path = "/v1/solutions", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "solve",
            summary = "What must this value be for that result?",
            description =
                    "Varies one value of the input until a result equals, or is at most, or at least, a target. The range is scanned first, every crossing is refined by a bracketing solver and looked at on both sides. No solution in the range is an answer, with what the result gets to. Creates nothing. Progress in lines as for `/v1/sweeps`.")
    Solution solve(@RequestBody Sent sent, @RequestParam(defaultValue = "metric") UnitSystem units) {
        return search(sent, units).apply(Effort.silent(CHEAPER));
    }

    @Hidden // the contract tells both answers under one operation
    @PostMapping(path = "/v1/solutions", produces = Progress.NDJSON)
    void solveInLines(
            @RequestBody Sent sent,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            HttpServletResponse response)
            throws IOException {
        Progress.lines(response, json, CHEAPER, search(sent, units)::apply);
    }

    private Function<Effort, Solution> search(Sent sent, UnitSystem units) {
        List<Fault> faults = new ArrayList<>();
        Probe.Question question = SweepResource.question(sent.calculation(), calculations, faults);
        if (sent.input() == null) {
            faults.add(Fault.missing("/input"));
            throw new Refused(faults);
        }
        Axis.Reader reader = new Axis.Reader(json, sent.input(), Axis.MOST_TOLD, faults);
        Axis axis = axis(sent.vary(), reader, faults);
        Goal goal = Goal.read(sent.target(), question, reader, faults);
        if (question == null || axis == null || goal == null || !faults.isEmpty()) {
            throw new Refused(faults);
        }
        Integer steps = sent.vary().steps();
        int intervals = steps == null ? USUAL_INTERVALS : steps;
        boolean every = sent.vary().values() != null
                || (axis.scale() != null && axis.scale().whole());
        Probe probe = new Probe(calculations, question, sent.input(), List.of(axis), units);
        return effort -> {
            Solver solver = new Solver(calculations, probe, axis, goal, every ? 0 : intervals, effort);
            return every ? solver.among() : solver.between(intervals);
        };
    }

    private static @Nullable Axis axis(@Nullable SentRange sent, Axis.Reader reader, List<Fault> faults) {
        if (sent == null) {
            faults.add(Fault.missing("/vary"));
            return null;
        }
        Integer steps = sent.steps();
        if (steps != null && (steps < 10 || steps > MOST_INTERVALS)) {
            faults.add(Axis.beyond("/vary/steps", steps, 10, MOST_INTERVALS));
        }
        Place place = reader.place(sent.pointer(), "/vary/pointer");
        List<JsonNode> between = sent.between();
        if (between != null && sent.values() != null) {
            faults.add(Fault.contradiction("/vary/values", "Give the values one way: between two, or one by one"));
            return null;
        }
        if (sent.values() != null) {
            return place == null ? null : reader.told(place, sent.values(), "/vary/values");
        }
        if (between == null) {
            faults.add(Fault.missing("/vary/between"));
            return null;
        }
        if (between.size() != 2) {
            faults.add(Axis.size("/vary/between", between.size(), 2, 2));
            return null;
        }
        Axis.Reader.Ends ends = place == null
                ? null
                : reader.ends(place, between.get(0), "/vary/between/0", between.get(1), "/vary/between/1");
        if (place == null || ends == null) {
            return null;
        }
        return ends.scale().whole()
                ? reader.every(place, ends, "/vary/between")
                : new Axis(place, List.of(ends.from(), ends.to()), ends.scale());
    }
}
