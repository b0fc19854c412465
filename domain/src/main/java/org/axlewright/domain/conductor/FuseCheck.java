package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.axlewright.domain.conductor.CircuitInput.Breaker;
import org.axlewright.domain.conductor.CircuitInput.Flat;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Whether a fuse does what is asked of it: carries every normal peak, clears the least fault, opens before anything that must not break the
 * current, stands the voltage and the largest fault, sits close to the source.
 */
public final class FuseCheck {

    /** Place of a fuse along the conductor, m: 7 in; 40 in sheathed. Source: 33 CFR 183.455(b). */
    private static final double NEAR_M = 7 * 0.0254;

    private static final double SHEATHED_M = 40 * 0.0254;

    /** Share of the rating at which makers' curves begin to end: 200 % opens within minutes. Source: UL 248-14. */
    private static final double OPENS_WITHIN_MINUTES = 2;

    /** Share of the rating that may still flow for an hour. Source: UL 248-14. */
    private static final double OPENS_WITHIN_AN_HOUR = 1.35;

    private static final Source PLACE = Source.regulation(
            "33 CFR 183.455(b): 7 in, or 40 in sheathed; ABYC E-11 up to 72 in from a battery post, recalled");
    private static final Source LEAST =
            Source.derived("Ohm's law: flat and cold pack, cable at its hottest, a fault at its far end");
    private static final Source CURVE =
            Source.published("maker's melting curve as sent, straight between its points on both logarithms");
    private static final Source RANGE = Source.published(
            "UL 248-14 as in a fuse maker's selection guide: carries 100 %, opens in 1 h at 135 %, in 2 to 4 min at 200 %");
    private static final Source NOTES = Source.weak("fuse makers' selection notes");
    private static final Source PRACTICE =
            Source.published("controller maker's note: a 100 A fuse carries 200 A for seconds");

    private static final Step LEAST_FAULT = Step.of(
            "Imin",
            "least current of a fault at the far end, through one fuse",
            "Imin = Emin/(R·c + 2·L·r/n)/n",
            CURRENT,
            LEAST,
            new Symbol("Emin", VOLTAGE),
            new Symbol("R", RESISTANCE),
            new Symbol("c", NONE),
            new Symbol("L", LENGTH),
            new Symbol("r", RESISTANCE_PER_LENGTH),
            new Symbol("n", NONE));
    private static final Step DAMAGE = Step.of(
            "w",
            "worst stretch above the rating: time over time to melt, summed",
            "w = Σ(t/tm)",
            NONE,
            Source.derived("heat that melts adds up while it can't leave"));
    private static final Step MELTS = Step.of(
            "tm", "time to melt at a current", "tm by the maker's curve", EVENT_TIME, CURVE, new Symbol("I", CURRENT));

    private FuseCheck() {}

    /**
     * Figures of the check.
     *
     * @param temperatureFactor share of the rating left in its compartment
     * @param leastFaultA least fault current through one fuse, A; null when the pack's resistance is not known
     * @param leastFaultMeltS time in which it melts then, s; null without curve or outside it
     * @param peakShare share of its melting that the worst normal peak uses up; null when it can't be told
     */
    public record Verdict(
            double temperatureFactor,
            @Nullable Double leastFaultA,
            @Nullable Double leastFaultMeltS,
            @Nullable Double peakShare) {}

    static Verdict of(CircuitInput input, FuseWindow window, Candidate cable, Trace trace) {
        FuseSent fuse = input.fuse();
        Double least = leastFault(input, cable, trace);
        Double melt = null;
        if (least != null) {
            OptionalDouble melts = fuse.meltingS(least);
            melt = melts.isPresent() ? (Double) trace.note(MELTS, melts.getAsDouble(), least) : null;
        }
        Double share = peakShare(input, cable.parallel(), trace);
        Verdict verdict = new Verdict(fuse.temperatureFactor(), least, melt, share);
        find(input, window, cable, verdict, trace);
        return verdict;
    }

