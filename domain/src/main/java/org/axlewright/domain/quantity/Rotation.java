package org.axlewright.domain.quantity;

/** Speed of rotation. SI unit: radian per second. */
public record Rotation(double value, RotationUnit unit) implements Quantity {}
