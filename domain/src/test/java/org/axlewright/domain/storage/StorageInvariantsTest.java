package org.axlewright.domain.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.FreezingPoint;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Trace;

class StorageInvariantsTest {

    private static final double CAPACITY = 360_000;

    private static Storage.Result result(Storage.Input input) {
        return Storage.of(input, Trace.withWorking());
    }

    @Property(seed = "20261125")
    void whatWasThereIsLeftOrLost(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 1) double start,
            @ForAll @DoubleRange(min = 0, max = 50) double loadA,
            @ForAll @DoubleRange(min = 0, max = 3e8) double durationS,
            @ForAll @DoubleRange(min = -40, max = 60) double temperatureC) {
        Storage.After after = Objects.requireNonNull(
                result(StorageCases.input(chemistry, start, CAPACITY, loadA, durationS, temperatureC, null))
                        .after());
        assertThat(after.stateOfCharge() + after.lostToSelfDischarge() + after.lostToLoad())
                .isCloseTo(start, within(1e-9));
        assertThat(after.stateOfCharge()).isBetween(0.0, 1.0);
    }

    @Property(seed = "20261125")
    void twoStoragesInARowAreOne(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.01) double loadA,
            @ForAll @DoubleRange(min = 0, max = 5e6) double firstS,
            @ForAll @DoubleRange(min = 0, max = 5e6) double secondS) {
        double middle = Objects.requireNonNull(
                        result(StorageCases.input(chemistry, 1, CAPACITY, loadA, firstS, 10, null))
                                .after())
                .stateOfCharge();
        double twice = Objects.requireNonNull(
                        result(StorageCases.input(chemistry, middle, CAPACITY, loadA, secondS, 10, null))
                                .after())
                .stateOfCharge();
        double once = Objects.requireNonNull(
                        result(StorageCases.input(chemistry, 1, CAPACITY, loadA, firstS + secondS, 10, null))
                                .after())
                .stateOfCharge();
        assertThat(twice).isCloseTo(once, within(1e-9));
    }

    @Property(seed = "20261125")
    void warmerAndMoreLoadNeverKeepLonger(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -20, max = 40) double temperatureC,
            @ForAll @DoubleRange(min = 0, max = 20) double warmer,
            @ForAll @DoubleRange(min = 0, max = 1) double loadA,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        Storage.Result cool = result(StorageCases.input(chemistry, 1, CAPACITY, loadA, null, temperatureC, null));
        Storage.Result warm =
                result(StorageCases.input(chemistry, 1, CAPACITY, loadA + more, null, temperatureC + warmer, null));
        assertThat(warm.rechargeWithinS()).isLessThanOrEqualTo(cool.rechargeWithinS() * (1 + 1e-12));
        assertThat(warm.flatAfterS()).isLessThanOrEqualTo(cool.flatAfterS() * (1 + 1e-12));
    }

    @Property(seed = "20261125")
    void emptierFreezesSooner(
            @ForAll @DoubleRange(min = 0, max = 1) double charge,
            @ForAll @DoubleRange(min = 1, max = 1.28) double gravity,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        assertThat(FreezingPoint.ofChargeC(charge * share))
                .isGreaterThanOrEqualTo(FreezingPoint.ofChargeC(charge) - 1e-9);
        assertThat(FreezingPoint.ofGravityC(1 + (gravity - 1) * share))
                .isGreaterThanOrEqualTo(FreezingPoint.ofGravityC(gravity) - 1e-9);
    }

    @Property(seed = "20261125")
    void theDayLiesWithinTheTime(@ForAll @DoubleRange(min = 0.01, max = 1) double start) {
        StorageHabit habit = StorageHabit.of(Chemistry.AGM);
        LocalDate from = LocalDate.of(2026, 11, 25);
        Storage.Result result = result(new Storage.Input(
                Chemistry.AGM,
                start,
                null,
                0,
                null,
                20,
                20,
                habit.selfDischarge().value(),
                habit.rechargeAt().value(),
                TimeUnit.MONTH.toSi(habit.longestMonths().value()),
                from,
                null));
        double days = java.time.temporal.ChronoUnit.DAYS.between(from, Objects.requireNonNull(result.rechargeBy()));
        assertThat(days)
                .isBetween(
                        TimeUnit.DAY.fromSi(result.rechargeWithinS()) - 1,
                        TimeUnit.DAY.fromSi(result.rechargeWithinS()));
    }
}
