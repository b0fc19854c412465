package org.axlewright.domain.quantity;

/** Units of capacitance; SI unit: farad. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum CapacitanceUnit implements Unit {
    MICROFARAD("uF", 0.000001),
    MILLIFARAD("mF", 0.001);

    private final String token;
    private final double factor;

    CapacitanceUnit(String token, double factor) {
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
