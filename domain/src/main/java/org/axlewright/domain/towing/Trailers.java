package org.axlewright.domain.towing;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.jspecify.annotations.Nullable;

/**
 * One trailer or a train of equal ones.
 *
 * @param massKg of all together, loaded, kg
 * @param count how many
 * @param rolling rolling resistance coefficient
 * @param startingFactor resistance at the first movement over that when rolling, 1 or more
 * @param braked whether they have brakes of their own
 * @param brakeForceN of all together; null when they have none, or none that is known
 * @param hitchLoadN vertical load on the vehicle's hitch, level, N; negative when the trailer lifts it
 * @param hitchAngleRad between drawbar and vehicle in plan, 0 when the train is straight
 */
public record Trailers(
        double massKg,
        int count,
        double rolling,
        double startingFactor,
        boolean braked,
        @Nullable Double brakeForceN,
        double hitchLoadN,
        double hitchAngleRad) {
    public Trailers {
        positive(massKg, "mass");
        positive(count, "count");
        positive(rolling, "rolling");
        positive(startingFactor, "startingFactor");
        if (brakeForceN != null) {
            notNegative(brakeForceN, "brakeForce");
        }
        finite(hitchLoadN, "hitchLoad");
        notNegative(hitchAngleRad, "hitchAngle");
    }

    /** The same trailers with another mass, their brakes in proportion. */
    Trailers of(double otherKg) {
        Double force = brakeForceN == null ? null : (Double) (brakeForceN * otherKg / massKg);
        return new Trailers(otherKg, count, rolling, startingFactor, braked, force, hitchLoadN, hitchAngleRad);
    }
}
