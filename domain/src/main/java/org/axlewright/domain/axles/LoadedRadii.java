package org.axlewright.domain.axles;

import static org.axlewright.domain.check.Check.positive;

/**
 * Static loaded radius of the tyres of one axle, wheel centre to ground, before and after a change of tyre.
 *
 * @param beforeM former tyre, m
 * @param afterM tyre now, m; equal to {@code beforeM} when the tyre stays
 */
public record LoadedRadii(double beforeM, double afterM) {

    public LoadedRadii {
        positive(beforeM, "beforeM");
        positive(afterM, "afterM");
    }

    /** What the tyre alone adds to every height of the axle, m. */
    public double riseM() {
        return afterM - beforeM;
    }
}
