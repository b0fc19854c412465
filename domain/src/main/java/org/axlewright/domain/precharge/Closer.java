package org.axlewright.domain.precharge;

/** What can close the main contactor. {@code toString} is the name in requests. */
public enum Closer {
    /** A timer or controller that precharges every time before it closes. */
    AFTER_PRECHARGE("after-precharge"),
    /** A person, who may forget. */
    MANUAL("manual"),
    /** Battery management or another protection that closes again by itself after a trip. */
    PROTECTION("protection");

    private final String token;

    Closer(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
