package org.axlewright.domain.quantity;

/** Units of resistance; SI unit: ohm. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum ResistanceUnit implements Unit {
    MILLIOHM("mohm", 0.001),
    OHM("ohm", 1);

    private final String token;
    private final double factor;

    ResistanceUnit(String token, double factor) {
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
