package org.axlewright.domain.quantity;

/** Unit of frequency; SI unit: hertz. */
public enum FrequencyUnit implements Unit {
    HERTZ("Hz");

    private final String token;

    FrequencyUnit(String token) {
        this.token = token;
    }

    @Override
    public double toSi(double value) {
        return value;
    }

    @Override
    public double fromSi(double si) {
        return si;
    }

    @Override
    public String toString() {
        return token;
    }
}
