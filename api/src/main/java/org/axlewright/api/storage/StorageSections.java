package org.axlewright.api.storage;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.IsoDate;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.storage.Storage;
import org.axlewright.domain.storage.StorageHabit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections pack and storage to the checked input: defaults, and what can't be answered. */
final class StorageSections {

    private static final org.axlewright.api.section.Storage NOTHING =
            new org.axlewright.api.section.Storage(null, null, null, null, null, null, null, null, null, null);

    private StorageSections() {}

    static Storage.Input resolve(Setup setup, Resolution resolution) {
        Pack pack = Objects.requireNonNull(setup.pack(), "pack");
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        org.axlewright.api.section.Storage sent = Objects.requireNonNullElse(setup.storage(), NOTHING);
        StorageHabit habit = StorageHabit.of(chemistry);
        LocalDate from = sent.from() == null ? null : IsoDate.Reader.read(sent.from());
        Double durationS = duration(sent, from, resolution);
        Double capacityC = capacityC(setup, pack, resolution);
        double quiescentA = quiescentA(sent, pack, capacityC, resolution);
        if (sent.specificGravity() != null && !chemistry.isLeadAcid()) {
            resolution.refuse(Fault.contradiction(
                    "/storage/specificGravity", "Only lead-acid has an acid whose gravity can be read"));
        }
        resolution.refuseIfFaulty();
        double temperatureC = sent.temperature() != null
                ? sent.temperature().si()
                : resolution.assume(
                        "storage-temperature",
                        "/storage/temperature",
                        new Measure(20, TEMPERATURE),
                        "a room; colder keeps longer, warmer shorter",
                        Source.COMMON_PRACTICE);
        Storage.Input input = new Storage.Input(
                chemistry,
                stateOfCharge(pack, resolution),
                capacityC,
                quiescentA,
                durationS,
                temperatureC,
                sent.lowestTemperature() != null
                        ? sent.lowestTemperature().si()
                        : resolution.assume(
                                "lowest-temperature",
                                "/storage/lowestTemperature",
                                new Measure(temperatureC, TEMPERATURE),
                                "as cold as the mean: give the coldest night",
                                Source.COMMON_PRACTICE),
                share(
                        "self-discharge",
                        "/storage/selfDischarge",
                        sent.selfDischarge(),
                        habit.selfDischarge(),
                        resolution),
                share("recharge-at", "/storage/rechargeAt", sent.rechargeAt(), habit.rechargeAt(), resolution),
                TimeUnit.MONTH.toSi(habit.longestMonths().value()),
                from,
                sent.specificGravity());
        notAnswered(input, resolution);
        return input;
    }

    private static double stateOfCharge(Pack pack, Resolution resolution) {
        return pack.stateOfCharge() != null
                ? pack.stateOfCharge()
                : resolution.assume(
                        "stored-full",
                        "/pack/stateOfCharge",
                        Measure.number(1),
                        "a pack is charged before it is put away",
                        Source.COMMON_PRACTICE);
    }

    private static double share(
            String code, String pointer, @Nullable Double sent, Datum usual, Resolution resolution) {
        return sent != null
                ? sent
                : resolution.assume(
                        code, pointer, Measure.number(usual.value()), "usual for the chemistry", usual.source());
    }

    private static @Nullable Double duration(
            org.axlewright.api.section.Storage sent, @Nullable LocalDate from, Resolution resolution) {
        if (sent.duration() != null) {
            return sent.duration().si();
        }
        if (sent.until() == null) {
            return null;
        }
        if (from == null) {
            resolution.missing("/storage/from");
            return null;
        }
        double days = ChronoUnit.DAYS.between(from, IsoDate.Reader.read(sent.until()));
        if (days < 0) {
            resolution.refuse(Fault.contradiction("/storage/until", "The last day lies before the first"));
            return null;
        }
        return resolution.assume(
                "days-between",
                "/storage/duration",
                new Measure(TimeUnit.DAY.toSi(days), TIME),
                "from the first day to the last",
                Source.derived("calendar"));
    }

    private static @Nullable Double capacityC(Setup setup, Pack pack, Resolution resolution) {
        return PackSections.CAPACITY.missing(setup).isEmpty()
                ? (Double)
                        (PackSections.string(pack, new Resolution()).ratedC() * PackSections.strings(pack, resolution))
                : null;
    }

    private static double quiescentA(
            org.axlewright.api.section.Storage sent, Pack pack, @Nullable Double capacityC, Resolution resolution) {
        double current = si(sent.quiescentCurrent());
        double power = si(sent.quiescentPower());
        if (current == 0 && power == 0) {
            if (sent.quiescentCurrent() == null && sent.quiescentPower() == null) {
                resolution.assume(
                        "nothing-left-on",
                        "/storage/quiescentCurrent",
                        new Measure(0, CURRENT),
                        "a main switch is open; converters, displays and battery management draw tens of milliamperes where it is not",
                        Source.COMMON_PRACTICE);
            }
            return 0;
        }
        if (capacityC == null) {
            resolution.missing("/pack/capacity");
        }
        Integer cells = PackSections.cellsInSeries(pack);
        if (power > 0 && cells == null) {
            resolution.missing("/pack/cellsInSeries");
        }
        if (capacityC == null || (power > 0 && cells == null)) {
            return 0;
        }
        double nominalV = cells == null
                ? 1
                : cells
                        * CellData.of(Objects.requireNonNull(pack.chemistry()))
                                .nominalV()
                                .value();
        return power > 0 ? power / nominalV : current;
    }

    private static void notAnswered(Storage.Input input, Resolution resolution) {
        List<String> duration = input.durationS() == null ? List.of("/storage/duration", "/storage/until") : List.of();
        List<String> charge = new ArrayList<>(duration);
        List<String> capacity = input.capacityC() == null ? List.of("/pack/capacity") : List.of();
        charge.addAll(capacity);
        List<String> from = input.from() == null ? List.of("/storage/from") : List.of();
        resolution.notAnswered("/rechargeBy", from);
        resolution.notAnswered("/flatOn", from);
        resolution.notAnswered("/stateOfCharge", duration);
        resolution.notAnswered("/quiescentPerMonth", capacity);
        resolution.notAnswered("/lostToSelfDischarge", charge);
        resolution.notAnswered("/lostToQuiescentLoad", charge);
        if (input.chemistry().isLeadAcid()) {
            resolution.notAnswered("/freezingPointAtEnd", duration);
        }
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
