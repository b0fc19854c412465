package org.axlewright.domain.roadload;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.trace.Datum;

/**
 * Tyre to ground friction of a dry surface, from {@code roadload/friction.csv}.
 *
 * @param typical what is reckoned with when nobody measured it
 * @param low least of what the sources print
 * @param high most of what the sources print
 */
public record Grip(Datum typical, Datum low, Datum high) {

    private static final Map<Surface, Grip> TABLE = read();

    public static Grip of(Surface surface) {
        Grip row = TABLE.get(surface);
        if (row == null) {
            throw new IllegalStateException("the table of friction lacks " + surface);
        }
        return row;
    }

    private static Map<Surface, Grip> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/roadload/friction.csv");
        Map<Surface, Grip> surfaces = new EnumMap<>(Surface.class);
        for (Surface surface : Surface.values()) {
            Map<String, Datum> row = table.getOrDefault(surface.toString(), Map.of());
            surfaces.put(surface, new Grip(Datum.in(row, "typical"), Datum.in(row, "low"), Datum.in(row, "high")));
        }
        return surfaces;
    }
}
