package org.axlewright.domain.trace;

import org.axlewright.domain.quantity.Dimension;

/** A letter of a formula and what it is a value of. */
public record Symbol(String name, Dimension dimension) {}
