package org.axlewright.domain.quantity;

/** Energy drawn for distance travelled. SI unit: joule per metre. */
public record Consumption(double value, ConsumptionUnit unit) implements Quantity {}
