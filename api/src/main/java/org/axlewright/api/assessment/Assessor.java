package org.axlewright.api.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Assessment.Assumed;
import org.axlewright.api.assessment.Assessment.LeftOut;
import org.axlewright.api.assessment.Assessment.NotAssessed;
import org.axlewright.api.assessment.Assessment.Part;
import org.axlewright.api.calculation.Answer;
import org.axlewright.api.calculation.Answer.ShownAssumption;
import org.axlewright.api.calculation.Answer.ShownCaution;
import org.axlewright.api.calculation.Answer.ShownFinding;
import org.axlewright.api.calculation.Answer.ShownStep;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Calculations.Outcome;
import org.axlewright.api.calculation.Pointer;
import org.axlewright.api.section.Setup;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Puts one setup through every question of the registry and gathers what they say. */
@Component
public final class Assessor {

    private final Calculations calculations;

    Assessor(Calculations calculations) {
        this.calculations = calculations;
    }

    /**
     * Every question that the setup can answer.
     *
     * @throws org.axlewright.api.problem.Refused when its form is not in order
     */
    public Assessment assess(Setup setup, Asked asked) {
        Map<String, Object> results = new LinkedHashMap<>();
        Map<String, List<ShownStep>> working = new LinkedHashMap<>();
        Map<ShownFinding, List<String>> findings = new LinkedHashMap<>();
        Map<ShownAssumption, List<String>> assumptions = new LinkedHashMap<>();
        Set<ShownCaution> cautions = new LinkedHashSet<>();
        List<NotAssessed> notAssessed = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (Outcome outcome : calculations.askAll(setup, asked)) {
            String name = outcome.calculation().name();
            if (outcome instanceof Outcome.Left left) {
                notAssessed.add(new NotAssessed(name, left.missing(), left.faults()));
                continue;
            }
            Answer<?> answer = ((Outcome.Answered) outcome).answer();
            results.put(name, answer.result());
            if (answer.working() != null) {
                working.put(name, answer.working());
            }
            answer.findings().forEach(one -> by(findings, one).add(name));
            answer.assumptions().forEach(one -> by(assumptions, one).add(name));
            cautions.addAll(answer.cautions());
            answer.notAnswered().forEach(one -> leftOut.add(new LeftOut(name, one.result(), one.missing())));
        }
        return new Assessment(
                calculations.engine(),
                results,
                findings.entrySet().stream()
                        .map(found -> finding(found.getKey(), found.getValue(), setup))
                        .sorted(Comparator.comparing(AssessedFinding::level).reversed())
                        .toList(),
                notAssessed,
                leftOut,
                assumptions.entrySet().stream()
                        .map(assumed -> assumption(assumed.getKey(), assumed.getValue()))
                        .toList(),
                asked.working() ? working : null,
                List.copyOf(cautions));
    }

    private static <T> List<String> by(Map<T, List<String>> map, T key) {
        return map.computeIfAbsent(key, first -> new ArrayList<>());
    }

    private static AssessedFinding finding(ShownFinding found, List<String> calculations, Setup setup) {
        return new AssessedFinding(
                List.copyOf(calculations),
                found.code(),
                found.level(),
                found.message(),
                found.pointer(),
                found.pointer() == null ? null : part(found.pointer(), setup),
                found.state(),
                found.actual(),
                found.limit(),
                found.action(),
                found.source());
    }

    private static Assumed assumption(ShownAssumption assumed, List<String> calculations) {
        return new Assumed(
                List.copyOf(calculations),
                assumed.code(),
                assumed.pointer(),
                assumed.value(),
                assumed.reason(),
                assumed.source());
    }

    /** The entry of a list that a pointer leads into, else the section; null for the whole. */
    private static @Nullable Part part(String pointer, Setup setup) {
        String[] steps = pointer.split("/", -1);
        if (steps.length < 2) {
            return null;
        }
        String section = "/" + steps[1];
        boolean entry =
                steps.length > 2 && !steps[2].isEmpty() && steps[2].chars().allMatch(Character::isDigit);
        if (!entry) {
            return new Part(section, null, null);
        }
        String place = section + "/" + steps[2];
        return new Part(place, text(place + "/name", setup), text(place + "/reference", setup));
    }

    private static @Nullable String text(String pointer, Setup setup) {
        return Pointer.exists(pointer) && Pointer.of(pointer).in(setup) instanceof String text ? text : null;
    }
}
