package org.axlewright.domain.frame;

import java.util.Map;
import org.axlewright.domain.trace.Datum;
import org.jspecify.annotations.Nullable;

/** Steel of a tube. {@code toString} is the name in requests. */
public enum SteelGrade {
    A500_A("a500-a"),
    A500_B("a500-b"),
    A500_C("a500-c"),
    A500_D("a500-d"),
    A513_1010("a513-1010"),
    A513_1020("a513-1020"),
    S235("s235"),
    S275("s275"),
    S355("s355");

    private static final double MEGAPASCAL = 1e6;

    private static final Map<String, Map<String, Datum>> TABLE = Datum.table("/frame/steels.csv");

    private final String token;

    SteelGrade(String token) {
        this.token = token;
    }

    /** Least yield strength, Pa; the standards tell round tube from square and rectangular. */
    public Datum yieldPa(TubeShape shape) {
        Datum printed = Datum.in(row(), shape == TubeShape.ROUND ? "round" : "flat");
        return new Datum(printed.value() * MEGAPASCAL, printed.source());
    }

    /** Least tensile strength, Pa; null where the table has none. */
    public @Nullable Datum tensilePa() {
        Datum printed = row().get("tensile");
        return printed == null ? null : new Datum(printed.value() * MEGAPASCAL, printed.source());
    }

    /** Correlation factor of fillet welds on this steel; null where the table has none. */
    public @Nullable Datum weldFactor() {
        return row().get("weld");
    }

    /** Whether the standard admits a wall 10 % under nominal. */
    public boolean wallMayBeUnder() {
        return token.startsWith("a500");
    }

    private Map<String, Datum> row() {
        return TABLE.getOrDefault(token, Map.of());
    }

    @Override
    public String toString() {
        return token;
    }
}
