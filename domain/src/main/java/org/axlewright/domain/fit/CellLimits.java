package org.axlewright.domain.fit;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Datum;
import org.jspecify.annotations.Nullable;

/**
 * What a charge and a controller may do to a cell of one chemistry, and what a pack of it weighs, from {@code fit/cells.csv}.
 *
 * @param leastEndV volts per cell at the end of a charge: below it the pack never gets full
 * @param mostEndV volts per cell at the end of an ordinary charge
 * @param equaliseV volts per cell, the highest of an equalising charge; null where there is none
 * @param spreadV volts per cell left to the highest cell; null where the chemistry evens out by gassing, or nothing is known
 * @param fadeFromV volts per cell at which regeneration begins to fade; null where nothing is known
 * @param fadeToV volts per cell at which it has faded to nothing
 * @param leastChargeC temperature of the cells below which they take no charge, degC; null for lead-acid
 * @param leastMass usual mass of a whole pack, kg per kWh
 * @param mostMass usual mass of a whole pack, kg per kWh
 */
public record CellLimits(
        Datum leastEndV,
        Datum mostEndV,
        @Nullable Datum equaliseV,
        @Nullable Datum spreadV,
        @Nullable Datum fadeFromV,
        @Nullable Datum fadeToV,
        @Nullable Datum leastChargeC,
        Datum leastMass,
        Datum mostMass) {

    private static final Map<Chemistry, CellLimits> TABLE = read();

    public static CellLimits of(Chemistry chemistry) {
        CellLimits limits = TABLE.get(chemistry);
        if (limits == null) {
            throw new IllegalStateException("the table of cell limits lacks " + chemistry);
        }
        return limits;
    }

    private static Map<Chemistry, CellLimits> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/fit/cells.csv");
        Map<Chemistry, CellLimits> limits = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<String, Datum> row = table.getOrDefault(chemistry.toString(), Map.of());
            limits.put(
                    chemistry,
                    new CellLimits(
                            Datum.in(row, "least-end-voltage"),
                            Datum.in(row, "most-end-voltage"),
                            row.get("equalise-voltage"),
                            row.get("spread-allowance"),
                            row.get("fade-from"),
                            row.get("fade-to"),
                            row.get("least-charge-temperature"),
                            Datum.in(row, "least-mass"),
                            Datum.in(row, "most-mass")));
        }
        return limits;
    }
}
