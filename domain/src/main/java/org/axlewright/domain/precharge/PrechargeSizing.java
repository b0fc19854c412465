package org.axlewright.domain.precharge;

import static org.axlewright.domain.quantity.Dimension.CAPACITANCE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.INDUCTANCE;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.OptionalDouble;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.precharge.PrechargeInput.Attempts;
import org.axlewright.domain.precharge.PrechargeInput.Coil;
import org.axlewright.domain.precharge.PrechargeInput.Held;
import org.axlewright.domain.precharge.PrechargeInput.Reading;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * A capacitor that fills through a resistor from a pack at full charge: currents, times, heat, and what is left across the contacts. The
 * pack is taken as stiff: its resistance is small against the resistor's. Always at full-charge voltage, never at the nominal one.
 */
public final class PrechargeSizing {

    /** The path should reach its closing share in this part of the timeout. Recalled: a timeout of 2 to 3 times the expected time. */
    public static final double TIMEOUT_FACTOR = 2;

    private static final Source RC = Source.published(
            "charging of a capacitor through a resistor, any textbook of circuit theory: v = V·(1 − e^(−t/RC))");
    private static final Source POWER_LAW = Source.derived("Ohm's and Joule's laws");
    private static final Source COIL = Source.weak("relay example: V + L·dI/dt");

    private static final Symbol V = new Symbol("V", VOLTAGE);
    private static final Symbol R = new Symbol("R", RESISTANCE);
    private static final Symbol C = new Symbol("C", CAPACITANCE);
    private static final Symbol TAU = new Symbol("τ", EVENT_TIME);
    private static final Symbol SHARE = new Symbol("s", NONE);
    private static final Symbol TIMEOUT = new Symbol("tt", EVENT_TIME);

