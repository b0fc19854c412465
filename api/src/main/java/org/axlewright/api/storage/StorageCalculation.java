package org.axlewright.api.storage;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.storage.Storage;
import org.axlewright.domain.storage.StorageHabit;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Storage: from chemistry, temperature and quiescent load to the day of the next charge. */
public final class StorageCalculation implements Calculation<Storage.Input, StorageCalculation.Output, StorageResult> {

    private static final Needs NEEDS = Needs.value("/pack/chemistry");

    /** What the domain found, with what it was found of. */
    public record Output(Storage.Input input, Storage.Result found) {}

    @Override
    public String name() {
        return "storage";
    }

    @Override
    public String question() {
        return "How long may the pack stand, when must it be recharged, and does it freeze?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/rechargeBy", "/rechargeWithin", "/stateOfCharge", "/flatAfter");
    }

    @Override
    public Class<StorageResult> resultType() {
        return StorageResult.class;
    }

    @Override
    public Storage.Input resolve(Setup setup, Resolution resolution) {
        return StorageSections.resolve(setup, resolution);
    }

    @Override
    public Output calculate(Storage.Input input, Trace trace) {
        return new Output(input, Storage.of(input, trace));
    }

    @Override
    public StorageResult show(Output output, UnitSystem units) {
        Storage.Input input = output.input();
        Storage.Result found = output.found();
        Storage.After after = found.after();
        Double capacityC = input.capacityC();
        return new StorageResult(
                units.time(found.rechargeWithinS()),
                text(found.rechargeBy()),
                after == null ? null : (Double) after.stateOfCharge(),
                units.time(found.flatAfterS()),
                text(found.flatOn()),
                found.selfDischargeShare(),
                capacityC == null ? null : (Double) found.loadShare(),
                after == null ? null : charge(after.lostToSelfDischarge(), capacityC, units),
                after == null ? null : charge(after.lostToLoad(), capacityC, units),
                temperature(found.freezingC(), units),
                after == null ? null : temperature(after.freezingC(), units),
                StorageHabit.of(input.chemistry()).storeAt().value());
    }

    private static @Nullable String text(@Nullable Object day) {
        return day == null ? null : day.toString();
    }

    private static @Nullable Charge charge(double share, @Nullable Double capacityC, UnitSystem units) {
        return capacityC == null ? null : units.charge(share * capacityC);
    }

    private static @Nullable Temperature temperature(@Nullable Double degreesCelsius, UnitSystem units) {
        return degreesCelsius == null ? null : units.temperature(degreesCelsius);
    }
}
