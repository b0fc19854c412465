package org.axlewright.domain.quantity;

/** Length, also of clearances and tyres. SI unit: metre. */
public record Length(double value, LengthUnit unit) implements Quantity {}
