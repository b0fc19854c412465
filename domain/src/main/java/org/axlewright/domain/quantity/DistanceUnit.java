package org.axlewright.domain.quantity;

/** Units of distance; SI unit: metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum DistanceUnit implements Unit {
    METRE("m", 1),
    KILOMETRE("km", 1000),
    FOOT("ft", 0.3048),
    MILE("mi", 1609.344);

    private final String token;
    private final double factor;

    DistanceUnit(String token, double factor) {
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
