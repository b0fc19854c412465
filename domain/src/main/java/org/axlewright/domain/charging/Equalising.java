package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * An equalising charge: flooded lead-acid held above its gassing voltage, so that the cells behind catch up with those that are full.
 * All of its charge splits water.
 *
 * @param timeS how long it is held, s
 * @param voltageV of the pack, V
 * @param chargeC put through, C
 * @param mainsEnergyJ at the charger's input, J
 * @param waterKg split into gas, kg
 * @param ventilation air it needs
 */
public record Equalising(
        double timeS, double voltageV, double chargeC, double mainsEnergyJ, double waterKg, Ventilation ventilation) {

    /** Volts per cell of an equalising charge: the middle of the usual 2.58 to 2.70 V. */
    static final Datum CELL_VOLTAGE = new Datum(2.64, Source.memory("2.58 to 2.70 V per cell; the middle"));

    /** Usual current, A for each 100 Ah. */
    public static final Datum USUAL_RATE =
            new Datum(3, Source.memory("small current of an equalising charge, 2 to 5 A for each 100 Ah"));

    /** Water split by each ampere-hour in each cell, kg: 3 Ah split 1 g. */
    private static final double WATER_KG_PER_AH = 0.001 / 3;

    private static final Step PACK_VOLTAGE = Step.of(
            "U_q",
            "voltage of the pack while equalising",
            "U_q = n·u_q",
            VOLTAGE,
            CELL_VOLTAGE.source(),
            new Symbol("n", NONE),
            new Symbol("u_q", VOLTAGE));
    private static final Step PUT_THROUGH = Step.of(
            "Q_q",
            "charge put through while equalising",
            "Q_q = I_q·t_q",
            CHARGE,
            Source.derived("definition"),
            new Symbol("I_q", CURRENT),
            new Symbol("t_q", TIME));
    private static final Step DRAWN = Step.of(
            "E_q",
            "energy that equalising takes at the charger's input",
            "E_q = Q_q·U_q/η",
            ENERGY,
            Source.derived("energy balance"),
            new Symbol("Q_q", CHARGE),
            new Symbol("U_q", VOLTAGE),
            new Symbol("η", NONE));
    private static final Step WATER = Step.of(
            "m_w",
            "water split while equalising, all cells",
            "m_w = n·Q_q/(3600 s)·(1 g)/(3 Ah)",
            MASS,
            Source.published("ZVEI leaflet 14 (2017): 3 Ah split 1 g of water"),
            new Symbol("n", NONE),
            new Symbol("Q_q", CHARGE));

    /** Usual current for a pack, A. */
    public static double usualA(ChargeTime.PackOnCharge pack) {
        return USUAL_RATE.value() * ChargeUnit.AMPERE_HOUR.fromSi(pack.capacityC()) / 100;
    }

    static Equalising of(EqualisingPlan plan, int cells, double efficiency, Trace trace) {
        double voltageV = trace.note(PACK_VOLTAGE, cells * CELL_VOLTAGE.value(), cells, CELL_VOLTAGE.value());
        double chargeC = trace.note(PUT_THROUGH, plan.currentA() * plan.timeS(), plan.currentA(), plan.timeS());
        double energyJ = trace.note(DRAWN, chargeC * voltageV / efficiency, chargeC, voltageV, efficiency);
        double waterKg =
                trace.note(WATER, cells * ChargeUnit.AMPERE_HOUR.fromSi(chargeC) * WATER_KG_PER_AH, cells, chargeC);
        return new Equalising(
                plan.timeS(),
                voltageV,
                chargeC,
                energyJ,
                waterKg,
                Ventilation.of(cells, plan.currentA(), Ventilation.AIR_PER_CHARGE_M3_PER_AH, trace));
    }
}