    private static final Step CAPACITANCE_READ = Step.of(
            "C",
            "capacitance from a reading: the share s of the final voltage reached after t through R",
            "C = −t/(R·ln(1 − s))",
            CAPACITANCE,
            RC,
            new Symbol("t", EVENT_TIME),
            R,
            SHARE);
    private static final Step LEAST = Step.of(
            "R1",
            "least resistance that keeps the first current within its limit",
            "R1 = V/I",
            RESISTANCE,
            POWER_LAW,
            V,
            new Symbol("I", CURRENT));
    private static final Step MOST = Step.of(
            "R2",
            "largest resistance that reaches the closing share in half the timeout",
            "R2 = tt/(2·C·ln(1/(1 − s)))",
            RESISTANCE,
            Source.memory("timeout of 2 to 3 times the expected time"),
            TIMEOUT,
            C,
            SHARE);
    private static final Step ENERGY_OF_PULSE = Step.of(
            "E",
            "heat in the resistor of one precharge, whatever its resistance; as much goes into the capacitor",
            "E = C·V²/2",
            ENERGY,
            RC,
            C,
            V);
    private static final Step TIME_CONSTANT =
            Step.of("τ", "time constant without other load", "τ = R·C", EVENT_TIME, RC, R, C);
    private static final Step TIME_TO =
            Step.of("t", "time to a share of the full-charge voltage", "t = −τ·ln(1 − s)", EVENT_TIME, RC, TAU, SHARE);
    private static final Step FIRST_CURRENT =
            Step.of("I0", "current at the first moment", "I0 = V/R", CURRENT, POWER_LAW, V, R);
    private static final Step FIRST_POWER = Step.of(
            "P0",
            "power in the resistor at the first moment, and for as long as something holds the bus at nothing",
            "P0 = V²/R",
            POWER,
            POWER_LAW,
            V,
            R);
    private static final Step HELD_ENERGY = Step.of(
            "Eh",
            "heat in the resistor when the bus is held at nothing until the timeout",
            "Eh = P0·tt",
            ENERGY,
            POWER_LAW,
            new Symbol("P0", POWER),
            TIMEOUT);
    private static final Step LEFT = Step.of(
            "dV",
            "voltage left across the contacts when they close at the timeout",
            "dV = V·e^(−tt/τ)",
            VOLTAGE,
            RC,
            V,
            TIMEOUT,
            TAU);
    private static final Step MEAN = Step.of(
            "Pm",
            "mean power of repeated precharges",
            "Pm = N·E/T",
            POWER,
            POWER_LAW,
            new Symbol("N", NONE),
            new Symbol("E", ENERGY),
            new Symbol("T", EVENT_TIME));
    private static final Step LOADED_BUS = Step.of(
            "Vb",
            "voltage at which the bus stays with a resistance across it",
            "Vb = V·Rl/(R + Rl)",
            VOLTAGE,
            POWER_LAW,
            V,
            R,
            new Symbol("Rl", RESISTANCE));
    private static final Step POWERED_BUS = Step.of(
            "Vb",
            "voltage at which the bus stays with a constant power drawn from it; nothing when V² < 4·R·P",
            "Vb = (V + sqrt(V² − 4·R·P))/2",
            VOLTAGE,
            POWER_LAW,
            V,
            R,
            new Symbol("P", POWER));
    private static final Step HELD_POWER = Step.of(
            "Pb",
            "power in the resistor for as long as that load draws",
            "Pb = (V − Vb)²/R",
            POWER,
            POWER_LAW,
            V,
            new Symbol("Vb", VOLTAGE),
            R);
    private static final Step LASTING = Step.of(
            "Ic",
            "current the resistor bears for good",
            "Ic = sqrt(P/R)",
            CURRENT,
            POWER_LAW,
            new Symbol("P", POWER),
            R);
    private static final Step COIL_ENERGY = Step.of(
            "Ec",
            "energy stored in the coil",
            "Ec = L·I²/2",
            ENERGY,
            Source.published("energy of an inductor, any textbook of circuit theory"),
            new Symbol("L", INDUCTANCE),
            new Symbol("I", CURRENT));
    private static final Step COIL_PEAK = Step.of(
            "Vc",
            "voltage across the opening switch without suppression",
            "Vc = Vs + L·I/t",
            VOLTAGE,
            COIL,
            new Symbol("Vs", VOLTAGE),
            new Symbol("L", INDUCTANCE),
            new Symbol("I", CURRENT),
            new Symbol("t", EVENT_TIME));
    private static final Step COIL_CLAMPED = Step.of(
            "Vc",
            "voltage across the opening switch with a suppressor across the coil",
            "Vc = Vs + Vk",
            VOLTAGE,
            Source.derived("the suppressor holds the coil at its own voltage"),
            new Symbol("Vs", VOLTAGE),
            new Symbol("Vk", VOLTAGE));
    private static final Step RELEASE = Step.of(
            "tr",
            "time in which the coil's current falls to nothing against the suppressor",
            "tr = (L/Rc)·ln(1 + I·Rc/Vk)",
            EVENT_TIME,
            Source.derived("L·dI/dt = −Rc·I − Vk"),
            new Symbol("L", INDUCTANCE),
            new Symbol("Rc", RESISTANCE),
            new Symbol("I", CURRENT),
            new Symbol("Vk", VOLTAGE));

    private PrechargeSizing() {}

    /**
     * Bounds of the resistance, ohm.
     *
     * @param leastOhm by the current limit; null without one
     * @param mostOhm by the timeout; null without capacitance or timeout
     * @param suggestedOhm largest value of IEC 60063 E24 not above the greater bound; null when none lies between
     * @param suggestedW least usual power rating that stands the bus held at nothing, W
     */
    public record Range(
            @Nullable Double leastOhm,
            @Nullable Double mostOhm,
            @Nullable Double suggestedOhm,
            @Nullable Double suggestedW) {}

    /**
     * The bus with the load that draws while it fills.
     *
     * @param busV voltage at which it stays, V; 0 when the load holds it down
     * @param share of the full-charge voltage, 0 to 1
     * @param powerW in the resistor for as long as it lasts, W
     */
    public record HeldBus(double busV, double share, double powerW) {}

