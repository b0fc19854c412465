package org.axlewright.domain.quantity;

/** Slope of the ground, up positive; a grade of 100 % is 45 degrees. Inside: radian. */
public record Grade(double value, GradeUnit unit) implements Quantity {}
