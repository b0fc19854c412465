package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.VOLUME_FLOW;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * Air that keeps the hydrogen of charging lead-acid cells below a fifth of its lower explosive limit of 4 % by volume.
 *
 * @param hydrogenM3PerS hydrogen given off, at 25 degC, m3/s
 * @param airFlowM3PerS m3/s
 * @param openingM2 free area of an opening for in-going and one for out-going air each, m2, at an air speed of at least 0.1 m/s
 */
public record Ventilation(double hydrogenM3PerS, double airFlowM3PerS, double openingM2) {

    /** Air for each ampere-hour of gas-producing current and cell, m3/Ah, gas volume at 25 degC. EN IEC 62485-3; ZVEI leaflet 14 (2017). */
    static final double AIR_PER_CHARGE_M3_PER_AH = 0.055;

    /** Hydrogen for each ampere-hour of gas-producing current and cell, m3/Ah at 25 degC. ZVEI leaflet 14 (2017). */
    static final double HYDROGEN_PER_CHARGE_M3_PER_AH = 0.45e-3;

    /** Opening for each air flow, cm2 for each m3/h. EN 50272-3; ZVEI leaflet 14 (2017). */
    static final double OPENING_CM2_PER_M3_PER_H = 28;

    private static final Source STANDARD = Source.published("EN 50272-3, EN IEC 62485-3; ZVEI leaflet 14 (2017)");
    private static final double SECONDS_PER_HOUR = 3600;

    private static final Step GAS_CURRENT = Step.of(
            "I_gas",
            "gas-producing current",
            "I_gas = i_g·C/(360 000 s), i_g in A for each 100 Ah",
            CURRENT,
            STANDARD,
            new Symbol("i_g", NONE),
            new Symbol("C", CHARGE));
    private static final Step HYDROGEN = Step.of(
            "Q_H2",
            "hydrogen given off",
            "Q_H2 = h·n·I_gas/(3600 s), h in m3 for each Ah",
            VOLUME_FLOW,
            Source.published("ZVEI leaflet 14 (2017): 0.45 L for each ampere-hour and cell at 25 degC"),
            new Symbol("h", NONE),
            new Symbol("n", NONE),
            new Symbol("I_gas", CURRENT));
    private static final Step AIR_FLOW = Step.of(
            "Q",
            "air to let through",
            "Q = v·n·I_gas/(3600 s), v in m3 for each Ah",
            VOLUME_FLOW,
            STANDARD,
            new Symbol("v", NONE),
            new Symbol("n", NONE),
            new Symbol("I_gas", CURRENT));
    private static final Step OPENING = Step.of(
            "A",
            "free area of each opening",
            "A = 28 cm2·h/m3 · Q = 10.08 s/m · Q",
            AREA,
            STANDARD,
            new Symbol("Q", VOLUME_FLOW));

    /**
     * Air flow from the capacity and the standard's gassing current.
     *
     * @param cells cells in series
     * @param capacityC capacity of the pack, C
     * @param gassing gas-producing current, A for each 100 Ah
     */
    static Ventilation of(int cells, double capacityC, Datum gassing, Trace trace) {
        double perHundred = Noted.datum("i_g", "gas-producing current for each 100 Ah", NONE, gassing, trace);
        double gasA = trace.note(
                GAS_CURRENT, perHundred * ChargeUnit.AMPERE_HOUR.fromSi(capacityC) / 100, perHundred, capacityC);
        return of(cells, gasA, AIR_PER_CHARGE_M3_PER_AH, trace);
    }

    /**
     * Air flow from a known gas-producing current.
     *
     * @param cells cells in series
     * @param gasA current that makes gas, A
     * @param airPerChargeM3PerAh 0.055 for traction batteries at 25 degC; 0.0504 stationary, gas volume at 0 degC
     */
    static Ventilation of(int cells, double gasA, double airPerChargeM3PerAh, Trace trace) {
        Check.positive(cells, "cells");
        Check.positive(gasA, "gas-producing current");
        double hydrogen = trace.note(
                HYDROGEN,
                HYDROGEN_PER_CHARGE_M3_PER_AH * cells * gasA / SECONDS_PER_HOUR,
                HYDROGEN_PER_CHARGE_M3_PER_AH,
                cells,
                gasA);
        double flow = trace.note(
                AIR_FLOW, airPerChargeM3PerAh * cells * gasA / SECONDS_PER_HOUR, airPerChargeM3PerAh, cells, gasA);
        double opening = trace.note(OPENING, OPENING_CM2_PER_M3_PER_H * 1e-4 * SECONDS_PER_HOUR * flow, flow);
        return new Ventilation(hydrogen, flow, opening);
    }
}
