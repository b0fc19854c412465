package org.axlewright.domain.quantity;

/** Units of resistance per length; SI unit: ohm per metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum ResistancePerLengthUnit implements Unit {
    MILLIOHM_PER_METRE("mohm/m", 0.001),
    OHM_PER_KILOMETRE("ohm/km", 0.001),
    OHM_PER_KILOFOOT("ohm/kft", 0.001 / 0.3048);

    private final String token;
    private final double factor;

    ResistancePerLengthUnit(String token, double factor) {
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
