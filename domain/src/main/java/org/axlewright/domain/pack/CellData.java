package org.axlewright.domain.pack;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.trace.Datum;
import org.jspecify.annotations.Nullable;

/**
 * What a cell of one chemistry gives and how far a pack of it is used, from {@code pack/chemistries.csv}.
 *
 * @param nominalV volts per cell, for energy
 * @param fullV volts per cell at the end of a charge: what every part on the pack must bear
 * @param cutOffV volts per cell under load at which the discharge ends
 * @param fullGravity specific gravity of the acid of a full cell at rest; null where the acid can't be reached or there is none
 * @param equaliseV volts per cell, the highest of an equalising charge; null where the maker forbids one
 * @param peukertExponent exponent of Peukert's law
 * @param usableShare share of the capacity for daily use, 0 to 1
 * @param ratedHours hour rate at which a capacity is printed when the sheet does not say, h
 * @param slowCoefficient change of capacity with temperature at discharges of 10 h and longer, 1/K; null for lithium
 * @param fastCoefficient the same at discharges of 3 h and shorter, 1/K
 */
public record CellData(
        Datum nominalV,
        Datum fullV,
        Datum cutOffV,
        @Nullable Datum fullGravity,
        @Nullable Datum equaliseV,
        Datum peukertExponent,
        Datum usableShare,
        Datum ratedHours,
        @Nullable Datum slowCoefficient,
        @Nullable Datum fastCoefficient) {

    private static final Map<Chemistry, CellData> TABLE = read();

    public static CellData of(Chemistry chemistry) {
        CellData data = TABLE.get(chemistry);
        if (data == null) {
            throw new IllegalStateException("the table of chemistries lacks " + chemistry);
        }
        return data;
    }

    private static Map<Chemistry, CellData> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/pack/chemistries.csv");
        Map<Chemistry, CellData> cells = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<String, Datum> row = table.getOrDefault(chemistry.toString(), Map.of());
            cells.put(
                    chemistry,
                    new CellData(
                            Datum.in(row, "nominal-voltage"),
                            Datum.in(row, "full-voltage"),
                            Datum.in(row, "cut-off-voltage"),
                            row.get("full-gravity"),
                            row.get("equalise-voltage"),
                            Datum.in(row, "peukert-exponent"),
                            Datum.in(row, "usable-share"),
                            Datum.in(row, "rated-hours"),
                            row.get("slow-coefficient"),
                            row.get("fast-coefficient")));
        }
        return cells;
    }
}
