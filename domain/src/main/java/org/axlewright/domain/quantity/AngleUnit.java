package org.axlewright.domain.quantity;

/** Units of angle; SI unit: radian. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum AngleUnit implements Unit {
    DEGREE("deg", Math.PI / 180),
    RADIAN("rad", 1);

    private final String token;
    private final double factor;

    AngleUnit(String token, double factor) {
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
