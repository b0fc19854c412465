package org.axlewright.domain.quantity;

/** Units of pressure; SI unit: pascal. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum PressureUnit implements Unit {
    KILOPASCAL("kPa", 1000),
    BAR("bar", 100000),
    POUND_PER_SQUARE_INCH("psi", 6894.757293168361);

    private final String token;
    private final double factor;

    PressureUnit(String token, double factor) {
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
