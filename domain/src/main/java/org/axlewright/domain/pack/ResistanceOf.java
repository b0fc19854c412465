package org.axlewright.domain.pack;

/** What a stated internal resistance belongs to. {@code toString} is the name in requests. */
public enum ResistanceOf {
    CELL("cell"),
    BLOCK("block"),
    PACK("pack");

    private final String token;

    ResistanceOf(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
