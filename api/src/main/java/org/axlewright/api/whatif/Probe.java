package org.axlewright.api.whatif;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Calculations.Found;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * One question, or all of an assessment, asked of one setup with other values at some places. What can't differ between the points is
 * checked once. It keeps nothing between points, so many threads may ask it.
 */
final class Probe {

    private final Calculations calculations;
    private final Question question;
    private final Setup input;
    private final List<Axis> axes;
    private final Asked asked;
    private final boolean rangesHold;
    private final @Nullable List<List<Fault>> sameMissing;

    /**
     * What is asked.
     *
     * @param name as sent
     * @param asked one calculation, or all of them
     */
    record Question(String name, List<Calculation<?, ?, ?>> asked) {

        /** Asks everything. */
        static final String ASSESSMENT = "assessment";

        boolean assessment() {
            return name.equals(ASSESSMENT);
        }

        /** Null when there is none of this name. */
        static @Nullable Question of(String name, Calculations calculations) {
            return name.equals(ASSESSMENT)
                    ? new Question(name, calculations.all())
                    : calculations
                            .named(name)
                            .map(one -> new Question(name, List.of(one)))
                            .orElse(null);
        }
    }

    /**
     * What became of one calculation at one point.
     *
     * @param found null when it was refused
     * @param faults why, with pointers into the input
     */
    record Heard(@Nullable Found<?> found, List<Fault> faults) {}

    Probe(Calculations calculations, Question question, Setup input, List<Axis> axes, UnitSystem units) {
        this.calculations = calculations;
        this.question = question;
        this.input = input;
        this.axes = axes;
        this.asked = new Asked(units, false);
        this.rangesHold = rangesHold();
        this.sameMissing = axes.stream().allMatch(Axis::leaf)
                ? missing(at(axes.stream().map(axis -> axis.values().get(0)).toList()))
                : null;
    }

    /** Whether every point is free of faults of range: each axis is walked by itself, since a range looks at one value alone. */
    private boolean rangesHold() {
        Form form = calculations.form();
        for (int i = 0; i < axes.size(); i++) {
            for (Object value : axes.get(i).extremes()) {
                List<Object> values = new ArrayList<>();
                for (int j = 0; j < axes.size(); j++) {
                    values.add(j == i ? value : axes.get(j).values().get(0));
                }
                if (!form.ranges(at(values)).isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    Question question() {
        return question;
    }

    /** The setup at a point: one value for each axis. */
    Setup at(List<Object> values) {
        Setup setup = input;
        for (int i = 0; i < axes.size(); i++) {
            setup = (Setup) axes.get(i).place().with(setup, values.get(i));
        }
        return setup;
    }

    /**
     * Everything wrong with the form at a point; empty when nothing is.
     *
     * @param setup made by {@link #at}
     */
    private List<Fault> form(Setup setup) {
        return rangesHold
                ? calculations.form().contradictions(setup)
                : calculations.form().faults(setup);
    }

    /** What each calculation of the question says at a point. A fault of form refuses them all. */
    List<Heard> ask(List<Object> values) {
        Setup setup = at(values);
        List<Fault> faults = form(setup);
        List<Heard> heard = new ArrayList<>(question.asked().size());
        List<List<Fault>> lacking = sameMissing == null ? missing(setup) : sameMissing;
        for (int i = 0; i < question.asked().size(); i++) {
            heard.add(ask(question.asked().get(i), setup, faults, lacking.get(i)));
        }
        return heard;
    }

    private Heard ask(Calculation<?, ?, ?> calculation, Setup setup, List<Fault> faults, List<Fault> lacking) {
        if (!faults.isEmpty() || !lacking.isEmpty()) {
            List<Fault> all = new ArrayList<>(faults);
            lacking.stream()
                    .filter(fault ->
                            faults.stream().noneMatch(known -> known.pointer().equals(fault.pointer())))
                    .forEach(all::add);
            return new Heard(null, all);
        }
        try {
            return new Heard(calculations.found(calculation, setup, asked), List.of());
        } catch (Refused refused) {
            return new Heard(null, refused.faults());
        }
    }

    /** The faults of a point as a refusal of the whole request: pointers into its body. */
    static Refused inInput(List<Fault> faults) {
        return new Refused(faults.stream()
                .map(fault -> new Fault(
                        "/input" + fault.pointer(), fault.code(), fault.message(), fault.actual(), fault.limit()))
                .toList());
    }

    private List<List<Fault>> missing(Setup setup) {
        return question.asked().stream()
                .map(calculation -> calculation.needs().missing(setup).stream()
                        .map(Fault::missing)
                        .toList())
                .toList();
    }
}
