package org.axlewright.domain.check;

/**
 * Argument checks of the functions. Each returns its argument and is written in positive form, so that NaN fails. They guard against
 * mistakes in our own code: what people send is checked before, with pointers and in their units.
 */
public final class Check {

    private Check() {}

    /** Neither NaN nor infinite. */
    public static double finite(double value, String name) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            return value;
        }
        throw new InvalidInput(name + " must be finite, was " + value);
    }

    /** Greater than zero and finite. */
    public static double positive(double value, String name) {
        if (value > 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new InvalidInput(name + " must be positive, was " + value);
    }

    /** Zero or more, and finite. */
    public static double notNegative(double value, String name) {
        if (value >= 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new InvalidInput(name + " must not be negative, was " + value);
    }

    /** From minimum to maximum, both included. */
    public static double within(double value, double minimum, double maximum, String name) {
        if (value >= minimum && value <= maximum) {
            return value;
        }
        throw new InvalidInput(name + " must be from " + minimum + " to " + maximum + ", was " + value);
    }
}
