package org.axlewright.domain.fit;

import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.stream.Collectors;
import org.axlewright.domain.fit.FitInput.Blocks;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.fit.FitResult.ClassPassed;
import org.axlewright.domain.fit.FitResult.MassBand;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in the pack itself. */
final class PackFindings {

    private static final Source MIXING =
            Source.memory("never mix chemistry, age, capacity or make in series; replace lead-acid as a set");
    private static final Source DROP_IN = Source.memory(
            "drop-in lithium blocks: the maker's series limit is the rating of their switching transistors");
    private static final Source LABELS =
            Source.weak("owners' case: 15 and 16 lithium iron phosphate cells are both sold as 48 V");

    private static final Caution DC_ARC = new Caution(
            "dc-arc",
            "A direct-current arc does not go out by itself. Open the pack under load only with a contactor or breaker rated for it,"
                    + " take off jewellery, use insulated tools and cover one terminal.");
    private static final Caution DATA_PLATES = new Caution(
            "makers-ratings",
            "What fits here fits the numbers that were sent. The makers' ratings and instructions bind, local code too; mains wiring"
                    + " is for a licensed electrician.");
    private static final Caution LITHIUM = new Caution(
            "lithium",
            "A lithium pack that is crushed, overcharged, overheated or charged frozen can burn and burns again. It needs battery"
                    + " management that can disconnect it; the maker's limits bind.");
    private static final Caution LEAD_ACID = new Caution(
            "hydrogen",
            "Lead-acid cells give off hydrogen, which explodes from 4 % in air, and hold acid: ventilate, keep flame and sparks away, wear"
                    + " eye protection.");

    private PackFindings() {}

    /** The blocks of the pack against each other. */
    static PairSheet blocks(FitSituation situation) {
        PairSheet sheet = situation.between(Part.BLOCKS, Part.BLOCKS);
        Pack pack = situation.pack();
        Integer count = pack.blocks() == null ? null : pack.blocks().count();
        if (!pack.chemistry().isLeadAcid() && count != null && count > 1) {
            Integer limit = pack.limits().seriesLimit();
            if (limit == null) {
                sheet.undecided("series-limit", Measure.number(count), "/pack/limits/seriesLimit");
            } else {
                sheet.most(
                        "series-limit",
                        NONE,
                        count,
                        limit,
                        Verdict.DOES_NOT_FIT,
                        Finding.of(
                                        "too-many-blocks-in-series",
                                        Level.DANGER,
                                        "{actual} blocks stand in series, their maker allows {limit}: when one opens, its transistors see the whole pack and fail closed",
                                        DROP_IN)
                                .at("/pack/limits/seriesLimit")
                                .action("One pack made for this voltage, with one battery management for all cells."));
            }
        }
        if (pack.mixedAges() || pack.mixedTypes()) {
            String what =
                    pack.mixedAges() && pack.mixedTypes() ? "ages and types" : pack.mixedAges() ? "ages" : "types";
            sheet.judged(
                    "alike",
                    Verdict.FITS_WITH_LIMITS,
                    null,
                    null,
                    Finding.of(
                                    "mixed-in-series",
                                    Level.WARNING,
                                    "Different " + what
                                            + " stand in series: the weakest is overcharged and run flat each time, can reverse, and takes the set with it",
                                    MIXING)
                            .at(pack.mixedAges() ? "/pack/mixed/ages" : "/pack/mixed/types")
                            .action("Replace lead-acid as a set; never put unlike lithium cells in series."));
        }
        return sheet;
    }

    static void find(FitSituation situation, @Nullable MassBand mass, List<ClassPassed> classes) {
        Trace trace = situation.trace();
        Pack pack = situation.pack();
        trace.caution(DATA_PLATES);
        trace.caution(DC_ARC);
        trace.caution(pack.chemistry().isLeadAcid() ? LEAD_ACID : LITHIUM);
        classes(situation.voltages(), classes, trace);
        equalising(situation, trace);
        counts(pack, trace);
        management(pack, trace);
        if (pack.strings() > 1) {
            trace.find(
                    Finding.of(
                                    "strings-share-current",
                                    Level.NOTICE,
                                    "{actual} strings share the current only while they are alike and equally long wired",
                                    Source.derived("currents divide by resistance"))
                            .at("/pack/strings")
                            .actual(Measure.number(pack.strings()))
                            .action(
                                    "Join them at equal voltage only, a fuse for each string; when one opens, the others carry all."));
        }
        if (pack.acMeasured() && pack.resistanceOhm() != null) {
            trace.find(Finding.of(
                            "resistance-reads-low",
                            Level.NOTICE,
                            "A 1 kHz meter reads less than the resistance under load: the voltage will sag further than shown",
                            Source.memory("a 1 kHz reading leaves out the slow part of the resistance"))
                    .at("/pack/resistance/method")
                    .action("Measure the voltage step after ten seconds of a known current and send it as dc-10s."));
        }
        if (mass != null && mass.massKg() != null) {
            mass(mass, mass.massKg(), trace);
        }
    }

