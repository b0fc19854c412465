package org.axlewright.domain.legalclass;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.axlewright.domain.cable.TableFile;
import org.axlewright.domain.legalclass.Condition.Relation;
import org.axlewright.domain.quantity.ForceUnit;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.quantity.PowerUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.quantity.Unit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;

/**
 * A class of vehicle with its published thresholds, from {@code legalclass/classes.csv}, {@code conditions.csv} and {@code brings.csv}.
 *
 * @param code stable name, lower case with hyphens
 * @param kind on what grounds it is asked for
 * @param conditions all of which must be met
 * @param brings equipment and duties that come with it
 */
public record VehicleClass(
        String code,
        Region region,
        Kind kind,
        String name,
        List<Condition> conditions,
        List<Duty> brings,
        Source source) {

    /** On what grounds a class is asked for. {@code toString} is the name in the table. */
    public enum Kind {
        /** What a vehicle is on public roads. */
        ROAD("road"),
        /** What it is where it works. */
        PLACE("place"),
        /** A state's own definition, beside the others. */
        STATE("state");

        private final String token;

        Kind(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /** What a class brings with it. */
    public record Duty(String text, Source source) {}

    private static final Map<String, Unit> UNITS = units();
    private static final List<VehicleClass> TABLE = read();

    /** Every class, in the order in which a vehicle is held against them. */
    public static List<VehicleClass> all() {
        return TABLE;
    }

    private static List<VehicleClass> read() {
        Map<String, List<Condition>> conditions = new LinkedHashMap<>();
        for (String[] row : TableFile.read("/legalclass/conditions.csv").rows()) {
            conditions.computeIfAbsent(row[0], code -> new ArrayList<>()).add(condition(row));
        }
        Map<String, List<Duty>> duties = new LinkedHashMap<>();
        for (String[] row : TableFile.read("/legalclass/brings.csv").rows()) {
            duties.computeIfAbsent(row[0], code -> new ArrayList<>()).add(new Duty(row[1], source(row[3], row[2])));
        }
        List<VehicleClass> classes = new ArrayList<>();
        for (String[] row : TableFile.read("/legalclass/classes.csv").rows()) {
            classes.add(new VehicleClass(
                    row[0],
                    named(Region.values(), row[1]),
                    named(Kind.values(), row[2]),
                    row[3],
                    List.copyOf(conditions.getOrDefault(row[0], List.of())),
                    List.copyOf(duties.getOrDefault(row[0], List.of())),
                    source(row[5], row[4])));
        }
        return List.copyOf(classes);
    }

    private static Condition condition(String[] row) {
        Aspect aspect = Aspect.of(row[1]);
        Relation relation = named(Relation.values(), row[2]);
        Source source = source(row[6], row[5]);
        if (!aspect.measured()) {
            List<String> words = List.of(row[3].split("\\|", -1));
            return new Condition(aspect, relation, 0, 0, words, String.join(" or ", words), source);
        }
        double first = si(row[3]);
        double second = row[4].isEmpty() ? first : si(row[4]);
        String printed = row[4].isEmpty() ? row[3] : row[3] + " (" + row[4] + ")";
        return new Condition(
                aspect, relation, Math.min(first, second), Math.max(first, second), List.of(), printed, source);
    }

    private static Map<String, Unit> units() {
        Map<String, Unit> units = new LinkedHashMap<>();
        Stream.<Unit[]>of(
                        SpeedUnit.values(),
                        MassUnit.values(),
                        LengthUnit.values(),
                        PowerUnit.values(),
                        ForceUnit.values())
                .flatMap(Stream::of)
                .forEach(unit -> units.putIfAbsent(unit.toString(), unit));
        return units;
    }

    /** A figure with its unit, or a count. */
    private static double si(String printed) {
        String[] parts = printed.split(" ", -1);
        double value = Double.parseDouble(parts[0]);
        if (parts.length == 1) {
            return value;
        }
        Unit unit = UNITS.get(parts[1]);
        if (unit == null) {
            throw new IllegalStateException("no unit in " + printed);
        }
        return unit.toSi(value);
    }

    private static Source source(String citation, String standing) {
        return new Source(citation, Standing.valueOf(standing.toUpperCase(Locale.ROOT)));
    }

    private static <E extends Enum<E>> E named(E[] values, String token) {
        Function<E, Boolean> same = value -> value.toString().equals(token);
        return Stream.of(values)
                .filter(same::apply)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no " + token));
    }
}
