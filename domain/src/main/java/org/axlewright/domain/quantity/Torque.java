package org.axlewright.domain.quantity;

/** Torque. SI unit: newton metre. */
public record Torque(double value, TorqueUnit unit) implements Quantity {}
