package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.ROLL_GRADIENT;

import java.util.function.Function;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Where the wheels touch the ground in plan. The vehicle tips to a side over the line through the contact points of its two wheels there,
 * whatever the tracks and however far an axle stands aside; with a single wheel at one end both lines start from it. Contact points are
 * taken at the middle of the tyres: their outer edges, where some tilt tests pivot, would flatter.
 *
 * @param plan how the wheels stand
 * @param wheelbaseM front axle to rear axle, m, above 0
 * @param frontTrackM m; 0 for a single front wheel
 * @param rearTrackM m; 0 for a single rear wheel
 * @param frontToRightM how far the front axle stands to the right of the centre plane, m
 * @param rearToRightM the same of the rear axle
 */
public record Footprint(
        WheelPlan plan,
        double wheelbaseM,
        double frontTrackM,
        double rearTrackM,
        double frontToRightM,
        double rearToRightM) {

    /** Share of the rigid factor that tests of similar vehicles left of it, low end. */
    static final double BAND_LOW = 0.85;

    /** High end. */
    static final double BAND_HIGH = 0.90;

    static final Source BAND = Source.derived(
            "tests of four-wheel all-terrain vehicles, whose calculated factor lay 10 to 15 % above the measured tilt ratio");

    static final Source DEFINITION = Source.published(
            "NHTSA rollover ruling, chapter V: static stability factor, half the track over the height; unlike tracks interpolated at the"
                    + " centre of gravity as in the coefficient of ANSI/SVIA and ANSI/ROHVA");

    private static final Source CONTACT_LINE =
            Source.derived("moments about the line through the contact points of the two wheels of that side");

    private static final Source ON_SPRINGS = Source.memory("Gillespie, Fundamentals of Vehicle Dynamics, ch. 9");

    private static final Sides BASES = new Sides(side -> Step.of(
            "b",
            "centre of gravity to the tip line on the " + side + ", straight across",
            "b = " + (side == Side.RIGHT ? "" : "−") + "[y_f + (y_r − y_f)·x/L − y]",
            LENGTH,
            CONTACT_LINE,
            new Symbol("y_f", LENGTH),
            new Symbol("y_r", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH),
            new Symbol("y", LENGTH)));

    private static final Sides LEVERS = new Sides(side -> Step.of(
            "d",
            "shortest distance of the centre of gravity from the tip line on the " + side,
            "d = b/√{1 + [(y_r − y_f)/L]²}",
            LENGTH,
            CONTACT_LINE,
            new Symbol("b", LENGTH),
            new Symbol("y_r", LENGTH),
            new Symbol("y_f", LENGTH),
            new Symbol("L", LENGTH)));

    private static final Sides FACTORS = new Sides(side -> Step.of(
            "S",
            "static stability factor to the " + side + ", rigid, at the station and offset of the centre of gravity",
            "S = b/h",
            NONE,
            DEFINITION,
            new Symbol("b", LENGTH),
            new Symbol("h", LENGTH)));

    private static final Sides LEAST_FACTORS = new Sides(side -> Step.of(
            "S_min",
            "least factor to the " + side + " over all directions of a push",
            "S_min = d/h",
            NONE,
            CONTACT_LINE,
            new Symbol("d", LENGTH),
            new Symbol("h", LENGTH)));

    private static final Sides TILTS = new Sides(side -> Step.of(
            "φ",
            "tilt to the " + side + " at which it goes over, rigid",
            "φ = atan S",
            ANGLE,
            DEFINITION,
            new Symbol("S", NONE)));

    private static final Sides LOWS = band("low", BAND_LOW);
    private static final Sides HIGHS = band("high", BAND_HIGH);

    private static final Sides SUSPENDED = new Sides(side -> Step.of(
            "S_s",
            "stability factor to the " + side + ", body rolling on its springs",
            "S_s = S/[1 + g·R_φ·(1 − h_rc/h)]",
            NONE,
            ON_SPRINGS,
            new Symbol("S", NONE),
            new Symbol("g", ACCELERATION),
            new Symbol("R_φ", ROLL_GRADIENT),
            new Symbol("h_rc", LENGTH),
            new Symbol("h", LENGTH)));

    private static Sides band(String end, double share) {
        return new Sides(side -> Step.of(
                "S_" + end,
                "what tests of similar vehicles support to the " + side + ", " + end + " end",
                "S_" + end + " = " + share + "·S",
                NONE,
                BAND,
                new Symbol("S", NONE)));
    }

    public Footprint {
        Check.positive(wheelbaseM, "wheelbase");
        Check.notNegative(frontTrackM, "front track");
        Check.notNegative(rearTrackM, "rear track");
        Check.positive(frontTrackM + rearTrackM, "tracks");
        Check.finite(frontToRightM, "front axle to the right");
        Check.finite(rearToRightM, "rear axle to the right");
    }

    /**
     * How far it may be pushed or leaned to one side.
     *
     * @param factor lever straight across over height: what a steady turn, a tilt or a side slope asks for; negative outside the wheels
     * @param least shortest lever over height, over all directions of the push: what braking or pulling away in a turn can ask for; not
     *     above {@code factor} as long as that is positive
     * @param bandLow low end of what tests support
     * @param bandHigh high end
     * @param suspended with the body rolling; null when the springs are not known or the formula does not hold
     * @param tiltRad tilt at which it goes over, rad; negative when it does so standing level
     */
    public record SideLimit(
            Side side,
            double factor,
            double least,
            double bandLow,
            double bandHigh,
            @Nullable Double suspended,
            double tiltRad) {}

    /**
     * How the body rolls.
     *
     * @param gradient rad for each m/s² of lateral acceleration, not negative
     * @param axisHeightM height of the roll axis at the centre of gravity, m
     */
    public record Roll(double gradient, double axisHeightM) {
        public Roll {
            Check.notNegative(gradient, "roll gradient");
            Check.finite(axisHeightM, "roll axis");
        }
    }

    double frontYM(Side side) {
        return frontToRightM + side.sign() * frontTrackM / 2;
    }

    double rearYM(Side side) {
        return rearToRightM + side.sign() * rearTrackM / 2;
    }

    /** Straight across from a point to the tip line of a side, m; positive inside. Linear in the point. */
    double acrossM(Side side, double xM, double yM) {
        double frontM = frontYM(side);
        return side.sign() * (frontM + (rearYM(side) - frontM) * xM / wheelbaseM - yM);
    }

    /** Shortest distance of a point from the tip line of a side, m; positive inside. Linear in the point. */
    double leverM(Side side, double xM, double yM) {
        return acrossM(side, xM, yM) / Math.hypot(1, (rearYM(side) - frontYM(side)) / wheelbaseM);
    }

    /** The limit to one side. Rigid on its wheels; the band and the suspended value say how far that overstates. */
    public SideLimit limit(Side side, Whole whole, @Nullable Roll roll, Trace trace) {
        double frontM = frontYM(side);
        double rearM = rearYM(side);
        double height = whole.zM();
        double across = trace.note(
                BASES.of(side),
                acrossM(side, whole.xM(), whole.yM()),
                frontM,
                rearM,
                whole.xM(),
                wheelbaseM,
                whole.yM());
        double lever =
                trace.note(LEVERS.of(side), leverM(side, whole.xM(), whole.yM()), across, rearM, frontM, wheelbaseM);
        double factor = trace.note(FACTORS.of(side), across / height, across, height);
        return new SideLimit(
                side,
                factor,
                trace.note(LEAST_FACTORS.of(side), lever / height, lever, height),
                trace.note(LOWS.of(side), BAND_LOW * factor, factor),
                trace.note(HIGHS.of(side), BAND_HIGH * factor, factor),
                suspended(side, factor, height, roll, trace),
                trace.note(TILTS.of(side), Math.atan(factor), factor));
    }

    /** Holds while the roll axis lies below the centre of gravity: above it the body would lean into the turn. */
    private static @Nullable Double suspended(
            Side side, double factor, double heightM, @Nullable Roll roll, Trace trace) {
        if (roll == null || roll.axisHeightM() >= heightM) {
            return null;
        }
        double lean = Constants.STANDARD_GRAVITY * roll.gradient() * (1 - roll.axisHeightM() / heightM);
        return trace.note(
                SUSPENDED.of(side),
                factor / (1 + lean),
                factor,
                Constants.STANDARD_GRAVITY,
                roll.gradient(),
                roll.axisHeightM(),
                heightM);
    }

    /** A step for each side. */
    private static final class Sides {
        private final Step left;
        private final Step right;

        Sides(Function<Side, Step> step) {
            left = step.apply(Side.LEFT);
            right = step.apply(Side.RIGHT);
        }

        Step of(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }
}
