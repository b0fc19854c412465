package org.axlewright.domain.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.axlewright.domain.check.Check;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Where a function of one variable crosses a level: a scan of the whole range finds the intervals, a bracketing solver refines each
 * (Brent's method of higher order, R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4, as extended by
 * Hipparchus' {@code BracketingNthOrderBrentSolver}). Two crossings closer together than the scan are found where the values come near
 * the level, by a finer scan there; closer ones can be missed.
 */
public final class Crossings {

    /** How close to a crossing its neighbours are looked at, as a share of the range. */
    public static final double BESIDE = 1e-9;

    /** A change this large over {@link #BESIDE}, against that over one interval of the scan, is a jump. */
    private static final double JUMP = 1e-3;

    private static final int FINER = 20;
    private static final int NEAREST = 5;
    private static final int MOST_EVALUATIONS = 200;

    private Crossings() {}

    /** Which side of the level a solution may lie on. */
    public enum Side {
        EITHER(AllowedSolution.ANY_SIDE),
        AT_MOST(AllowedSolution.BELOW_SIDE),
        AT_LEAST(AllowedSolution.ABOVE_SIDE);

        private final AllowedSolution allowed;

        Side(AllowedSolution allowed) {
            this.allowed = allowed;
        }

        /** Whether a value is on it. */
        public boolean admits(double value, double level) {
            return switch (this) {
                case EITHER -> value == level;
                case AT_MOST -> value <= level;
                case AT_LEAST -> value >= level;
            };
        }
    }

    /** How the values run over the range, as far as the scan shows. */
    public enum Course {
        RISING("rising"),
        FALLING("falling"),
        CONSTANT("constant"),
        BOTH_WAYS("both-ways");

        private final String token;

        Course(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * A value of the function.
     *
     * @param y NaN where the function has none
     */
    public record Sample(double x, double y) {

        boolean isKnown() {
            return !Double.isNaN(y);
        }
    }

    /**
     * A crossing, refined.
     *
     * @param at on the admitted side of the level
     * @param below a little lower, or the lower end of the range
     * @param above a little higher, or the upper end
     * @param jump whether the function leaps over the level there and never has its value
     */
    public record Crossing(Sample at, Sample below, Sample above, boolean jump) {}

    /**
     * What was found.
     *
     * @param samples of the scan, in order, the finer ones among them
     * @param crossings in order
     */
    public record Found(List<Sample> samples, List<Crossing> crossings, Course course) {}

    /**
     * Scans and refines.
     *
     * @param function NaN where it has no value
     * @param from lower end
     * @param to upper end, above {@code from}
     * @param intervals of the scan, at least 2
     */
    public static Found of(
            DoubleUnaryOperator function, double level, Side side, double from, double to, int intervals) {
        Check.within(intervals, 2, 1e6, "intervals");
        Check.positive(to - from, "to - from");
        List<Sample> samples = new ArrayList<>(intervals + 1);
        for (int i = 0; i <= intervals; i++) {
            double x = i == intervals ? to : from + i * (to - from) / intervals;
            samples.add(new Sample(x, function.applyAsDouble(x)));
        }
        Course course = course(samples);
        if (course == Course.BOTH_WAYS) {
            lookCloser(function, level, samples);
        }
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            if (samples.get(i).y() == level) {
                if (leaves(samples, i - 1, level) || leaves(samples, i + 1, level)) {
                    crossings.add(beside(function, samples.get(i), from, to, 0));
                }
            } else if (i + 1 < samples.size()) {
                refine(function, level, side, samples.get(i), samples.get(i + 1), from, to, crossings);
            }
        }
        return new Found(List.copyOf(samples), List.copyOf(crossings), course);
    }

    /** Whether the neighbour is off the level. */
    private static boolean leaves(List<Sample> samples, int i, double level) {
        return i >= 0 && i < samples.size() && samples.get(i).y() != level;
    }

    private static void refine(
            DoubleUnaryOperator function,
            double level,
            Side side,
            Sample left,
            Sample right,
            double from,
            double to,
            List<Crossing> crossings) {
        double below = left.y() - level;
        double above = right.y() - level;
        if (!(below * above < 0)) {
            return;
        }
        try {
            BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-14, 1e-13 * (to - from), 0, 5);
            double x = solver.solve(
                    MOST_EVALUATIONS,
                    at -> {
                        double value = function.applyAsDouble(at) - level;
                        if (Double.isNaN(value)) {
                            throw new NoValue();
                        }
                        return value;
                    },
                    left.x(),
                    right.x(),
                    side.allowed);
            crossings.add(
                    beside(function, new Sample(x, function.applyAsDouble(x)), from, to, Math.abs(below - above)));
        } catch (NoValue between) {
            // a gap in the function hides whether it crosses; the scan's samples show what is known
            return;
        } catch (MathRuntimeException unsettled) {
            throw new IllegalStateException("No convergence between " + left + " and " + right, unsettled);
        }
    }

    /** The function has no value there. */
    private static final class NoValue extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NoValue() {
            super("no value", null, false, false);
        }
    }

    /**
     * Looks at both sides of a crossing.
     *
     * @param change of the function over the interval of the scan; 0 where the scan itself met the level
     */
    private static Crossing beside(DoubleUnaryOperator function, Sample at, double from, double to, double change) {
        double width = BESIDE * (to - from);
        Sample below = sample(function, Math.max(from, at.x() - width), at);
        Sample above = sample(function, Math.min(to, at.x() + width), at);
        boolean jump = change > 0 && Math.abs(above.y() - below.y()) > JUMP * change;
        return new Crossing(at, below, above, jump);
    }

    private static Sample sample(DoubleUnaryOperator function, double x, Sample at) {
        return x == at.x() ? at : new Sample(x, function.applyAsDouble(x));
    }

    /** Where the values come near the level and turn back, they may have crossed it twice. */
    private static void lookCloser(DoubleUnaryOperator function, double level, List<Sample> samples) {
        List<Integer> turns = new ArrayList<>();
        for (int i = 1; i + 1 < samples.size(); i++) {
            double left = samples.get(i - 1).y() - level;
            double here = samples.get(i).y() - level;
            double right = samples.get(i + 1).y() - level;
            boolean turnsBack = left * here > 0 && here * right > 0;
            if (turnsBack && Math.abs(here) <= Math.abs(left) && Math.abs(here) <= Math.abs(right)) {
                turns.add(i);
            }
        }
        turns.sort(Comparator.comparingDouble(i -> Math.abs(samples.get(i).y() - level)));
        Map<Double, Sample> finer = new TreeMap<>();
        samples.forEach(sample -> finer.put(sample.x(), sample));
        for (int i : turns.subList(0, Math.min(NEAREST, turns.size()))) {
            for (int side = i - 1; side <= i; side++) {
                double left = samples.get(side).x();
                double right = samples.get(side + 1).x();
                for (int k = 1; k < FINER; k++) {
                    double x = left + k * (right - left) / FINER;
                    finer.computeIfAbsent(x, at -> new Sample(at, function.applyAsDouble(at)));
                }
            }
        }
        samples.clear();
        samples.addAll(finer.values());
    }

    /** How values run, in the order given; those that are not known are passed over. */
    public static Course course(List<Sample> samples) {
        boolean rises = false;
        boolean falls = false;
        double last = Double.NaN;
        for (Sample sample : samples) {
            if (sample.isKnown()) {
                rises |= sample.y() > last;
                falls |= sample.y() < last;
                last = sample.y();
            }
        }
        return rises && falls ? Course.BOTH_WAYS : rises ? Course.RISING : falls ? Course.FALLING : Course.CONSTANT;
    }
}
