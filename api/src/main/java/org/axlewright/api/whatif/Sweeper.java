package org.axlewright.api.whatif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.axlewright.api.calculation.Answer.ShownFinding;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Calculations.Found;
import org.axlewright.api.calculation.NotAnswered;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.whatif.Probe.Heard;
import org.axlewright.api.whatif.Sweep.Marked;
import org.axlewright.api.whatif.Sweep.RefusedPoints;
import org.axlewright.api.whatif.Sweep.Run;
import org.axlewright.api.whatif.Sweep.Series;
import org.axlewright.api.whatif.Sweep.Varied;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;

/** Walks one question over all points of one or two axes and gathers columns, findings and refusals. */
final class Sweeper {

    /** Points that are asked at the same time, and held until they are taken in order. */
    private static final int BLOCK = 64;

    private final Calculations calculations;
    private final Probe probe;
    private final List<Axis> axes;
    private final List<Watched> watched;
    private final UnitSystem units;
    private final int points;

    private final @Nullable Object[][] columns;
    private final @Nullable Object[] columnUnits;
    private final Map<Mark, Marks> marks = new LinkedHashMap<>();
    private final Map<Refusal, Refusals> refusals = new LinkedHashMap<>();
    private final Set<NotAnswered> leftOut = new LinkedHashSet<>();

    /** What makes two findings the same. */
    private record Mark(
            String code,
            Level level,
            @Nullable String pointer,
            @Nullable String state) {}

    /** What makes two refusals the same: the calculation, the places and the kinds of fault. */
    private record Refusal(int calculation, List<String> places) {}

    /** The points of one finding. */
    private static final class Marks extends Runs {
        private final ShownFinding shown;
        private final Set<Integer> calculations = new LinkedHashSet<>();

        Marks(ShownFinding shown) {
            this.shown = shown;
        }
    }

    /** The points of one refusal, with the faults at the first point of each run. */
    private static final class Refusals extends Runs {
        private final List<List<Fault>> faults = new ArrayList<>();
    }

    /** Neighbouring points, gathered in order. */
    private abstract static class Runs {
        final List<int[]> runs = new ArrayList<>();

