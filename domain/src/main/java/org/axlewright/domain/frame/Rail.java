package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.positive;

import org.jspecify.annotations.Nullable;

/**
 * One rail of the frame.
 *
 * @param pointer where in the request it stands
 * @param name what it is called
 * @param reference opaque text of the sender
 * @param yM to the right of the centre plane, m
 * @param yieldPa yield strength, Pa; null when not known
 * @param weld strength of a fillet weld on it; null when not known
 */
public record Rail(
        String pointer,
        String name,
        @Nullable String reference,
        Tube tube,
        double yM,
        @Nullable Double yieldPa,
        @Nullable WeldStrength weld) {

    public Rail {
        finite(yM, "yM");
        if (yieldPa != null) {
            positive(yieldPa, "yieldPa");
        }
    }

    /**
     * What decides the strength of a fillet weld on a rail.
     *
     * @param tensilePa least tensile strength of the parts joined, Pa
     * @param correlation factor of EN 1993-1-8 table 4.1
     */
    public record WeldStrength(double tensilePa, double correlation) {
        public WeldStrength {
            positive(tensilePa, "tensilePa");
            positive(correlation, "correlation");
        }
    }
}
