package org.axlewright.domain.energy;

/**
 * What one leg asks of the pack.
 *
 * @param withinPack whether the pack can give the power; its currents and charges are zero where it can't
 * @param movingTimeS driving, s
 * @param wheelForceN at the wheels at steady speed, N; negative where the vehicle is held back
 * @param drivingPowerW at the pack at steady speed, accessories included, W
 * @param drivingCurrentA at steady speed, A
 * @param movingPowerW mean while moving, stops included, W
 * @param movingChargeC while moving, C
 * @param waitingChargeC while standing, C
 * @param energyJ at the pack, J
 */
public record LegDemand(
        boolean withinPack,
        RouteLeg leg,
        double movingTimeS,
        double wheelForceN,
        double drivingPowerW,
        double drivingCurrentA,
        double movingPowerW,
        double movingChargeC,
        double waitingChargeC,
        double energyJ,
        Split split) {

    /** Driving, stops and waiting together, s. */
    public double durationS() {
        return movingTimeS + leg.waitS();
    }

    /** Over the leg, C. */
    public double chargeC() {
        return movingChargeC + waitingChargeC;
    }

    /** Mean over the leg, W. */
    public double powerW() {
        return energyJ / durationS();
    }

    /** Mean over the leg, A. */
    public double currentA() {
        return chargeC() / durationS();
    }

    /** The most that the pack is asked for on the leg, W: driving steadily, stopping and starting, or standing. */
    double greatestPowerW() {
        return Math.max(Math.max(drivingPowerW, movingPowerW), split.accessoriesJ() / durationS());
    }

    /**
     * Where the energy of a leg goes, J. The parts add up to the energy at the pack.
     *
     * @param rollingJ into rolling resistance
     * @param climbJ into height, m g h; negative downhill
     * @param dragJ into the air
     * @param stopsJ into the brakes at stops, less what comes back
     * @param brakingJ into brakes or motor holding the vehicle back downhill, less what comes back
     * @param driveLossJ lost between pack and wheel while driving
     * @param accessoriesJ into everything that is not the drive
     */
    public record Split(
            double rollingJ,
            double climbJ,
            double dragJ,
            double stopsJ,
            double brakingJ,
            double driveLossJ,
            double accessoriesJ) {

        /** Energy at the pack, J. */
        public double totalJ() {
            return rollingJ + climbJ + dragJ + stopsJ + brakingJ + driveLossJ + accessoriesJ;
        }
    }
}
