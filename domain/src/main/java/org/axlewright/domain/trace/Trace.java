package org.axlewright.domain.trace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Takes down what a calculation does on its way: the values of its steps, its findings and its cautions. Answer and working come from
 * one computation. Without working only findings and cautions are kept, and a step costs next to nothing.
 */
public final class Trace {

    private final boolean working;
    private final String mark;
    private final List<Line> lines;
    private final List<Finding> findings;
    private final List<Caution> cautions;

    /** A step with the values put into it, coherent SI. */
    public record Line(Step step, List<Term> terms, double value) {}

    /** A letter with its value, coherent SI. */
    public record Term(Symbol symbol, double value) {}

    private Trace(boolean working, String mark, List<Line> lines, List<Finding> findings, List<Caution> cautions) {
        this.working = working;
        this.mark = mark;
        this.lines = lines;
        this.findings = findings;
        this.cautions = cautions;
    }

    private static Trace fresh(boolean working) {
        return new Trace(working, "", new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    public static Trace withWorking() {
        return fresh(true);
    }

    public static Trace withoutWorking() {
        return fresh(false);
    }

    /** Notes into the same working; the meaning of every step says of which state it is, where the same steps are taken twice. */
    public Trace of(String state) {
        return new Trace(working, ", " + state, lines, findings, cautions);
    }

    /** Whether steps are kept: ask before building terms that vary in number. */
    public boolean keepsWorking() {
        return working;
    }

    /**
     * Takes down a step and returns its value, so that a formula reads {@code double x = trace.note(STEP, a / b, a, b)}.
     *
     * @param inputs values of {@link Step#inputs()}, in that order, coherent SI
     */
    public double note(Step step, double value, double... inputs) {
        if (working) {
            if (inputs.length != step.inputs().size()) {
                throw new IllegalArgumentException(
                        step.symbol() + " takes " + step.inputs().size() + " values, got " + inputs.length);
            }
            List<Term> terms = new ArrayList<>(inputs.length);
            for (int i = 0; i < inputs.length; i++) {
                terms.add(new Term(step.inputs().get(i), inputs[i]));
            }
            lines.add(new Line(marked(step), terms, value));
        }
        return value;
    }

    /** Takes down a step whose inputs vary in number, such as a sum over items; guard with {@link #keepsWorking()}. */
    public double noteTerms(Step step, double value, List<Term> terms) {
        if (working) {
            lines.add(new Line(marked(step), List.copyOf(terms), value));
        }
        return value;
    }

    private Step marked(Step step) {
        return mark.isEmpty()
                ? step
                : new Step(
                        step.symbol(),
                        step.meaning() + mark,
                        step.formula(),
                        step.dimension(),
                        step.source(),
                        step.inputs());
    }

    public void find(Finding finding) {
        findings.add(finding);
    }

    /** Adds a caution once. */
    public void caution(Caution caution) {
        if (!cautions.contains(caution)) {
            cautions.add(caution);
        }
    }

    public List<Line> lines() {
        return Collections.unmodifiableList(lines);
    }

    public List<Finding> findings() {
        return Collections.unmodifiableList(findings);
    }

    public List<Caution> cautions() {
        return Collections.unmodifiableList(cautions);
    }
}
