package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * The pack behind the circuits.
 *
 * @param cells in series
 * @param partOhm resistance of one part, ohm; null when not known
 * @param parts of that resistance in series in one string
 * @param strings in parallel
 */
public record PackFeed(
        Chemistry chemistry, int cells, @Nullable Double partOhm, int parts, int strings) {

    private static final Step RESISTANCE_OF_PACK = Step.of(
            "R",
            "internal resistance of the pack",
            "R = Rp·p/s",
            RESISTANCE,
            Source.derived("resistances in series add, strings in parallel share"),
            new Symbol("Rp", RESISTANCE),
            new Symbol("p", NONE),
            new Symbol("s", NONE));

    public PackFeed {
        Check.within(cells, 1, Integer.MAX_VALUE, "cells");
        Check.within(parts, 1, Integer.MAX_VALUE, "parts");
        Check.within(strings, 1, Integer.MAX_VALUE, "strings");
    }

    public PackVoltages voltages(Trace trace) {
        return PackVoltages.of(chemistry, cells, trace);
    }

    /** Resistance of the whole pack, ohm; null when that of its parts is not known. */
    public @Nullable Double resistanceOhm(Trace trace) {
        return partOhm == null
                ? null
                : (Double)
                        trace.note(RESISTANCE_OF_PACK, Sag.packOhm(partOhm, parts, strings), partOhm, parts, strings);
    }
}
