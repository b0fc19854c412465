package org.axlewright.domain.towing;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Drawbar;
import org.axlewright.domain.axles.Stance;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle that tows.
 *
 * @param massKg as driven, kg
 * @param emptyMassKg unladen: without occupants and cargo, kg; null when not known
 * @param rolling rolling resistance coefficient
 * @param dragAreaM2 drag coefficient times frontal area; null leaves the air out
 * @param footing null when axle loads can't be told
 * @param engine null when motor or reduction aren't known
 */
public record Tug(
        double massKg,
        @Nullable Double emptyMassKg,
        double rolling,
        @Nullable Double dragAreaM2,
        @Nullable Footing footing,
        @Nullable Engine engine) {
    public Tug {
        positive(massKg, "mass");
        positive(rolling, "rolling");
    }

    /**
     * How it stands, where it is hitched, and what its tyres hold.
     *
     * @param stance without the trailer
     * @param drawbar where the trailer takes hold
     * @param braked axles with service brakes; null when not known
     * @param friction tyre to ground
     * @param rearRatingN rated load of the rear axle; null when not known
     * @param totalRatingN rated load of the vehicle; null when not known
     */
    public record Footing(
            Stance stance,
            Drawbar drawbar,
            AxleSet driven,
            @Nullable AxleSet braked,
            double friction,
            @Nullable Double rearRatingN,
            @Nullable Double totalRatingN) {
        public Footing {
            positive(friction, "friction");
        }
    }

    /**
     * Motor and reduction.
     *
     * @param radiusM loaded radius of the driven tyres
     * @param ratedTorqueNm what the duty rating allows; null when not known
     * @param maximumTorqueNm null when not known
     * @param referenceTorqueNm torque at {@code referenceCurrentA}; null when no such pair is known
     * @param seriesWound whether torque goes with the square of the current
     * @param shortTimeS minutes of a short-time rating, s; null for a continuous or unknown one
     * @param continuous whether the rating holds for ever
     * @param controllerCurrentA limit on the motor side; null when not known
     * @param ratedSpeed rad/s; null when not known
     * @param windingOhm null when not known
     */
    public record Engine(
            double ratio,
            double radiusM,
            double gearEfficiency,
            @Nullable Double ratedTorqueNm,
            @Nullable Double maximumTorqueNm,
            @Nullable Double referenceTorqueNm,
            @Nullable Double referenceCurrentA,
            @Nullable Double ratedCurrentA,
            boolean seriesWound,
            @Nullable Double shortTimeS,
            boolean continuous,
            @Nullable Double controllerCurrentA,
            @Nullable Double ratedSpeed,
            @Nullable Double windingOhm) {
        public Engine {
            positive(ratio, "ratio");
            positive(radiusM, "radius");
            positive(gearEfficiency, "gearEfficiency");
            if (shortTimeS != null) {
                notNegative(shortTimeS, "shortTime");
            }
        }

        /** Thrust at the wheels for a torque at the shaft, N. */
        double thrustN(double torqueNm) {
            return torqueNm * ratio * gearEfficiency / radiusM;
        }
    }
}
