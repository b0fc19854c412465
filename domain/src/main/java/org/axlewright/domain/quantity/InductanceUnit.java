package org.axlewright.domain.quantity;

/** Units of inductance; SI unit: henry. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum InductanceUnit implements Unit {
    MILLIHENRY("mH", 0.001),
    HENRY("H", 1);

    private final String token;
    private final double factor;

    InductanceUnit(String token, double factor) {
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
