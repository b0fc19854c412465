package org.axlewright.domain.ownership;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Datum;

/**
 * What is taken of a pack of one chemistry when its option does not say, from {@code ownership/chemistries.csv}.
 *
 * @param calendarLifeYears years of service
 * @param cycleLife cycles at the depth of daily use
 * @param batteryEfficiency energy out over energy in
 * @param chargerEfficiency output over input
 */
public record OwnershipHabit(
        Datum calendarLifeYears, Datum cycleLife, Datum batteryEfficiency, Datum chargerEfficiency) {

    private static final Map<Chemistry, OwnershipHabit> TABLE = read();

    public static OwnershipHabit of(Chemistry chemistry) {
        OwnershipHabit habit = TABLE.get(chemistry);
        if (habit == null) {
            throw new IllegalStateException("the table of ownership lacks " + chemistry);
        }
        return habit;
    }

    private static Map<Chemistry, OwnershipHabit> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/ownership/chemistries.csv");
        Map<Chemistry, OwnershipHabit> habits = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<String, Datum> row = table.getOrDefault(chemistry.toString(), Map.of());
            habits.put(
                    chemistry,
                    new OwnershipHabit(
                            Datum.in(row, "calendar-life"),
                            Datum.in(row, "cycle-life"),
                            Datum.in(row, "battery-efficiency"),
                            Datum.in(row, "charger-efficiency")));
        }
        return habits;
    }
}
