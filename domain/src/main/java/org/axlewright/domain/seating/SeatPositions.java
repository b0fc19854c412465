package org.axlewright.domain.seating;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import java.util.List;
import java.util.Map;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** Where drivers put their seat: the lines of SAE J1517-2024, class B, and the heights that they are valid for. */
public final class SeatPositions {

    private static final Map<String, Map<String, Datum>> TABLE = Datum.table("/seating/j1517.csv");

    /** Percentiles of the lines, in order. */
    static final List<String> PERCENTILES = List.of("2.5", "5", "10", "50", "90", "95", "97.5");

    /** Heights of the hip point above the heel that the lines are made for, m. */
    public static final double LOWEST_M = constant("class-b", "lowest");

    /** See {@link #LOWEST_M}. */
    public static final double HIGHEST_M = constant("class-b", "highest");

    static final Source SOURCE = Source.published(
            "SAE J1517-2024, class B, seat height 405 to 530 mm; secondary summary; made for trucks with treadle pedals");

    private static final Step LINE = Step.of(
            "X",
            "hip point behind the heel point that so many per cent of drivers choose or less",
            "X = a − b·z",
            CLEARANCE,
            SOURCE,
            new Symbol("a", CLEARANCE),
            new Symbol("b", Dimension.NONE),
            new Symbol("z", CLEARANCE));

    private SeatPositions() {}

    private static double constant(String name, String item) {
        return Datum.in(TABLE.getOrDefault(name, Map.of()), item).value() / 1000;
    }

    /** Whether the lines are made for a height, m. */
    public static boolean cover(double heightM) {
        return heightM >= LOWEST_M && heightM <= HIGHEST_M;
    }

    /**
     * Hip point behind the heel point, m.
     *
     * @param percentile one of 2.5, 5, 10, 50, 90, 95, 97.5
     * @param heightM hip point above the heel, m, within {@link #LOWEST_M} and {@link #HIGHEST_M}
     */
    public static double xM(String percentile, double heightM, Trace trace) {
        Check.within(heightM, LOWEST_M, HIGHEST_M, "heightM");
        double a = constant(percentile, "a");
        double b = constant(percentile, "b") * 1000;
        return trace.of(percentile + " %").note(LINE, a - b * heightM, a, b, heightM);
    }
}
