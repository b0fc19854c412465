package org.axlewright.domain.quantity;

/** Speed along the ground. SI unit: metre per second. */
public record Speed(double value, SpeedUnit unit) implements Quantity {}
