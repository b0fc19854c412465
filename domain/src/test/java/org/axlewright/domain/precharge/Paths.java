package org.axlewright.domain.precharge;

import java.util.List;
import java.util.Set;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.precharge.PrechargeInput.Attempts;
import org.axlewright.domain.precharge.PrechargeInput.Coil;
import org.axlewright.domain.precharge.PrechargeInput.Held;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Precharge paths for tests: LFP, 95 %, changed by one thing at a time. */
record Paths(
        int cells,
        @Nullable Double farad,
        PrechargePart part,
        @Nullable Double ohm,
        @Nullable Double ratedW,
        @Nullable Double pulseJ,
        @Nullable Double timeoutS,
        @Nullable Double limitA,
        @Nullable Attempts attempts,
        @Nullable Held held,
        Set<Closer> closers,
        @Nullable Coil coil) {

    static Paths of(int cells) {
        return new Paths(cells, null, PrechargePart.RESISTOR, null, null, null, null, null, null, null, Set.of(), null);
    }

    Paths resistor(double resistanceOhm) {
        return new Paths(
                cells, farad, part, resistanceOhm, ratedW, pulseJ, timeoutS, limitA, attempts, held, closers, coil);
    }

    Paths rated(double watt, double joule) {
        return new Paths(cells, farad, part, ohm, watt, joule, timeoutS, limitA, attempts, held, closers, coil);
    }

    Paths part(PrechargePart other) {
        return new Paths(cells, farad, other, ohm, ratedW, pulseJ, timeoutS, limitA, attempts, held, closers, coil);
    }

    Paths capacitance(double capacitanceF) {
        return new Paths(
                cells, capacitanceF, part, ohm, ratedW, pulseJ, timeoutS, limitA, attempts, held, closers, coil);
    }

    Paths timeout(double seconds) {
        return new Paths(cells, farad, part, ohm, ratedW, pulseJ, seconds, limitA, attempts, held, closers, coil);
    }

    Paths limit(double ampere) {
        return new Paths(cells, farad, part, ohm, ratedW, pulseJ, timeoutS, ampere, attempts, held, closers, coil);
    }

    Paths attempts(int count, double periodS) {
        return new Paths(
                cells,
                farad,
                part,
                ohm,
                ratedW,
                pulseJ,
                timeoutS,
                limitA,
                new Attempts(count, periodS),
                held,
                closers,
                coil);
    }

    Paths held(@Nullable Double powerW, @Nullable Double resistanceOhm) {
        return new Paths(
                cells,
                farad,
                part,
                ohm,
                ratedW,
                pulseJ,
                timeoutS,
                limitA,
                attempts,
                new Held(powerW, resistanceOhm),
                closers,
                coil);
    }

    Paths closed(Closer... by) {
        return new Paths(cells, farad, part, ohm, ratedW, pulseJ, timeoutS, limitA, attempts, held, Set.of(by), coil);
    }

    Paths coil(Coil other) {
        return new Paths(cells, farad, part, ohm, ratedW, pulseJ, timeoutS, limitA, attempts, held, closers, other);
    }

    PrechargeInput input() {
        return new PrechargeInput(
                Chemistry.LFP,
                cells,
                farad,
                null,
                part,
                ohm,
                ratedW,
                pulseJ,
                0.95,
                timeoutS,
                timeoutS != null,
                limitA,
                attempts,
                held,
                closers,
                coil);
    }

    PrechargeSizing.Result result() {
        return PrechargeSizing.of(input(), Trace.withoutWorking());
    }

    List<String> findings() {
        Trace trace = Trace.withWorking();
        PrechargeSizing.of(input(), trace);
        return trace.findings().stream().map(Finding::code).toList();
    }
}
