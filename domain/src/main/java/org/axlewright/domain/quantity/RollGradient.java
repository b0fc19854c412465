package org.axlewright.domain.quantity;

/** Roll of the body for lateral acceleration. SI unit: radian second squared per metre. */
public record RollGradient(double value, RollGradientUnit unit) implements Quantity {}
