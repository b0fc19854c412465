package org.axlewright.domain.quantity;

/** How often something swings. SI unit: hertz. */
public record Frequency(double value, FrequencyUnit unit) implements Quantity {}
