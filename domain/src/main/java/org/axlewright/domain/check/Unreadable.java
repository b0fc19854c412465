package org.axlewright.domain.check;

/** A marking or designation that cannot be read; the message is for people and says what would be readable. */
public final class Unreadable extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public Unreadable(String message) {
        super(message);
    }
}
