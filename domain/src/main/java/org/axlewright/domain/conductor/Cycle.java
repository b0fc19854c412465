package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;

/**
 * Current over a cycle that repeats, and how warm it keeps a cable. The cable warms as a body of one temperature that loses heat in
 * proportion to its rise; its rise is counted in units of the rise that its ampacity brings for good, so that 1 is the limit:
 * {@code θ' = ((I/A)² - θ)/τ}. Resistance is taken at the limit, so the cable is a little cooler than this says. The mean of θ over
 * the cycle is {@code (Irms/A)²}: for a cycle short against τ the RMS current decides alone, for a longer one its hottest moment.
 */
public record Cycle(List<Segment> segments) {

    private static final Source RMS_PRACTICE = Source.weak("motor-sizing practice, mean of the heat over a cycle");
    private static final Source FIRST_ORDER =
            Source.derived("first-order heat balance of the conductor, repeated until each cycle is like the last");

    private static final Step RMS = Step.of(
            "Irms", "current of the same mean heat over the cycle", "Irms = sqrt(Σ(I²·t)/Σt)", CURRENT, RMS_PRACTICE);
    private static final String REPEATED =
            "θ0 = Σ[(I/A)²·(1 − e^(−t/τ))·e^(−u/τ)]/(1 − e^(−Σt/τ)), over one cycle from that start to the next,"
                    + " u the time from a segment's end to that next start";
    private static final Step START = Step.of(
            "θ0",
            "rise at the start of the hottest segment, as a share of the rise allowed",
            REPEATED,
            NONE,
            FIRST_ORDER);
    private static final Step PEAK_START = Step.of(
            "θ0", "rise at the start of the peak current, as a share of the rise allowed", REPEATED, NONE, FIRST_ORDER);
    private static final Step HOTTEST = Step.of(
            "θ",
            "rise at the end of the hottest segment, as a share of the rise allowed",
            "θ = (I/A)² + (θ0 − (I/A)²)·e^(−t/τ)",
            NONE,
            FIRST_ORDER,
            new Symbol("I", CURRENT),
            new Symbol("A", CURRENT),
            new Symbol("θ0", NONE),
            new Symbol("t", EVENT_TIME),
            new Symbol("τ", EVENT_TIME));

    /**
     * The hottest moment of the repeated cycle.
     *
     * @param startShare rise at the start of the segment that ends there, share of the rise allowed
     * @param share rise at that moment, share of the rise allowed
     * @param peakStartShare rise at the start of the peak current, the warmest start when it returns within the cycle
     */
    public record Hottest(double startShare, double share, double peakStartShare) {}

    public Cycle {
        if (segments.isEmpty()) {
            throw new InvalidInput("a cycle needs a segment");
        }
        segments = List.copyOf(segments);
    }

    /** A current that does not change. */
    public static Cycle steady(double currentA) {
        return new Cycle(List.of(new Segment(currentA, 1)));
    }

    public double durationS() {
        return segments.stream().mapToDouble(Segment::durationS).sum();
    }

    public double peakA() {
        return segments.stream().mapToDouble(Segment::currentA).max().orElseThrow();
    }

    public double rmsA(Trace trace) {
        double heat = 0;
        for (Segment segment : segments) {
            heat += segment.currentA() * segment.currentA() * segment.durationS();
        }
        double rms = Math.sqrt(heat / durationS());
        return trace.keepsWorking() ? trace.noteTerms(RMS, rms, terms(0)) : rms;
    }

    /**
     * The hottest moment once every cycle is like the last.
     *
     * @param ampacityA current that brings the rise allowed, A
     * @param timeConstantS of the cable, s
     */
    public Hottest hottest(double ampacityA, double timeConstantS, Trace trace) {
        int worst = 0;
        int peak = 0;
        double end = -1;
        double[] starts = new double[segments.size()];
        double share = startOfCycle(ampacityA, timeConstantS);
        for (int i = 0; i < starts.length; i++) {
            starts[i] = share;
            share = after(segments.get(i), share, ampacityA, timeConstantS);
            if (share > end) {
                end = share;
                worst = i;
            }
            double rise = segments.get(i).currentA() - segments.get(peak).currentA();
            if (rise > 0 || (rise == 0 && starts[i] > starts[peak])) {
                peak = i;
            }
        }
        note(START, starts[worst], worst, ampacityA, timeConstantS, trace);
        Segment hottest = segments.get(worst);
        trace.note(HOTTEST, end, hottest.currentA(), ampacityA, starts[worst], hottest.durationS(), timeConstantS);
        if (peak != worst) {
            note(PEAK_START, starts[peak], peak, ampacityA, timeConstantS, trace);
        }
        return new Hottest(starts[worst], end, starts[peak]);
    }

    private void note(Step step, double share, int segment, double ampacityA, double timeConstantS, Trace trace) {
        if (trace.keepsWorking()) {
            List<Term> terms = terms(segment);
            terms.add(new Term(new Symbol("A", CURRENT), ampacityA));
            terms.add(new Term(new Symbol("τ", EVENT_TIME), timeConstantS));
            trace.noteTerms(step, share, terms);
        }
    }

    /** Rise at the start of the repeated cycle: what a cycle adds from nothing over the share it lets go. */
    private double startOfCycle(double ampacityA, double timeConstantS) {
        double added = 0;
        for (Segment segment : segments) {
            added = after(segment, added, ampacityA, timeConstantS);
        }
        return added / -Math.expm1(-durationS() / timeConstantS);
    }

    private static double after(Segment segment, double share, double ampacityA, double timeConstantS) {
        double ratio = segment.currentA() / ampacityA;
        return share + (ratio * ratio - share) * -Math.expm1(-segment.durationS() / timeConstantS);
    }

    /** Currents and durations of the cycle, beginning at a segment. */
    private List<Term> terms(int first) {
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get((first + i) % segments.size());
            terms.add(new Term(new Symbol("I" + (i + 1), CURRENT), segment.currentA()));
            terms.add(new Term(new Symbol("t" + (i + 1), EVENT_TIME), segment.durationS()));
        }
        return terms;
    }
}
