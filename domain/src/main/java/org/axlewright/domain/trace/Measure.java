package org.axlewright.domain.trace;

import org.axlewright.domain.quantity.Dimension;

/** A number inside a finding or an assumption, coherent SI; it gets its unit where it is shown. */
public record Measure(double si, Dimension dimension) {

    /** A share, a count or a ratio. */
    public static Measure number(double value) {
        return new Measure(value, Dimension.NONE);
    }
}
