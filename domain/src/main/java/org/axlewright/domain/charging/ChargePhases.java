package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TIME;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * The two phases of a charge. At constant current the charge still missing up to the state of charge {@code f} at which the
 * constant-voltage phase starts goes in at the full current. From there the current falls exponentially, and so linearly in the charge
 * put in, to the current at which the pack counts as full. All charge at the full current and then the constant-voltage phase as well
 * would count the last part twice.
 *
 * @param constantCurrentTimeS s
 * @param constantVoltageTimeS s
 */
public record ChargePhases(double constantCurrentTimeS, double constantVoltageTimeS) {

    private static final Source MANUAL = Source.published(
            "charger maker's manual: full current to the gassing point (lead-acid) or to where the voltage is reached (lithium), then constant voltage");
    private static final Source TAPER =
            Source.derived("charge under an exponentially falling current, I = I_0·exp(−t/τ)");

    private static final Symbol CAPACITY = new Symbol("C", CHARGE);
    private static final Symbol FACTOR = new Symbol("F", NONE);
    private static final Symbol CURRENT_0 = new Symbol("I_0", CURRENT);
    private static final Symbol CURRENT_END = new Symbol("I_e", CURRENT);
    private static final Symbol KNEE = new Symbol("f", NONE);
    private static final Symbol FROM = new Symbol("s_0", NONE);
    private static final Symbol TO = new Symbol("s_1", NONE);

    private static final Step CONSTANT_CURRENT = Step.of(
            "t_cc",
            "time at constant current",
            "t_cc = [min(s_1, f) − s_0]·C·F/I_0, none when s_0 ≥ f",
            TIME,
            MANUAL,
            TO,
            KNEE,
            FROM,
            CAPACITY,
            FACTOR,
            CURRENT_0);
    private static final Step MEAN_CURRENT = Step.of(
            "I_m",
            "mean current of the constant-voltage phase",
            "I_m = (I_0 − I_e)/ln(I_0/I_e); I_0 when I_0 ≤ I_e",
            CURRENT,
            TAPER,
            CURRENT_0,
            CURRENT_END);
    private static final Step WHOLE_PHASE = Step.of(
            "T",
            "constant-voltage phase from its start to full",
            "T = max(t_v, (1 − f)·C·F/I_m)",
            TIME,
            Source.derived("the charger's own time, and never less than the missing charge takes"),
            new Symbol("t_v", TIME),
            KNEE,
            CAPACITY,
            FACTOR,
            new Symbol("I_m", CURRENT));
    private static final Step CONSTANT_VOLTAGE = Step.of(
            "t_cv",
            "time at constant voltage",
            "t_cv = T·ln(I_a/I_b)/ln(I_0/I_e), I(s) = I_0 − (I_0 − I_e)·(s − f)/(1 − f), I_a = I(max(s_0, f)), I_b = I(s_1);"
                    + " T·(s_1 − max(s_0, f))/(1 − f) when I_0 ≤ I_e",
            TIME,
            TAPER,
            new Symbol("T", TIME),
            CURRENT_0,
            CURRENT_END,
            KNEE,
            FROM,
            TO);

    /** Fall of the current, as a share of its end, below which the taper is a straight line; a logarithm of less is rounding alone. */
    private static final double LEAST_TAPER = 1e-6;

    /**
     * Divides a charge into its phases.
     *
     * @param knee state of charge at which the constant-voltage phase starts, above 0 and below 1
     * @param from state of charge at the start, 0 to 1
     * @param to state of charge at the end, above {@code from}, at most 1
     * @param capacityC capacity of the pack, C
     * @param factor charge put in for each charge taken out, at least 1
     * @param phaseTimeS constant-voltage phase from {@code knee} to full by the charger's own timer, s
     * @param currentA current of the constant-current phase, A
     * @param endCurrentA current at which the pack counts as full, A
     */
    static ChargePhases of(
            double knee,
            double from,
            double to,
            double capacityC,
            double factor,
            double phaseTimeS,
            double currentA,
            double endCurrentA,
            Trace trace) {
        Check.within(knee, 0, 1, "start of the constant-voltage phase");
        Check.within(from, 0, 1, "state of charge at the start");
        Check.within(to, from, 1, "state of charge at the end");
        Check.positive(capacityC, "capacity");
        Check.positive(factor, "charge factor");
        Check.notNegative(phaseTimeS, "constant-voltage time");
        Check.positive(currentA, "charging current");
        Check.positive(endCurrentA, "end current");

        double bulk = Math.max(0, Math.min(to, knee) - from);
        double constantCurrentS = trace.note(
                CONSTANT_CURRENT, bulk * capacityC * factor / currentA, to, knee, from, capacityC, factor, currentA);
        if (to <= knee) {
            return new ChargePhases(constantCurrentS, 0);
        }
        boolean tapers = currentA > endCurrentA * (1 + LEAST_TAPER);
        double meanA = trace.note(
                MEAN_CURRENT,
                tapers ? (currentA - endCurrentA) / lnRatio(currentA, endCurrentA) : currentA,
                currentA,
                endCurrentA);
        double wholeS = trace.note(
                WHOLE_PHASE,
                Math.max(phaseTimeS, (1 - knee) * capacityC * factor / meanA),
                phaseTimeS,
                knee,
                capacityC,
                factor,
                meanA);
        double start = Math.max(from, knee);
        double share;
        if (tapers) {
            double startA = currentA - (currentA - endCurrentA) * (start - knee) / (1 - knee);
            double stopA = currentA - (currentA - endCurrentA) * (to - knee) / (1 - knee);
            share = lnRatio(startA, stopA) / lnRatio(currentA, endCurrentA);
        } else {
            share = (to - start) / (1 - knee);
        }
        double constantVoltageS =
                trace.note(CONSTANT_VOLTAGE, share * wholeS, wholeS, currentA, endCurrentA, knee, from, to);
        return new ChargePhases(constantCurrentS, constantVoltageS);
    }

    /** ln(a/b) for a above b, exact also when they nearly agree. */
    private static double lnRatio(double a, double b) {
        return Math.log1p((a - b) / b);
    }

    public double timeS() {
        return constantCurrentTimeS + constantVoltageTimeS;
    }
}
