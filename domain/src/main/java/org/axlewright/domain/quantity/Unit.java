package org.axlewright.domain.quantity;

/**
 * A unit of one dimension. {@code toString} is the token people write ({@code "in"}, {@code "km/h"}); every enum of units is closed,
 * so an unknown token is an unknown name and never a guess.
 */
public interface Unit {

    /** The value in the coherent SI unit of the dimension. */
    double toSi(double value);

    /** Inverse of {@link #toSi}. */
    double fromSi(double si);
}
