package org.axlewright.domain.quantity;

/** Units of spring rate; SI unit: newton per metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum SpringRateUnit implements Unit {
    NEWTON_PER_MILLIMETRE("N/mm", 1000),
    POUND_FORCE_PER_INCH("lbf/in", 175.12683524647636);

    private final String token;
    private final double factor;

    SpringRateUnit(String token, double factor) {
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
