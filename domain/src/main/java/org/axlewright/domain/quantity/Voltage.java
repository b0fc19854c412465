package org.axlewright.domain.quantity;

/** Voltage. SI unit: volt. */
public record Voltage(double value, VoltageUnit unit) implements Quantity {}
