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
import org.axlewright.api.whatif.Tolerated.Method;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code POST /v1/tolerances}. */
@RestController
@Tag(name = "whatif")
final class ToleranceResource {

    private static final int MOST_TOLERANCES = 100;
    private static final int LEAST_TRIALS = 100;
    private static final int MOST_TRIALS = 100_000;
    private static final int MOST_DRAWN = 2_000_000;
    private static final String CHEAPER = "Ask for fewer trials, or for first-order";

    private final Calculations calculations;
    private final JsonMapper json;

    ToleranceResource(Calculations calculations, JsonMapper json) {
        this.calculations = calculations;
        this.json = json;
    }

    /** What is asked. */
    @Schema(
            name = "ToleranceRequest",
            description = "A question, its input with tolerances, and how they are propagated.")
    record Sent(
            @Schema(description = "Name of a calculation, or `assessment`.", example = "centre-of-gravity")
            String calculation,

            @Schema(
                    description =
                            "A setup, whole or in part. Any quantity may carry `plusMinus`, the half-width of its limits in the same unit: `{\"value\": 190, \"unit\": \"kg\", \"plusMinus\": 2}`; it is then spread anywhere within them alike.")
            JsonNode input,

            @Schema(description = "Limits of plain numbers, and of quantities that are spread otherwise.") @Nullable
            List<Tolerance.Sent> tolerances,

            @Schema(
                    description =
                            "Results wanted: RFC 6901 pointers to single numbers, at most 60. The leading results when left out.")
            @Nullable
            List<String> watch,

            @Schema(description = "`first-order` when left out.") @Nullable
            Method method,

            @Schema(description = "Probability of the interval, from 0.5 to 0.9999; 0.95 when left out.") @Nullable
            Double coverage,

            @Schema(description = "Draws of `monte-carlo`, from 100 to 100000; 10000 when left out.") @Nullable
            Integer trials,

            @Schema(description = "Seed of the draws, a whole number; 1 when left out.") @Nullable
            Integer seed) {}

    @PostMapping(path = "/v1/tolerances", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "tolerate",
            summary = "How sure is the answer when the scale is only so good?",
            description =
                    "Propagates the tolerances of the input to the results: first order (JCGM 100:2008) or by draws (JCGM 101:2008), with a budget of what each input adds. Inputs are taken as independent. Creates nothing; the same seed gives the same answer. Progress in lines as for `/v1/sweeps`.")
    Tolerated tolerate(@RequestBody Sent sent, @RequestParam(defaultValue = "metric") UnitSystem units) {
        return tolerances(sent, units).propagate(Effort.silent(CHEAPER));
    }

    @Hidden // the contract tells both answers under one operation
    @PostMapping(path = "/v1/tolerances", produces = Progress.NDJSON)
    void tolerateInLines(
            @RequestBody Sent sent,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            HttpServletResponse response)
            throws IOException {
        Tolerances tolerances = tolerances(sent, units);
        Progress.lines(response, json, CHEAPER, tolerances::propagate);
    }

    private Tolerances tolerances(Sent sent, UnitSystem units) {
        List<Fault> faults = new ArrayList<>();
        Probe.Question question = SweepResource.question(sent.calculation(), calculations, faults);
        List<Watched> watched = SweepResource.watched(sent.watch(), question, faults);
        for (int i = 0; i < watched.size(); i++) {
            if (sent.watch() != null && !watched.get(i).isNumber()) {
                faults.add(
                        new Fault("/watch/" + i, "wrong-type", watched.get(i).pointer() + " is no number", null, null));
            }
        }
        int trials = within(sent.trials(), 10_000, LEAST_TRIALS, MOST_TRIALS, "/trials", faults);
        double coverage = sent.coverage() == null ? 0.95 : sent.coverage();
        if (!(coverage >= 0.5 && coverage <= 0.9999)) {
            faults.add(new Fault(
                    "/coverage",
                    "out-of-range",
                    "Must be from 0.5 to 0.9999",
                    coverage,
                    coverage < 0.5 ? 0.5 : 0.9999));
        }
        List<Watched> numbers = watched.stream().filter(Watched::isNumber).toList();
        Method method = sent.method() == null ? Method.FIRST_ORDER : sent.method();
        if (method == Method.MONTE_CARLO && (long) trials * numbers.size() > MOST_DRAWN) {
            faults.add(new Fault(
                    "/trials",
                    "too-costly",
                    "Would draw " + (long) trials * numbers.size() + " results; at most " + MOST_DRAWN
                            + ". Watch fewer results or make fewer draws",
                    (long) trials * numbers.size(),
                    MOST_DRAWN));
        }
        if (sent.input() == null) {
            faults.add(Fault.missing("/input"));
            throw new Refused(faults);
        }
        JsonNode tree = sent.input().deepCopy();
        List<Tolerance.Sent> own = Tolerance.takenFrom(tree, faults);
        Setup input = setup(sent, tree);
        List<Tolerance> tolerances = read(sent, own, input, faults);
        if (question == null || !faults.isEmpty()) {
            throw new Refused(faults);
        }
        return new Tolerances(
                calculations,
                new Probe(
                        calculations,
                        question,
                        input,
                        tolerances.stream().map(Tolerance::axis).toList(),
                        units),
                tolerances,
                numbers,
                new Tolerances.Wanted(method, coverage, trials, sent.seed() == null ? 1 : sent.seed()));
    }

    private Setup setup(Sent sent, JsonNode tree) {
        try {
            return json.treeToValue(tree, Setup.class);
        } catch (JacksonException failure) {
            throw failure.prependPath(sent, "input");
        }
    }

    private List<Tolerance> read(Sent sent, List<Tolerance.Sent> own, Setup input, List<Fault> faults) {
        List<Tolerance.Sent> listed = sent.tolerances() == null ? List.of() : sent.tolerances();
        int count = own.size() + listed.size();
        if (count == 0 || count > MOST_TOLERANCES) {
            faults.add(Axis.size("/tolerances", count, 1, MOST_TOLERANCES));
            return List.of();
        }
        Axis.Reader reader = new Axis.Reader(json, input, Axis.MOST_TOLD, faults);
        List<Tolerance> tolerances = new ArrayList<>();
        for (Tolerance.Sent one : own) {
            add(tolerances, Tolerance.read(one, "/input" + one.pointer(), input, reader), "", faults);
        }
        for (int i = 0; i < listed.size(); i++) {
            String at = "/tolerances/" + i;
            add(tolerances, Tolerance.read(listed.get(i), at, input, reader), at + "/pointer", faults);
        }
        return tolerances;
    }

    private static void add(List<Tolerance> tolerances, @Nullable Tolerance next, String at, List<Fault> faults) {
        if (next == null) {
            return;
        }
        for (Tolerance known : tolerances) {
            if (known.place().overlaps(next.place())) {
                faults.add(Fault.contradiction(at, "There is a tolerance for " + known.place() + " already"));
                return;
            }
        }
        tolerances.add(next);
    }

    private static int within(@Nullable Integer sent, int usual, int least, int most, String at, List<Fault> faults) {
        if (sent != null && (sent < least || sent > most)) {
            faults.add(Axis.beyond(at, sent, least, most));
        }
        return sent == null ? usual : sent;
    }
}
