package org.axlewright.domain.quantity;

/** Units of voltage; SI unit: volt. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum VoltageUnit implements Unit {
    MILLIVOLT("mV", 0.001),
    VOLT("V", 1);

    private final String token;
    private final double factor;

    VoltageUnit(String token, double factor) {
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
