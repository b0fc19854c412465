package org.axlewright.domain.quantity;

/** Resistance. SI unit: ohm. */
public record Resistance(double value, ResistanceUnit unit) implements Quantity {}
