package org.axlewright.domain.fit;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.fit.FitInput.Charger;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** The charger against the pack: end voltage for each cell, profile, start, current, cold. */
final class ChargerFit {

    private static final Source MAKER = Source.derived("comparison with the limit sent");
    private static final Source PROFILE =
            Source.weak("owners' case: a gel profile on flooded blocks, then no charge at all");

    private ChargerFit() {}

    static PairSheet withPack(FitSituation situation) {
        PairSheet sheet = situation.between(Part.PACK, Part.CHARGER);
        Charger charger = situation.input().charger();
        if (charger == null) {
            return sheet;
        }
        Double perCellV = situation.voltages().chargerEndPerCellV();
        if (perCellV == null) {
            sheet.undecided("end-voltage-per-cell", null, "/charger/endVoltage");
        } else {
            endVoltage(situation, perCellV, sheet);
        }
        profile(situation.pack().chemistry(), charger, sheet);
        start(situation, charger, sheet);
        current(situation, charger, sheet);
        ControllerFit.charging(situation, "charge-temperature", false, sheet);
        return sheet;
    }

    private static void endVoltage(FitSituation situation, double perCellV, PairSheet sheet) {
        Pack pack = situation.pack();
        Chemistry chemistry = pack.chemistry();
        CellLimits cell = CellLimits.of(chemistry);
        Datum most = cell.mostEndV();
        Datum equalise = cell.equaliseV();
        double nominalV = CellData.of(chemistry).nominalV().value();
        if (pack.limits().overV() != null) {
            sheet.most(
                    "over-voltage-trip",
                    VOLTAGE,
                    perCellV,
                    pack.limits().overV(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "charger-trips-battery-management",
                                    Level.WARNING,
                                    "The charger goes to {actual} for each cell, battery management ends the charge at {limit}: it opens at the end of every charge",
                                    MAKER)
                            .at("/charger/endVoltage")
                            .action("A charger, or a setting, for this number of cells."));
        }
        if (perCellV > most.value() * (1 + 1e-9) && equalise != null && perCellV <= equalise.value() * (1 + 1e-9)) {
            sheet.judged(
                    "end-voltage-per-cell",
                    Verdict.FITS_WITH_LIMITS,
                    new Measure(perCellV, VOLTAGE),
                    new Measure(most.value(), VOLTAGE),
                    Finding.of(
                                    "only-for-equalising",
                                    Level.CAUTION,
                                    "{actual} for each cell is an equalising charge; an ordinary one ends at {limit}",
                                    equalise.source())
                            .at("/charger/endVoltage")
                            .action(
                                    "Only now and then, by the battery maker's instruction, ventilated, electronics disconnected."));
        } else if (perCellV > cell.leastEndV().value()) {
            sheet.most(
                    "end-voltage-per-cell",
                    VOLTAGE,
                    perCellV,
                    most.value(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "charger-end-voltage-too-high",
                                    Level.DANGER,
                                    "The charger goes to {actual} for each cell, " + chemistry
                                            + " takes {limit}: overcharged "
                                            + (chemistry.isLeadAcid()
                                                    ? "it gasses and dries out"
                                                    : "it can burn, and only battery management stands before that")
                                            + hint(perCellV * pack.cells(), pack),
                                    most.source())
                            .at("/charger/endVoltage")
                            .action(
                                    "Do not connect it. A charger, or a setting, for this chemistry and number of cells."));
            spread(cell, perCellV, situation);
        } else {
            boolean never = perCellV < nominalV;
            sheet.least(
                    "end-voltage-per-cell",
                    VOLTAGE,
                    perCellV,
                    cell.leastEndV().value(),
                    never ? Verdict.DOES_NOT_FIT : Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "charger-end-voltage-too-low",
                                    never ? Level.WARNING : Level.CAUTION,
                                    "The charger ends at {actual} for each cell, " + chemistry
                                            + " wants {limit} to get full" + hint(perCellV * pack.cells(), pack),
                                    cell.leastEndV().source())
                            .at("/charger/endVoltage")
                            .action(
                                    never
                                            ? "This charger belongs to fewer cells in series."
                                            : "The pack stays below full: less range, and lead-acid sulphates. Set the charger for this pack."));
        }
    }

    /** What the end voltage would fit, where some chemistry or count fits it to the hundredth of a volt for each cell. */
    private static String hint(double endV, Pack pack) {
        StringBuilder fitting = new StringBuilder();
        for (Chemistry chemistry : Chemistry.values()) {
            double perCellV = endV / pack.cells();
            CellLimits cell = CellLimits.of(chemistry);
            if (chemistry != pack.chemistry()
                    && perCellV >= cell.leastEndV().value()
                    && perCellV <= cell.mostEndV().value() * (1 + 1e-9)) {
                fitting.append(fitting.isEmpty() ? "; with as many cells it suits " : " or ")
                        .append(chemistry);
            }
        }
        double fullV = CellLimits.of(pack.chemistry()).mostEndV().value();
        double cells = endV / fullV;
        if (Math.abs(cells - Math.rint(cells)) * fullV < 0.01 * fullV && Math.rint(cells) >= 1) {
            fitting.append("; of this chemistry it suits ")
                    .append((long) Math.rint(cells))
                    .append(" cells");
        }
        return fitting.toString();
    }

    private static void spread(CellLimits cell, double perCellV, FitSituation situation) {
        Datum allowance = cell.spreadV();
        double most = cell.mostEndV().value();
        if (allowance == null || perCellV > most * (1 + 1e-9) || perCellV <= most - allowance.value()) {
            return;
        }
        situation
                .trace()
                .find(
                        Finding.of(
                                        "no-room-for-spread",
                                        Level.NOTICE,
                                        "{actual} for each cell on average leaves little room to {limit}: the highest cell gets there before the pack does, and battery management ends the charge",
                                        allowance.source())
                                .at("/charger/endVoltage")
                                .actual(new Measure(perCellV, VOLTAGE))
                                .limit(new Measure(most, VOLTAGE))
                                .action(
                                        "A slightly lower end voltage in daily use; battery management must balance the cells."));
    }

    private static void profile(Chemistry chemistry, Charger charger, PairSheet sheet) {
        Chemistry profile = charger.profile();
        if (profile == null) {
            sheet.undecided("profile", null, "/charger/profile");
        } else if (profile == chemistry) {
            sheet.judged("profile", Verdict.FITS, null, null, null);
        } else {
            sheet.judged(
                    "profile",
                    Verdict.DOES_NOT_FIT,
                    null,
                    null,
                    Finding.of(
                                    "profile-of-another-chemistry",
                                    profile.isLeadAcid() == chemistry.isLeadAcid() ? Level.WARNING : Level.DANGER,
                                    "The charger is set for " + profile + ", the pack is " + chemistry
                                            + ": wrong end voltage, and stages that harm it",
                                    PROFILE)
                            .at("/charger/profile")
                            .action("Set the profile of the battery maker; if there is none, another charger."));
        }
    }

    private static void start(FitSituation situation, Charger charger, PairSheet sheet) {
        Double startV = charger.startV();
        if (startV == null) {
            return;
        }
        Voltages voltages = situation.voltages();
        boolean never = startV > voltages.fullV();
        sheet.least(
                "start-voltage",
                VOLTAGE,
                never ? voltages.fullV() : voltages.cutOffV(),
                startV,
                never ? Verdict.DOES_NOT_FIT : Verdict.FITS_WITH_LIMITS,
                Finding.of(
                                "charger-will-not-start",
                                never ? Level.WARNING : Level.NOTICE,
                                never
                                        ? "The charger starts from {limit}, full the pack has {actual}: it never starts"
                                        : "The charger starts from {limit}; a pack run down to {actual} or left standing lies below it, and the charger does nothing",
                                MAKER)
                        .at("/charger/startVoltage")
                        .action(
                                "Bring each block up with a small charger of its own voltage until the string passes this, then use the main charger."));
    }

    private static void current(FitSituation situation, Charger charger, PairSheet sheet) {
        Double currentA = currentA(situation, charger);
        Double limitA = situation.allowed().chargeA();
        if (currentA == null || limitA == null) {
            return;
        }
        sheet.most(
                "charge-current",
                CURRENT,
                currentA,
                limitA,
                Verdict.DOES_NOT_FIT,
                Finding.of(
                                "charger-over-charge-limit",
                                Level.WARNING,
                                "The charger gives {actual}, the pack takes {limit}: battery management opens, or the cells suffer",
                                MAKER)
                        .at(charger.currentA() == null ? "/charger/power" : "/charger/current")
                        .action("Set the charger down, or a smaller one."));
    }

    /** A charger of constant power gives most at the lowest voltage. */
    private static @Nullable Double currentA(FitSituation situation, Charger charger) {
        Double byPowerA = charger.powerW() == null
                ? null
                : (Double) (charger.powerW() / situation.voltages().cutOffV());
        if (charger.currentA() == null || byPowerA == null) {
            return charger.currentA() == null ? byPowerA : charger.currentA();
        }
        return Math.min(charger.currentA(), byPowerA);
    }
}
