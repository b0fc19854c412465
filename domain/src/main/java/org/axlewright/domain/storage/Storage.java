package org.axlewright.domain.storage;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;

import java.time.LocalDate;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.FreezingPoint;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * A pack that stands: what self-discharge and a quiescent load take, when it must be recharged, when it is flat, and whether it freezes.
 *
 * <p>Self-discharge is taken linear, a share of the rated capacity for each month: a compound rate would lose less, so the linear one errs
 * to the safe side. It halves for each 10 K cooler (battery handbook, printed for 10 and 20 degrees Celsius); a maker's figures for 25 and
 * 35 degrees rise by half only, so the rule errs to the safe side in the warm too.
 */
public final class Storage {

    /** Temperature at which self-discharge is printed, degC. */
    static final double PRINTED_C = 20;

    /** Difference of temperature that halves it, K. */
    static final double HALVING_K = 10;

    static final Source RULE = Source.published("battery handbook, p. 20: self-discharge halves for each 10 K cooler");

    private static final Symbol RATE = new Symbol("q", NONE);
    private static final Symbol LOAD = new Symbol("I", CURRENT);
    private static final Symbol CAPACITY = new Symbol("C", CHARGE);
    private static final Symbol START = new Symbol("s_0", NONE);
    private static final Symbol TIME_STORED = new Symbol("t", TIME);
    private static final Symbol SELF = new Symbol("q_T", NONE);
    private static final Symbol BY_LOAD = new Symbol("q_I", NONE);

    private static final Step SELF_DISCHARGE = Step.of(
            "q_T",
            "share of the capacity lost to self-discharge in a month at the storage temperature",
            "q_T = q·2^[(T − 20)/10]",
            NONE,
            RULE,
            RATE,
            new Symbol("T", TEMPERATURE));
    private static final Step LOAD_SHARE = Step.of(
            "q_I",
            "share of the capacity that the quiescent load takes in a month (2 629 746 s)",
            "q_I = I·t_m/C, t_m = 2 629 746 s",
            NONE,
            Source.derived("charge balance"),
            LOAD,
            CAPACITY);
    private static final Step AFTER = Step.of(
            "s",
            "state of charge after the time stored; no less than 0, where it is flat",
            "s = s_0 − (q_T + q_I)·t/t_m, t_m = 2 629 746 s",
            NONE,
            Source.derived("charge balance, self-discharge linear in the rated capacity"),
            START,
            SELF,
            BY_LOAD,
            TIME_STORED);
    private static final Step TO_LIMIT = Step.of(
            "t_r",
            "time until it must be recharged by its state of charge",
            "t_r = (s_0 − s_r)·t_m/(q_T + q_I), 0 when it stands below already; t_m = 2 629 746 s",
            TIME,
            Source.derived("charge balance"),
            START,
            new Symbol("s_r", NONE),
            SELF,
            BY_LOAD);
    private static final Step TO_FLAT = Step.of(
            "t_0",
            "time until it is flat",
            "t_0 = s_0·t_m/(q_T + q_I), t_m = 2 629 746 s",
            TIME,
            Source.derived("charge balance"),
            START,
            SELF,
            BY_LOAD);
    private static final Step WITHIN = Step.of(
            "t_w",
            "time within which it must be recharged: the earlier of state of charge and longest standing",
            "t_w = min(t_r, t_max)",
            TIME,
            Source.derived("the earlier"),
            new Symbol("t_r", TIME),
            new Symbol("t_max", TIME));
    private static final Step FREEZING = Step.of(
            "T_f",
            "temperature at which the cells freeze at that state of charge",
            "T_f by the state of charge",
            TEMPERATURE,
            FreezingPoint.BY_CHARGE_SOURCE,
            new Symbol("s", NONE));
    private static final Step FREEZING_BY_GRAVITY = Step.of(
            "T_f",
            "temperature at which the acid measured freezes",
            "T_f by the specific gravity",
            TEMPERATURE,
            FreezingPoint.BY_GRAVITY_SOURCE,
            new Symbol("SG", NONE));

    private Storage() {}

