package org.axlewright.domain.precharge;

/** What takes the energy of a coil when it is switched off. {@code toString} is the name in requests. */
public enum Suppression {
    /** Nothing but the gap of the switch. */
    NONE("none"),
    /** A plain diode across the coil: least voltage, slowest release. */
    DIODE("diode"),
    /** A diode in series with a voltage reference diode. */
    DIODE_ZENER("diode-zener"),
    /** A bidirectional suppressor across the coil. */
    BIDIRECTIONAL("bidirectional");

    private final String token;

    Suppression(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
