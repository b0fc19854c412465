package org.axlewright.domain.axles;

/** How the wheels of a vehicle stand. {@code toString} is the name in requests. */
public enum WheelPlan {
    /** Two in front, two behind. */
    FOUR_WHEELS("four-wheels"),
    /** Three wheels, one of them in front. */
    ONE_IN_FRONT("one-in-front"),
    /** Three wheels, one of them behind. */
    ONE_BEHIND("one-behind");

    private final String token;

    WheelPlan(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
