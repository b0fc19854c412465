package org.axlewright.domain.charging;

import org.axlewright.domain.check.Check;

/**
 * An equalising charge that is asked for.
 *
 * @param timeS above 0, s
 * @param currentA above 0, A
 */
public record EqualisingPlan(double timeS, double currentA) {

    public EqualisingPlan {
        Check.positive(timeS, "time of the equalising charge");
        Check.positive(currentA, "current of the equalising charge");
    }
}
