package org.axlewright.domain.braking;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * The brakes of one axle, both wheels together.
 *
 * @param forceN largest force at the ground with the tyres as they are, N; zero where the axle has no brakes, null when not known
 * @param formerForceFactor what the brakes gave at the ground with the tyres before the change over what they give now: loaded radius now
 *     over former one; null when the tyres stay or are not known
 * @param heatMassKg mass of the drums or discs that take the heat, kg; null when not known
 * @param kind how they are built; null when not known
 */
public record WheelBrakes(
        @Nullable Double forceN,
        @Nullable Double formerForceFactor,
        @Nullable Double heatMassKg,
        @Nullable BrakeKind kind) {

    /** An axle without brakes. */
    public static final WheelBrakes NONE = new WheelBrakes(0.0, null, null, null);

    public WheelBrakes {
        if (forceN != null) {
            Check.notNegative(forceN, "forceN");
        }
        if (formerForceFactor != null) {
            Check.positive(formerForceFactor, "formerForceFactor");
        }
        if (heatMassKg != null) {
            Check.positive(heatMassKg, "heatMassKg");
        }
    }

    /** Whether the axle has brakes at all. */
    boolean there() {
        return forceN == null || forceN > 0;
    }

    WheelBrakes with(@Nullable Double otherForceN) {
        return new WheelBrakes(otherForceN, formerForceFactor, heatMassKg, kind);
    }
}
