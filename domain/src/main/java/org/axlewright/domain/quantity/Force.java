package org.axlewright.domain.quantity;

/** Force. SI unit: newton. */
public record Force(double value, ForceUnit unit) implements Quantity {}
