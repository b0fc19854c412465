package org.axlewright.domain.quantity;

/** Area, of a conductor or of a body in the wind. SI unit: square metre. */
public record Area(double value, AreaUnit unit) implements Quantity {}
