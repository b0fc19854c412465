package org.axlewright.api.packcheck;

import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Readings;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.packcheck.PackCheck;
import org.axlewright.domain.packcheck.ReadingsInput;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections pack and readings to what was measured on what, with every default noted. */
final class PackCheckSections {

    private final Setup setup;
    private final Resolution resolution;

    PackCheckSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
    }

    ReadingsInput resolve() {
        Pack pack = Objects.requireNonNull(setup.pack(), "pack");
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        Readings readings = Objects.requireNonNull(setup.readings(), "readings");
        Integer cells = cells(pack, readings);
        List<ReadingsInput.Block> blocks = blocks(pack, readings, cells);
        ReadingsInput.Discharge discharge = discharge(readings);
        resolution.refuseIfFaulty();
        boolean capacityKnown = pack.capacity() != null
                || (pack.capacityRows() != null && !pack.capacityRows().isEmpty());
        ReadingsInput input = new ReadingsInput(
                chemistry,
                cells,
                PackSections.strings(pack, resolution),
                capacityKnown ? PackSections.string(pack, resolution) : null,
                temperatureC(pack, readings, chemistry, capacityKnown && discharge != null),
                blocks,
                pack.blocks() == null ? null : pack.blocks().count(),
                setup.charger() == null ? null : si(setup.charger().startVoltage()),
                new ReadingsInput.Pack(
                        si(readings.restTime()),
                        si(readings.packRestVoltage()),
                        si(readings.packLoadVoltage()),
                        si(readings.loadCurrent())),
                discharge,
                readings.clampCurrent() == null
                        ? null
                        : new ReadingsInput.Clamp(readings.clampCurrent().si(), si(readings.clampSpeed())),
                readings.cycles(),
                pack.stateOfCharge());
        resolution.refuseIfFaulty();
        notAnswered(input);
        return input;
    }

    /** Lithium blocks don't tell their cells; a timed discharge alone does without. */
    private @Nullable Integer cells(Pack pack, Readings readings) {
        Integer cells = PackSections.cellsInSeries(pack);
        boolean needed = readings.packRestVoltage() != null
                || readings.packLoadVoltage() != null
                || readings.blocks() != null
                || readings.dischargeCurrent() == null;
        if (cells == null && needed) {
            resolution.refuse(new Fault(
                    "/pack/cellsInSeries",
                    "missing",
                    "/pack/cellsInSeries is needed and missing: readings are judged by the cell, and the voltage on a lithium block does not tell its cells",
                    null,
                    null));
        }
        return cells;
    }

    private List<ReadingsInput.Block> blocks(Pack pack, Readings readings, @Nullable Integer cells) {
        List<ReadingsInput.Block> blocks = new ArrayList<>();
        List<Readings.Block> sent = readings.blocks() == null ? List.of() : readings.blocks();
        for (int i = 0; i < sent.size(); i++) {
            Readings.Block block = sent.get(i);
            String pointer = "/readings/blocks/" + i;
            if (block.restVoltage() == null && block.loadVoltage() == null && block.specificGravity() == null) {
                resolution.missing(pointer + "/restVoltage");
            }
            blocks.add(new ReadingsInput.Block(
                    pointer,
                    block.reference(),
                    si(block.restVoltage()),
                    si(block.loadVoltage()),
                    block.specificGravity()));
        }
        Integer count = pack.blocks() == null ? null : pack.blocks().count();
        if (!sent.isEmpty() && count != null && count != sent.size()) {
            resolution.refuse(Fault.contradiction(
                    "/readings/blocks",
                    sent.size() + " blocks were read, /pack/blocks/count says " + count
                            + ": one reading for each block of one string"));
        } else if (!sent.isEmpty() && cells != null && cells % sent.size() != 0) {
            resolution.refuse(Fault.contradiction(
                    "/readings/blocks", cells + " cells in series do not make " + sent.size() + " blocks alike"));
        }
        return List.copyOf(blocks);
    }

    private ReadingsInput.@Nullable Discharge discharge(Readings readings) {
        if (readings.dischargeCurrent() == null || readings.timeToCutOff() == null) {
            return null;
        }
        return new ReadingsInput.Discharge(
                readings.dischargeCurrent().si(), readings.timeToCutOff().si(), si(readings.cutOffVoltage()));
    }

    private double temperatureC(Pack pack, Readings readings, Chemistry chemistry, boolean used) {
        Temperature sent = readings.temperature() != null ? readings.temperature() : pack.temperature();
        if (!used) {
            return sent == null ? TemperatureFactor.RATED_C : sent.si();
        }
        if (sent == null) {
            return resolution.assume(
                    "rated-temperature",
                    "/readings/temperature",
                    new Measure(TemperatureFactor.RATED_C, TEMPERATURE),
                    "temperature at which capacities are printed",
                    Source.COMMON_PRACTICE);
        }
        double celsius = sent.si();
        TemperatureFactor.Range range = TemperatureFactor.range(chemistry);
        boolean below = celsius < range.fromC();
        if (below || celsius > range.toC()) {
            resolution.refuse(Form.outOfRange(
                    readings.temperature() != null ? "/readings/temperature/value" : "/pack/temperature/value",
                    sent,
                    below ? range.fromC() : range.toC(),
                    below));
        }
        return celsius;
    }

    private void notAnswered(ReadingsInput input) {
        boolean restRead =
                input.pack().restV() != null || input.blocks().stream().anyMatch(block -> block.restV() != null);
        boolean told = restRead
                || (input.chemistry() == Chemistry.FLOODED
                        && input.blocks().stream().anyMatch(block -> block.gravity() != null));
        if (!told) {
            resolution.notAnswered("/stateOfCharge", "/readings/packRestVoltage", "/readings/blocks");
        }
        boolean loadRead =
                input.pack().loadV() != null || input.blocks().stream().anyMatch(block -> block.loadV() != null);
        List<String> step = new ArrayList<>();
        if (!restRead) {
            step.add("/readings/packRestVoltage");
        }
        if (!loadRead) {
            step.add("/readings/packLoadVoltage");
        }
        if (input.pack().loadA() == null) {
            step.add("/readings/loadCurrent");
        }
        resolution.notAnswered("/resistance", step);
        if (input.blocks().size() < 2) {
            resolution.notAnswered("/spread", "/readings/blocks");
        }
        if (input.discharge() == null) {
            List<String> timed = new ArrayList<>();
            if (setup.readings() == null || setup.readings().dischargeCurrent() == null) {
                timed.add("/readings/dischargeCurrent");
            }
            if (setup.readings() == null || setup.readings().timeToCutOff() == null) {
                timed.add("/readings/timeToCutOff");
            }
            resolution.notAnswered("/capacity", timed);
        } else if (input.string() == null) {
            resolution.notAnswered("/capacity/share", "/pack/capacity");
        } else if (input.cells() != null && input.discharge().endV() == null) {
            resolution.assume(
                    "usual-cut-off",
                    "/readings/cutOffVoltage",
                    new Measure(
                            input.cells()
                                    * CellData.of(input.chemistry()).cutOffV().value(),
                            VOLTAGE),
                    "the discharge was ended at the usual cut-off",
                    CellData.of(input.chemistry()).cutOffV().source());
        }
        List<String> left = new ArrayList<>();
        if (input.string() == null) {
            left.add("/pack/capacity");
        }
        if (input.stateOfCharge() == null && !PackCheck.tellsCharge(input)) {
            left.add("/pack/stateOfCharge");
        }
        resolution.notAnswered("/chargeLeft", left);
        if (input.clamp() != null) {
            resolution.notAnswered("/use/timeLeft", left);
        }
        if (input.clamp() == null) {
            resolution.notAnswered("/use", "/readings/clampCurrent");
        } else if (input.clamp().speedMPS() == null) {
            resolution.notAnswered("/use/consumption", "/readings/clampSpeed");
        }
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }
}
