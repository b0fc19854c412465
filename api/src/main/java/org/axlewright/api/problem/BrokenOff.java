package org.axlewright.api.problem;

/** An answer that has begun and can't be ended. */
public final class BrokenOff extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public BrokenOff(Throwable cause) {
        super("An answer broke off", cause);
    }
}
