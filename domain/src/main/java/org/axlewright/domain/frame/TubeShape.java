package org.axlewright.domain.frame;

/** Shape of a hollow section. {@code toString} is the name in requests. */
public enum TubeShape {
    /** Rectangular hollow section, standing on its width. */
    RECTANGULAR("rectangular"),
    /** Square hollow section. */
    SQUARE("square"),
    /** Round tube. */
    ROUND("round");

    private final String token;

    TubeShape(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
