package org.axlewright.domain.packcheck;

import java.util.List;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.jspecify.annotations.Nullable;

/**
 * What the meters said, and the pack they were put to.
 *
 * @param cells in series; null when only the clock was read
 * @param string what one string gives when new; null when the capacity is not known
 * @param temperatureC of the cells, used with {@code string} and a timed discharge only
 * @param blocks of one string, all with the same number of cells, in order
 * @param blocksInSeries of one string where that is known without readings
 * @param chargerStartV voltage below which the charger does nothing
 * @param stateOfCharge as the sender knows it, 0 to 1; used where the voltage at rest does not tell
 */
public record ReadingsInput(
        Chemistry chemistry,
        @Nullable Integer cells,
        int strings,
        @Nullable DischargeCapacity string,
        double temperatureC,
        List<Block> blocks,
        @Nullable Integer blocksInSeries,
        @Nullable Double chargerStartV,
        Pack pack,
        @Nullable Discharge discharge,
        @Nullable Clamp clamp,
        @Nullable Integer cycles,
        @Nullable Double stateOfCharge) {

    public ReadingsInput {
        if (cells != null) {
            Check.within(cells, 1, 200, "cells");
        }
        Check.within(strings, 1, 100, "strings");
        Check.finite(temperatureC, "temperatureC");
    }

    /** Cells of one block that was read; 0 when none was. */
    int cellsOfBlock() {
        return cells == null || blocks.isEmpty() ? 0 : cells / blocks.size();
    }

    /**
     * Readings of one block.
     *
     * @param pointer of its entry
     * @param gravity specific gravity of its acid
     */
    public record Block(
            String pointer,
            @Nullable String reference,
            @Nullable Double restV,
            @Nullable Double loadV,
            @Nullable Double gravity) {}

    /**
     * Readings of the whole pack.
     *
     * @param loadA current while the voltages under load were read
     */
    public record Pack(
            @Nullable Double restTimeS,
            @Nullable Double restV,
            @Nullable Double loadV,
            @Nullable Double loadA) {}

    /**
     * A discharge at constant current from full.
     *
     * @param endV pack voltage at which it was ended; null for the usual cut-off
     */
    public record Discharge(
            double currentA, double timeS, @Nullable Double endV) {

        public Discharge {
            Check.positive(currentA, "currentA");
            Check.positive(timeS, "timeS");
        }
    }

    /**
     * A clamp-meter reading on the battery cable.
     *
     * @param speedMPS at that moment
     */
    public record Clamp(double currentA, @Nullable Double speedMPS) {

        public Clamp {
            Check.positive(currentA, "currentA");
        }
    }
}
