package org.axlewright.domain.precharge;

/** What stands in the precharge path. {@code toString} is the name in requests. */
public enum PrechargePart {
    RESISTOR("resistor"),
    /** Filament lamp: about a tenth of its hot resistance when cold. */
    INCANDESCENT_LAMP("incandescent-lamp"),
    /** A lamp with electronics or discharge: no resistor at all. */
    LED_OR_FLUORESCENT_LAMP("led-or-fluorescent-lamp");

    private final String token;

    PrechargePart(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
