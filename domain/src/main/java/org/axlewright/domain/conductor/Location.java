package org.axlewright.domain.conductor;

/** Where a cable runs. {@code toString} is the name in requests. */
public enum Location {
    /** In free air at the ambient temperature. */
    OPEN("open"),
    /** In a space as hot as an engine compartment, 50 degrees Celsius. */
    ENGINE_SPACE("engine-space");

    private final String token;

    Location(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
