package org.axlewright.domain.quantity;

/** Units of roll gradient; SI unit: radian second squared per metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum RollGradientUnit implements Unit {
    DEGREE_PER_G("deg/g", Math.PI / 180 / 9.80665);

    private final String token;
    private final double factor;

    RollGradientUnit(String token, double factor) {
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
