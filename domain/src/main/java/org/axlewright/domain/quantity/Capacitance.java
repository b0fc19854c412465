package org.axlewright.domain.quantity;

/** Capacitance. SI unit: farad. */
public record Capacitance(double value, CapacitanceUnit unit) implements Quantity {}
