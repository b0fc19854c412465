package org.axlewright.api.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.whatif.Probe.Heard;
import org.axlewright.api.whatif.Solution.Crossed;
import org.axlewright.api.whatif.Solution.Met;
import org.axlewright.api.whatif.Solution.Reached;
import org.axlewright.api.whatif.Solution.RefusedValues;
import org.axlewright.api.whatif.Solution.Tried;
import org.axlewright.domain.whatif.Crossings;
import org.axlewright.domain.whatif.Crossings.Course;
import org.axlewright.domain.whatif.Crossings.Crossing;
import org.axlewright.domain.whatif.Crossings.Sample;
import org.axlewright.domain.whatif.Crossings.Side;
import org.jspecify.annotations.Nullable;

/** Looks for the values of one axis at which a result meets its target. */
final class Solver {

    /** What a refined crossing takes, beside the scan: a guess for the cost. */
    private static final int REFINING = 60;

    private final Calculations calculations;
    private final Probe probe;
    private final Axis axis;
    private final Goal goal;
    private final Effort effort;
    private final int expected;
    private final Map<Object, List<Fault>> faults = new HashMap<>();
    private int asked;

    /**
     * A search.
     *
     * @param axis its two ends when it has a scale and is searched between them, else every value
     * @param intervals of the scan; 0 when every value is tried
     */
    Solver(Calculations calculations, Probe probe, Axis axis, Goal goal, int intervals, Effort effort) {
        this.calculations = calculations;
        this.probe = probe;
        this.axis = axis;
        this.goal = goal;
        this.effort = effort;
        this.expected = intervals == 0 ? axis.values().size() : intervals + REFINING;
    }

    /** What one value gives. */
    private Tried attempt(Object value) {
        effort.step(asked, Math.max(expected, asked + 1));
        asked++;
        List<Heard> heard = probe.ask(List.of(value));
        Object result = goal.watched().in(heard);
        if (result == null) {
            faults.put(value, heard.get(goal.watched().which()).faults());
        }
        return new Tried(value, result, result != null && goal.isMet(result));
    }

    /** Tries every value, in order. */
    Solution among() {
        List<Tried> all = axis.values().stream().map(this::attempt).toList();
        List<Crossed> crossings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Tried before = i == 0 ? null : all.get(i - 1);
            Tried after = i == all.size() - 1 ? null : all.get(i + 1);
            boolean begins = all.get(i).meets() && before != null && !before.meets();
            boolean ceases = all.get(i).meets() && after != null && !after.meets();
            if (begins || ceases) {
                crossings.add(new Crossed(all.get(i), before, after, false));
            }
        }
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            samples.add(new Sample(i, goal.number(all.get(i).result())));
        }
        return solution(all, met(all), crossings, Crossings.course(samples));
    }

    /** Scans between the two ends and refines. */
    Solution between(int intervals) {
        Scale scale = java.util.Objects.requireNonNull(axis.scale());
        double from = scale.at(axis.values().get(0));
        double to = scale.at(axis.values().get(1));
        Map<Double, Tried> tried = new HashMap<>();
        Crossings.Found found = Crossings.of(
                x -> goal.number(
                        tried.computeIfAbsent(x, at -> attempt(scale.with(at))).result()),
                goal.number(),
                goal.side(),
                from,
                to,
                intervals);
        List<Tried> all = found.samples().stream().map(one -> at(one, tried)).toList();
        List<Crossed> crossings =
                found.crossings().stream().map(one -> crossed(one, tried)).toList();
        return solution(all, met(found, tried), crossings, found.course());
    }

    private static Tried at(Sample sample, Map<Double, Tried> tried) {
        return java.util.Objects.requireNonNull(tried.get(sample.x()));
    }

    private Crossed crossed(Crossing crossing, Map<Double, Tried> tried) {
        Tried at = at(crossing.at(), tried);
        boolean equal = goal.side() == Side.EITHER && !crossing.jump();
        return new Crossed(
                equal ? new Tried(at.value(), at.result(), true) : at,
                side(crossing.below(), crossing.at(), tried),
                side(crossing.above(), crossing.at(), tried),
                crossing.jump());
    }

    /** Null where the range ends. */
    private static @Nullable Tried side(Sample beside, Sample at, Map<Double, Tried> tried) {
        return beside.x() == at.x() ? null : at(beside, tried);
    }

    /** Neighbouring values that meet the target. */
    private static List<Met> met(List<Tried> all) {
        List<Met> met = new ArrayList<>();
        Tried first = null;
        for (int i = 0; i < all.size(); i++) {
            Tried one = all.get(i);
            if (one.meets() && first == null) {
                first = one;
            }
            boolean last = i == all.size() - 1 || !all.get(i + 1).meets();
            if (first != null && one.meets() && last) {
                met.add(new Met(first.value(), one.value()));
                first = null;
            }
        }
        return met;
    }

    /** Of a range: the samples that meet the target and the refined crossings between them, all in order. */
    private List<Met> met(Crossings.Found found, Map<Double, Tried> tried) {
        if (goal.side() == Side.EITHER) {
            return found.crossings().stream()
                    .filter(crossing -> !crossing.jump())
                    .map(crossing -> at(crossing.at(), tried).value())
                    .map(value -> new Met(value, value))
                    .toList();
        }
        Map<Double, Tried> ordered = new java.util.TreeMap<>();
        found.samples().forEach(sample -> ordered.put(sample.x(), at(sample, tried)));
        for (Crossing crossing : found.crossings()) {
            for (Sample one : List.of(crossing.below(), crossing.at(), crossing.above())) {
                ordered.put(one.x(), at(one, tried));
            }
        }
        return met(List.copyOf(ordered.values()));
    }

    private Solution solution(List<Tried> all, List<Met> met, List<Crossed> crossings, Course course) {
        Tried least = null;
        Tried greatest = null;
        for (Tried one : all) {
            if (one.result() != null) {
                double number = goal.number(one.result());
                least = least == null || number < goal.number(least.result()) ? one : least;
                greatest = greatest == null || number > goal.number(greatest.result()) ? one : greatest;
            }
        }
        if (least == null || greatest == null) {
            List<Fault> first = faults.getOrDefault(all.get(0).value(), List.of());
            if (!first.isEmpty()) {
                throw Probe.inInput(first);
            }
        }
        return new Solution(
                calculations.engine(),
                probe.question().name(),
                axis.place().toString(),
                goal.watched().pointer(),
                !met.isEmpty(),
                met.isEmpty() ? null : met.get(0).from(),
                course != Course.BOTH_WAYS,
                course,
                crossings,
                met,
                least == null || greatest == null ? null : new Reached(least, greatest),
                refused(all),
                asked);
    }

    private List<RefusedValues> refused(List<Tried> all) {
        List<RefusedValues> refused = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).result() == null) {
                int last = i;
                List<Fault> why = faults.getOrDefault(all.get(i).value(), List.of());
                while (last + 1 < all.size()
                        && all.get(last + 1).result() == null
                        && same(why, faults.getOrDefault(all.get(last + 1).value(), List.of()))) {
                    last++;
                }
                refused.add(new RefusedValues(all.get(i).value(), all.get(last).value(), why));
                i = last;
            }
        }
        return refused;
    }

    private static boolean same(List<Fault> one, List<Fault> other) {
        return places(one).equals(places(other));
    }

    private static List<String> places(List<Fault> faults) {
        return faults.stream()
                .map(fault -> fault.pointer() + " " + fault.code())
                .toList();
    }
}
