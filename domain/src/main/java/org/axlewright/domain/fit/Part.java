package org.axlewright.domain.fit;

/** What can be one half of a pair. {@code toString} is the name in answers. */
public enum Part {
    PACK("pack"),
    BLOCKS("blocks"),
    CONTROLLER("controller"),
    MOTOR("motor"),
    CHARGER("charger"),
    CONVERTER("converter"),
    CONTACTOR("contactor"),
    ACCESSORIES("accessories");

    private final String token;

    Part(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
