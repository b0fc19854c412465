package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.check.Check.within;

/**
 * A full rectangle with equal round corners: the outline of a tube, and the outline of its bore. A hollow section is one less the other.
 * Exact: each corner is a square of the radius less a quarter circle (the same split as EN 10219-2 annex B [from memory]).
 *
 * @param widthM across, m
 * @param heightM upright, m; bending is about the level axis through the middle
 * @param radiusM of the corners, m; 0 is sharp
 */
public record RoundedRectangle(double widthM, double heightM, double radiusM) {

    /** Area of a corner's loss over the square of its radius. */
    private static final double LOSS = 1 - Math.PI / 4;

    /** Distance of the loss's centroid from the outer faces over the radius. */
    private static final double CENTROID = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);

    /** Second moment of the loss about its own centroid over the radius to the fourth. */
    private static final double OWN = 1.0 / 3 - Math.PI / 16 - 1 / (3 * (12 - 3 * Math.PI));

    public RoundedRectangle {
        positive(widthM, "widthM");
        positive(heightM, "heightM");
        within(notNegative(radiusM, "radiusM"), 0, Math.min(widthM, heightM) / 2 * (1 + 1e-9), "radiusM");
    }

    /** Area, m². */
    public double areaM2() {
        return widthM * heightM - 4 * LOSS * radiusM * radiusM;
    }

    /** Second moment of area about the level axis, m⁴. */
    public double secondMomentM4() {
        double arm = heightM / 2 - CENTROID * radiusM;
        return widthM * Math.pow(heightM, 3) / 12
                - 4 * (OWN * Math.pow(radiusM, 4) + LOSS * radiusM * radiusM * arm * arm);
    }

    /** Section modulus of the full section, m³. */
    public double sectionModulusM3() {
        return 2 * secondMomentM4() / heightM;
    }

    /** First moment of the upper half about the level axis, m³. */
    public double firstMomentM3() {
        double arm = heightM / 2 - CENTROID * radiusM;
        return widthM * heightM * heightM / 8 - 2 * LOSS * radiusM * radiusM * arm;
    }
}