        /** Whether it begins a new run. */
        boolean add(int point) {
            int[] last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last[1] >= point - 1) {
                last[1] = point;
                return false;
            }
            runs.add(new int[] {point, point});
            return true;
        }
    }

    Sweeper(Calculations calculations, Probe probe, List<Axis> axes, List<Watched> watched, UnitSystem units) {
        this.calculations = calculations;
        this.probe = probe;
        this.axes = axes;
        this.watched = watched;
        this.units = units;
        this.points = axes.stream().mapToInt(axis -> axis.values().size()).reduce(1, Math::multiplyExact);
        this.columns = new Object[watched.size()][points];
        this.columnUnits = new Object[watched.size()];
    }

    /** Every point, in order. */
    Sweep sweep(Effort effort) {
        for (int start = 0; start < points; start += BLOCK) {
            effort.step(start, points);
            List<List<Heard>> block = IntStream.range(start, Math.min(points, start + BLOCK))
                    .parallel()
                    .mapToObj(point -> probe.ask(values(point)))
                    .toList();
            for (int i = 0; i < block.size(); i++) {
                take(start + i, block.get(i));
            }
        }
        if (refusals.size() == 1) {
            everyPointRefused();
        }
        return new Sweep(
                calculations.engine(),
                probe.question().name(),
                points,
                axes.stream().map(Sweeper::varied).toList(),
                series(),
                findings(),
                refused(),
                List.copyOf(leftOut));
    }

    private List<Object> values(int point) {
        if (axes.size() == 1) {
            return List.of(axes.get(0).values().get(point));
        }
        int inner = axes.get(1).values().size();
        return List.of(
                axes.get(0).values().get(point / inner), axes.get(1).values().get(point % inner));
    }

    private void take(int point, List<Heard> heard) {
        for (int i = 0; i < watched.size(); i++) {
            Object value = watched.get(i).in(heard);
            if (value != null) {
                if (columnUnits[i] == null) {
                    columnUnits[i] = Plain.unit(value);
                }
                columns[i][point] = Plain.in(columnUnits[i], value);
            }
        }
        for (int which = 0; which < heard.size(); which++) {
            Heard one = heard.get(which);
            if (one.found() == null) {
                refuse(which, point, one.faults());
            } else {
                mark(which, point, one.found());
            }
        }
    }

    private void refuse(int which, int point, List<Fault> faults) {
        List<String> places = faults.stream()
                .map(fault -> fault.pointer() + " " + fault.code())
                .toList();
        Refusals known = refusals.computeIfAbsent(new Refusal(which, places), first -> new Refusals());
        if (known.add(point)) {
            known.faults.add(faults);
        }
    }

    private void mark(int which, int point, Found<?> found) {
        List<Finding> findings = found.trace().findings();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            Mark mark = new Mark(finding.code(), finding.level(), finding.pointer(), finding.state());
            Marks known = marks.get(mark);
            if (known == null) {
                known = new Marks(calculations.worded(finding, units));
                marks.put(mark, known);
            }
            known.add(point);
            known.calculations.add(which);
        }
        for (NotAnswered one : found.notAnswered()) {
            if (!leftOut.contains(named(which, one)) && watched.stream().anyMatch(watch -> watch.touches(which, one))) {
                leftOut.add(named(which, one));
            }
        }
    }

    private NotAnswered named(int which, NotAnswered one) {
        return probe.question().assessment() ? new NotAnswered("/" + name(which) + one.result(), one.missing()) : one;
    }

    private String name(int which) {
        return probe.question().asked().get(which).name();
    }

    /** A question that no point can answer, for one reason, is refused as a whole. */
    private void everyPointRefused() {
        Refusals only = refusals.values().iterator().next();
        int[] run = only.runs.get(0);
        if (!probe.question().assessment() && run[0] == 0 && run[1] == points - 1) {
            throw Probe.inInput(only.faults.get(0));
        }
    }

    private static Varied varied(Axis axis) {
        Object unit = axis.unit();
        return new Varied(
                axis.place().toString(),
                unit,
                axis.values().stream().map(value -> Plain.in(unit, value)).toList());
    }

    private List<Series> series() {
        List<Series> series = new ArrayList<>();
        for (int i = 0; i < watched.size(); i++) {
            series.add(new Series(watched.get(i).pointer(), columnUnits[i], java.util.Arrays.asList(columns[i])));
        }
        return series;
    }

    private List<Marked> findings() {
        return marks.values().stream()
                .sorted(Comparator.comparing((Marks one) -> one.shown.level()).reversed())
                .map(one -> new Marked(
                        one.calculations.stream().map(this::name).toList(),
                        one.shown.code(),
                        one.shown.level(),
                        one.shown.message(),
                        one.shown.pointer(),
                        one.shown.state(),
                        one.shown.action(),
                        one.shown.source(),
                        one.runs.stream().map(this::run).toList()))
                .toList();
    }

    private List<RefusedPoints> refused() {
        return refusals.entrySet().stream()
                .map(entry -> refused(entry.getKey(), entry.getValue()))
                .flatMap(Collection::stream)
                .sorted(Comparator.comparingInt(one -> one.run().first()))
                .toList();
    }

    private List<RefusedPoints> refused(Refusal refusal, Refusals known) {
        List<RefusedPoints> refused = new ArrayList<>();
        for (int i = 0; i < known.runs.size(); i++) {
            refused.add(new RefusedPoints(
                    name(refusal.calculation()), run(known.runs.get(i)), Objects.requireNonNull(known.faults.get(i))));
        }
        return refused;
    }

    private Run run(int[] ends) {
        boolean one = axes.size() == 1;
        return new Run(
                ends[0],
                ends[1],
                one ? axes.get(0).values().get(ends[0]) : null,
                one ? axes.get(0).values().get(ends[1]) : null);
    }
}
