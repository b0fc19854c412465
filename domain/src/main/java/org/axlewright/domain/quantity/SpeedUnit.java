package org.axlewright.domain.quantity;

/** Units of speed; SI unit: metre per second. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum SpeedUnit implements Unit {
    METRE_PER_SECOND("m/s", 1),
    KILOMETRE_PER_HOUR("km/h", 1 / 3.6),
    MILE_PER_HOUR("mph", 0.44704),
    FOOT_PER_MINUTE("ft/min", 0.00508);

    private final String token;
    private final double factor;

    SpeedUnit(String token, double factor) {
        this.token = token;
        this.factor = factor;
    }

    @Override
    public double toSi(double value) {
        return value * factor;
    }

    @Override
    public double fromSi(double si) {
        return si / factor;
    }

    @Override
    public String toString() {
        return token;
    }
}
