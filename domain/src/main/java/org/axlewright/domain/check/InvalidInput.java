package org.axlewright.domain.check;

/** An argument outside what a function is defined for: a mistake in our code, never a message to a user. */
public final class InvalidInput extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public InvalidInput(String message) {
        super(message);
    }
}
