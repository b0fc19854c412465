package org.axlewright.domain.quantity;

/** Units of torque; SI unit: newton metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum TorqueUnit implements Unit {
    NEWTON_METRE("Nm", 1),
    POUND_FORCE_FOOT("lbf.ft", 4.4482216152605 * 0.3048);

    private final String token;
    private final double factor;

    TorqueUnit(String token, double factor) {
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
