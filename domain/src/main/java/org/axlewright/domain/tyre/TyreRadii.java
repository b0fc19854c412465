package org.axlewright.domain.tyre;

import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.trace.Source;

/**
 * The radii of a tyre that follow from its free diameter. The loaded radius, wheel centre to ground, belongs to heights and forces; the
 * distance rolled in one turn belongs to speed and gearing. Neither is half the diameter, and a measured one is better than both.
 */
public final class TyreRadii {

    /** Loaded radius over half the free diameter at rated load and pressure; soft low-pressure tyres have less. */
    public static final double LOADED_SHARE = 0.96;

    public static final Source LOADED_SOURCE =
            Source.weak("static loaded radius 0.96 x D/2 at rated load and pressure, secondary pages");

    /** Distance rolled in one turn over the free diameter, radial construction, at 60 km/h, rated load and pressure. */
    public static final double ROLLOUT_RADIAL = 3.05;

    /** Distance rolled in one turn over the free diameter, bias construction, at 60 km/h, rated load and pressure. */
    public static final double ROLLOUT_BIAS = 2.99;

    public static final Source ROLLOUT_SOURCE =
            Source.weak("ETRTO rule, rolling circumference 3.05 D radial and 2.99 D bias, secondary pages");

    /** Circumference of the free diameter: the most that a tyre can roll in one turn. */
    public static final Source CIRCUMFERENCE_SOURCE =
            Source.published("engineering-course assignment: 750 rad/s, 10:1, a wheel of 0.4 m, 54 km/h");

    private TyreRadii() {}

    /** Static loaded radius of a tyre of that free diameter, m. */
    public static double loadedM(double diameterM) {
        return LOADED_SHARE * positive(diameterM, "diameterM") / 2;
    }

    /** Circumference of the free diameter, m: an upper bound of the distance rolled in one turn. */
    public static double circumferenceM(double diameterM) {
        return Math.PI * positive(diameterM, "diameterM");
    }

    /** Distance rolled in one turn of the wheel, m. */
    public static double rolloutM(double diameterM, boolean radial) {
        return (radial ? ROLLOUT_RADIAL : ROLLOUT_BIAS) * positive(diameterM, "diameterM");
    }
}
