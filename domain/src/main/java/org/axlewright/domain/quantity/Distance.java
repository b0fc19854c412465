package org.axlewright.domain.quantity;

/** Distance travelled. SI unit: metre. */
public record Distance(double value, DistanceUnit unit) implements Quantity {}
