package org.axlewright.domain.fit;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;
import org.jspecify.annotations.Nullable;

/** Takes down the checks of one pair; what a check finds wrong goes to the findings at once. */
final class PairSheet {

    /** Limits are met to the last digit of a data plate: 58.4 V over 16 cells is 3.65 V. */
    private static final double ROUNDING = 1e-9;

    private static final Source COMPARISON = Source.derived("comparison with the limit");

    private final Part one;
    private final Part other;
    private final Trace trace;
    private final List<FitCheck> checks = new ArrayList<>();

    PairSheet(Part one, Part other, Trace trace) {
        this.one = one;
        this.other = other;
        this.trace = trace;
    }

    /** A value that must not pass a limit. */
    void most(String name, Dimension dimension, double actual, double limit, Verdict beyond, Finding finding) {
        Double margin = margin(name, dimension, actual, limit, limit - actual, "m = (L - a)/L");
        boolean within = actual <= limit + Math.abs(limit) * ROUNDING;
        add(
                name,
                within ? Verdict.FITS : beyond,
                new Measure(actual, dimension),
                new Measure(limit, dimension),
                margin);
        if (!within) {
            find(finding, new Measure(actual, dimension), new Measure(limit, dimension));
        }
    }

    /** A value that must reach a limit. */
    void least(String name, Dimension dimension, double actual, double limit, Verdict below, Finding finding) {
        Double margin = margin(name, dimension, actual, limit, actual - limit, "m = (a - L)/L");
        boolean within = actual >= limit - Math.abs(limit) * ROUNDING;
        add(name, within ? Verdict.FITS : below, new Measure(actual, dimension), new Measure(limit, dimension), margin);
        if (!within) {
            find(finding, new Measure(actual, dimension), new Measure(limit, dimension));
        }
    }

    /** A check that is not a comparison of two numbers; the finding goes with every verdict but a fit. */
    void judged(
            String name,
            Verdict verdict,
            @Nullable Measure actual,
            @Nullable Measure limit,
            @Nullable Finding finding) {
        add(name, verdict, actual, limit, null);
        if (finding != null) {
            find(finding, actual, limit);
        }
    }

    /** A check that lacks a value. */
    void undecided(String name, @Nullable Measure actual, String... missing) {
        checks.add(new FitCheck(name, Verdict.UNDECIDED, actual, null, null, List.of(missing)));
    }

    boolean isEmpty() {
        return checks.isEmpty();
    }

    FitPair pair() {
        return new FitPair(one, other, List.copyOf(checks));
    }

    private void add(
            String name, Verdict verdict, @Nullable Measure actual, @Nullable Measure limit, @Nullable Double margin) {
        checks.add(new FitCheck(name, verdict, actual, limit, margin, List.of()));
    }

    private void find(Finding finding, @Nullable Measure actual, @Nullable Measure limit) {
        Finding held = actual == null ? finding : finding.actual(actual);
        trace.find(limit == null ? held : held.limit(limit));
    }

    private @Nullable Double margin(
            String name, Dimension dimension, double actual, double limit, double left, String formula) {
        if (limit == 0 || dimension == Dimension.TEMPERATURE) { // a share of degrees Celsius means nothing
            return null;
        }
        double margin = left / Math.abs(limit);
        if (trace.keepsWorking()) {
            trace.noteTerms(
                    Step.of(
                            "m",
                            "share of the limit that is left, " + one + " and " + other + ", " + name,
                            formula,
                            Dimension.NONE,
                            COMPARISON),
                    margin,
                    List.of(new Term(new Symbol("a", dimension), actual), new Term(new Symbol("L", dimension), limit)));
        }
        return margin;
    }
}
