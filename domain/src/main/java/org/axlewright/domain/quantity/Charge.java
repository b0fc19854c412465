package org.axlewright.domain.quantity;

/** Electric charge. SI unit: coulomb. */
public record Charge(double value, ChargeUnit unit) implements Quantity {}