    private static @Nullable Double leastFault(CircuitInput input, Candidate cable, Trace trace) {
        Flat flat = input.flat();
        Double pack = input.supply().packOhm();
        if (flat == null || pack == null) {
            return null;
        }
        int n = cable.parallel();
        double loop = 2 * input.lengthM() * cable.resistanceOhmPerM() / n;
        return trace.note(
                LEAST_FAULT,
                flat.cutOffV() / (pack * flat.coldFactor() + loop) / n,
                flat.cutOffV(),
                pack,
                flat.coldFactor(),
                input.lengthM(),
                cable.resistanceOhmPerM(),
                n);
    }

    /** Null when rating or curve are not known or a peak lies beyond the curve. A current below the first point is taken to melt as there. */
    private static @Nullable Double peakShare(CircuitInput input, int runs, Trace trace) {
        FuseSent fuse = input.fuse();
        Double rating = fuse.ratingA();
        if (rating == null || fuse.curve().isEmpty() || input.steady()) {
            return null;
        }
        List<Segment> segments = input.cycle().segments();
        double worst = 0;
        double run = 0;
        List<Trace.Term> terms = new ArrayList<>();
        // twice round, so that a peak that spans the end of the cycle is counted whole
        for (int i = 0; i < 2 * segments.size(); i++) {
            Segment segment = segments.get(i % segments.size());
            double each = segment.currentA() / runs;
            if (each <= rating * fuse.temperatureFactor()) {
                run = 0;
                continue;
            }
            if (fuse.beyondCurve(each)) {
                return null;
            }
            double melts = fuse.beforeCurve(each)
                    ? fuse.curve().get(0).timeS()
                    : fuse.meltingS(each).orElseThrow();
            run += segment.durationS() / melts;
            if (trace.keepsWorking() && i < segments.size()) {
                terms.add(new Trace.Term(new Symbol("t" + (i + 1), EVENT_TIME), segment.durationS()));
                terms.add(new Trace.Term(new Symbol("tm" + (i + 1), EVENT_TIME), melts));
            }
            worst = Math.max(worst, run);
        }
        return trace.noteTerms(DAMAGE, worst, terms);
    }

    private static void find(CircuitInput input, FuseWindow window, Candidate cable, Verdict verdict, Trace trace) {
        rating(input, window, cable, trace);
        tripCurrent(input, window, trace);
        compartment(input, window, trace);
        ratings(input, window, trace);
        peaks(input, cable, verdict, trace);
        leastFault(input, window, cable, verdict, trace);
        for (Breaker breaker : input.breakers()) {
            if (breaker.breaksA() == null) {
                carriesOnly(input, window, breaker, trace);
            } else {
                opensFirst(input, window, breaker, breaker.breaksA(), trace);
            }
        }
        place(input, cable, trace);
    }

    /** Too small for the mean current, or without the quarter above it that a current of hours asks for: two things. */
    private static void rating(CircuitInput input, FuseWindow window, Candidate cable, Trace trace) {
        Double rating = input.fuse().ratingA();
        if (rating == null) {
            return;
        }
        Measure actual = new Measure(rating, CURRENT);
        double carries = rating * input.fuse().temperatureFactor();
        double mean = input.cycle().rmsA(Trace.withoutWorking()) / cable.parallel();
        if (carries < mean) {
            add(
                    trace,
                    input,
                    "/fuse/rating",
                    Finding.of(
                                    "fuse-below-load",
                                    Level.WARNING,
                                    input.called()
                                            + ": in its compartment the fuse carries {actual}, the mean current is {limit}; it opens in normal use",
                                    FuseWindow.CONTINUOUS)
                            .actual(new Measure(carries, CURRENT))
                            .limit(new Measure(mean, CURRENT))
                            .action("Take a larger fuse, and the cable that it protects"));
        } else if (rating < window.lowerA()) {
            add(
                    trace,
                    input,
                    "/fuse/rating",
                    Finding.of(
                                    "fuse-without-margin",
                                    Level.CAUTION,
                                    input.called()
                                            + ": a fuse of {actual} carries the mean current without the quarter above it that hours of load"
                                            + " ask for; that takes {limit}",
                                    FuseWindow.CONTINUOUS)
                            .actual(actual)
                            .limit(new Measure(window.lowerA(), CURRENT))
                            .action("Take the next larger fuse that the cable allows"));
        }
        if (window.upperA() != null && rating > window.upperA()) {
            add(
                    trace,
                    input,
                    "/fuse/rating",
                    Finding.of(
                                    "fuse-above-cable",
                                    Level.DANGER,
                                    input.called()
                                            + ": a fuse of {actual} does not protect the cable, which allows {limit}",
                                    FuseWindow.LARGEST)
                            .actual(actual)
                            .limit(new Measure(window.upperA(), CURRENT))
                            .action("Take a smaller fuse or a thicker cable"));
        }
    }

