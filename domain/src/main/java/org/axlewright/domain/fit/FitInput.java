package org.axlewright.domain.fit;

import java.util.List;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.AtTemperature;
import org.axlewright.domain.pack.Chemistry;
import org.jspecify.annotations.Nullable;

/**
 * The parts that are to work together; a part that is not known is null, and so is a value of it.
 *
 * @param shaftEfficiency from the pack to the motor shaft, 0 to 1; with a null motor power it is not used
 */
public record FitInput(
        Pack pack,
        @Nullable Controller controller,
        @Nullable Motor motor,
        @Nullable Double shaftEfficiency,
        @Nullable Charger charger,
        @Nullable Converter converter,
        @Nullable Contactor contactor,
        @Nullable Tap tap) {

    /**
     * The pack.
     *
     * @param cells in series
     * @param stringCapacityC rated capacity of one string, C
     * @param resistanceOhm of the whole pack
     * @param acMeasured whether that is a 1 kHz reading
     * @param massKg of the whole pack
     */
    public record Pack(
            Chemistry chemistry,
            int cells,
            int strings,
            @Nullable Blocks blocks,
            @Nullable Double stringCapacityC,
            @Nullable Double resistanceOhm,
            boolean acMeasured,
            @Nullable Double temperatureC,
            Limits limits,
            @Nullable Double massKg,
            boolean mixedAges,
            boolean mixedTypes) {

        public Pack {
            Check.within(cells, 1, 200, "cells");
            Check.within(strings, 1, 100, "strings");
            positive(stringCapacityC, "stringCapacityC");
            positive(resistanceOhm, "resistanceOhm");
            positive(massKg, "massKg");
        }
    }

    /**
     * Blocks in series.
     *
     * @param voltageV nominal voltage of one, as sent
     */
    public record Blocks(@Nullable Integer count, @Nullable Double voltageV) {}

    /** Limits of the pack; see the section of the same name. Rows go by rising temperature. */
    public record Limits(
            @Nullable Double continuousA,
            @Nullable Double peakA,
            @Nullable Double peakS,
            @Nullable Double chargeA,
            @Nullable Double leastChargeC,
            @Nullable Double mostChargeC,
            List<AtTemperature> byTemperature,
            @Nullable Integer seriesLimit,
            @Nullable Double overV,
            @Nullable Double underV) {

        public static final Limits NONE = new Limits(null, null, null, null, null, null, List.of(), null, null, null);
    }

    /**
     * The controller.
     *
     * @param capacitorV rated voltage of its capacitors or absolute maximum of its power parts
     * @param regenerates whether it is known to send current back
     */
    public record Controller(
            @Nullable Double batteryA,
            @Nullable Double motorA,
            @Nullable Double leastV,
            @Nullable Double mostV,
            @Nullable Double capacitorV,
            boolean regenerates,
            @Nullable Double regenerationA) {}

    /**
     * The motor.
     *
     * @param speed rated, rad/s, at {@code voltageV}
     * @param mostSpeed the rotor must never pass, rad/s
     * @param cappedSpeed at which the controller stops driving, rad/s
     */
    public record Motor(
            @Nullable Double voltageV,
            @Nullable Double powerW,
            @Nullable Double ratedA,
            @Nullable Double speed,
            @Nullable Double mostSpeed,
            @Nullable Double cappedSpeed) {

        public Motor {
            positive(voltageV, "voltageV");
        }
    }

    /** The charger. */
    public record Charger(
            @Nullable Double endV,
            @Nullable Chemistry profile,
            @Nullable Double startV,
            @Nullable Double currentA,
            @Nullable Double powerW) {}

    /**
     * The converter.
     *
     * @param loadW of all at its output
     * @param loadA the same as a current
     */
    public record Converter(
            @Nullable Double leastV,
            @Nullable Double mostV,
            @Nullable Double outputV,
            @Nullable Double outputA,
            double efficiency,
            @Nullable Double loadW,
            @Nullable Double loadA) {

        public Converter {
            Check.within(efficiency, 0.01, 1, "efficiency");
        }
    }

    /** The main contactor. */
    public record Contactor(
            @Nullable Double leastCoilV,
            @Nullable Double mostCoilV,
            @Nullable CoilSupply coilSupply,
            @Nullable Double ratedV,
            @Nullable Double ratedA) {}

    /** A tap across some blocks. */
    public record Tap(
            @Nullable Integer blocks,
            @Nullable Double currentA,
            @Nullable Double timePerDayS) {}

    private static void positive(@Nullable Double value, String name) {
        if (value != null) {
            Check.positive(value, name);
        }
    }
}
