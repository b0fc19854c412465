package org.axlewright.domain.conductor;

import org.axlewright.domain.quantity.Constants;

/**
 * Still air at sea level and how it cools a level cylinder. Properties: US Standard Atmosphere 1976, equations 42, 51 and 53, for 200 to 600
 * K. Convection: Churchill and Chu 1975, Int. J. Heat Mass Transfer 18, 1049, for Rayleigh numbers up to 1e12.
 */
final class StillAir {

    /** Specific heat at constant pressure, J/(kg K): 3.5 R/M of that atmosphere. */
    private static final double HEAT = 1004.685;

    private static final double PRESSURE_PA = 101_325;

    /** Gas constant of air, J/(kg K): 8314.32/28.9644. */
    private static final double GAS = 287.0529;

    private StillAir() {}

    /** Dynamic viscosity, Pa s. */
    static double viscosity(double kelvin) {
        return 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
    }

    /** Thermal conductivity, W/(m K). */
    static double conductivity(double kelvin) {
        return 2.64638e-3 * kelvin * Math.sqrt(kelvin) / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
    }

    /** Density, kg/m3. */
    static double density(double kelvin) {
        return PRESSURE_PA / (GAS * kelvin);
    }

    /** Prandtl number. */
    static double prandtl(double kelvin) {
        return viscosity(kelvin) * HEAT / conductivity(kelvin);
    }

    /**
     * Heat transfer coefficient of free convection from a long level cylinder, W/(m2 K), properties at the mean of both temperatures.
     *
     * @param diameterM m
     * @param surfaceK not below the air, K
     */
    static double convectionWPerM2K(double diameterM, double airK, double surfaceK) {
        double filmK = (airK + surfaceK) / 2;
        double conductivity = conductivity(filmK);
        double viscosity = viscosity(filmK);
        double density = density(filmK);
        double rayleigh = Constants.STANDARD_GRAVITY
                * (surfaceK - airK)
                * diameterM
                * diameterM
                * diameterM
                * density
                * density
                * HEAT
                / (filmK * viscosity * conductivity);
        double root = 0.60
                + 0.387
                        * Math.cbrt(Math.sqrt(rayleigh))
                        / Math.pow(1 + Math.pow(0.559 / prandtl(filmK), 9.0 / 16), 8.0 / 27);
        return root * root * conductivity / diameterM;
    }
}
