package org.axlewright.domain.quantity;

/** Acceleration; {@code g} is standard gravity. SI unit: metre per second squared. */
public record Acceleration(double value, AccelerationUnit unit) implements Quantity {}