    private static void classes(Voltages voltages, List<ClassPassed> classes, Trace trace) {
        for (ClassPassed one : classes) {
            VoltageClass limit = one.limit();
            if (!one.full() || limit == VoltageClass.TOUCH_30_V) {
                continue;
            }
            boolean dangerous = limit == VoltageClass.CLASS_B_60_V;
            trace.find(Finding.of(
                            dangerous ? "above-60-v" : "above-" + limit,
                            dangerous ? Level.WARNING : limit == VoltageClass.RULE_50_V ? Level.NOTICE : Level.CAUTION,
                            "Fully charged the pack has {actual}, above {limit}"
                                    + (one.nominal() ? "" : ", though its nominal voltage is not") + ": "
                                    + limit.meaning(),
                            limit.source())
                    .at("/pack")
                    .actual(new Measure(voltages.highestV(), VOLTAGE))
                    .limit(new Measure(limit.limitV(), VOLTAGE))
                    .action(
                            dangerous
                                    ? "Covers that need a tool, orange cable, warning signs, no bare terminals; have it built or checked by someone trained for such voltages."
                                    : "Choose fuses, cable, contactor and switch by the full-charge voltage."));
        }
    }

    private static void equalising(FitSituation situation, Trace trace) {
        Double equaliseV = situation.voltages().equaliseV();
        double limitV = VoltageClass.CLASS_B_60_V.limitV();
        if (equaliseV != null && equaliseV > limitV && situation.voltages().highestV() <= limitV) {
            trace.find(
                    Finding.of(
                                    "equalising-above-60-v",
                                    Level.CAUTION,
                                    "An equalising charge can take the pack to {actual}, above {limit} DC and above what 60 V parts bear",
                                    Source.memory("equalising charge 2.58 to 2.70 V per cell"))
                            .at("/pack")
                            .actual(new Measure(equaliseV, VOLTAGE))
                            .limit(new Measure(limitV, VOLTAGE))
                            .action(
                                    "Disconnect controller and converter before equalising, unless their makers allow the voltage."));
        }
    }

    private static void counts(Pack pack, Trace trace) {
        Blocks blocks = pack.blocks();
        if (pack.chemistry().isLeadAcid() || blocks == null || blocks.voltageV() == null) {
            return;
        }
        List<Integer> counts = CellCounts.soldAs(pack.chemistry(), blocks.voltageV());
        if (counts.size() < 2) {
            return;
        }
        double fullV = CellData.of(pack.chemistry()).fullV().value();
        trace.find(Finding.of(
                        "voltage-matches-several-counts",
                        Level.CAUTION,
                        ControllerFit.plain(blocks.voltageV()) + " V is said of "
                                + counts.stream().map(String::valueOf).collect(Collectors.joining(" and of "))
                                + " cells of " + pack.chemistry() + ": between the counts lie "
                                + "{actual} at full charge, and the count of cells decides, not the label",
                        LABELS)
                .at("/pack/blocks/voltage")
                .actual(new Measure(fullV * (counts.get(counts.size() - 1) - counts.get(0)), VOLTAGE))
                .action("Count the cells, or measure at the end of a full charge: each gives "
                        + ControllerFit.plain(fullV) + " V."));
    }

    private static void management(Pack pack, Trace trace) {
        if (!CellCounts.ofAnother(pack.chemistry(), pack.cells()).isEmpty()) {
            trace.find(Finding.of(
                            "cells-of-another-chemistry",
                            Level.CAUTION,
                            "{actual} cells in series are usual for "
                                    + CellCounts.ofAnother(pack.chemistry(), pack.cells()) + ", not for "
                                    + pack.chemistry()
                                    + ": with the limits of the wrong chemistry the pack is overcharged or stays nearly empty",
                            Source.weak("owners' case: 14 cells with lithium iron phosphate limits gave 5.5 of 20 Ah"))
                    .at("/pack/cellsInSeries")
                    .actual(Measure.number(pack.cells()))
                    .action("Read the chemistry on the cells and count the cells, not the label of the pack."));
        }
        if (!pack.chemistry().isLeadAcid() && pack.limits().equals(FitInput.Limits.NONE)) {
            trace.find(
                    Finding.of(
                                    "battery-management-unknown",
                                    Level.WARNING,
                                    "No limit of a battery management was sent: lithium without one has nothing that stops an overcharge or a deep discharge of a single cell",
                                    Source.weak("owners' case: 14 cells without battery management, watched by hand"))
                            .at("/pack/limits")
                            .action(
                                    "Send the limits of its sheet; a pack without battery management does not belong in a vehicle."));
        }
    }

    private static void mass(MassBand band, double massKg, Trace trace) {
        boolean light = massKg < band.leastKg();
        if (!light && massKg <= band.mostKg()) {
            return;
        }
        trace.find(Finding.of(
                        light ? "pack-lighter-than-usual" : "pack-heavier-than-usual",
                        Level.CAUTION,
                        light
                                ? "{actual} is little for this energy, such packs weigh {limit} and more: is it the mass of one block, or a capacity that is not there?"
                                : "{actual} is much for this energy, such packs weigh {limit} at the most: is it in pounds, or is the capacity that of one string?",
                        Source.COMMON_PRACTICE)
                .at("/pack/mass")
                .actual(new Measure(massKg, MASS))
                .limit(new Measure(light ? band.leastKg() : band.mostKg(), MASS))
                .action("Weigh the pack, and check chemistry, capacity and strings."));
    }
}
