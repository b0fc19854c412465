package org.axlewright.domain.quantity;

/** Units of area; SI unit: square metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum AreaUnit implements Unit {
    SQUARE_MILLIMETRE("mm2", 0.000001),
    SQUARE_CENTIMETRE("cm2", 0.0001),
    SQUARE_METRE("m2", 1),
    SQUARE_FOOT("ft2", 0.09290304);

    private final String token;
    private final double factor;

    AreaUnit(String token, double factor) {
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
