package org.axlewright.domain.legalclass;

/** What a vehicle is built to carry. {@code toString} is the name in requests. */
public enum Carries {
    /** Persons. */
    PEOPLE("people"),
    /** Goods, behind the driver. */
    GOODS("goods"),
    /** Persons and goods. */
    BOTH("both"),
    /** Nothing of its own: towing is its work. */
    TRAILERS("trailers");

    private final String token;

    Carries(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
