package org.axlewright.domain.quantity;

/** A difference of two temperatures. SI unit: kelvin. */
public record TemperatureDifference(double value, TemperatureDifferenceUnit unit) implements Quantity {}
