package org.axlewright.domain.quantity;

/** Units of temperature difference; SI unit: kelvin. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum TemperatureDifferenceUnit implements Unit {
    KELVIN("K", 1);

    private final String token;
    private final double factor;

    TemperatureDifferenceUnit(String token, double factor) {
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
