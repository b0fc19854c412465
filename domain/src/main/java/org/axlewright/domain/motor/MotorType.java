package org.axlewright.domain.motor;

/** How a motor is built, as far as its torque and speed follow from it. {@code toString} is the name in requests. */
public enum MotorType {
    /** Direct current, field in series with the armature: no bound to its speed without load. */
    SERIES_DC("series-dc"),
    /** Direct current, field fed by the controller. */
    SEPARATELY_EXCITED_DC("separately-excited-dc"),
    /** Direct current, brushes, permanent magnets. */
    PERMANENT_MAGNET_DC("permanent-magnet-dc"),
    /** Alternating current, induction. */
    INDUCTION("induction"),
    /** Alternating current, permanent magnets. */
    PERMANENT_MAGNET_AC("permanent-magnet-ac");

    private final String token;

    MotorType(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
