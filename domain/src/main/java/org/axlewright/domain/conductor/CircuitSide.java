package org.axlewright.domain.conductor;

/** The side of the controller a circuit lies on; the two carry different currents. {@code toString} is the name in requests. */
public enum CircuitSide {
    BATTERY("battery"),
    MOTOR("motor");

    private final String token;

    CircuitSide(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
