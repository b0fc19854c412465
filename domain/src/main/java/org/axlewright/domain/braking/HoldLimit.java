package org.axlewright.domain.braking;

/** What gives way first on a ramp. {@code toString} is the name in answers. */
public enum HoldLimit {
    /** The brake turns under the load. */
    BRAKE("brake"),
    /** The held tyres slide. */
    TYRES("tyres"),
    /** The vehicle tips over its lower axle. */
    TIPPING("tipping");

    private final String token;

    HoldLimit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
