package org.axlewright.domain.quantity;

/** Units of acceleration; SI unit: metre per second squared. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum AccelerationUnit implements Unit {
    METRE_PER_SECOND_SQUARED("m/s2", 1),
    STANDARD_GRAVITY("g", 9.80665);

    private final String token;
    private final double factor;

    AccelerationUnit(String token, double factor) {
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
