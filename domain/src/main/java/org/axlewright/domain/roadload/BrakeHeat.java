package org.axlewright.domain.roadload;

import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE_DIFFERENCE;

import java.util.Map;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * What heat does to the metal that takes it: ΔT = E/(m·c), nothing given off meanwhile, so an upper bound that a long hill stays well
 * below. Specific heats from {@code roadload/specific-heat.csv}.
 */
public final class BrakeHeat {

    /** Cast iron and steel of drums and discs, J/(kg K). */
    public static final Datum IRON = specificHeat("iron");

    /** Aluminium of a heat sink, J/(kg K). */
    public static final Datum ALUMINIUM = specificHeat("aluminium");

    /** Temperature of the drum beyond which a truck no longer descends safely, degC. */
    public static final double DESCENT_LIMIT_C = 260;

    /** Where {@link #DESCENT_LIMIT_C} comes from. */
    public static final Source DESCENT_LIMIT = Source.memory(
            "FHWA grade severity rating system for trucks: brakes at 500 degF (260 degC) no longer hold reliably");

    /** Temperature from which a rise is reckoned where it is held against a limit, degC. */
    public static final double START_C = 20;

    private static final Step RISE = Step.of(
            "ΔT",
            "temperature rise",
            "ΔT = E/(m_b·c)",
            TEMPERATURE_DIFFERENCE,
            Source.derived("heat stored in the metal, none given off"),
            new Symbol("E", ENERGY),
            new Symbol("m_b", MASS),
            new Symbol("c in J/(kg K)", NONE));

    private BrakeHeat() {}

    /**
     * Temperature rise, K.
     *
     * @param energyJ heat, J
     * @param massKg metal that takes it, kg
     * @param metal its specific heat, J/(kg K)
     */
    public static double riseK(double energyJ, double massKg, Datum metal, Trace trace) {
        Check.notNegative(energyJ, "energyJ");
        Check.positive(massKg, "massKg");
        return trace.note(RISE, energyJ / (massKg * metal.value()), energyJ, massKg, metal.value());
    }

    private static Datum specificHeat(String metal) {
        return Datum.in(Datum.table("/roadload/specific-heat.csv").getOrDefault(metal, Map.of()), "specific-heat");
    }
}