    /**
     * The coil when it is switched off.
     *
     * @param energyJ stored, J
     * @param peakV across the opening switch, V; null when it can't be told
     * @param releaseS time to no current, s; null when it can't be told
     */
    public record CoilOff(
            double currentA,
            double energyJ,
            @Nullable Double peakV,
            @Nullable Double releaseS) {}

    /**
     * What the path does.
     *
     * @param fullV pack at the end of a charge, V
     * @param resistanceOhm the one sent, else the suggested one; null when there is none
     * @param timeoutS null when it can't be told
     * @param pulseJ heat of one precharge, J; null without capacitance
     * @param leftV across the contacts at the timeout, V
     * @param lastingA current the resistor bears for good, A; null without its power rating
     */
    public record Result(
            PrechargeInput input,
            double fullV,
            @Nullable Double capacitanceF,
            Range range,
            @Nullable Double resistanceOhm,
            @Nullable Double timeoutS,
            @Nullable Double pulseJ,
            @Nullable Double timeConstantS,
            @Nullable Double to95S,
            @Nullable Double to99S,
            @Nullable Double toClosingS,
            @Nullable Double peakA,
            @Nullable Double peakW,
            @Nullable Double heldJ,
            @Nullable Double leftV,
            @Nullable Double meanW,
            @Nullable HeldBus held,
            @Nullable Double lastingA,
            @Nullable CoilOff coil) {}

    /** Works a precharge path out. */
    public static Result of(PrechargeInput input, Trace trace) {
        double full = PackVoltages.of(input.chemistry(), input.cells(), trace).fullV();
        Double farad = capacitance(input, trace);
        Range range = range(input, full, farad, trace);
        Double ohm = input.resistanceOhm() != null ? input.resistanceOhm() : range.suggestedOhm();
        Double pulse = farad == null ? null : (Double) trace.note(ENERGY_OF_PULSE, energyJ(farad, full), farad, full);
        Double tau = null;
        Double to95 = null;
        Double to99 = null;
        Double toClosing = null;
        Double left = null;
        Double timeout = input.timeoutS();
        if (ohm != null && farad != null) {
            tau = trace.note(TIME_CONSTANT, ohm * farad, ohm, farad);
            to95 = trace.note(TIME_TO, timeToS(tau, 0.95), tau, 0.95);
            to99 = trace.note(TIME_TO, timeToS(tau, 0.99), tau, 0.99);
            toClosing = trace.note(TIME_TO, timeToS(tau, input.closingShare()), tau, input.closingShare());
            left = timeout == null
                    ? null
                    : (Double) trace.note(LEFT, full * Math.exp(-timeout / tau), full, timeout, tau);
        }
        Double peakA = ohm == null ? null : (Double) trace.note(FIRST_CURRENT, full / ohm, full, ohm);
        Double peakW = ohm == null ? null : (Double) trace.note(FIRST_POWER, full * full / ohm, full, ohm);
        Double heldJ = peakW == null || timeout == null
                ? null
                : (Double) trace.note(HELD_ENERGY, peakW * timeout, peakW, timeout);
        Attempts attempts = input.attempts();
        Double mean = attempts == null || pulse == null
                ? null
                : (Double) trace.note(
                        MEAN,
                        attempts.count() * pulse / attempts.periodS(),
                        attempts.count(),
                        pulse,
                        attempts.periodS());
        Double rating = input.powerRatingW();
        Double sent = input.resistanceOhm();
        Double lasting = rating == null || sent == null
                ? null
                : (Double) trace.note(LASTING, Math.sqrt(rating / sent), rating, sent);
        Result result = new Result(
                input,
                full,
                farad,
                range,
                ohm,
                timeout,
                pulse,
                tau,
                to95,
                to99,
                toClosing,
                peakA,
                peakW,
                heldJ,
                left,
                mean,
                ohm == null || input.held() == null ? null : held(input.held(), full, ohm, trace),
                lasting,
                input.coil() == null ? null : coil(input.coil(), trace));
        PrechargeFindings.find(result, trace);
        return result;
    }

