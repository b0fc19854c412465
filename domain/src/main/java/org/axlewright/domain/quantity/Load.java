package org.axlewright.domain.quantity;

/** What scales show under a wheel or an axle: a force, usually read as the mass that standard gravity presses on them. SI unit: newton. */
public record Load(double value, LoadUnit unit) implements Quantity {}
