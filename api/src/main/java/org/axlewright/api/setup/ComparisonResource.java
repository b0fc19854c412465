package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.axlewright.api.assessment.Comparer;
import org.axlewright.api.assessment.Comparison;
import org.axlewright.api.assessment.Trials;
import org.axlewright.api.assessment.Trials.Candidate;
import org.axlewright.api.assessment.Tryout;
import org.axlewright.api.calculation.Calculation;
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

/** {@code POST /v1/comparisons} and {@code POST /v1/candidates}: setups sent whole or named by their ids. */
@RestController
@Tag(name = "assessment")
@ApiResponse(responseCode = "404", description = "An id names no saved setup.", content = @Content)
final class ComparisonResource {

    private static final int MOST_CANDIDATES = 200;

    private final Sides sides;
    private final Comparer comparer;
    private final Trials trials;
    private final Calculations calculations;

    ComparisonResource(Sides sides, Comparer comparer, Trials trials, Calculations calculations) {
        this.sides = sides;
        this.comparer = comparer;
        this.trials = trials;
        this.calculations = calculations;
    }

    /** What is compared. */
    @Schema(
            name = "ComparisonRequest",
            description = "Two setups, each whole, the id of a saved one, or one of its revisions.")
    record Sent(
            @Schema(
                    description = "As found: a setup, the id of a saved one, or `{id, revision}`.",
                    oneOf = {Setup.class, String.class})
            JsonNode before,

            @Schema(
                    description = "As planned: a setup, the id of a saved one, or `{id, revision}`.",
                    oneOf = {Setup.class, String.class})
            JsonNode after) {}

    /** What is tried. */
    @Schema(name = "CandidatesRequest", description = "A setup and the changes to try on it, each by itself.")
    record SentCandidates(
            @Schema(
                    description = "A setup, the id of a saved one, or `{id, revision}`.",
                    oneOf = {Setup.class, String.class})
            JsonNode setup,

            @Schema(description = "The changes to try, at most 200.")
            List<SentCandidate> candidates,

            @Schema(description = "Names of the calculations that decide; all when left out.") @Nullable
            List<String> calculations) {}

    /** One change. */
    @Schema(name = "Candidate", description = "One change to try.")
    record SentCandidate(
            @Schema(description = "What it is called.") @Nullable
            String name,

            @Schema(description = "Merge patch on the setup, RFC 7396: null takes a field away.")
            JsonNode patch) {}

    @PostMapping(path = "/v1/comparisons", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "compare",
            summary = "What does the change do, and which part of it does what?",
            description =
                    "Every result of two setups side by side, findings gained and lost, and the share of each changed section in the change of the leading results. Creates nothing.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Sent.class)))
    @ApiResponse(responseCode = "200", description = "The answer.", useReturnTypeSchema = true)
    Comparison compare(@RequestBody byte[] body, @RequestParam(defaultValue = "metric") UnitSystem units) {
        JsonNode tree = sides.tree(body);
        Sides.onlyKnown(tree, "", List.of("before", "after"));
        List<Fault> faults = new ArrayList<>();
        for (String side : List.of("before", "after")) {
            if (!tree.has(side)) {
                faults.add(Fault.missing("/" + side));
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        Setup before = sides.setup(tree, "before", faults);
        Setup after = sides.setup(tree, "after", faults);
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        return comparer.compare(before, after, units);
    }

    @PostMapping(path = "/v1/candidates", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "tryCandidates",
            summary = "Which of these parts fits?",
            description =
                    "One setup with each of several merge patches by itself: verdict, leading results and deciding finding for each. Creates nothing.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = SentCandidates.class)))
    @ApiResponse(responseCode = "200", description = "The answer.", useReturnTypeSchema = true)
    Tryout attempt(@RequestBody byte[] body, @RequestParam(defaultValue = "metric") UnitSystem units) {
        JsonNode tree = sides.tree(body);
        Sides.onlyKnown(tree, "", List.of("setup", "candidates", "calculations"));
        List<Fault> faults = new ArrayList<>();
        Set<String> asked = asked(tree.path("calculations"));
        List<Candidate> candidates = candidates(tree.path("candidates"), faults);
        Setup setup = sides.setup(tree, "setup", faults);
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        return trials.attempt(setup, candidates, asked, units);
    }

    private Set<String> asked(JsonNode sent) {
        Set<String> asked = new LinkedHashSet<>();
        if (sent.isMissingNode()) {
            return asked;
        }
        if (!sent.isArray()) {
            throw Sides.unreadable("/calculations", "wrong-type", "Must be a list");
        }
        for (int i = 0; i < sent.size(); i++) {
            String name = sent.get(i).isString() ? sent.get(i).asString() : "";
            if (calculations.named(name).isEmpty()) {
                String known = String.join(
                        ", ", calculations.all().stream().map(Calculation::name).toList());
                throw Sides.unreadable(
                        "/calculations/" + i, "unknown-value", "There is no calculation of this name; known: " + known);
            }
            asked.add(name);
        }
        return asked;
    }

    private static List<Candidate> candidates(JsonNode sent, List<Fault> faults) {
        if (sent.isMissingNode()) {
            faults.add(Fault.missing("/candidates"));
            return List.of();
        }
        if (!sent.isArray()) {
            throw Sides.unreadable("/candidates", "wrong-type", "Must be a list");
        }
        if (sent.size() > MOST_CANDIDATES) {
            faults.add(new Fault(
                    "/candidates",
                    "too-many",
                    "Must have at most " + MOST_CANDIDATES + " entries, has " + sent.size(),
                    sent.size(),
                    MOST_CANDIDATES));
            return List.of();
        }
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            JsonNode one = sent.get(i);
            String pointer = "/candidates/" + i;
            if (!one.isObject()) {
                throw Sides.unreadable(pointer, "wrong-type", "Must be an object");
            }
            Sides.onlyKnown(one, pointer, List.of("name", "patch"));
            if (one.has("name") && !one.path("name").isString()) {
                throw Sides.unreadable(pointer + "/name", "wrong-type", "Must be a text");
            }
            if (!one.has("patch")) {
                faults.add(Fault.missing(pointer + "/patch"));
                continue;
            }
            if (!one.path("patch").isObject()) {
                throw Sides.unreadable(pointer + "/patch", "wrong-type", "Must be an object");
            }
            candidates.add(new Candidate(one.has("name") ? one.path("name").asString() : null, one.path("patch")));
        }
        return candidates;
    }
}
