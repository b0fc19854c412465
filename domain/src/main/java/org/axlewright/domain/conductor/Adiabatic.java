package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import org.axlewright.domain.cable.Copper;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * Heating of a copper conductor that keeps all its heat: the shortest time in which a current can bring it from one temperature to
 * another. For faults the standard stops at {@link #LONGEST_FAULT_S}; the end temperatures of faults are never for currents that return.
 */
public final class Adiabatic {

    /** Longest fault to which IEC 60364-4-43 applies the law, s. */
    public static final double LONGEST_FAULT_S = 5;

    /** End temperature of thermoplastic insulation in a fault, degC: the lowest of the usual insulations. Source: IEC 60364-5-54. */
    public static final double FAULT_END_C = 160;

    static final Source SOURCE = Source.weak("IEC 60949, adiabatic heating of copper, read in a reprint;"
            + " gives every k of IEC 60364-5-54 to the unit");

    private static final Step TIME = Step.of(
            "ta",
            "time in which the current warms the conductor from Ti to Tf when no heat leaves it",
            "ta = (226·10⁶·S/I)²·ln((234.5 + Tf)/(234.5 + Ti))",
            EVENT_TIME,
            SOURCE,
            new Symbol("S", AREA),
            new Symbol("I", CURRENT),
            new Symbol("Tf", TEMPERATURE),
            new Symbol("Ti", TEMPERATURE));

    private Adiabatic() {}

    /** The k of the standards, A s^0.5/mm2: {@code 226 sqrt(ln((234.5 + Tf)/(234.5 + Ti)))}. Source: IEC 60949. */
    public static double constant(double initialC, double finalC) {
        return 226 * Math.sqrt(Math.log(Copper.ratio(finalC, initialC)));
    }

    /** {@code t = (k S/I)²}, s. Source: IEC 60364-4-43 for t of at most 5 s. */
    public static double timeS(double currentA, double areaM2, double constant) {
        double root = constant * areaM2 * 1e6 / currentA;
        return root * root;
    }

    /** Time from one temperature to another, s. */
    static double timeS(double currentA, double areaM2, double initialC, double finalC, Trace trace) {
        return trace.note(
                TIME, timeS(currentA, areaM2, constant(initialC, finalC)), areaM2, currentA, finalC, initialC);
    }
}
