package org.axlewright.domain.quantity;

/** Power; the horsepower is the mechanical one of 550 foot pound-force per second. SI unit: watt. */
public record Power(double value, PowerUnit unit) implements Quantity {}
