package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Speed and acceleration of turns: steady, on a circle that the centre of gravity follows, rigid vehicle. Factors are dimensionless;
 * gravity is a parameter for textbook cases. Where the ground alone already tips the vehicle or lets it slide, the speed is 0.
 */
public final class Turns {

    private static final Source FLAT =
            Source.derived("definition of the static stability factor, v²/R for the acceleration");
    private static final Source ON_SLOPE = Source.derived("moments in the plane of the slope");
    private static final Source BANK = Source.derived(
            "moments about the outer contact points with gravity and the centrifugal force of a level circle");
    private static final Source GEOMETRY =
            Source.derived("turn about a point on the line of the rear axle, without slip");

    private static final Step TIP =
            speed("v_tip", "speed at which it tips on this radius, rigid", "v_tip = √(g·R·S)", "S", FLAT);
    private static final Step SLIDE =
            speed("v_slide", "speed at which it slides on this radius", "v_slide = √(μ·g·R)", "μ", FLAT);
    private static final Step ACCELERATION_OF = Step.of(
            "a_y",
            "lateral acceleration at the planned speed",
            "a_y = v²/R",
            ACCELERATION,
            Source.derived("uniform motion on a circle"),
            new Symbol("v", SPEED),
            new Symbol("R", LENGTH));
    private static final Step RADIUS = Step.of(
            "R",
            "radius of the path of the centre of gravity at full lock",
            "R = √{(L − x)² + [b + √(R_o² − L²) ]²}, b = s·(y − y_o)",
            LENGTH,
            GEOMETRY,
            new Symbol("L", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("b", LENGTH),
            new Symbol("R_o", LENGTH));

    private static final Step DOWNHILL = onSlope("downhill", "−");
    private static final Step UPHILL = onSlope("uphill", "+");
    private static final Step OFF_CAMBER = banked("outer side lower", "−", "+");
    private static final Step INWARD = banked("outer side higher", "+", "−");

    private static Step speed(String symbol, String meaning, String formula, String factor, Source source) {
        return Step.of(
                symbol,
                meaning,
                formula,
                SPEED,
                source,
                new Symbol("g", ACCELERATION),
                new Symbol("R", LENGTH),
                new Symbol(factor, NONE));
    }

    private static Step onSlope(String outside, String sign) {
        return Step.of(
                "v",
                "speed on a circle in the plane of the slope, outside " + outside + "; q the factor or the friction",
                "v = √[g·R·(q·cos γ " + sign + " sin γ)]",
                SPEED,
                ON_SLOPE,
                new Symbol("g", ACCELERATION),
                new Symbol("R", LENGTH),
                new Symbol("q", NONE),
                new Symbol("γ", ANGLE));
    }

    private static Step banked(String how, String above, String below) {
        return Step.of(
                "v",
                "speed on a level circle of a banked road, " + how + "; q the factor or the friction",
                "v = √[g·R·(q " + above + " tan β)/(1 " + below + " q·tan β)]",
                SPEED,
                BANK,
                new Symbol("g", ACCELERATION),
                new Symbol("R", LENGTH),
                new Symbol("q", NONE),
                new Symbol("β", ANGLE));
    }

    private Turns() {}

    /**
     * Speed at which the inner wheels lift on level ground, m/s.
     *
     * @param factor static stability factor towards the outside
     */
    public static double tipSpeed(double factor, double radiusM, double gravity, Trace trace) {
        return trace.note(TIP, Math.sqrt(gravity * radiusM * Math.max(0, factor)), gravity, radiusM, factor);
    }

    /** Speed at which the tyres let go on level ground, m/s. */
    public static double slideSpeed(double friction, double radiusM, double gravity, Trace trace) {
        return trace.note(SLIDE, Math.sqrt(gravity * radiusM * friction), gravity, radiusM, friction);
    }

    /** Radius on which a speed asks for a lateral acceleration of {@code factor·g}, m. */
    public static double radiusM(double speedMPS, double factor, double gravity) {
        return speedMPS * speedMPS / (gravity * factor);
    }

    /** Lateral acceleration, m/s². */
    public static double acceleration(double speedMPS, double radiusM, Trace trace) {
        return trace.note(ACCELERATION_OF, speedMPS * speedMPS / radiusM, speedMPS, radiusM);
    }

    /**
     * Limit of a turn that lies in the plane of a slope, m/s.
     *
     * @param limit stability factor towards the outside, or friction
     * @param slopeRad angle of the slope, rad, not negative
     * @param downhill whether the outside of the turn is downhill
     */
    public static double speedOnSlope(
            double limit, double radiusM, double slopeRad, boolean downhill, double gravity, Trace trace) {
        double share = limit * Math.cos(slopeRad) + (downhill ? -1 : 1) * Math.sin(slopeRad);
        double speed = Math.sqrt(gravity * radiusM * Math.max(0, share));
        return trace.note(downhill ? DOWNHILL : UPHILL, speed, gravity, radiusM, limit, slopeRad);
    }

    /**
     * Limit of a level circle on a banked road, m/s; null where the bank takes all of it and no speed reaches the limit.
     *
     * @param limit stability factor towards the outside, or friction
     * @param bankRad angle of the bank, rad, not negative
     * @param outsideLower whether the outside of the turn is the lower one
     */
    public static @Nullable Double speedBanked(
            double limit, double radiusM, double bankRad, boolean outsideLower, double gravity, Trace trace) {
        double slope = (outsideLower ? -1 : 1) * Math.tan(bankRad);
        double below = 1 - limit * slope;
        if (!(below > 0)) {
            return null;
        }
        double speed = Math.sqrt(gravity * radiusM * Math.max(0, (limit + slope) / below));
        return trace.note(outsideLower ? OFF_CAMBER : INWARD, speed, gravity, radiusM, limit, bankRad);
    }

    /**
     * Radius of the path of the centre of gravity at full lock, m, from that of the outer front wheel; null where the geometry of a
     * vehicle that steers in front cannot give such a path.
     *
     * @param outside the side away from the centre of the turn
     */
    static @Nullable Double fullLockM(Footprint footprint, Whole whole, Side outside, double outerFrontM, Trace trace) {
        double wheelbase = footprint.wheelbaseM();
        double across = Math.sqrt(outerFrontM * outerFrontM - wheelbase * wheelbase);
        if (!(across > footprint.frontTrackM() / 2)) {
            return null;
        }
        double outward = outside.sign() * (whole.yM() - footprint.frontYM(outside));
        double radius = Math.hypot(wheelbase - whole.xM(), outward + across);
        return radius < outerFrontM / 10
                ? null
                : (Double) trace.note(RADIUS, radius, wheelbase, whole.xM(), outward, outerFrontM);
    }
}
