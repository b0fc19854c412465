package org.axlewright.domain.quantity;

/** Units of power; SI unit: watt. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum PowerUnit implements Unit {
    WATT("W", 1),
    KILOWATT("kW", 1000),
    HORSEPOWER("hp", 550 * 4.4482216152605 * 0.3048);

    private final String token;
    private final double factor;

    PowerUnit(String token, double factor) {
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
