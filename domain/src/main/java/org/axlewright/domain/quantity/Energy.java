package org.axlewright.domain.quantity;

/** Energy. SI unit: joule. */
public record Energy(double value, EnergyUnit unit) implements Quantity {}
