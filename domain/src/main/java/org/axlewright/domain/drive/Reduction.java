package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.positive;

import org.jspecify.annotations.Nullable;

/**
 * Turns of the motor for one turn of the wheel.
 *
 * @param ratio above 0
 * @param teeth the two numbers it was read from; null when it was sent as a number
 */
public record Reduction(double ratio, @Nullable Teeth teeth) {
    public Reduction {
        positive(ratio, "ratio");
    }
}
