package org.axlewright.domain.quantity;

/** Units of rotation; SI unit: radian per second. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum RotationUnit implements Unit {
    REVOLUTION_PER_MINUTE("rpm", Math.PI / 30),
    RADIAN_PER_SECOND("rad/s", 1);

    private final String token;
    private final double factor;

    RotationUnit(String token, double factor) {
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
