package org.axlewright.domain.quantity;

/** Duration. A month is a twelfth of the mean Gregorian year of 365.2425 days. SI unit: second. */
public record Time(double value, TimeUnit unit) implements Quantity {}
