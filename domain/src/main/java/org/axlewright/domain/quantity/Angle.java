package org.axlewright.domain.quantity;

/** Angle. SI unit: radian. */
public record Angle(double value, AngleUnit unit) implements Quantity {}
