package org.axlewright.domain.braking;

/** How a wheel brake is built. {@code toString} is the name in requests. */
public enum BrakeKind {
    DRUM("drum"),
    DISC("disc");

    private final String token;

    BrakeKind(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
