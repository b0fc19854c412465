package org.axlewright.domain.quantity;

/** Units of consumption; SI unit: joule per metre. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum ConsumptionUnit implements Unit {
    WATT_HOUR_PER_KILOMETRE("Wh/km", 3.6),
    WATT_HOUR_PER_MILE("Wh/mi", 3600 / 1609.344);

    private final String token;
    private final double factor;

    ConsumptionUnit(String token, double factor) {
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
