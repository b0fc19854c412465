package org.axlewright.domain.charging;

import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.FreezingPoint;
import org.axlewright.domain.trace.Source;

/** At which temperatures a pack may be charged. */
public final class ChargeTemperature {

    /** Below it a lithium cell takes no charge, degC: metal plates out and the loss stays. */
    static final double LITHIUM_MINIMUM = 0;

    static final Source LITHIUM_MINIMUM_SOURCE =
            Source.published("module maker's specification: no charge below 0 degC");

    /** Range in which lithium cells are preferably charged, degC. */
    static final double LITHIUM_PREFERRED_FROM = 5;

    static final double LITHIUM_PREFERRED_TO = 45;

    static final Source LITHIUM_PREFERRED_SOURCE =
            Source.published("module maker's specification: 5 to 45 degC preferred");

    static final Source FREEZING_SOURCE = FreezingPoint.BY_CHARGE_SOURCE;

    private ChargeTemperature() {}

    /** Temperature at which a lead-acid cell freezes, degC, at a state of charge from 0 to 1. */
    static double freezingPointC(double stateOfCharge) {
        return FreezingPoint.ofChargeC(stateOfCharge);
    }

    /** What lead-acid makers ask of a charger for each kelvin above 25 degC, V per cell. From memory: −3 to −5 mV/K. */
    static final double COMPENSATION_V_PER_K = -0.004;

    /** Range in which makers give the compensation, degC. From memory. */
    static final double COMPENSATED_FROM = -20;

    static final double COMPENSATED_TO = 50;

    private static final double RATED_C = 25;

    /** Whether the charge voltage at this temperature, degC, is known. */
    static boolean compensated(Chemistry chemistry, double temperatureC) {
        return !chemistry.isLeadAcid() || (temperatureC >= COMPENSATED_FROM && temperatureC <= COMPENSATED_TO);
    }

    /** What the temperature, degC, adds to the charge voltage, V per cell; 0 for lithium, and outside the range of the rule. */
    static double compensationV(Chemistry chemistry, double temperatureC) {
        return chemistry.isLeadAcid() && compensated(chemistry, temperatureC)
                ? COMPENSATION_V_PER_K * (temperatureC - RATED_C)
                : 0;
    }

    /**
     * Whether charging would do harm at this temperature: lithium below freezing, lead-acid that may be frozen. No time is given for a
     * charge that must not start.
     *
     * @param temperatureC of the cells, degC
     * @param stateOfCharge at the start, 0 to 1
     */
    public static boolean forbids(Chemistry chemistry, double temperatureC, double stateOfCharge) {
        return chemistry.isLeadAcid() ? temperatureC <= freezingPointC(stateOfCharge) : temperatureC < LITHIUM_MINIMUM;
    }
}
