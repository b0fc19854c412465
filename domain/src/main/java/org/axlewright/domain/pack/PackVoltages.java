package org.axlewright.domain.pack;

import java.util.OptionalInt;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Voltages of a pack from its chemistry and its cells in series: the only honest meaning of "48 V".
 *
 * @param nominalV for energy and for the mean current, V
 * @param fullV at the end of a charge, V: what every part on the pack must bear
 * @param cutOffV under load at the end of the discharge, V
 * @param restV full and at rest for some hours, V; flooded cells only
 */
public record PackVoltages(
        double nominalV,
        double fullV,
        double cutOffV,
        @Nullable Double restV) {

    /** In one block; larger ones do not exist. */
    private static final long MOST_CELLS = 1000;

    private static final Symbol N = new Symbol("n", Dimension.NONE);
    private static final Symbol PER_CELL = new Symbol("Vc", Dimension.VOLTAGE);
    private static final Source COUNT = Source.derived("cells in series add their voltages");

    private static final Step NOMINAL =
            Step.of("V", "nominal voltage of the pack", "V = n·Vc", Dimension.VOLTAGE, COUNT, N, PER_CELL);
    private static final Step FULL =
            Step.of("Vfull", "voltage at the end of a charge", "Vfull = n·Vc", Dimension.VOLTAGE, COUNT, N, PER_CELL);
    private static final Step CUT_OFF = Step.of(
            "Vcut", "voltage at the end of the discharge", "Vcut = n·Vc", Dimension.VOLTAGE, COUNT, N, PER_CELL);
    private static final Step REST = Step.of(
            "Vrest",
            "voltage full and at rest",
            "Vrest = n·(SG + 0.845)",
            Dimension.VOLTAGE,
            Source.published("DOE-HDBK-1084-95: open-circuit voltage of a lead-acid cell"),
            N,
            new Symbol("SG", Dimension.NONE));

    public static PackVoltages of(Chemistry chemistry, int cellsInSeries, Trace trace) {
        Check.within(cellsInSeries, 1, Integer.MAX_VALUE, "cellsInSeries");
        CellData cell = CellData.of(chemistry);
        Datum gravity = cell.fullGravity();
        return new PackVoltages(
                series(NOMINAL, cellsInSeries, cell.nominalV(), trace),
                series(FULL, cellsInSeries, cell.fullV(), trace),
                series(CUT_OFF, cellsInSeries, cell.cutOffV(), trace),
                gravity == null
                        ? null
                        : trace.note(REST, restV(cellsInSeries, gravity.value()), cellsInSeries, gravity.value()));
    }

    /**
     * Voltage of lead-acid cells at rest, V. Source: DOE-HDBK-1084-95, open-circuit voltage = specific gravity + 0.845.
     *
     * @param specificGravity of the acid, at rest for some hours
     */
    public static double restV(int cellsInSeries, double specificGravity) {
        return cellsInSeries * (specificGravity + 0.845);
    }

    /**
     * Cells in series of a row of lead-acid blocks; empty when a block of that voltage holds no whole number of cells.
     *
     * @param count blocks in series
     * @param blockV nominal voltage of one block, V
     */
    public static OptionalInt cellsInBlocks(Chemistry leadAcid, int count, double blockV) {
        double cells = blockV / CellData.of(leadAcid).nominalV().value();
        long whole = Math.round(cells);
        long total = count * Math.min(whole, MOST_CELLS);
        boolean cellsAreWhole = whole >= 1 && whole <= MOST_CELLS && Math.abs(cells - whole) < 1e-6;
        return cellsAreWhole && total <= Integer.MAX_VALUE ? OptionalInt.of((int) total) : OptionalInt.empty();
    }

    private static double series(Step step, int cells, Datum perCell, Trace trace) {
        return trace.note(step, cells * perCell.value(), cells, perCell.value());
    }
}
