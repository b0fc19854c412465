package org.axlewright.api.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Tryout.Leading;
import org.axlewright.api.assessment.Tryout.Tried;
import org.axlewright.api.assessment.Tryout.Verdict;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.problem.UnreadableBody;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Tries changes on one setup: fourteen chargers, which fits? */
@Component
public final class Trials {

    private final Calculations calculations;
    private final Assessor assessor;
    private final JsonMapper json;

    Trials(Calculations calculations, Assessor assessor, JsonMapper json) {
        this.calculations = calculations;
        this.assessor = assessor;
        this.json = json;
    }

    /**
     * A change to try.
     *
     * @param patch merge patch on the setup, RFC 7396
     */
    public record Candidate(@Nullable String name, JsonNode patch) {}

    /**
     * Each candidate by itself.
     *
     * @param setup whose form is in order
     * @param asked names of calculations; empty for all
     */
    public Tryout attempt(Setup setup, List<Candidate> candidates, Set<String> asked, UnitSystem units) {
        JsonNode document = json.valueToTree(setup);
        Assessment plain = assessor.assess(setup, new Asked(units, false));
        Set<String> known = plain.findings().stream().map(Trials::place).collect(Collectors.toSet());
        List<Tried> tried = new ArrayList<>();
        for (Candidate candidate : candidates) {
            tried.add(attempt(candidate, document, known, asked, units));
        }
        return new Tryout(calculations.engine(), tried(null, plain, Set.of(), Set.of(), asked), tried);
    }

    private Tried attempt(
            Candidate candidate, JsonNode document, Set<String> known, Set<String> asked, UnitSystem units) {
        Set<String> changed = Set.copyOf(candidate.patch().propertyNames());
        try {
            Setup patched = json.treeToValue(MergePatch.apply(document, candidate.patch()), Setup.class);
            return tried(candidate.name(), assessor.assess(patched, new Asked(units, false)), known, changed, asked);
        } catch (JacksonException unreadable) {
            return new Tried(
                    candidate.name(),
                    Verdict.REFUSED,
                    null,
                    List.of(),
                    List.of(),
                    List.of(UnreadableBody.fault(unreadable)));
        } catch (Refused refused) {
            return new Tried(candidate.name(), Verdict.REFUSED, null, List.of(), List.of(), refused.faults());
        }
    }

    private Tried tried(
            @Nullable String name, Assessment assessment, Set<String> known, Set<String> changed, Set<String> asked) {
        AssessedFinding deciding = assessment.findings().stream()
                .filter(finding ->
                        asked.isEmpty() || finding.calculations().stream().anyMatch(asked::contains))
                .max(Comparator.comparing(AssessedFinding::level)
                        .thenComparing(finding -> !known.contains(place(finding)))
                        .thenComparing(finding -> changed.contains(section(finding))))
                .orElse(null);
        List<Leading> leading = new ArrayList<>();
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            Object result = assessment.results().get(calculation.name());
            if (result != null && (asked.isEmpty() || asked.contains(calculation.name()))) {
                JsonNode shown = json.valueToTree(result);
                for (String lead : calculation.leads()) {
                    JsonNode value = shown.at(lead);
                    if (!value.isMissingNode()) {
                        leading.add(new Leading(calculation.name(), lead, value));
                    }
                }
            }
        }
        return new Tried(
                name,
                deciding == null ? Verdict.CLEAR : verdict(deciding.level()),
                deciding,
                leading,
                assessment.notAssessed().stream()
                        .filter(one -> asked.isEmpty() || asked.contains(one.calculation()))
                        .toList(),
                List.of());
    }

    private static Verdict verdict(Level level) {
        return switch (level) {
            case NOTICE -> Verdict.CLEAR;
            case CAUTION -> Verdict.CAUTION;
            case WARNING -> Verdict.WARNING;
            case DANGER -> Verdict.DANGER;
        };
    }

    private static String place(AssessedFinding finding) {
        return finding.code() + " " + finding.pointer() + " " + finding.state();
    }

    private static String section(AssessedFinding finding) {
        return finding.pointer() == null ? "" : finding.pointer().replaceFirst("^/([^/]*).*$", "$1");
    }
}
