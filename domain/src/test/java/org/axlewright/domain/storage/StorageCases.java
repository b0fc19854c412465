package org.axlewright.domain.storage;

import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Packs that stand, for the tests. */
final class StorageCases {

    private StorageCases() {}

    static Storage.Input input(
            Chemistry chemistry,
            double start,
            @Nullable Double capacityC,
            double quiescentA,
            @Nullable Double durationS,
            double temperatureC,
            @Nullable Double rate) {
        StorageHabit habit = StorageHabit.of(chemistry);
        return new Storage.Input(
                chemistry,
                start,
                capacityC,
                quiescentA,
                durationS,
                temperatureC,
                temperatureC,
                rate == null ? habit.selfDischarge().value() : rate,
                habit.rechargeAt().value(),
                TimeUnit.MONTH.toSi(habit.longestMonths().value()),
                null,
                null);
    }
}
