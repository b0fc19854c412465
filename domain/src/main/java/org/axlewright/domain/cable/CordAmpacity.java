package org.axlewright.domain.cable;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;

/**
 * What a flexible cord may carry with two conductors under current, 30 degrees Celsius ambient, fully unwound.
 *
 * @param tableSize the size whose row holds: the cord's own, or for SAE and metric cords the largest of the table that is not larger
 * @param currentA allowed current, A
 * @param source NEC Table 400.5(A)(1) column B, with the standing of the row
 */
public record CordAmpacity(ConductorSize tableSize, double currentA, Source source) {

    private static final String TABLE = "NEC Table 400.5(A)(1), two current-carrying conductors";

    private static final List<CordAmpacity> ROWS = TableFile.read("/cable/cord.csv").rows().stream()
            .map(row -> new CordAmpacity(
                    new ConductorSize(SizeSeries.AWG, row[0]),
                    Double.parseDouble(row[1]),
                    new Source(TABLE, Standing.valueOf(row[2].toUpperCase(Locale.ROOT)))))
            .toList();

    /** The row that holds for a size, never a thicker one; nothing for a cord thinner than the table. */
    public static Optional<CordAmpacity> of(ConductorSize size) {
        double area = Conductor.of(size).areaM2();
        return ROWS.stream()
                .filter(row -> Conductor.of(row.tableSize()).areaM2() <= area)
                .max(Comparator.comparingDouble(CordAmpacity::currentA));
    }
}
