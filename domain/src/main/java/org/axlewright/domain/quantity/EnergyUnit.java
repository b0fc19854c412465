package org.axlewright.domain.quantity;

/** Units of energy; SI unit: joule. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum EnergyUnit implements Unit {
    JOULE("J", 1),
    WATT_HOUR("Wh", 3600),
    KILOWATT_HOUR("kWh", 3600000);

    private final String token;
    private final double factor;

    EnergyUnit(String token, double factor) {
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
