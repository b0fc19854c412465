package org.axlewright.domain.fit;

import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.fit.FitResult.Currents;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.trace.Trace;

/** What every pair is judged by. */
record FitSituation(FitInput input, Voltages voltages, Currents currents, Allowed allowed, Trace trace) {

    Pack pack() {
        return input.pack();
    }

    PairSheet between(Part one, Part other) {
        return new PairSheet(one, other, trace);
    }
}
