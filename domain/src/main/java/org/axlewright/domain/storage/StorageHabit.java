package org.axlewright.domain.storage;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Datum;

/**
 * How a pack of one chemistry stands in storage, from {@code storage/chemistries.csv}.
 *
 * @param selfDischarge share of the rated capacity lost in a month at 20 degrees Celsius
 * @param rechargeAt state of charge at which it must be recharged, 0 to 1
 * @param longestMonths after which it is recharged whatever its state of charge
 * @param storeAt state of charge to store it at, 0 to 1
 */
public record StorageHabit(Datum selfDischarge, Datum rechargeAt, Datum longestMonths, Datum storeAt) {

    private static final Map<Chemistry, StorageHabit> TABLE = read();

    public static StorageHabit of(Chemistry chemistry) {
        StorageHabit habit = TABLE.get(chemistry);
        if (habit == null) {
            throw new IllegalStateException("the table of storage lacks " + chemistry);
        }
        return habit;
    }

    private static Map<Chemistry, StorageHabit> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/storage/chemistries.csv");
        Map<Chemistry, StorageHabit> habits = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<String, Datum> row = table.getOrDefault(chemistry.toString(), Map.of());
            habits.put(
                    chemistry,
                    new StorageHabit(
                            Datum.in(row, "self-discharge"),
                            Datum.in(row, "recharge-at"),
                            Datum.in(row, "longest"),
                            Datum.in(row, "store-at")));
        }
        return habits;
    }
}
