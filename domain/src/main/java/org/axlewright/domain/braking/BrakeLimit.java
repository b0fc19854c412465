package org.axlewright.domain.braking;

/** What ends the force of an axle's brakes. {@code toString} is the name in answers. */
public enum BrakeLimit {
    /** The brakes give no more; the wheels still turn. */
    BRAKES("brakes"),
    /** The tyres give no more; the wheels lock. */
    TYRES("tyres"),
    /** The other axle leaves the ground. */
    TIPPING("tipping");

    private final String token;

    BrakeLimit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
