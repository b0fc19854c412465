package org.axlewright.api.calculation;

import org.axlewright.domain.quantity.UnitSystem;

/**
 * How an answer is wanted.
 *
 * @param units output units
 * @param working whether the working is wanted
 */
public record Asked(UnitSystem units, boolean working) {}
