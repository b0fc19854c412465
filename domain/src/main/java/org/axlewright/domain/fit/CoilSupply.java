package org.axlewright.domain.fit;

/** What feeds the coil of a contactor. {@code toString} is the name in requests. */
public enum CoilSupply {
    /** The whole pack: the coil sees every voltage the pack has. */
    PACK("pack"),
    /** The converter: the coil sees its output voltage. */
    CONVERTER("converter");

    private final String token;

    CoilSupply(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
