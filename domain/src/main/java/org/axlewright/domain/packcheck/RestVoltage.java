package org.axlewright.domain.packcheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/**
 * State of charge from the voltage of a cell at rest, by {@code packcheck/rest-voltages.csv}. Between two rows of lead-acid and nickel
 * manganese cobalt a straight line (the voltage of acid is linear in its gravity); between those of lithium iron phosphate nothing can be
 * told.
 */
public final class RestVoltage {

    private static final Map<Chemistry, List<Row>> TABLE = read();

    private record Row(double stateOfCharge, Datum voltage) {}

    /**
     * What a voltage at rest tells.
     *
     * @param value best estimate, 0 to 1; null where only the two bounds are known
     * @param least at least this
     * @param most at most this
     */
    public record Told(@Nullable Double value, double least, double most, Source source) {}

    private RestVoltage() {}

    /**
     * The state of charge.
     *
     * @param perCellV of one cell, 8 to 24 h after charge or discharge
     */
    public static Told of(Chemistry chemistry, double perCellV) {
        Check.finite(perCellV, "perCellV");
        List<Row> rows = rows(chemistry);
        Row first = rows.get(0);
        if (perCellV < first.voltage().value()) {
            return new Told(null, 0, first.stateOfCharge(), first.voltage().source());
        }
        for (int i = 1; i < rows.size(); i++) {
            Row below = rows.get(i - 1);
            Row above = rows.get(i);
            if (perCellV < above.voltage().value()) {
                double share = (perCellV - below.voltage().value())
                        / (above.voltage().value() - below.voltage().value());
                double between = below.stateOfCharge() + share * (above.stateOfCharge() - below.stateOfCharge());
                return new Told(
                        chemistry == Chemistry.LFP ? null : (Double) between,
                        below.stateOfCharge(),
                        above.stateOfCharge(),
                        above.voltage().source());
            }
        }
        Row last = rows.get(rows.size() - 1);
        return new Told(
                last.stateOfCharge() == 1 ? (Double) 1.0 : null,
                last.stateOfCharge(),
                1,
                last.voltage().source());
    }

    /** Voltage of a cell at rest above which the table ends, V. */
    public static double fullV(Chemistry chemistry) {
        List<Row> rows = rows(chemistry);
        return rows.get(rows.size() - 1).voltage().value();
    }

    private static List<Row> rows(Chemistry chemistry) {
        List<Row> rows = TABLE.get(chemistry);
        if (rows == null) {
            throw new IllegalStateException("the table of rest voltages lacks " + chemistry);
        }
        return rows;
    }

    private static Map<Chemistry, List<Row>> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/packcheck/rest-voltages.csv");
        Map<Chemistry, List<Row>> rows = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            List<Row> sorted = new ArrayList<>();
            table.getOrDefault(chemistry.toString(), Map.of())
                    .forEach((share, voltage) -> sorted.add(new Row(Double.parseDouble(share), voltage)));
            sorted.sort(Comparator.comparingDouble(Row::stateOfCharge));
            rows.put(chemistry, List.copyOf(sorted));
        }
        return rows;
    }
}
