package org.axlewright.domain.quantity;

/** Pressure. SI unit: pascal. */
public record Pressure(double value, PressureUnit unit) implements Quantity {}
