package org.axlewright.domain.charging;

import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Trace;

/** Takes down values of a table with the source and the standing of their own row. */
final class Noted {

    private Noted() {}

    static double datum(String symbol, String meaning, Dimension dimension, Datum datum, Trace trace) {
        if (trace.keepsWorking()) {
            trace.note(Step.of(symbol, meaning, symbol + " from the table", dimension, datum.source()), datum.value());
        }
        return datum.value();
    }
}
