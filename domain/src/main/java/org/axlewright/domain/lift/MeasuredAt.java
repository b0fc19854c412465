package org.axlewright.domain.lift;

/** Where the amount of a lift was measured. {@code toString} is the name in requests. */
public enum MeasuredAt {
    WHEEL("wheel"),
    SPRING("spring");

    private final String token;

    MeasuredAt(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
