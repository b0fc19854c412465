package org.axlewright.domain.braking;

/** Which wheels lock first as the pedal goes down. {@code toString} is the name in answers. */
public enum FirstToLock {
    FRONT("front"),
    REAR("rear"),
    NEITHER("neither");

    private final String token;

    FirstToLock(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
