package org.axlewright.domain.quantity;

/** Inductance. SI unit: henry. */
public record Inductance(double value, InductanceUnit unit) implements Quantity {}
