package org.axlewright.domain.quantity;

/** Flow of air by volume. SI unit: cubic metre per second. */
public record VolumeFlow(double value, VolumeFlowUnit unit) implements Quantity {}
