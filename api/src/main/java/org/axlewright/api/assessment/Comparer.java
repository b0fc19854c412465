package org.axlewright.api.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Assessment.NotAssessed;
import org.axlewright.api.assessment.Comparison.Change;
import org.axlewright.api.assessment.Comparison.FindingChanges;
import org.axlewright.api.assessment.Comparison.Method;
import org.axlewright.api.assessment.Comparison.NotCompared;
import org.axlewright.api.assessment.Comparison.Part;
import org.axlewright.api.assessment.Comparison.Shared;
import org.axlewright.api.assessment.Comparison.Shares;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Calculations.Outcome;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Sets two setups side by side. */
@Component
public final class Comparer {

    /** Sections up to which every mixture is asked: 2^6 assessments of the leading results. */
    private static final int MOST_FOR_SHAPLEY = 6;

    /** Not sections of the vehicle. */
    private static final Set<String> LABELS = Set.of("name", "notes");

    private final Calculations calculations;
    private final Assessor assessor;
    private final JsonMapper json;

    Comparer(Calculations calculations, Assessor assessor, JsonMapper json) {
        this.calculations = calculations;
        this.assessor = assessor;
        this.json = json;
    }

    /** Compares two setups whose form is in order. */
    public Comparison compare(Setup before, Setup after, UnitSystem units) {
        Asked asked = new Asked(units, false);
        Assessment first = assessor.assess(before, asked);
        Assessment second = assessor.assess(after, asked);
        List<Change> changes = new ArrayList<>();
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            String name = calculation.name();
            if (first.results().containsKey(name) && second.results().containsKey(name)) {
                side(
                        name,
                        "",
                        json.valueToTree(first.results().get(name)),
                        json.valueToTree(second.results().get(name)),
                        changes);
            }
        }
        return new Comparison(
                calculations.engine(),
                changes,
                findings(first.findings(), second.findings()),
                notCompared(first.notAssessed(), second.notAssessed()),
                shares(before, after, changes, asked));
    }

    private static void side(String name, String pointer, JsonNode before, JsonNode after, List<Change> changes) {
        Amount from = Amount.of(before);
        Amount to = Amount.of(after);
        if (from != null && to != null && from.comparable(to)) {
            double change = to.value() - from.value();
            Double relative = from.value() == 0 ? null : (Double) (change / Math.abs(from.value()));
            changes.add(new Change(name, pointer, before, after, from.shaped(change), relative));
        } else if (before.isObject() && after.isObject() && from == null && to == null) {
            before.properties().forEach(entry -> {
                JsonNode other = after.get(entry.getKey());
                if (other != null) {
                    side(name, pointer + "/" + entry.getKey(), entry.getValue(), other, changes);
                }
            });
        } else if (before.isArray() && after.isArray()) {
            for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
                side(name, pointer + "/" + i, before.get(i), after.get(i), changes);
            }
        } else if (!before.isContainer() && !after.isContainer()) {
            changes.add(new Change(name, pointer, before, after, null, null));
        }
    }

    /** The same finding: same code at the same place in the same state. */
    private record Same(
            String code, @Nullable String pointer, @Nullable String state) {
        static Same of(AssessedFinding finding) {
            return new Same(finding.code(), finding.pointer(), finding.state());
        }
    }

    private static FindingChanges findings(List<AssessedFinding> before, List<AssessedFinding> after) {
        Set<Same> then = new LinkedHashSet<>();
        Set<Same> now = new LinkedHashSet<>();
        before.forEach(finding -> then.add(Same.of(finding)));
        after.forEach(finding -> now.add(Same.of(finding)));
        return new FindingChanges(
                after.stream()
                        .filter(finding -> !then.contains(Same.of(finding)))
                        .toList(),
                before.stream()
                        .filter(finding -> !now.contains(Same.of(finding)))
                        .toList(),
                after.stream()
                        .filter(finding -> then.contains(Same.of(finding)))
                        .toList());
    }

    private static List<NotCompared> notCompared(List<NotAssessed> before, List<NotAssessed> after) {
        Map<String, NotCompared> all = new LinkedHashMap<>();
        before.forEach(one -> all.put(one.calculation(), new NotCompared(one.calculation(), one.missing(), List.of())));
        after.forEach(one -> all.merge(
                one.calculation(),
                new NotCompared(one.calculation(), List.of(), one.missing()),
                (old, added) -> new NotCompared(old.calculation(), old.missingBefore(), added.missingAfter())));
        return List.copyOf(all.values());
    }

    /** A leading result that changed. */
    private record Lead(Calculation<?, ?, ?> calculation, String pointer, Amount before, double change) {}

    private Shares shares(Setup before, Setup after, List<Change> changes, Asked asked) {
        ObjectNode from = json.valueToTree(before).asObject();
        ObjectNode to = json.valueToTree(after).asObject();
        List<String> sections = changedSections(from, to);
        List<Lead> leads = leads(changes);
        boolean shapley = sections.size() <= MOST_FOR_SHAPLEY;
        Method method = shapley ? Method.SHAPLEY : Method.ONE_AT_A_TIME;
        if (leads.isEmpty() || sections.isEmpty()) {
            return new Shares(method, sections, List.of());
        }
        List<Shared> results = new ArrayList<>();
        if (shapley) {
            int n = sections.size();
            double[][] values = new double[1 << n][];
            for (int mixture = 0; mixture < values.length; mixture++) {
                values[mixture] = values(mixed(from, to, sections, mixture), leads, asked);
            }
            for (int lead = 0; lead < leads.size(); lead++) {
                results.add(shared(leads.get(lead), sections, shapley(values, lead, n), false));
            }
        } else {
            double[] base = values(from, leads, asked);
            List<double[]> alone = new ArrayList<>();
            for (int section = 0; section < sections.size(); section++) {
                alone.add(values(mixed(from, to, List.of(sections.get(section)), 1), leads, asked));
            }
            for (int lead = 0; lead < leads.size(); lead++) {
                double[] parts = new double[sections.size()];
                for (int section = 0; section < parts.length; section++) {
                    parts[section] = alone.get(section)[lead] - base[lead];
                }
                results.add(shared(leads.get(lead), sections, parts, true));
            }
        }
        return new Shares(method, sections, results);
    }

    private static List<String> changedSections(ObjectNode from, ObjectNode to) {
        Set<String> names = new LinkedHashSet<>();
        names.addAll(from.propertyNames());
        names.addAll(to.propertyNames());
        return names.stream()
                .filter(name -> !LABELS.contains(name))
                .filter(name -> !Objects.equals(from.get(name), to.get(name)))
                .toList();
    }

    private List<Lead> leads(List<Change> changes) {
        List<Lead> leads = new ArrayList<>();
        for (Change change : changes) {
            Calculation<?, ?, ?> calculation =
                    calculations.named(change.calculation()).orElseThrow();
            Amount before = Amount.of((JsonNode) change.before());
            if (change.change() == null || before == null || !leading(calculation, change.pointer())) {
                continue;
            }
            double difference = Objects.requireNonNull(Amount.of((JsonNode) change.change()))
                    .value();
            if (difference != 0) {
                leads.add(new Lead(calculation, change.pointer(), before, difference));
            }
        }
        return leads;
    }

    /** A leading result, or an amount within one. */
    private static boolean leading(Calculation<?, ?, ?> calculation, String pointer) {
        return calculation.leads().stream().anyMatch(lead -> pointer.equals(lead) || pointer.startsWith(lead + "/"));
    }

    /** The setup before, with the sections of the mixture as after. */
    private static ObjectNode mixed(ObjectNode from, ObjectNode to, List<String> sections, int mixture) {
        ObjectNode mixed = from.deepCopy();
        for (int i = 0; i < sections.size(); i++) {
            if ((mixture & (1 << i)) == 0) {
                continue;
            }
            JsonNode section = to.get(sections.get(i));
            if (section == null) {
                mixed.remove(sections.get(i));
            } else {
                mixed.set(sections.get(i), section);
            }
        }
        return mixed;
    }

    /** The leading results of one mixture; NaN where it can't be answered. */
    private double[] values(ObjectNode mixed, List<Lead> leads, Asked asked) {
        double[] values = new double[leads.size()];
        Setup setup = json.treeToValue(mixed, Setup.class);
        boolean inForm = calculations.inForm(setup);
        Map<String, JsonNode> results = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            Lead lead = leads.get(i);
            JsonNode result = !inForm
                    ? json.nullNode()
                    : results.computeIfAbsent(lead.calculation().name(), name -> result(lead, setup, asked));
            Amount amount = Amount.of(result.at(lead.pointer()));
            values[i] = amount != null && amount.comparable(lead.before()) ? amount.value() : Double.NaN;
        }
        return values;
    }

    private JsonNode result(Lead lead, Setup setup, Asked asked) {
        return calculations.outcome(lead.calculation(), setup, asked) instanceof Outcome.Answered answered
                ? json.valueToTree(answered.answer().result())
                : json.nullNode();
    }

    /**
     * Shapley value of each section: φ_i = Σ_S |S|!·(n − |S| − 1)!/n!·(v(S ∪ i) − v(S)) over the mixtures S without it. L. S. Shapley, A
     * value for n-person games, Contributions to the Theory of Games II, 1953.
     */
    private static double[] shapley(double[][] values, int lead, int n) {
        double[] parts = new double[n];
        double[] factorial = new double[n + 1];
        factorial[0] = 1;
        for (int i = 1; i <= n; i++) {
            factorial[i] = factorial[i - 1] * i;
        }
        for (int mixture = 0; mixture < values.length; mixture++) {
            int size = Integer.bitCount(mixture);
            for (int i = 0; i < n; i++) {
                if ((mixture & (1 << i)) == 0) {
                    double weight = factorial[size] * factorial[n - size - 1] / factorial[n];
                    parts[i] += weight * (values[mixture | (1 << i)][lead] - values[mixture][lead]);
                }
            }
        }
        return parts;
    }

    private static Shared shared(Lead lead, List<String> sections, double[] parts, boolean interacts) {
        double sum = Arrays.stream(parts).sum();
        boolean known = Double.isFinite(sum);
        List<Part> shown = new ArrayList<>();
        for (int i = 0; known && i < parts.length; i++) {
            shown.add(new Part(sections.get(i), lead.before().shaped(parts[i]), parts[i] / lead.change()));
        }
        return new Shared(
                lead.calculation().name(),
                lead.pointer(),
                lead.before().shaped(lead.change()),
                shown,
                known && interacts ? lead.before().shaped(lead.change() - sum) : null);
    }
}