    private static void tripCurrent(CircuitInput input, FuseWindow window, Trace trace) {
        Double rating = input.fuse().ratingA() != null ? input.fuse().ratingA() : window.ratingA();
        if (rating != null) {
            add(
                    trace,
                    input,
                    "/fuse/rating",
                    Finding.of(
                                    "rating-is-no-trip-current",
                                    Level.NOTICE,
                                    input.called()
                                            + ": {actual} is what the fuse carries, not where it opens: {limit} may flow for an hour, twice the"
                                            + " rating for seconds to minutes",
                                    RANGE)
                            .actual(new Measure(rating, CURRENT))
                            .limit(new Measure(OPENS_WITHIN_AN_HOUR * rating, CURRENT)));
        }
    }

    /** A fuse whose compartment nobody measured, on a cable that is known to lie hot. */
    private static void compartment(CircuitInput input, FuseWindow window, Trace trace) {
        double air = ConductorSizing.air(input, input.columnC()).ambientC();
        FuseSent fuse = input.fuse();
        if (fuse.temperatureC() != null || air <= AmpacityTable.BASE_C || air > FuseSent.HOTTEST_C) {
            return;
        }
        double there = window.lowerA() / FuseSent.temperatureFactor(air);
        add(
                trace,
                input,
                "/fuse/temperature",
                Finding.of(
                                "fuse-temperature-unknown",
                                Level.CAUTION,
                                input.called()
                                        + ": the cable lies at {actual}; a fuse in the same air would need {limit}, where the figures here hold"
                                        + " for one in the cool",
                                NOTES)
                        .actual(new Measure(air, TEMPERATURE))
                        .limit(new Measure(there, CURRENT))
                        .action("Send the temperature of the fuse's compartment"));
    }

    private static void ratings(CircuitInput input, FuseWindow window, Trace trace) {
        Double volts = input.fuse().voltageV();
        if (volts != null && window.voltageV() != null && volts < window.voltageV()) {
            add(
                    trace,
                    input,
                    "/fuse/voltageRating",
                    Finding.of(
                                    "fuse-voltage-below-full-charge",
                                    Level.DANGER,
                                    input.called()
                                            + ": a fuse for {actual} does not end the arc at {limit}, the pack at full charge",
                                    NOTES)
                            .actual(new Measure(volts, VOLTAGE))
                            .limit(new Measure(window.voltageV(), VOLTAGE))
                            .action("Take a fuse with a direct-current rating at or above the full-charge voltage"));
        }
        Double breaking = input.fuse().interruptingA();
        if (breaking != null && window.interruptingA() != null && breaking < window.interruptingA()) {
            add(
                    trace,
                    input,
                    "/fuse/interruptingRating",
                    Finding.of(
                                    "interrupting-below-fault",
                                    Level.DANGER,
                                    input.called()
                                            + ": a fuse that breaks {actual} bursts at the {limit} of a short circuit",
                                    NOTES)
                            .actual(new Measure(breaking, CURRENT))
                            .limit(new Measure(window.interruptingA(), CURRENT))
                            .action(
                                    "Take a fuse with an interrupting rating at or above the short-circuit current, such as class T"));
        }
    }

