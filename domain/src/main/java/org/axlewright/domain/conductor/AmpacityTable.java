package org.axlewright.domain.conductor;

/** Published tables of continuous current. {@code toString} is the name in requests. */
public enum AmpacityTable {
    /** 33 CFR 183.425 Table 5, boat wiring under 50 V, free air or bundled. */
    CFR_33_183_425("33-cfr-183-425"),
    /** NEC Table 310.16, copper, 30 degrees Celsius, at most three current-carrying conductors. */
    NEC_310_16("nec-310-16");

    private final String token;

    AmpacityTable(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