    /**
     * What stands and how.
     *
     * @param startOfCharge state of charge at the start, 0 to 1
     * @param capacityC of all strings, C; null when not known
     * @param quiescentA load that stays on, A; more than 0 only with a capacity
     * @param durationS stored, s; null when only the time to recharge is asked
     * @param temperatureC mean of the storage, degC
     * @param lowestC coldest it gets, degC
     * @param selfDischarge share of the rated capacity lost in a month at 20 degC
     * @param rechargeAt state of charge at which it must be recharged, 0 to 1
     * @param longestS longest standing without a recharge, s
     * @param from first day of the storage
     * @param gravity specific gravity measured at the start; lead-acid only
     */
    public record Input(
            Chemistry chemistry,
            double startOfCharge,
            @Nullable Double capacityC,
            double quiescentA,
            @Nullable Double durationS,
            double temperatureC,
            double lowestC,
            double selfDischarge,
            double rechargeAt,
            double longestS,
            @Nullable LocalDate from,
            @Nullable Double gravity) {

        public Input {
            Check.within(startOfCharge, 0, 1, "state of charge");
            Check.positive(capacityC == null ? 1 : capacityC, "capacity");
            Check.within(quiescentA, 0, capacityC == null ? 0 : Double.MAX_VALUE, "quiescent current");
            Check.notNegative(durationS == null ? 0 : durationS, "duration");
            Check.finite(temperatureC, "temperature");
            Check.finite(lowestC, "lowest temperature");
            Check.positive(selfDischarge, "self-discharge");
            Check.within(rechargeAt, 0, 1, "recharge at");
            Check.positive(longestS, "longest standing");
            Check.within(
                    gravity == null ? 1.1 : gravity,
                    FreezingPoint.LEAST_GRAVITY,
                    FreezingPoint.MOST_GRAVITY,
                    "specific gravity");
        }
    }

    /**
     * The answer.
     *
     * @param selfDischargeShare lost in a month at the storage temperature
     * @param loadShare taken by the load in a month
     * @param rechargeWithinS the earlier of state of charge and longest standing, s
     * @param rechargeBy the day, when the first day is known
     * @param flatAfterS until nothing is left, s
     * @param flatOn the day
     * @param after what is left at the end; null without a duration
     * @param freezingC at the start, degC; null for lithium
     */
    public record Result(
            double selfDischargeShare,
            double loadShare,
            double rechargeWithinS,
            @Nullable LocalDate rechargeBy,
            double flatAfterS,
            @Nullable LocalDate flatOn,
            @Nullable After after,
            @Nullable Double freezingC) {}

    /**
     * At the end of the storage.
     *
     * @param stateOfCharge 0 to 1
     * @param lostToSelfDischarge share of the capacity, until flat
     * @param lostToLoad share of the capacity, until flat
     * @param freezingC of what is left, degC; null for lithium
     */
    public record After(
            double stateOfCharge,
            double lostToSelfDischarge,
            double lostToLoad,
            @Nullable Double freezingC) {}

    /** Works out the storage. Pure. */
    public static Result of(Input input, Trace trace) {
        double monthS = TimeUnit.MONTH.toSi(1);
        double self = trace.note(
                SELF_DISCHARGE,
                input.selfDischarge() * Math.pow(2, (input.temperatureC() - PRINTED_C) / HALVING_K),
                input.selfDischarge(),
                input.temperatureC());
        Double capacityC = input.capacityC();
        double load = capacityC == null
                ? 0
                : trace.note(LOAD_SHARE, input.quiescentA() * monthS / capacityC, input.quiescentA(), capacityC);
        double start = input.startOfCharge();
        double limitS = trace.note(
                TO_LIMIT,
                Math.max(0, start - input.rechargeAt()) * monthS / (self + load),
                start,
                input.rechargeAt(),
                self,
                load);
        double withinS = trace.note(WITHIN, Math.min(limitS, input.longestS()), limitS, input.longestS());
        double flatS = trace.note(TO_FLAT, start * monthS / (self + load), start, self, load);
        Double durationS = input.durationS();
        After after = durationS == null ? null : after(input, durationS, self, load, flatS, trace);
        Result result = new Result(
                self,
                load,
                withinS,
                day(input.from(), withinS),
                flatS,
                day(input.from(), flatS),
                after,
                freezing(input, start, true, trace));
        StorageFindings.find(input, result, trace);
        return result;
    }

    private static After after(Input input, double durationS, double self, double load, double flatS, Trace trace) {
        double monthS = TimeUnit.MONTH.toSi(1);
        double start = input.startOfCharge();
        double untilFlatS = Math.min(durationS, flatS);
        double left = trace.note(
                AFTER, Math.max(0, start - (self + load) * durationS / monthS), start, self, load, durationS);
        return new After(
                left, self * untilFlatS / monthS, load * untilFlatS / monthS, freezing(input, left, false, trace));
    }

    private static @Nullable Double freezing(Input input, double stateOfCharge, boolean measured, Trace trace) {
        if (!input.chemistry().isLeadAcid()) {
            return null;
        }
        if (measured && input.gravity() != null) {
            return trace.note(FREEZING_BY_GRAVITY, FreezingPoint.ofGravityC(input.gravity()), input.gravity());
        }
        return trace.note(FREEZING, FreezingPoint.ofChargeC(stateOfCharge), stateOfCharge);
    }

    /** The last whole day before the time is over; null when it lies beyond what a calendar holds or no first day is known. */
    private static @Nullable LocalDate day(@Nullable LocalDate from, double seconds) {
        double days = Math.floor(TimeUnit.DAY.fromSi(seconds));
        return from == null || days > 365_000 ? null : from.plusDays((long) days);
    }
}
