package org.axlewright.domain.quantity;

/** Electric current. SI unit: ampere. */
public record Current(double value, CurrentUnit unit) implements Quantity {}
