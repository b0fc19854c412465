package org.axlewright.domain.quantity;

/** Force of a spring for its travel. SI unit: newton per metre. */
public record SpringRate(double value, SpringRateUnit unit) implements Quantity {}