    private static void peaks(CircuitInput input, Candidate cable, Verdict verdict, Trace trace) {
        FuseSent fuse = input.fuse();
        Double share = verdict.peakShare();
        double each = input.cycle().peakA() / cable.parallel();
        if (share != null && share >= 1) {
            add(
                    trace,
                    input,
                    "/fuse/meltingCurve",
                    Finding.of(
                                    "peak-melts-fuse",
                                    Level.WARNING,
                                    input.called()
                                            + ": a normal peak lasts {actual} times as long as the fuse stands it",
                                    CURVE)
                            .actual(Measure.number(share))
                            .limit(Measure.number(1))
                            .action("Take a slower or a larger fuse, and the cable that it protects"));
        } else if (fuse.beyondCurve(each)) {
            add(
                    trace,
                    input,
                    "/fuse/meltingCurve",
                    Finding.of(
                                    "peak-beyond-curve",
                                    Level.CAUTION,
                                    input.called()
                                            + ": the peak of {actual} lies beyond the last point of the melting curve",
                                    CURVE)
                            .actual(new Measure(each, CURRENT))
                            .action("Send points up to the peak"));
        } else if (share == null && fuse.ratingA() != null && each > fuse.ratingA() * fuse.temperatureFactor()) {
            add(
                    trace,
                    input,
                    "/profile",
                    Finding.of(
                                    "peak-above-fuse",
                                    Level.CAUTION,
                                    input.called()
                                            + ": the peak of {actual} is above the {limit} that the fuse carries; it must outlast the peak",
                                    PRACTICE)
                            .actual(new Measure(each, CURRENT))
                            .limit(new Measure(fuse.ratingA() * fuse.temperatureFactor(), CURRENT))
                            .action("Send points of the maker's melting curve"));
        }
    }

    private static void leastFault(
            CircuitInput input, FuseWindow window, Candidate cable, Verdict verdict, Trace trace) {
        Double least = verdict.leastFaultA();
        Double rating = input.fuse().ratingA() != null ? input.fuse().ratingA() : window.ratingA();
        if (least == null || rating == null) {
            return;
        }
        if (least < OPENS_WITHIN_MINUTES * rating) {
            add(
                    trace,
                    input,
                    "/fuse/rating",
                    Finding.of(
                                    "fault-may-not-clear",
                                    Level.DANGER,
                                    input.called()
                                            + ": with a flat, cold pack a fault at the far end draws {actual} only, less than twice the fuse of"
                                            + " {limit}: it may last for minutes, or for good",
                                    RANGE)
                            .actual(new Measure(least, CURRENT))
                            .limit(new Measure(rating, CURRENT))
                            .action("Take a smaller fuse or a thicker, shorter cable"));
        }
        double initial = input.columnC();
        Double melts = verdict.leastFaultMeltS();
        if (melts == null || initial >= Adiabatic.FAULT_END_C) {
            return;
        }
        double stands =
                Adiabatic.timeS(least, cable.conductor().areaM2(), Adiabatic.constant(initial, Adiabatic.FAULT_END_C));
        if (melts > stands) {
            add(
                    trace,
                    input,
                    "/fuse/meltingCurve",
                    Finding.of(
                                    "cable-burns-before-fuse",
                                    Level.DANGER,
                                    input.called()
                                            + ": at the least fault the fuse takes {actual}, the cable stands it for {limit} with no heat lost",
                                    Adiabatic.SOURCE)
                            .actual(new Measure(melts, EVENT_TIME))
                            .limit(new Measure(stands, EVENT_TIME))
                            .action("Take a faster or a smaller fuse, or a thicker cable"));
        }
    }

