package org.axlewright.domain.conductor;

import org.axlewright.domain.check.Check;

/** A stretch of constant current: ampere and second. */
public record Segment(double currentA, double durationS) {
    public Segment {
        Check.notNegative(currentA, "currentA");
        Check.positive(durationS, "durationS");
    }
}
