package org.axlewright.domain.legalclass;

import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.quantity.Dimension;

/** What a condition of a class looks at. {@code toString} is the name in tables and answers. */
public enum Aspect {
    /** Reached on level pavement within 1.6 km (1 mile). */
    TOP_SPEED("top-speed", Dimension.SPEED, "/use/topSpeed"),
    /** Gross vehicle weight rating: stated by the maker, nobody else. */
    GROSS_RATING("gross-rating", Dimension.MASS, "/chassis/ratings/total"),
    /** Rating less unladen mass: people and goods. */
    PAYLOAD("payload", Dimension.MASS, "/chassis/ratings/total", "/use/kerbMass"),
    /** Ready for use, with its pack, without people and goods. */
    UNLADEN_MASS("unladen-mass", Dimension.MASS, "/use/kerbMass"),
    /** As class L counts it: without driver and without propulsion battery. */
    RUNNING_ORDER_MASS("running-order-mass", Dimension.MASS, "/use/kerbMass", "/pack/mass"),
    /** Goods that it is rated for. */
    CARGO("cargo", Dimension.MASS, "/use/cargo"),
    /** Seats, the driver's included. */
    SEATS("seats", Dimension.NONE, "/chassis/seats"),
    WHEELS("wheels", Dimension.NONE, "/chassis/wheelPlan"),
    /** Largest continuous rated power of the motor. */
    POWER("power", Dimension.SHAFT_POWER, "/drive/motor/power"),
    LENGTH("length", Dimension.LENGTH, "/chassis/length"),
    WIDTH("width", Dimension.LENGTH, "/chassis/width"),
    HEIGHT("height", Dimension.LENGTH, "/chassis/height"),
    GROUND_CLEARANCE("ground-clearance", Dimension.CLEARANCE, "/chassis/groundClearance"),
    /** Wheelbase over ground clearance. */
    CLEARANCE_RATIO("wheelbase-over-clearance", Dimension.NONE, "/chassis/wheelbase", "/chassis/groundClearance"),
    /** Height of the seating reference point above the ground. */
    SEAT_HEIGHT("seat-height", Dimension.LENGTH, "/use/seatHeight"),
    DRAWBAR_PULL("drawbar-pull", Dimension.FORCE, "/use/drawbarPull"),
    PLACE("place", Dimension.NONE, "/use/place"),
    CARRIES("carries", Dimension.NONE, "/use/carries"),
    /** Driver and riders sit in a compartment that is open on three sides at most. */
    ENCLOSED("enclosed", Dimension.NONE, "/use/enclosed"),
    /** That another class is not met. */
    OTHERWISE("otherwise", Dimension.NONE);

    private final String token;
    private final Dimension dimension;

    @SuppressWarnings("ImmutableEnumChecker") // a list that nothing can change
    private final List<String> pointers;

    Aspect(String token, Dimension dimension, String... pointers) {
        this.token = token;
        this.dimension = dimension;
        this.pointers = List.of(pointers);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Where what it looks at is sent. */
    public List<String> pointers() {
        return pointers;
    }

    /** Whether it is held against a limit, and not against words. */
    boolean measured() {
        return switch (this) {
            case PLACE, CARRIES, ENCLOSED, OTHERWISE -> false;
            default -> true;
        };
    }

    static Aspect of(String token) {
        return Arrays.stream(values())
                .filter(aspect -> aspect.token.equals(token))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no aspect " + token));
    }

    @Override
    public String toString() {
        return token;
    }
}
