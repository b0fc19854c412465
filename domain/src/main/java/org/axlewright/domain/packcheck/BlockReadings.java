package org.axlewright.domain.packcheck;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.packcheck.PackCheckResult.CheckedBlock;
import org.axlewright.domain.packcheck.PackCheckResult.Spread;
import org.axlewright.domain.packcheck.ReadingsInput.Block;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** The readings of all blocks, and what stands out of them. Reversed blocks do not count among the others. */
record BlockReadings(
        List<CheckedBlock> checked,
        @Nullable Robust restV,
        @Nullable Robust loadV,
        @Nullable Robust ohm,
        @Nullable Robust gravity,
        @Nullable Double sumV,
        @Nullable Double stringOhm,
        @Nullable Spread spread) {

    static final Step RESISTANCE_STEP = Step.of(
            "r",
            "resistance from the step in voltage",
            "r = (E - V)/I",
            RESISTANCE,
            Source.published("direct-current circuit theory: r = (E - V)/I"),
            new Symbol("E", VOLTAGE),
            new Symbol("V", VOLTAGE),
            new Symbol("I", CURRENT));

    /** Of a 12 V block; other blocks in proportion to their cells. */
    private static final double APART_V = 0.10;

    private static final int CELLS_OF_12_V = 6;
    private static final double LEAST_FLOOR_V = 0.02;
    private static final double GRAVITY_FLOOR = 0.030;
    private static final double RESISTANCE_FLOOR = 0.30;
    private static final double CELL_V = 2.05;
    private static final double CELL_BAND_V = 0.45;

    BlockState worst() {
        BlockState worst = BlockState.ALIKE;
        for (CheckedBlock block : checked) {
            if (block.state().compareTo(worst) > 0) {
                worst = block.state();
            }
        }
        return worst;
    }

    /** How far apart blocks of so many cells may read, V. */
    static double floorV(int cellsOfBlock) {
        return Math.max(LEAST_FLOOR_V, APART_V * cellsOfBlock / CELLS_OF_12_V);
    }

    static BlockReadings of(ReadingsInput input, Trace trace) {
        List<Block> upright =
                input.blocks().stream().filter(block -> !reversed(block)).toList();
        Double loadA = input.pack().loadA();
        List<@Nullable Double> ohms = new ArrayList<>();
        for (Block block : input.blocks()) {
            ohms.add(loadA == null ? null : ohm(block, loadA / input.strings(), trace));
        }
        List<Double> uprightOhms = new ArrayList<>();
        for (int i = 0; i < ohms.size(); i++) {
            Double ohm = ohms.get(i);
            if (ohm != null && !reversed(input.blocks().get(i))) {
                uprightOhms.add(ohm);
            }
        }
        Robust restV = robust(upright, Block::restV);
        Robust loadV = robust(upright, Block::loadV);
        Robust gravity = robust(upright, Block::gravity);
        Robust ohm = uprightOhms.isEmpty() ? null : Robust.of(uprightOhms);
        List<CheckedBlock> checked = new ArrayList<>();
        for (int i = 0; i < ohms.size(); i++) {
            Block block = input.blocks().get(i);
            Double blockOhm = ohms.get(i);
            checked.add(new CheckedBlock(
                    block,
                    state(input, block, blockOhm, restV, loadV, ohm, gravity),
                    blockOhm,
                    stateOfCharge(input, block)));
        }
        List<Double> rests = values(input.blocks(), Block::restV);
        boolean whole =
                !input.blocks().isEmpty() && rests.size() == input.blocks().size();
        boolean everyOhm = !ohms.isEmpty() && ohms.stream().allMatch(Objects::nonNull);
        return new BlockReadings(
                List.copyOf(checked),
                restV,
                loadV,
                ohm,
                gravity,
                whole ? (Double) sum(rests) : null,
                everyOhm ? (Double) sum(ohms.stream().filter(Objects::nonNull).toList()) : null,
                upright.size() < 2
                        ? null
                        : new Spread(
                                range(values(upright, Block::restV)),
                                range(values(upright, Block::loadV)),
                                ohm == null || uprightOhms.size() < 2 || !(ohm.median() > 0)
                                        ? null
                                        : (Double) (rangeOf(uprightOhms) / ohm.median())));
    }

    static boolean reversed(Block block) {
        return (block.restV() != null && block.restV() < 0)
                || (block.restV() == null && block.loadV() != null && block.loadV() < 0);
    }

    private static @Nullable Double ohm(Block block, double stringA, Trace trace) {
        return block.restV() == null || block.loadV() == null
                ? null
                : (Double) trace.note(
                        RESISTANCE_STEP,
                        (block.restV() - block.loadV()) / stringA,
                        block.restV(),
                        block.loadV(),
                        stringA);
    }

    private static BlockState state(
            ReadingsInput input,
            Block block,
            @Nullable Double blockOhm,
            @Nullable Robust restV,
            @Nullable Robust loadV,
            @Nullable Robust ohm,
            @Nullable Robust gravity) {
        if (reversed(block)) {
            return BlockState.REVERSED;
        }
        double floorV = floorV(input.cellsOfBlock());
        if (input.chemistry().isLeadAcid()
                && input.cellsOfBlock() > 1
                && restV != null
                && block.restV() != null
                && deadCells(restV.median() - block.restV()) > 0) {
            return BlockState.DEAD_CELL;
        }
        boolean odd = stands(restV, block.restV(), floorV)
                || stands(loadV, block.loadV(), floorV)
                || stands(gravity, block.gravity(), GRAVITY_FLOOR)
                || (ohm != null
                        && blockOhm != null
                        && blockOhm > ohm.median()
                        && stands(ohm, blockOhm, RESISTANCE_FLOOR * Math.abs(ohm.median())));
        return odd ? BlockState.ODD : BlockState.ALIKE;
    }

    /** Whole cells that such a gap is worth; 0 when it is none. */
    private static int deadCells(double gapV) {
        int cells = (int) Math.rint(Math.max(0, gapV) / CELL_V);
        return cells > 0 && Math.abs(gapV - cells * CELL_V) <= CELL_BAND_V ? cells : 0;
    }

    private static boolean stands(@Nullable Robust others, @Nullable Double value, double floor) {
        return others != null && value != null && others.standsOut(value, floor);
    }

    private static @Nullable Double stateOfCharge(ReadingsInput input, Block block) {
        if (reversed(block)) {
            return null;
        }
        if (block.gravity() != null && input.chemistry() == Chemistry.FLOODED) {
            return RestVoltage.of(input.chemistry(), PackVoltages.restV(1, block.gravity()))
                    .value();
        }
        return block.restV() == null
                ? null
                : RestVoltage.of(input.chemistry(), block.restV() / input.cellsOfBlock())
                        .value();
    }

    private static @Nullable Robust robust(List<Block> blocks, Function<Block, @Nullable Double> reading) {
        List<Double> values = values(blocks, reading);
        return values.isEmpty() ? null : Robust.of(values);
    }

    private static List<Double> values(List<Block> blocks, Function<Block, @Nullable Double> reading) {
        List<Double> values = new ArrayList<>();
        for (Block block : blocks) {
            Double value = reading.apply(block);
            if (value != null) {
                values.add(value);
            }
        }
        return values;
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static @Nullable Double range(List<Double> values) {
        return values.size() < 2 ? null : (Double) rangeOf(values);
    }

    private static double rangeOf(List<Double> values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }
}
