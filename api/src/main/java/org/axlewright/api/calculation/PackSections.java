package org.axlewright.api.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.axlewright.api.section.Pack;
import org.axlewright.domain.pack.AtTemperature;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** The pack, one rule for every question: cells in series decide the voltage, and the capacity is that of one string. */
public final class PackSections {

    /** Cells in series, or blocks that tell them: lead-acid by their voltage, others by the cells of one block. */
    public static final Needs CELLS = Needs.one(
            Needs.value("/pack/cellsInSeries"),
            Needs.all("/pack/blocks/count", "/pack/blocks/voltage"),
            Needs.all("/pack/blocks/count", "/pack/blocks/cellsInSeries"));

    /** Capacity of one string, or a maker's rows. */
    public static final Needs CAPACITY = Needs.one(
            Needs.value("/pack/capacity"),
            Needs.some("/pack/capacityRows", Needs.all("/pack/capacityRows/0/current", "/pack/capacityRows/0/time")));

    private PackSections() {}

    /**
     * Cells in series, or null when they can't be told: lithium blocks have a voltage by their maker's taste, so their cells must be
     * counted.
     */
    public static @Nullable Integer cellsInSeries(Pack pack) {
        if (pack.cellsInSeries() != null) {
            return pack.cellsInSeries();
        }
        Pack.Blocks blocks = pack.blocks();
        if (blocks == null || blocks.count() == null) {
            return null;
        }
        if (blocks.cellsInSeries() != null) {
            return blocks.count() * blocks.cellsInSeries();
        }
        if (blocks.voltage() == null
                || pack.chemistry() == null
                || !pack.chemistry().isLeadAcid()) {
            return null;
        }
        OptionalInt cells = PackVoltages.cellsInBlocks(
                pack.chemistry(), blocks.count(), blocks.voltage().si());
        return cells.isPresent() ? (Integer) cells.getAsInt() : null;
    }

    /** Strings in parallel. */
    public static int strings(Pack pack, Resolution resolution) {
        return pack.strings() != null
                ? pack.strings()
                : resolution.assume(
                        "one-string", "/pack/strings", 1, "one string unless more are sent", Source.COMMON_PRACTICE);
    }

    /** Share of the rated capacity that is left. */
    public static double health(Pack pack, Resolution resolution) {
        return pack.health() != null
                ? pack.health()
                : resolution.assume(
                        "pack-as-new",
                        "/pack/health",
                        Measure.number(1),
                        "a pack that gives its rated capacity; makers count 0.8 as the end of life",
                        Source.COMMON_PRACTICE);
    }

    /** What one string gives. Call when {@link #CAPACITY} is met and the chemistry is there. */
    public static DischargeCapacity string(Pack pack, Resolution resolution) {
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        List<Pack.CapacityRow> sent = pack.capacityRows();
        if (pack.capacity() == null && sent != null && !sent.isEmpty()) {
            List<DischargeCapacity.Row> rows =
                    sent.stream().map(PackSections::row).toList();
            if (rows.size() > 1) {
                return DischargeCapacity.rows(rows);
            }
            DischargeCapacity.Row only = rows.get(0);
            return DischargeCapacity.rated(only.capacityC(), only.timeS(), exponent(pack, chemistry, resolution));
        }
        double capacityC = Objects.requireNonNull(pack.capacity(), "capacity").si();
        Datum hours = CellData.of(chemistry).ratedHours();
        double ratedS = pack.ratedHours() != null
                ? pack.ratedHours().time().si()
                : resolution.assume(
                        "rated-hours",
                        "/pack/ratedHours",
                        new Measure(TimeUnit.HOUR.toSi(hours.value()), Dimension.TIME),
                        "hour rate at which the capacity of " + chemistry + " is usually printed",
                        hours.source());
        return DischargeCapacity.rated(capacityC, ratedS, exponent(pack, chemistry, resolution));
    }

    private static double exponent(Pack pack, Chemistry chemistry, Resolution resolution) {
        Datum usual = CellData.of(chemistry).peukertExponent();
        return pack.peukertExponent() != null
                ? pack.peukertExponent()
                : resolution.assume(
                        "peukert-exponent",
                        "/pack/peukertExponent",
                        Measure.number(usual.value()),
                        "usual for " + chemistry + "; grows with age",
                        usual.source());
    }

    private static DischargeCapacity.Row row(Pack.CapacityRow row) {
        return new DischargeCapacity.Row(
                Objects.requireNonNull(row.current(), "current").si(),
                Objects.requireNonNull(row.time(), "time").si());
    }

    /** Limits by temperature, as far as a row says its temperature; what lacks it is noted as missing. */
    public static List<AtTemperature> byTemperature(Pack.Limits limits, Resolution resolution) {
        List<AtTemperature> rows = new ArrayList<>();
        List<Pack.AtTemperature> sent = limits.byTemperature() == null ? List.of() : limits.byTemperature();
        for (int i = 0; i < sent.size(); i++) {
            Pack.AtTemperature row = sent.get(i);
            if (row.temperature() == null) {
                resolution.missing("/pack/limits/byTemperature/" + i + "/temperature");
            } else {
                rows.add(new AtTemperature(
                        row.temperature().si(),
                        row.charge() == null ? null : (Double) row.charge().si(),
                        row.discharge() == null
                                ? null
                                : (Double) row.discharge().si()));
            }
        }
        return List.copyOf(rows);
    }
}
