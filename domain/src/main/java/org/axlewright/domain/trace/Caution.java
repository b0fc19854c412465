package org.axlewright.domain.trace;

/** The usual caution of the work itself; always shown, whatever the numbers say. */
public record Caution(String code, String message) {}
