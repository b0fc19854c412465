package org.axlewright.domain.axles;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Clearance angles of the underside. The tangent construction lays the ramp against the arc of the loaded tyre (49 CFR 523.2); the simple
 * one draws it from the point under the wheel centre and never gives more.
 */
public final class Underside {

    /** What the angles are, and that the ramp touches the arc of the static loaded radius. */
    public static final Source DEFINITION = Source.regulation("49 CFR 523.2");

    private static final Source TANGENT =
            Source.derived("tangent to the static loaded radius, defined by 49 CFR 523.2");
    private static final Source SIMPLE = Source.weak("angle from the contact point, general encyclopaedia");

    private static final Symbol REACH = new Symbol("a", Dimension.LENGTH);
    private static final Symbol HEIGHT = new Symbol("h", Dimension.LENGTH);
    private static final Symbol RADIUS = new Symbol("r", Dimension.LENGTH);
    private static final Symbol WHEELBASE = new Symbol("L", Dimension.LENGTH);

    private Underside() {}

    /** The steps of one angle in one state, such as the approach angle after the lift. */
    public static final class Overhang {
        private final Step tangent;
        private final Step simple;

        /**
         * Names the steps.
         *
         * @param symbol letter of the angle
         * @param meaning what it is
         */
        public Overhang(String symbol, String meaning) {
            tangent = Step.of(
                    symbol,
                    meaning + ", ramp against the tyre",
                    symbol + " = asin(r / √(a² + (r − h)²)) + atan((h − r) / a)",
                    Dimension.ANGLE,
                    TANGENT,
                    REACH,
                    HEIGHT,
                    RADIUS);
            simple = Step.of(
                    symbol + "_s",
                    meaning + ", ramp from under the wheel centre",
                    symbol + "_s = atan(h / a)",
                    Dimension.ANGLE,
                    SIMPLE,
                    REACH,
                    HEIGHT);
        }

        /**
         * Angle at which a ramp that rests against the tyre touches the point, rad; more than π/2 when a wall would touch the tyre first.
         *
         * @param reachM horizontal distance of the point beyond the wheel centre, m
         * @param heightM height of the point above the ground, m
         * @param radiusM loaded radius of the tyre, m
         * @return null when the point lies within the outline of the tyre, where no ramp reaches it
         */
        public @Nullable Double tangent(double reachM, double heightM, double radiusM, Trace trace) {
            notNegative(reachM, "reachM");
            finite(heightM, "heightM");
            positive(radiusM, "radiusM");
            double distance = Math.hypot(reachM, radiusM - heightM);
            if (!(distance > radiusM)) {
                return null;
            }
            double angle = Math.asin(radiusM / distance) + Math.atan2(heightM - radiusM, reachM);
            return trace.note(tangent, angle, reachM, heightM, radiusM);
        }

        /** Angle from the point under the wheel centre, rad. */
        public double simple(double reachM, double heightM, Trace trace) {
            return trace.note(simple, Math.atan2(heightM, notNegative(reachM, "reachM")), reachM, heightM);
        }
    }

    /** The steps of the ramp-breakover angle in one state. */
    public static final class Breakover {
        private final Step tangent;
        private final Step simple;

        /**
         * Names the steps.
         *
         * @param symbol letter of the angle
         * @param state before or after
         */
        public Breakover(String symbol, String state) {
            tangent = Step.of(
                    symbol,
                    "ramp-breakover angle " + state + ", ramp against both tyres",
                    symbol + " = Σ over r_f, r_r of asin(r / d) − atan2(r − h, L/2), d = √((L/2)² + (r − h)²)",
                    Dimension.ANGLE,
                    TANGENT,
                    WHEELBASE,
                    HEIGHT,
                    new Symbol("r_f", Dimension.LENGTH),
                    new Symbol("r_r", Dimension.LENGTH));
            simple = Step.of(
                    symbol + "_s",
                    "ramp-breakover angle " + state + ", ramp from under the wheel centres",
                    symbol + "_s = 2 · atan(2 · h / L)",
                    Dimension.ANGLE,
                    SIMPLE,
                    WHEELBASE,
                    HEIGHT);
        }

        /**
         * Ramp-breakover angle over a crest that touches both tyres and the lowest point at mid-wheelbase, rad.
         *
         * @return null when that point lies within the outline of a tyre
         */
        public @Nullable Double tangent(
                double wheelbaseM, double heightM, double frontRadiusM, double rearRadiusM, Trace trace) {
            Double front = side(wheelbaseM, heightM, frontRadiusM);
            Double rear = side(wheelbaseM, heightM, rearRadiusM);
            if (front == null || rear == null) {
                return null;
            }
            return trace.note(tangent, front + rear, wheelbaseM, heightM, frontRadiusM, rearRadiusM);
        }

        /** Ramp-breakover angle from the points under the wheel centres, rad. */
        public double simple(double wheelbaseM, double heightM, Trace trace) {
            double angle = 2 * Math.atan(2 * heightM / positive(wheelbaseM, "wheelbaseM"));
            return trace.note(simple, angle, wheelbaseM, heightM);
        }

        /** One tyre's part; null when the point lies within its outline. */
        private static @Nullable Double side(double wheelbaseM, double heightM, double radiusM) {
            double half = positive(wheelbaseM, "wheelbaseM") / 2;
            double distance = Math.hypot(half, positive(radiusM, "radiusM") - finite(heightM, "heightM"));
            return distance > radiusM
                    ? (Double) (Math.asin(radiusM / distance) - Math.atan2(radiusM - heightM, half))
                    : null;
        }
    }
}
