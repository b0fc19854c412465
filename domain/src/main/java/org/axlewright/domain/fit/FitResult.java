package org.axlewright.domain.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether the parts fit, and the numbers behind it, SI. What lacks an input is null.
 *
 * @param verdict the worst of all pairs; undecided without any pair
 * @param pairs the deciding one first
 */
public record FitResult(
        Verdict verdict,
        List<FitPair> pairs,
        Voltages voltages,
        Currents currents,
        @Nullable Energy energy,
        @Nullable MassBand mass,
        @Nullable Fade regenerationFade,
        @Nullable TapLoad tap,
        List<ClassPassed> voltageClasses) {

    /**
     * Voltages of the pack, V.
     *
     * @param highestV the most any part sees: full, or the end voltage of the charger where that is more
     * @param restV full and at rest, flooded only
     * @param equaliseV at the end of an equalising charge, flooded only
     * @param chargerEndPerCellV end voltage of the charger over the cells in series
     * @param loadedV half full, at the battery-side limit of the controller
     * @param regeneratingV full, at the regeneration limit of the controller
     */
    public record Voltages(
            int cells,
            double nominalV,
            double fullV,
            double cutOffV,
            double highestV,
            @Nullable Double restV,
            @Nullable Double equaliseV,
            @Nullable Double chargerEndPerCellV,
            @Nullable Double loadedV,
            @Nullable Double regeneratingV) {}

    /**
     * Currents, A.
     *
     * @param batteryA battery-side limit of the controller
     * @param stringA the same in each string
     * @param motorA motor-side limit of the controller
     * @param ratedPowerA what the rated shaft power takes from the pack
     * @param dischargeRate {@code batteryA} over the capacity, 1/h
     * @param continuousLimitA the pack's, at its temperature
     * @param chargeLimitA the pack's, at its temperature
     * @param converterA what the load of the converter takes from the pack
     */
    public record Currents(
            @Nullable Double batteryA,
            @Nullable Double stringA,
            @Nullable Double motorA,
            @Nullable Double ratedPowerA,
            @Nullable Double dischargeRate,
            @Nullable Double continuousLimitA,
            @Nullable Double peakLimitA,
            @Nullable Double peakTimeS,
            @Nullable Double chargeLimitA,
            @Nullable Double regenerationA,
            @Nullable Double converterA) {}

    /** Nominal energy, J; of one block of one string where the blocks are known. */
    public record Energy(
            double nominalJ, double stringJ, @Nullable Double blockJ) {}

    /** Mass of the pack, kg: as sent, and what a pack of this energy usually weighs. */
    public record MassBand(@Nullable Double massKg, double leastKg, double mostKg) {}

    /** Pack voltages between which regeneration is to fade to nothing, V. */
    public record Fade(double fromV, double toV) {}

    /** A tap: its voltage with full blocks, V, and the charge its blocks lose against the others in a day, C. */
    public record TapLoad(double fullV, @Nullable Double imbalanceC) {}

    /** One voltage class: whether the pack is beyond it fully charged, and at its nominal voltage. */
    public record ClassPassed(VoltageClass limit, boolean full, boolean nominal) {}
}
