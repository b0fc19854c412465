package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;
import org.jspecify.annotations.Nullable;

/**
 * Where the charger is plugged in.
 *
 * @param outlet null when only the circuit is known
 * @param voltageV null when not known
 * @param breakerA rating of the circuit's breaker or fuse, A; null when not known
 * @param continuousShare share of the rating that may be drawn for hours, above 0, at most 1; null when not sent and no breaker is known
 * @param sharedA current that other loads of the circuit draw, A
 */
public record Mains(
        @Nullable OutletRating outlet,
        @Nullable Double voltageV,
        @Nullable Double breakerA,
        @Nullable Double continuousShare,
        double sharedA,
        @Nullable Cord cord) {

    private static final Symbol SHARE = new Symbol("c", NONE);

    private static final Step CIRCUIT = Step.of(
            "I_n",
            "what the circuit carries for hours",
            "I_n = c·I_r, I_r the rating of the breaker or, without one, of the outlet",
            CURRENT,
            Source.regulation(
                    "NEC 210.20(A): a continuous load, three hours or more, takes at most 1/1.25 of the rating"),
            SHARE,
            new Symbol("I_r", CURRENT));
    private static final Step LIMIT = Step.of(
            "I_s",
            "current left for the charger at the supply",
            "I_s = min(I_outlet, I_n − I_shared, I_cord), of those that are known; I_n is I_outlet when no rating was sent; never below 0",
            CURRENT,
            Source.regulation(
                    "NEC 210.21(B)(2), 210.20(A), 400.5; other loads of the circuit are taken off what the circuit carries"));

    public Mains {
        Check.notNegative(sharedA, "current of other loads");
        if (voltageV != null) {
            Check.positive(voltageV, "mains voltage");
        }
        if (breakerA != null) {
            Check.positive(breakerA, "rating");
            if (continuousShare == null) {
                throw new InvalidInput("a rating needs its continuous share");
            }
        }
        if (continuousShare != null) {
            Check.within(continuousShare, Double.MIN_NORMAL, 1, "continuous share");
        }
    }

    /** Whether outlet or circuit is known, and with it what they carry. */
    public boolean known() {
        return outlet != null || breakerA != null;
    }

    /**
     * What outlet and circuit leave for the charger, A, 0 when other loads take all; infinite when neither is known. The cord is left out.
     */
    double outletLimitA(Trace trace) {
        double receptacle = Double.POSITIVE_INFINITY;
        double circuit = Double.POSITIVE_INFINITY;
        if (outlet != null) {
            receptacle = Noted.datum(
                    "I_outlet",
                    "what the outlet " + outlet.outlet() + " carries for hours",
                    CURRENT,
                    outlet.continuousA(),
                    trace);
            circuit = receptacle;
        }
        Double rating = breakerA != null || outlet == null
                ? breakerA
                : (Double) outlet.ratedA().value();
        if (continuousShare != null && rating != null) {
            circuit = trace.note(CIRCUIT, continuousShare * rating, continuousShare, rating);
        }
        return Math.max(0, Math.min(receptacle, circuit - sharedA));
    }

    /** Takes down the limit of the supply, outlet and cord together. */
    double noteLimit(double outletLimitA, Trace trace) {
        double limit = cord == null
                ? outletLimitA
                : Math.min(outletLimitA, cord.ampacity().value());
        if (trace.keepsWorking()) {
            List<Term> terms = new ArrayList<>();
            terms.add(new Term(new Symbol("min(I_outlet, I_n − I_shared)", CURRENT), outletLimitA));
            terms.add(new Term(new Symbol("I_shared", CURRENT), sharedA));
            if (cord != null) {
                terms.add(
                        new Term(new Symbol("I_cord", CURRENT), cord.ampacity().value()));
            }
            trace.noteTerms(LIMIT, limit, terms);
        }
        return limit;
    }
}
