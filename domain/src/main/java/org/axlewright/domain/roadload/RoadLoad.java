package org.axlewright.domain.roadload;

/**
 * What resists a vehicle at steady speed, force by force, and what a stop costs. Gravity is a parameter because textbook cases use 9.8 or
 * 10. Source of the three forces: longitudinal dynamics as in Gillespie, Fundamentals of Vehicle Dynamics, and Marks' handbook.
 */
public final class RoadLoad {

    private RoadLoad() {}

    /** Rolling resistance, N: m g f cos θ. */
    public static double rollingN(double massKg, double coefficient, double gradeRad, double gravity) {
        return massKg * gravity * coefficient * Math.cos(gradeRad);
    }

    /** Part of the weight along the road, N, uphill positive: m g sin θ. */
    public static double gradeN(double massKg, double gradeRad, double gravity) {
        return massKg * gravity * Math.sin(gradeRad);
    }

    /**
     * Drag, N: ½ ρ CdA v².
     *
     * @param airSpeedMPS speed against the air, m/s: road speed plus headwind
     */
    public static double dragN(double densityKgPerM3, double dragAreaM2, double airSpeedMPS) {
        return densityKgPerM3 * dragAreaM2 * airSpeedMPS * airSpeedMPS / 2;
    }

    /**
     * Energy of the moving vehicle with its rotating parts, J: ½ (1 + ε) m v².
     *
     * @param rotatingMassShare ε, what the rotating parts add to the mass when the speed changes
     */
    public static double kineticJ(double massKg, double rotatingMassShare, double speedMPS) {
        return (1 + rotatingMassShare) * massKg * speedMPS * speedMPS / 2;
    }
}
