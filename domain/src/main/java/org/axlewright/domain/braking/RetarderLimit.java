package org.axlewright.domain.braking;

/** What bounds a brake that acts through the motor. {@code toString} is the name in answers. */
public enum RetarderLimit {
    TORQUE("torque"),
    /** The current that controller or pack take back. */
    CURRENT("current"),
    /** The tyres of its axle. */
    TYRES("tyres");

    private final String token;

    RetarderLimit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
