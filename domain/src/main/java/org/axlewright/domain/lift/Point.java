package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.finite;

/**
 * A point of the right-hand side in front view.
 *
 * @param y outward from the centre plane, m
 * @param z up from the ground as found, m
 */
public record Point(double y, double z) {

    public Point {
        finite(y, "y");
        finite(z, "z");
    }

    double distance(Point other) {
        return Math.hypot(y - other.y, z - other.z);
    }

    /** Direction in which the other point is seen, from -π to π; 0 is straight outward. */
    double directionOf(Point other) {
        return Math.atan2(other.z - z, other.y - y);
    }

    Point polar(double length, double angle) {
        return new Point(y + length * Math.cos(angle), z + length * Math.sin(angle));
    }
}
