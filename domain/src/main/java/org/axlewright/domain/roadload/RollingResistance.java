package org.axlewright.domain.roadload;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.PressureUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;

/**
 * Rolling resistance coefficient of a surface, from {@code roadload/rolling-resistance.csv}.
 *
 * @param typical what is reckoned with
 * @param low least of what the sources print
 * @param high most of what the sources print
 */
public record RollingResistance(Datum typical, Datum low, Datum high) {

    /** Where {@link #paved} comes from. */
    public static final Source PRESSURE_AND_SPEED =
            Source.weak("engineering tables: car tyre on a paved road, by pressure and speed");

    private static final Map<Surface, RollingResistance> TABLE = read();

    public static RollingResistance of(Surface surface) {
        RollingResistance row = TABLE.get(surface);
        if (row == null) {
            throw new IllegalStateException("the table of surfaces lacks " + surface);
        }
        return row;
    }

    /**
     * Car tyre on a smooth paved road: 0.005 + (0.01 + 0.0095 (v/100)²)/p with p in bar and v in km/h.
     *
     * @param pressurePa inflation pressure, Pa
     * @param speedMPS m/s
     */
    public static double paved(double pressurePa, double speedMPS) {
        double bar = PressureUnit.BAR.fromSi(Check.positive(pressurePa, "pressurePa"));
        double hundreds = SpeedUnit.KILOMETRE_PER_HOUR.fromSi(Check.notNegative(speedMPS, "speedMPS")) / 100;
        return 0.005 + (0.01 + 0.0095 * hundreds * hundreds) / bar;
    }

    private static Map<Surface, RollingResistance> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/roadload/rolling-resistance.csv");
        Map<Surface, RollingResistance> surfaces = new EnumMap<>(Surface.class);
        for (Surface surface : Surface.values()) {
            Map<String, Datum> row = table.getOrDefault(surface.toString(), Map.of());
            surfaces.put(
                    surface,
                    new RollingResistance(Datum.in(row, "typical"), Datum.in(row, "low"), Datum.in(row, "high")));
        }
        return surfaces;
    }
}
