package org.axlewright.domain.stability;

/** A side of the vehicle, as the driver sees it. {@code toString} is the name in answers. */
public enum Side {
    LEFT("left", -1),
    RIGHT("right", 1);

    private final String token;
    private final int sign;

    Side(String token, int sign) {
        this.token = token;
        this.sign = sign;
    }

    /** Of y on this side: to the right is positive. */
    int sign() {
        return sign;
    }

    Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }

    @Override
    public String toString() {
        return token;
    }
}
