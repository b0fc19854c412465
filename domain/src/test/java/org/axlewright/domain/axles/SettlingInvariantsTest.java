package org.axlewright.domain.axles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.axles.Settling.End;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** How far a vehicle settles on its springs. */
class SettlingInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();

    private static Settling alike(double rate, Double freeTravelM) {
        End end = new End(new AxleSprings(rate, null), 2000, 0, freeTravelM);
        return new Settling(end, end);
    }

    /** 500 N more on each axle of 25 N/mm: 20 mm. */
    @Test
    void settlesByLoadOverRate() {
        assertThat(alike(25_000, null).dropM(2500, 2500, SILENT)).isCloseTo(0.020, within(1e-12));
    }

    /** Wheels and axles hang below the springs: 100 kg of 980.665 N of each axle stay where they are. */
    @Test
    void whatHangsBelowTheSpringsStaysWhereItIs() {
        End end = new End(new AxleSprings(25_000, null), 2000, 100, null);
        assertThat(new Settling(end, end).dropM(2500, 2500, SILENT))
                .isCloseTo(0.020 * (2500 - 980.665) / 2500, within(1e-12));
    }

    @Property(tries = 200, seed = "20261125")
    void theLoadAsFoundMovesNothing(@ForAll @DoubleRange(min = 5_000, max = 200_000) double rate) {
        assertThat(alike(rate, null).dropM(2000, 2000, SILENT)).isCloseTo(0, within(1e-12));
    }

    @Property(tries = 200, seed = "20261125")
    void atTheBumpStopsItGoesNoFarther(
            @ForAll @DoubleRange(min = 5_000, max = 200_000) double rate,
            @ForAll @DoubleRange(min = 0, max = 5_000) double more) {
        double free = 0.03;
        assertThat(alike(rate, free).dropM(2000 + more, 2000 + more, SILENT))
                .isCloseTo(Math.min(free, more / rate), within(1e-9));
    }
}
