package org.axlewright.domain.roadload;

/** Ground that a vehicle rolls on. {@code toString} is the name in requests. */
public enum Surface {
    /** New asphalt or concrete. */
    ASPHALT("asphalt"),
    WORN_ASPHALT("worn-asphalt"),
    PACKED_GRAVEL("packed-gravel"),
    LOOSE_GRAVEL("loose-gravel"),
    COBBLES("cobbles"),
    /** Mown turf, firm. */
    GRASS("grass"),
    /** Medium-hard soil. */
    SOIL("soil"),
    /** Loose sand. */
    SAND("sand");

    private final String token;

    Surface(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
