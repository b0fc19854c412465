package org.axlewright.domain.quantity;

/** A temperature on a scale with its zero; kept in degrees Celsius inside, as the electrical tables are. Inside: degree Celsius. */
public record Temperature(double value, TemperatureUnit unit) implements Quantity {}
