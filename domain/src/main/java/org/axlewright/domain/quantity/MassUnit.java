package org.axlewright.domain.quantity;

/** Units of mass; SI unit: kilogram. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum MassUnit implements Unit {
    KILOGRAM("kg", 1),
    POUND("lb", 0.45359237);

    private final String token;
    private final double factor;

    MassUnit(String token, double factor) {
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
