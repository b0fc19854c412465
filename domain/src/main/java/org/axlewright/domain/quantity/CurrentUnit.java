package org.axlewright.domain.quantity;

/** Units of current; SI unit: ampere. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum CurrentUnit implements Unit {
    AMPERE("A", 1);

    private final String token;
    private final double factor;

    CurrentUnit(String token, double factor) {
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
