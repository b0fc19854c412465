package org.axlewright.domain.legalclass;

import java.util.List;
import org.axlewright.domain.trace.Source;

/**
 * One condition of a class. Many limits are printed twice, in SI and in US units, and the two differ by rounding: what lies between the
 * two printings is not decided by either.
 *
 * @param relation how the limit is meant; {@code IN} for words
 * @param lowSi the smaller printing, SI
 * @param highSi the larger printing, SI
 * @param words what is accepted, for words
 * @param printed the limit as it is printed
 */
public record Condition(
        Aspect aspect,
        Relation relation,
        double lowSi,
        double highSi,
        List<String> words,
        String printed,
        Source source) {

    /** How a limit is meant. {@code toString} is the sign in tables and answers. */
    public enum Relation {
        BELOW("<", true),
        AT_MOST("<=", true),
        ABOVE(">", false),
        AT_LEAST(">=", false),
        EQUAL("=", false),
        IN("in", false),
        UNLESS("unless", false);

        private final String token;
        private final boolean upper;

        Relation(String token, boolean upper) {
            this.token = token;
            this.upper = upper;
        }

        /** Whether more of it leads out of the class. */
        public boolean upper() {
            return upper;
        }

        /** Whether less of it leads out of the class. */
        public boolean lower() {
            return this == ABOVE || this == AT_LEAST;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /** What is known of a figure: no less than {@code from}, no more than {@code to}; both alike when it is known, SI. */
    public record Known(double from, double to) {

        /** Nothing is known. */
        public static final Known NOTHING = new Known(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        public static Known exactly(double value) {
            return new Known(value, value);
        }

        public boolean exact() {
            return from == to;
        }
    }

    /** Relative slack for figures that were sent in the unit of the limit: 20 mph sent is the 20 mph printed. */
    private static final double SLACK = 1e-9;

    Verdict judge(Known known) {
        double low = lowSi * (1 - SLACK);
        double lowOver = lowSi * (1 + SLACK);
        double high = highSi * (1 - SLACK);
        double highOver = highSi * (1 + SLACK);
        return switch (relation) {
            case BELOW -> decide(known.to() < low, known.from() >= high);
            case AT_MOST -> decide(known.to() <= lowOver, known.from() > highOver);
            case ABOVE -> decide(known.from() > highOver, known.to() <= lowOver);
            case AT_LEAST -> decide(known.from() >= high, known.to() < low);
            case EQUAL -> decide(known.exact() && known.from() == lowSi, known.exact() && known.from() != lowSi);
            case IN, UNLESS -> throw new IllegalStateException(aspect + " is no figure");
        };
    }

    private static Verdict decide(boolean met, boolean notMet) {
        return met ? Verdict.MET : notMet ? Verdict.NOT_MET : Verdict.UNDECIDED;
    }

    /** Room left to the stricter printing; negative beyond it. Meant for a known figure and a limit with a side, SI. */
    double margin(double value) {
        return relation.upper() ? lowSi - value : value - highSi;
    }
}
