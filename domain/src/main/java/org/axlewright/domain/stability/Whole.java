package org.axlewright.domain.stability;

import org.axlewright.domain.check.Check;

/**
 * The vehicle with what is aboard: its mass and where its centre of gravity is.
 *
 * @param massKg kg, above 0
 * @param xM behind the front axle, m
 * @param yM to the right of the centre plane, m
 * @param zM above the ground, m, above 0
 */
public record Whole(double massKg, double xM, double yM, double zM) {

    public Whole {
        Check.positive(massKg, "mass");
        Check.finite(xM, "x");
        Check.finite(yM, "y");
        Check.positive(zM, "z");
    }
}
