package org.axlewright.api.section;

import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What no pack, controller, converter, contactor or set of readings can be. */
final class FitContradictions {

    private FitContradictions() {}

    static void find(Setup setup, List<Fault> faults) {
        Pack pack = setup.pack();
        if (pack != null) {
            limits(pack.limits(), faults);
            cellsOfBlocks(pack, faults);
        }
        drive(setup.drive(), faults);
        accessories(setup, faults);
        readings(setup.readings(), faults);
    }

    private static void limits(Pack.@Nullable Limits limits, List<Fault> faults) {
        if (limits == null) {
            return;
        }
        String at = "/pack/limits/";
        ordered(
                at + "minimumChargeTemperature",
                limits.minimumChargeTemperature(),
                at + "maximumChargeTemperature",
                limits.maximumChargeTemperature(),
                faults);
        ordered(at + "underVoltage", limits.underVoltage(), at + "overVoltage", limits.overVoltage(), faults);
        List<Pack.AtTemperature> rows = limits.byTemperature() == null ? List.of() : limits.byTemperature();
        for (int i = 1; i < rows.size(); i++) {
            Quantity before = Contradictions.complete(rows.get(i - 1).temperature());
            Quantity here = Contradictions.complete(rows.get(i).temperature());
            if (before != null && here != null && !(here.si() > before.si())) {
                faults.add(Fault.contradiction(
                        at + "byTemperature/" + i + "/temperature", "The rows go by rising temperature"));
            }
        }
    }

    /** Cells of one block against the count of all, against its voltage, and against what a pack may have. */
    private static void cellsOfBlocks(Pack pack, List<Fault> faults) {
        Pack.Blocks blocks = pack.blocks();
        if (blocks == null || blocks.cellsInSeries() == null) {
            return;
        }
        String at = "/pack/blocks/cellsInSeries";
        int perBlock = blocks.cellsInSeries();
        if (blocks.count() != null) {
            int cells = blocks.count() * perBlock;
            if (pack.cellsInSeries() != null && cells != pack.cellsInSeries()) {
                faults.add(Fault.contradiction(
                        at,
                        "These blocks hold " + cells + " cells in series, /pack/cellsInSeries says "
                                + pack.cellsInSeries()));
            } else if (cells > 200) {
                faults.add(Fault.contradiction(
                        at, "These blocks hold " + cells + " cells in series, at most 200 are allowed"));
            }
        }
        double blockV = Contradictions.positiveSi(blocks.voltage());
        if (pack.chemistry() == null || blockV < 2 || blockV > 100) {
            return;
        }
        CellData cell = CellData.of(pack.chemistry());
        double perCellV = blockV / perBlock;
        boolean possible = pack.chemistry().isLeadAcid()
                ? Math.abs(perCellV - cell.nominalV().value()) < 1e-6
                : perCellV >= cell.cutOffV().value() && perCellV <= cell.fullV().value();
        if (!possible) {
            faults.add(Fault.contradiction(
                    at,
                    "A block of " + perBlock + " cells of " + pack.chemistry() + " has no nominal voltage of "
                            + Form.readable(blockV) + " V: a cell has "
                            + Form.readable(cell.nominalV().value()) + " V"));
        }
    }

    private static void drive(@Nullable Drive drive, List<Fault> faults) {
        if (drive != null && drive.controller() != null) {
            Drive.Controller controller = drive.controller();
            String at = "/drive/controller/";
            ordered(
                    at + "minimumVoltage",
                    controller.minimumVoltage(),
                    at + "maximumVoltage",
                    controller.maximumVoltage(),
                    faults);
        }
    }

    private static void accessories(Setup setup, List<Fault> faults) {
        Accessories accessories = setup.accessories();
        if (accessories == null) {
            return;
        }
        Accessories.Converter converter = accessories.converter();
        if (converter != null) {
            String at = "/accessories/converter/";
            ordered(
                    at + "minimumVoltage",
                    converter.minimumVoltage(),
                    at + "maximumVoltage",
                    converter.maximumVoltage(),
                    faults);
            Contradictions.exclude(
                    faults,
                    at + "loadCurrent",
                    converter.loadCurrent(),
                    at + "load",
                    converter.load(),
                    "; give the load one way");
        }
        Accessories.Contactor contactor = accessories.contactor();
        if (contactor != null) {
            String at = "/accessories/contactor/";
            ordered(
                    at + "minimumCoilVoltage",
                    contactor.minimumCoilVoltage(),
                    at + "maximumCoilVoltage",
                    contactor.maximumCoilVoltage(),
                    faults);
            ordered(
                    at + "minimumCoilVoltage",
                    contactor.minimumCoilVoltage(),
                    at + "coilVoltage",
                    contactor.coilVoltage(),
                    faults);
            ordered(
                    at + "coilVoltage",
                    contactor.coilVoltage(),
                    at + "maximumCoilVoltage",
                    contactor.maximumCoilVoltage(),
                    faults);
        }
        Integer tapped = accessories.tap() == null ? null : accessories.tap().blocks();
        Integer count = setup.pack() == null || setup.pack().blocks() == null
                ? null
                : setup.pack().blocks().count();
        if (tapped != null && count != null && tapped >= count) {
            faults.add(Fault.contradiction(
                    "/accessories/tap/blocks",
                    "A tap stands across fewer blocks than the pack has: " + tapped + " is not less than " + count));
        }
    }

    /** Nothing sags upwards: a block that reads more under load than at rest was read in the wrong order. */
    private static void readings(@Nullable Readings readings, List<Fault> faults) {
        if (readings == null) {
            return;
        }
        String at = "/readings/";
        ordered(
                at + "packLoadVoltage",
                readings.packLoadVoltage(),
                at + "packRestVoltage",
                readings.packRestVoltage(),
                faults);
        List<Readings.Block> blocks = readings.blocks() == null ? List.of() : readings.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            String block = at + "blocks/" + i + "/";
            ordered(
                    block + "loadVoltage",
                    blocks.get(i).loadVoltage(),
                    block + "restVoltage",
                    blocks.get(i).restVoltage(),
                    faults);
        }
    }

    /** A fault at the first pointer when its value is above that of the second. */
    private static void ordered(
            String pointer,
            @Nullable Quantity lower,
            String otherPointer,
            @Nullable Quantity upper,
            List<Fault> faults) {
        Quantity low = Contradictions.complete(lower);
        Quantity high = Contradictions.complete(upper);
        if (low != null && high != null && low.si() > high.si()) {
            faults.add(new Fault(
                    pointer,
                    "contradiction",
                    "Must not be above " + otherPointer + ": " + Form.readable(low.value()) + " " + low.unit()
                            + " against " + Form.readable(high.value()) + " " + high.unit(),
                    low,
                    high));
        }
    }
}
