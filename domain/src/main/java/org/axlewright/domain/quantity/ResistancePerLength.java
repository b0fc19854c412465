package org.axlewright.domain.quantity;

/** Resistance of a conductor for its length. SI unit: ohm per metre. */
public record ResistancePerLength(double value, ResistancePerLengthUnit unit) implements Quantity {}
