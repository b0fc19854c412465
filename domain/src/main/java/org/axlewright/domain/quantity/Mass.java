package org.axlewright.domain.quantity;

/** Mass. SI unit: kilogram. */
public record Mass(double value, MassUnit unit) implements Quantity {}
