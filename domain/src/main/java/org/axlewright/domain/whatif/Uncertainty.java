package org.axlewright.domain.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.hipparchus.special.Erf;

/**
 * How sure results are when their inputs are known within limits only. Inputs are taken as independent.
 *
 * <p>First order after JCGM 100:2008 (GUM), 5.1.2 and the numerical sensitivities of its note 2 to 5.1.3: each input is moved by its
 * standard uncertainty to both sides. Monte Carlo after JCGM 101:2008, 5.9 to 7.7: draws from the inputs' distributions, and the
 * probabilistically symmetric coverage interval.
 */
public final class Uncertainty {

    /** JCGM 100:2008 (GUM), first order. */
    public static final Source FIRST_ORDER = Source.published(
            "JCGM 100:2008 (GUM), 5.1.2 equation (10), 5.1.3 note 2 for the sensitivities, 6.2.1 for the expansion");

    /** JCGM 101:2008, propagation of distributions. */
    public static final Source MONTE_CARLO = Source.published("JCGM 101:2008, 6 and 7, interval of 7.7.2");

    private Uncertainty() {}

    /** How an input is spread about its value. */
    public enum Distribution {
        /** Anywhere within the limits alike: JCGM 100:2008, 4.3.7, u = a/√3. */
        RECTANGULAR("rectangular", Math.sqrt(3)),
        /** More likely in the middle: JCGM 100:2008, 4.3.9, u = a/√6. */
        TRIANGULAR("triangular", Math.sqrt(6)),
        /** The limits are those of an expanded uncertainty with k = 2: JCGM 100:2008, 4.3.3. */
        NORMAL("normal", 2);

        private final String token;
        private final double divisor;

        Distribution(String token, double divisor) {
            this.token = token;
            this.divisor = divisor;
        }

        /** Standard uncertainty of limits of this half-width. */
        public double standard(double halfWidth) {
            return halfWidth / divisor;
        }

        private double draw(double halfWidth, SplittableRandom random) {
            return switch (this) {
                case RECTANGULAR -> halfWidth * (2 * random.nextDouble() - 1);
                case TRIANGULAR -> halfWidth * (random.nextDouble() + random.nextDouble() - 1);
                case NORMAL -> standard(halfWidth) * gaussian(random);
            };
        }

        /** Box and Muller's transformation, JCGM 101:2008, C.4. */
        private static double gaussian(SplittableRandom random) {
            return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * An input.
     *
     * @param value best estimate
     * @param halfWidth of its limits
     */
    public record Input(double value, double halfWidth, Distribution distribution) {

        public Input {
            Check.finite(value, "value");
            Check.positive(halfWidth, "halfWidth");
        }

        double standard() {
            return distribution.standard(halfWidth);
        }
    }

    /**
     * One result, first order.
     *
     * @param contributions u_i(y) of each input, with the sign of its sensitivity; NaN where the function has no value beside the estimate
     * @param standard combined standard uncertainty
     */
    public record FirstOrder(List<Double> contributions, double standard) {}

    /**
     * One result, by Monte Carlo.
     *
     * @param mean of the draws
     * @param standard standard deviation of the draws
     * @param low lower end of the coverage interval
     * @param high upper end
     * @param answered draws that have a value
     */
    public record Spread(double mean, double standard, double low, double high, int answered) {}

    /**
     * First order, of several results at once.
     *
     * @param model from the inputs to the results; NaN where a result has no value
     */
    public static FirstOrder[] firstOrder(UnaryOperator<double[]> model, Input... inputs) {
        double[] at = Arrays.stream(inputs).mapToDouble(Input::value).toArray();
        double[][] contributions = new double[inputs.length][];
        for (int i = 0; i < inputs.length; i++) {
            double[] high = model.apply(moved(at, i, inputs[i].standard()));
            double[] low = model.apply(moved(at, i, -inputs[i].standard()));
            contributions[i] = new double[high.length];
            for (int k = 0; k < high.length; k++) {
                contributions[i][k] = (high[k] - low[k]) / 2;
            }
        }
        int results = inputs.length == 0 ? 0 : contributions[0].length;
        FirstOrder[] found = new FirstOrder[results];
        for (int k = 0; k < results; k++) {
            List<Double> own = new ArrayList<>();
            double squares = 0;
            for (double[] contribution : contributions) {
                own.add(contribution[k]);
                squares += contribution[k] * contribution[k];
            }
            found[k] = new FirstOrder(List.copyOf(own), Math.sqrt(squares));
        }
        return found;
    }

    private static double[] moved(double[] at, int index, double by) {
        double[] moved = at.clone();
        moved[index] += by;
        return moved;
    }

    /** Coverage factor of a normal result: JCGM 100:2008, G.1.3. */
    public static double coverageFactor(double coverage) {
        Check.within(coverage, 0, 1, "coverage");
        return Math.sqrt(2) * Erf.erfInv(coverage);
    }

    /**
     * Monte Carlo, of several results at once.
     *
     * @param model from the inputs to the results; NaN where a result has no value
     * @param seed the same seed gives the same draws
     * @param coverage probability of the interval, such as 0.95
     */
    public static Spread[] monteCarlo(
            UnaryOperator<double[]> model, int trials, long seed, double coverage, Input... inputs) {
        Check.within(coverage, 0, 1, "coverage");
        SplittableRandom random = new SplittableRandom(seed);
        double[][] draws = new double[trials][];
        for (int trial = 0; trial < trials; trial++) {
            double[] drawn = new double[inputs.length];
            for (int i = 0; i < inputs.length; i++) {
                drawn[i] = inputs[i].value() + inputs[i].distribution().draw(inputs[i].halfWidth(), random);
            }
            draws[trial] = model.apply(drawn);
        }
        int results = trials == 0 ? 0 : draws[0].length;
        Spread[] spreads = new Spread[results];
        for (int k = 0; k < results; k++) {
            int column = k;
            spreads[k] = spread(
                    Arrays.stream(draws).mapToDouble(draw -> draw[column]).toArray(), coverage);
        }
        return spreads;
    }

    private static Spread spread(double[] all, double coverage) {
        double[] sorted = Arrays.stream(all)
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
        int count = sorted.length;
        double mean = Arrays.stream(sorted).average().orElse(Double.NaN);
        double squares = Arrays.stream(sorted)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        double standard = count < 2 ? Double.NaN : Math.sqrt(squares / (count - 1));
        int covered = (int) Math.floor(coverage * count + 0.5);
        int low = (int) Math.floor((count - covered + 1) / 2.0);
        if (count < 2 || low < 1 || low + covered > count) {
            return new Spread(mean, standard, Double.NaN, Double.NaN, count);
        }
        return new Spread(mean, standard, sorted[low - 1], sorted[low + covered - 1], count);
    }
}
