package org.axlewright.domain.packcheck;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the readings say, SI. What they do not tell is null. */
public record PackCheckResult(
        Measurement next,
        RestVoltage.@Nullable Told stateOfCharge,
        Volts volts,
        @Nullable Resistances resistance,
        @Nullable Spread spread,
        List<CheckedBlock> blocks,
        @Nullable Capacity capacity,
        @Nullable Double chargeLeftC,
        @Nullable Use use) {

    /**
     * Voltages, V.
     *
     * @param sumV of the blocks at rest
     * @param restCellV of a cell at rest: the middle block's, or the pack's over its cells
     * @param loadCellV of a cell under load, likewise
     */
    public record Volts(
            @Nullable Double sumV,
            @Nullable Double restCellV,
            @Nullable Double loadCellV) {}

    /**
     * Internal resistance, ohm.
     *
     * @param packOhm of the whole pack with its connections where the pack was read, else of its blocks
     * @param blockOhm of the middle block
     * @param connectionsOhm of everything between the blocks and the place where the pack was read
     */
    public record Resistances(
            @Nullable Double packOhm,
            @Nullable Double blockOhm,
            @Nullable Double connectionsOhm) {}

    /** Highest less lowest block, without reversed ones: voltage at rest, V; under load, V; resistance over the middle one. */
    public record Spread(
            @Nullable Double restV,
            @Nullable Double loadV,
            @Nullable Double resistanceShare) {}

    /** One block. */
    public record CheckedBlock(
            ReadingsInput.Block block,
            BlockState state,
            @Nullable Double resistanceOhm,
            @Nullable Double stateOfCharge) {}

    /**
     * Capacity by the clock, C.
     *
     * @param deliveredC current times time
     * @param expectedC of a new pack at that current and temperature
     * @param share delivered over expected
     * @param ratedC what is left of the label
     */
    public record Capacity(
            double deliveredC,
            @Nullable Double expectedC,
            @Nullable Double share,
            @Nullable Double ratedC) {}

    /**
     * What driving takes.
     *
     * @param voltageV at which it is counted
     * @param rate current over the capacity, 1/h
     * @param consumptionJPerM energy for each metre
     * @param timeLeftS on the charge left
     * @param distanceLeftM on the charge left
     */
    public record Use(
            double currentA,
            @Nullable Double voltageV,
            @Nullable Double rate,
            @Nullable Double consumptionJPerM,
            @Nullable Double timeLeftS,
            @Nullable Double distanceLeftM) {}
}
