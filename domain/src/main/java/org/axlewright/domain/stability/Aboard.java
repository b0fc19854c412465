package org.axlewright.domain.stability;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * A person, or a load that comes and goes.
 *
 * @param pointer where it stands in the request
 * @param person null for a load
 * @param massKg kg, above 0
 * @param zM above the ground, m, not negative
 */
public record Aboard(
        String pointer,
        @Nullable String name,
        @Nullable String reference,
        @Nullable Person person,
        double massKg,
        double xM,
        double yM,
        double zM) {

    /**
     * How a person sits.
     *
     * @param belt whether a belt is fitted and worn; null when nobody said
     * @param restraintHeightM side restraint above the seat cushion, m; null when not known
     */
    public record Person(
            boolean driver,
            Facing facing,
            @Nullable Boolean belt,
            @Nullable Double restraintHeightM) {}

    public Aboard {
        Check.positive(massKg, "mass");
        Check.finite(xM, "x");
        Check.finite(yM, "y");
        Check.notNegative(zM, "z");
    }

    boolean drives() {
        return person != null && person.driver();
    }
}
