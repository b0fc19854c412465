package org.axlewright.domain.legalclass;

/** Where a vehicle is used. {@code toString} is the name in requests. */
public enum Place {
    /** Streets and roads open to traffic. */
    PUBLIC_ROAD("public-road"),
    /** Closed ground, courses, estates. */
    PRIVATE_GROUND("private-ground"),
    /** Unmade ground. */
    OFF_ROAD("off-road"),
    /** Plants, warehouses, greenhouses. */
    INDUSTRIAL("industrial");

    private final String token;

    Place(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
