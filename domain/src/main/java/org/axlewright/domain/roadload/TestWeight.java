package org.axlewright.domain.roadload;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.trace.Datum;

/**
 * Equivalent test weight, from {@code roadload/test-weight.csv}: the mass that belongs to a printed {@link SpeedPolynomial}, without which
 * its coefficients tell no deceleration.
 */
public final class TestWeight {

    /** Most loaded weight of each class, lb, and the class, lb. */
    private static final NavigableMap<Double, Double> CLASSES = read();

    private TestWeight() {}

    /**
     * Equivalent test weight, kg (40 CFR 1066.805).
     *
     * @param loadedKg loaded vehicle weight, kg, up to 2062 lb
     */
    public static double ofKg(double loadedKg) {
        Check.positive(loadedKg, "loadedKg");
        Map.Entry<Double, Double> row = CLASSES.ceilingEntry(Math.rint(MassUnit.POUND.fromSi(loadedKg)));
        if (row == null) {
            throw new InvalidInput("loadedKg is above the classes tabled here");
        }
        return MassUnit.POUND.toSi(row.getValue());
    }

    private static NavigableMap<Double, Double> read() {
        NavigableMap<Double, Double> classes = new TreeMap<>();
        Datum.table("/roadload/test-weight.csv")
                .forEach((name, row) -> classes.put(Datum.in(row, "most").value(), Double.valueOf(name)));
        return classes;
    }
}
