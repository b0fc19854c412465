package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
import tools.jackson.databind.json.JsonMapper;

/** {@code POST /v1/sweeps}. */
@RestController
@Tag(name = "whatif")
final class SweepResource {

    static final int MOST_POINTS = 20_000;
    private static final int MOST_WATCHED = 60;
    private static final String CHEAPER = "Ask for fewer points, or for one calculation in place of the assessment";

    private final Calculations calculations;
    private final JsonMapper json;

    SweepResource(Calculations calculations, JsonMapper json) {
        this.calculations = calculations;
        this.json = json;
    }

    /** What is swept. */
    @Schema(name = "SweepRequest", description = "A question, its input, and one or two values of the input that vary.")
    record Sent(
            @Schema(
                    description = "Name of a calculation, or `assessment` for all of them.",
                    example = "centre-of-gravity")
            String calculation,

            @Schema(description = "A setup, whole or in part: the body of the calculation's own POST.")
            Setup input,

            @Schema(description = "One variable, or two for every pair of their values; at most 20000 points in all.")
            List<Axis.Sent> vary,

            @Schema(
                    description =
                            "Results to put in columns: RFC 6901 pointers into `result`, at most 60. For `assessment` the first step names the calculation: `/pack-range/range`. The leading results when left out.")
            @Nullable
            List<String> watch) {}

    @PostMapping(path = "/v1/sweeps", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "sweep",
            summary = "What if this value were another: results over a range?",
            description =
                    "Asks one question again and again with other values at one or two places of the input. Each point equals a POST of its own; findings are marked where they appear and vanish, refused points are listed with their faults. Creates nothing. A request that would take more than 60 s is refused with what it would cost (`too-costly`). With `Accept: application/x-ndjson` lines of `progress` come first, then one line with the `answer`, or with the `problem`.")
    Sweep sweep(@RequestBody Sent sent, @RequestParam(defaultValue = "metric") UnitSystem units) {
        return sweeper(sent, units).sweep(Effort.silent(CHEAPER));
    }

    @Hidden // the contract tells both answers under one operation
    @PostMapping(path = "/v1/sweeps", produces = Progress.NDJSON)
    void sweepInLines(
            @RequestBody Sent sent,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            HttpServletResponse response)
            throws IOException {
        Sweeper sweeper = sweeper(sent, units);
        Progress.lines(response, json, CHEAPER, sweeper::sweep);
    }

    private Sweeper sweeper(Sent sent, UnitSystem units) {
        List<Fault> faults = new ArrayList<>();
        Probe.Question question = question(sent.calculation(), calculations, faults);
        List<Watched> watched = watched(sent.watch(), question, faults);
        List<Axis> axes = axes(sent, faults);
        if (!faults.isEmpty() || question == null) {
            throw new Refused(faults);
        }
        return new Sweeper(
                calculations, new Probe(calculations, question, sent.input(), axes, units), axes, watched, units);
    }

    /** Null, and a fault, when there is no such question. */
    static Probe.@Nullable Question question(@Nullable String name, Calculations calculations, List<Fault> faults) {
        if (name == null) {
            faults.add(Fault.missing("/calculation"));
            return null;
        }
        Probe.Question question = Probe.Question.of(name, calculations);
        if (question == null) {
            List<String> known = new ArrayList<>();
            calculations.all().forEach(one -> known.add(one.name()));
            known.add(Probe.Question.ASSESSMENT);
            faults.add(new Fault(
                    "/calculation",
                    "unknown-value",
                    "There is no calculation of this name; known: " + String.join(", ", known),
                    name,
                    null));
        }
        return question;
    }

    /** The leading results where nothing is sent; faults where a pointer leads nowhere. */
    static List<Watched> watched(@Nullable List<String> sent, Probe.@Nullable Question question, List<Fault> faults) {
        if (question == null) {
            return List.of();
        }
        if (sent == null) {
            return Watched.leads(question);
        }
        if (sent.isEmpty() || sent.size() > MOST_WATCHED) {
            faults.add(Axis.size("/watch", sent.size(), 1, MOST_WATCHED));
            return List.of();
        }
        List<Watched> watched = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            try {
                watched.add(Watched.of(sent.get(i), question));
            } catch (Place.Unknown unknown) {
                faults.add(new Fault(
                        "/watch/" + i, "unknown-pointer", String.valueOf(unknown.getMessage()), sent.get(i), null));
            }
        }
        return watched;
    }

    private List<Axis> axes(Sent sent, List<Fault> faults) {
        if (sent.input() == null) {
            faults.add(Fault.missing("/input"));
        }
        if (sent.vary() == null) {
            faults.add(Fault.missing("/vary"));
        }
        if (sent.input() == null || sent.vary() == null) {
            return List.of();
        }
        if (sent.vary().isEmpty() || sent.vary().size() > 2) {
            faults.add(Axis.size("/vary", sent.vary().size(), 1, 2));
            return List.of();
        }
        Axis.Reader reader = new Axis.Reader(json, sent.input(), MOST_POINTS, faults);
        List<Axis> axes = new ArrayList<>();
        for (int i = 0; i < sent.vary().size(); i++) {
            Axis axis = reader.read(sent.vary().get(i), "/vary/" + i);
            if (axis != null) {
                axes.add(axis);
            }
        }
        if (axes.size() < sent.vary().size()) {
            return List.of();
        }
        faults.addAll(Axis.overlaps(axes, "/vary"));
        long points = axes.stream().mapToLong(axis -> axis.values().size()).reduce(1, Math::multiplyExact);
        if (points > MOST_POINTS) {
            faults.add(new Fault(
                    "/vary",
                    "too-many",
                    "Would be " + points + " points; at most " + MOST_POINTS,
                    points,
                    MOST_POINTS));
        }
        return axes;
    }
}
