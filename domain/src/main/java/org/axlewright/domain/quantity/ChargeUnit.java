package org.axlewright.domain.quantity;

/** Units of charge; SI unit: coulomb. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum ChargeUnit implements Unit {
    AMPERE_HOUR("Ah", 3600);

    private final String token;
    private final double factor;

    ChargeUnit(String token, double factor) {
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
