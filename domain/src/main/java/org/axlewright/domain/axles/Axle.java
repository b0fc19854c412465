package org.axlewright.domain.axles;

/** One of the two axles. {@code toString} is the name in requests. */
public enum Axle {
    FRONT("front"),
    REAR("rear");

    private final String token;

    Axle(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
