package org.axlewright.domain.axles;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * A mass and where its centre of gravity is; axes as in ISO 4130: x rearward from the front axle, y to the right, z up from the ground.
 *
 * @param massKg mass, kg; negative when it is taken away
 * @param xM behind the front axle, m
 * @param yM to the right of the centre plane, m, or null when not known
 * @param zM above the ground, m, or null when not known
 */
public record PointMass(
        double massKg,
        double xM,
        @Nullable Double yM,
        @Nullable Double zM) {

    public PointMass {
        Check.finite(massKg, "mass");
        Check.finite(xM, "x");
        if (yM != null) {
            Check.finite(yM, "y");
        }
        if (zM != null) {
            Check.finite(zM, "z");
        }
    }
}
