package org.axlewright.domain.legalclass;

/** What keeps a vehicle at its top speed. {@code toString} is the name in requests. */
public enum HeldBy {
    /** Motor, gearing and voltage; it can go no faster. */
    DESIGN("design"),
    /** A setting of the controller. */
    CONTROLLER("controller"),
    /** A stop or governor that a tool removes. */
    STOP("pedal-stop");

    private final String token;

    HeldBy(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
