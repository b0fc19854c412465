package org.axlewright.domain.quantity;

/** Units of force; SI unit: newton. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum ForceUnit implements Unit {
    NEWTON("N", 1),
    POUND_FORCE("lbf", 4.4482216152605);

    private final String token;
    private final double factor;

    ForceUnit(String token, double factor) {
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
