package org.axlewright.domain.quantity;

/** Units of volume flow; SI unit: cubic metre per second. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum VolumeFlowUnit implements Unit {
    CUBIC_METRE_PER_HOUR("m3/h", 1.0 / 3600),
    CUBIC_FOOT_PER_MINUTE("cfm", 0.028316846592 / 60);

    private final String token;
    private final double factor;

    VolumeFlowUnit(String token, double factor) {
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
