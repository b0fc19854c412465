package org.axlewright.domain.quantity;

/** Mechanical stress. SI unit: pascal. */
public record Stress(double value, StressUnit unit) implements Quantity {}
