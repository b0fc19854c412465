package org.axlewright.domain.quantity;

/** Constants with value, unit and source. */
public final class Constants {

    /** Standard acceleration of gravity, m/s2. Source: CGPM 1901, NIST SP 811 (2008) Appendix B. Exact. */
    public static final double STANDARD_GRAVITY = 9.80665;

    /** Density of air at 15 degrees Celsius and 101 325 Pa, kg/m3. Source: ISO 2533:1975, standard atmosphere. */
    public static final double AIR_DENSITY_ISO_2533 = 1.225;

    private Constants() {}
}
