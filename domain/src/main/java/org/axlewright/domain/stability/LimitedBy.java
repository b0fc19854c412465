package org.axlewright.domain.stability;

/** What ends an acceleration or a deceleration. {@code toString} is the name in answers. */
public enum LimitedBy {
    /** The tyres of the driven or braked axle slip. */
    GRIP("grip"),
    /** The front wheels leave the ground. */
    FRONT_LIFT("front-lift"),
    /** The rear wheels leave the ground. */
    REAR_LIFT("rear-lift");

    private final String token;

    LimitedBy(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
