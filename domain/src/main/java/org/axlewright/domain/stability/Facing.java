package org.axlewright.domain.stability;

/** Which way a seat faces. {@code toString} is the name in requests. */
public enum Facing {
    /** With the driver. */
    FORWARD("forward"),
    /** Looking back. */
    REARWARD("rearward"),
    /** Looking to one side. */
    SIDEWAYS("sideways");

    private final String token;

    Facing(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
