package org.axlewright.domain.quantity;

/** Units of length; SI unit: metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum LengthUnit implements Unit {
    MILLIMETRE("mm", 0.001),
    CENTIMETRE("cm", 0.01),
    METRE("m", 1),
    INCH("in", 0.0254),
    FOOT("ft", 0.3048);

    private final String token;
    private final double factor;

    LengthUnit(String token, double factor) {
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
