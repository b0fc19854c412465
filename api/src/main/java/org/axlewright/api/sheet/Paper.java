package org.axlewright.api.sheet;

/** Paper that sheets are printed on, upright. */
public enum Paper {
    /** ISO 216. */
    A4("a4", 210, 297),
    /** ANSI/ASME Y14.1, size A. */
    LETTER("letter", 215.9, 279.4);

    private final String token;
    private final double widthMm;
    private final double heightMm;

    Paper(String token, double widthMm, double heightMm) {
        this.token = token;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** As people write it on the sheet. */
    String label() {
        return this == A4 ? "A4" : "Letter";
    }

    @Override
    public String toString() {
        return token;
    }
}