    /** Energy of a capacitor, J, and the heat in the resistor that filled it. */
    public static double energyJ(double farad, double volt) {
        return farad * volt * volt / 2;
    }

    /** Time to a share of the final voltage, s. */
    public static double timeToS(double timeConstantS, double share) {
        return -timeConstantS * Math.log1p(-share);
    }

    /** Capacitance that reaches a share of the final voltage in a time, F. */
    public static double capacitanceF(Reading reading) {
        return -reading.timeS() / (reading.resistanceOhm() * Math.log1p(-reading.share()));
    }

    /** Voltage across a switch that interrupts a coil in a time, V. */
    public static double coilPeakV(double supplyV, double inductanceH, double currentA, double openingS) {
        return supplyV + inductanceH * currentA / openingS;
    }

    private static @Nullable Double capacitance(PrechargeInput input, Trace trace) {
        Reading reading = input.measured();
        if (input.capacitanceF() != null || reading == null) {
            return input.capacitanceF();
        }
        return trace.note(
                CAPACITANCE_READ, capacitanceF(reading), reading.timeS(), reading.resistanceOhm(), reading.share());
    }

    private static Range range(PrechargeInput input, double full, @Nullable Double farad, Trace trace) {
        Double limit = input.currentLimitA();
        Double timeout = input.timeoutS();
        Double least = limit == null ? null : (Double) trace.note(LEAST, full / limit, full, limit);
        Double most = farad == null || timeout == null
                ? null
                : (Double) trace.note(
                        MOST,
                        timeout / (TIMEOUT_FACTOR * farad * -Math.log1p(-input.closingShare())),
                        timeout,
                        farad,
                        input.closingShare());
        if (most == null) {
            return new Range(least, null, null, null);
        }
        double standard = PreferredValues.e24AtMost(most);
        if (least != null && standard < least) {
            return new Range(least, most, null, null);
        }
        OptionalDouble power = PreferredValues.powerAtLeast(full * full / standard);
        return new Range(least, most, standard, power.isPresent() ? (Double) power.getAsDouble() : null);
    }

    private static HeldBus held(Held load, double full, double ohm, Trace trace) {
        double bus;
        if (load.resistanceOhm() != null) {
            double across = load.resistanceOhm();
            bus = trace.note(LOADED_BUS, full * (across / (ohm + across)), full, ohm, across);
        } else {
            double watt = load.powerW() == null ? 0 : load.powerW();
            double discriminant = full * full - 4 * ohm * watt;
            double stays = discriminant < 0 ? 0 : (full + Math.sqrt(discriminant)) / 2;
            bus = trace.note(POWERED_BUS, stays, full, ohm, watt);
        }
        double over = full - bus;
        return new HeldBus(bus, bus / full, trace.note(HELD_POWER, over * over / ohm, full, bus, ohm));
    }

    private static CoilOff coil(Coil coil, Trace trace) {
        double henry = coil.inductanceH();
        double ampere = coil.currentA();
        double energy = trace.note(COIL_ENERGY, henry * ampere * ampere / 2, henry, ampere);
        Suppression suppression = coil.suppression();
        Double supply = coil.supplyV();
        Double opening = coil.openingS();
        Double clamp = coil.clampV();
        Double peak = null;
        Double release = null;
        if (suppression == Suppression.NONE) {
            peak = supply == null || opening == null
                    ? null
                    : (Double) trace.note(
                            COIL_PEAK, coilPeakV(supply, henry, ampere, opening), supply, henry, ampere, opening);
            release = opening;
        } else if (suppression != null && clamp != null) {
            peak = supply == null ? null : (Double) trace.note(COIL_CLAMPED, supply + clamp, supply, clamp);
            Double ohm = coil.resistanceOhm();
            release = ohm == null
                    ? null
                    : (Double) trace.note(
                            RELEASE, henry / ohm * Math.log1p(ampere * ohm / clamp), henry, ohm, ampere, clamp);
        }
        return new CoilOff(ampere, energy, peak, release);
    }
}
