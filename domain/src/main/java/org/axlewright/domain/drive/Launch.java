package org.axlewright.domain.drive;

import org.axlewright.domain.roadload.RoadLoad;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;

/**
 * From standstill to a speed on the level at full throttle. The equation of motion is integrated over the speed, so that the speed wanted
 * is met exactly; time, distance and every energy are states, so that their sum holds to the last digits.
 *
 * @param timeS time to the speed
 * @param distanceM distance to it
 * @param packJ energy from the pack
 * @param kineticJ energy of the moving vehicle with its rotating parts
 * @param rollingJ into rolling resistance
 * @param dragJ into the air
 * @param lossJ lost between pack and wheel
 * @param accessoriesJ into everything else on the pack
 */
public record Launch(
        double timeS,
        double distanceM,
        double packJ,
        double kineticJ,
        double rollingJ,
        double dragJ,
        double lossJ,
        double accessoriesJ) {

    /** The speed is reached in pieces, so that a kink of the pull costs little. */
    private static final int PIECES = 24;

    private static final int MOST_EVALUATIONS = 20_000;

    /** {@code dy/dv} of time, distance, pack, rolling, drag, loss. */
    private static final class Motion implements OrdinaryDifferentialEquation {

        private final Drivetrain train;
        private final Road road;
        private boolean stuck;

        Motion(Drivetrain train, Road road) {
            this.train = train;
            this.road = road;
        }

        @Override
        public int getDimension() {
            return 6;
        }

        @Override
        public double[] computeDerivatives(double v, double[] y) {
            Drivetrain.Pull pull = train.pull(v);
            double rolling = road.rollingN(road.rollingResistance(), 0);
            double drag = road.dragN(v);
            double net = pull.forceN() - rolling - drag;
            if (!(net > 0)) {
                stuck = true;
                net = road.weightN();
            }
            double perSpeed = road.movingKg() / net; // dt/dv
            return new double[] {
                perSpeed,
                v * perSpeed,
                pull.packW() * perSpeed,
                rolling * v * perSpeed,
                drag * v * perSpeed,
                (pull.packW() - train.accessoriesW() - pull.forceN() * v) * perSpeed
            };
        }
    }

    /** Null where the pull does not suffice on the way. */
    static @Nullable Launch to(double speedMPS, Drivetrain train, Road road) {
        Motion motion = new Motion(train, road);
        double[] y = new double[6];
        double from = 0;
        for (int i = 1; i <= PIECES; i++) {
            double to = speedMPS * i / PIECES;
            DormandPrince853Integrator integrator =
                    new DormandPrince853Integrator(1e-13 * speedMPS, to - from, 1e-9, 1e-9);
            integrator.setMaxEvaluations(MOST_EVALUATIONS);
            ODEStateAndDerivative end = integrator.integrate(motion, new ODEState(from, y), to);
            y = end.getPrimaryState();
            from = to;
            if (motion.stuck) {
                return null;
            }
        }
        return new Launch(
                y[0],
                y[1],
                y[2],
                RoadLoad.kineticJ(road.massKg(), road.rotatingShare(), speedMPS),
                y[3],
                y[4],
                y[5],
                train.accessoriesW() * y[0]);
    }
}