    private static void carriesOnly(CircuitInput input, FuseWindow window, Breaker breaker, Trace trace) {
        Double fault = window.interruptingA();
        Finding finding = Finding.of(
                        "carry-rating-is-no-make-rating",
                        fault == null ? Level.NOTICE : Level.CAUTION,
                        input.called() + ": {actual} is what the " + breaker.name()
                                + " carries once closed; it says nothing of what it may make on an empty capacitor or break on a fault"
                                + (fault == null ? "" : ", which draws {limit}"),
                        NOTES)
                .at(breaker.pointer())
                .actual(new Measure(breaker.carriesA(), CURRENT))
                .action(
                        "Read the making and breaking ratings at direct current and full charge, and send breakingCurrent");
        trace.find(fault == null ? finding : finding.limit(new Measure(fault, CURRENT)));
    }

    /** The fuse must melt before a contactor or the battery management has to break more than it can. */
    private static void opensFirst(
            CircuitInput input, FuseWindow window, Breaker breaker, double breaksA, Trace trace) {
        FuseSent fuse = input.fuse();
        Double fault = window.interruptingA();
        if (fuse.ratingA() == null || fault == null || fault <= breaksA) {
            return;
        }
        Double reacts = breaker.opensAfterS();
        OptionalDouble firstUpTo = reacts == null ? OptionalDouble.empty() : fuse.meltingA(reacts);
        if (firstUpTo.isEmpty()) {
            add(
                    trace,
                    input,
                    "/fuse/meltingCurve",
                    Finding.of(
                                    "fuse-before-breaker",
                                    Level.CAUTION,
                                    input.called() + ": a short circuit draws {actual}, the " + breaker.name()
                                            + " may break {limit}; whether the fuse opens first can't be told without a melting curve that reaches"
                                            + " the time in which the other opens",
                                    NOTES)
                            .actual(new Measure(fault, CURRENT))
                            .limit(new Measure(breaksA, CURRENT))
                            .action("Send points of the maker's melting curve"));
        } else if (firstUpTo.getAsDouble() > breaksA) {
            add(
                    trace,
                    input,
                    "/fuse/meltingCurve",
                    Finding.of(
                                    "breaker-before-fuse",
                                    Level.CAUTION,
                                    input.called() + ": up to {actual} the " + breaker.name()
                                            + " opens before the fuse melts, and must break what is beyond its {limit}",
                                    CURVE)
                            .actual(new Measure(firstUpTo.getAsDouble(), CURRENT))
                            .limit(new Measure(breaksA, CURRENT))
                            .action("Take a faster fuse, or make sure that the other may break that current"));
        }
    }

    private static void place(CircuitInput input, Candidate cable, Trace trace) {
        FuseSent fuse = input.fuse();
        Double distance = fuse.distanceM();
        double limit = fuse.sheathed() ? SHEATHED_M : NEAR_M;
        if (distance != null && distance > limit) {
            add(
                    trace,
                    input,
                    "/fuse/distance",
                    Finding.of(
                                    "fuse-too-far",
                                    Level.WARNING,
                                    input.called()
                                            + ": {actual} of cable before the fuse are protected by nothing; {limit} are allowed",
                                    PLACE)
                            .actual(new Measure(distance, LENGTH))
                            .limit(new Measure(limit, LENGTH))
                            .action("Move the fuse to the source; sheath what can't be shortened"));
        }
        if (Boolean.FALSE.equals(fuse.perRun()) && cable.parallel() > 1) {
            add(
                    trace,
                    input,
                    "/fuse/perParallelRun",
                    Finding.of(
                                    "one-fuse-for-parallel-runs",
                                    Level.WARNING,
                                    input.called()
                                            + ": one fuse for {actual} runs does not protect the single run when another opens",
                                    Source.memory("NEC 240.8 and 310.10(G)"))
                            .actual(Measure.number(cable.parallel()))
                            .action("Give each run its own fuse"));
        }
    }

    private static void add(Trace trace, CircuitInput input, String field, Finding finding) {
        trace.find(finding.at(input.pointer() + field));
    }
}
