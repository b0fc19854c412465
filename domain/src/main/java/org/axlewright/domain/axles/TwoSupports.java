package org.axlewright.domain.axles;

import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * A vehicle standing on two axles: how a weight shares out between them. Standing level; outside the wheelbase one of the loads is
 * negative, which says how much the other must hold down.
 */
public final class TwoSupports {

    private static final Source MOMENTS =
            Source.published("Jazar, Vehicle Dynamics, ch. 2: moments about the axles of a parked car");

    private static final Step FRONT = Step.of(
            "W_f",
            "load on the front axle",
            "W_f = W·(L − x)/L",
            LOAD,
            MOMENTS,
            new Symbol("W", LOAD),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH));

    private static final Step REAR = Step.of(
            "W_r",
            "load on the rear axle",
            "W_r = W·x/L",
            LOAD,
            MOMENTS,
            new Symbol("W", LOAD),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH));

    private TwoSupports() {}

    /** Load on the front axle, N, of a weight, N, that lies {@code xM} behind it. */
    public static double frontLoadN(double weightN, double xM, double wheelbaseM, Trace trace) {
        Check.positive(wheelbaseM, "wheelbase");
        return trace.note(FRONT, weightN * (wheelbaseM - xM) / wheelbaseM, weightN, xM, wheelbaseM);
    }

    /** Load on the rear axle, N, of a weight, N, that lies {@code xM} behind the front axle. */
    public static double rearLoadN(double weightN, double xM, double wheelbaseM, Trace trace) {
        Check.positive(wheelbaseM, "wheelbase");
        return trace.note(REAR, weightN * xM / wheelbaseM, weightN, xM, wheelbaseM);
    }
}
