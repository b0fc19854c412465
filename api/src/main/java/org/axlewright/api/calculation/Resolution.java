package org.axlewright.api.calculation;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.domain.trace.Assumption;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;

/** What is noted while a request is resolved: defaults taken, results that can't be given, and faults that only show here. */
public final class Resolution {

    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<NotAnswered> notAnswered = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    /** Takes a default and notes it; returns its value in coherent SI. */
    public double assume(String code, String pointer, Measure value, String reason, Source source) {
        assume(new Assumption(code, pointer, value, reason, source));
        return value.si();
    }

    /** Takes a default that is a name, and notes it. */
    public <T> T assume(String code, String pointer, T value, String reason, Source source) {
        assume(new Assumption(code, pointer, value, reason, source));
        return value;
    }

    /** Takes it down once, however many parts of a question need it. */
    public void assume(Assumption assumption) {
        if (!assumptions.contains(assumption)) {
            assumptions.add(assumption);
        }
    }

    /** A result that is left out, and what would be needed to give it. */
    public void notAnswered(String result, String... missing) {
        notAnswered(result, List.of(missing));
    }

    /** The same; nothing is noted where nothing is missing. */
    public void notAnswered(String result, List<String> missing) {
        if (!missing.isEmpty()) {
            notAnswered.add(new NotAnswered(result, List.copyOf(missing)));
        }
    }

    /** A fault that only resolving brings to light; the request is refused with all of them. */
    public void refuse(Fault fault) {
        faults.add(fault);
    }

    /** A pointer that turns out to be needed. */
    public void missing(String pointer) {
        faults.add(Fault.missing(pointer));
    }

    /** Ends here when anything was refused. */
    public void refuseIfFaulty() {
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
    }

    public List<Assumption> assumptions() {
        return assumptions;
    }

    List<NotAnswered> notAnswered() {
        return notAnswered;
    }
}
