package org.axlewright.domain.axles;

import static org.axlewright.domain.check.Check.finite;

import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * How far a vehicle stands higher than it was found. Front and rear may differ; in between every height changes linearly along the
 * wheelbase, the pitch being small.
 *
 * @param front what was done to the front axle
 * @param rear what was done to the rear axle
 */
public record Rise(AxleLift front, AxleLift rear) {

    private static final Source STATICS = Source.derived("statics of a vehicle standing on its tyres and springs");

    private static final Steps FRONT = new Steps("f", "front");
    private static final Steps REAR = new Steps("r", "rear");

    private static final Step CENTRE_OF_GRAVITY = Step.of(
            "Δh",
            "rise of the centre of gravity",
            "Δh = q_f · (σ_f · Δz_l,f + Δr_f) + (1 − q_f) · (σ_r · Δz_l,r + Δr_r)",
            Dimension.CLEARANCE,
            STATICS,
            new Symbol("q_f", Dimension.NONE),
            new Symbol("σ_f", Dimension.NONE),
            new Symbol("Δz_l,f", Dimension.CLEARANCE),
            new Symbol("Δr_f", Dimension.CLEARANCE),
            new Symbol("σ_r", Dimension.NONE),
            new Symbol("Δz_l,r", Dimension.CLEARANCE),
            new Symbol("Δr_r", Dimension.CLEARANCE));

    /** Nothing was raised. */
    public static final Rise NONE = new Rise(AxleLift.none(null), AxleLift.none(null));

    /** Whether the vehicle stands just as it was found. */
    public boolean isNone() {
        return front.liftM() == 0 && rear.liftM() == 0 && front.tyreM() == 0 && rear.tyreM() == 0;
    }

    /** Rise of the frame at the front axle over the ground, m. */
    public double frontM(Trace trace) {
        return FRONT.frame(front, trace);
    }

    /** Rise of the frame at the rear axle over the ground, m. */
    public double rearM(Trace trace) {
        return REAR.frame(rear, trace);
    }

    /**
     * Rise of the frame at a place along the wheelbase, m.
     *
     * @param place 0 at the front axle, 1 at the rear axle; below 0 and above 1 on the overhangs
     */
    public double frameAtM(double place) {
        return front.frameM() + (rear.frameM() - front.frameM()) * place;
    }

    /**
     * Rise of the centre of gravity, m. What hangs below the springs rises with the tyre only.
     *
     * @param frontShare share of the weight on the front axle; outside 0 to 1 when the centre of gravity lies beyond the axles
     */
    public double centreOfGravityM(double frontShare, Trace trace) {
        finite(frontShare, "frontShare");
        double rise = frontShare * front.centreOfGravityM() + (1 - frontShare) * rear.centreOfGravityM();
        return trace.note(
                CENTRE_OF_GRAVITY,
                rise,
                frontShare,
                front.sprungShare(),
                front.liftM(),
                front.tyreM(),
                rear.sprungShare(),
                rear.liftM(),
                rear.tyreM());
    }

    /** The working of one axle. */
    private static final class Steps {
        private final Step lift;
        private final Step tyre;
        private final Step frame;
        private final Step frameUnderBody;

        Steps(String index, String axle) {
            Symbol liftSymbol = new Symbol("Δz_l," + index, Dimension.CLEARANCE);
            Symbol tyreSymbol = new Symbol("Δr_" + index, Dimension.CLEARANCE);
            lift = Step.of(
                    liftSymbol.name(),
                    "lift of the " + axle + " axle, as a rise over its wheels",
                    liftSymbol.name() + " = a_" + index + " / i_" + index,
                    Dimension.CLEARANCE,
                    Source.memory("motion ratio, spring travel for wheel travel"),
                    new Symbol("a_" + index, Dimension.CLEARANCE),
                    new Symbol("i_" + index, Dimension.NONE));
            tyre = Step.of(
                    tyreSymbol.name(),
                    "rise of the " + axle + " axle through its tyres",
                    tyreSymbol.name() + " = r_" + index + "' − r_" + index,
                    Dimension.CLEARANCE,
                    STATICS,
                    new Symbol("r_" + index + "'", Dimension.CLEARANCE),
                    new Symbol("r_" + index, Dimension.CLEARANCE));
            frame = Step.of(
                    "Δz_" + index,
                    "rise of the frame at the " + axle + " axle",
                    "Δz_" + index + " = " + liftSymbol.name() + " + " + tyreSymbol.name(),
                    Dimension.CLEARANCE,
                    STATICS,
                    liftSymbol,
                    tyreSymbol);
            frameUnderBody = Step.of(
                    "Δz_" + index,
                    "rise of the frame at the " + axle + " axle; the body alone is lifted",
                    "Δz_" + index + " = " + tyreSymbol.name(),
                    Dimension.CLEARANCE,
                    STATICS,
                    tyreSymbol);
        }

        double frame(AxleLift axle, Trace trace) {
            trace.note(lift, axle.liftM(), axle.amountM(), axle.motionRatio());
            LoadedRadii radii = axle.radii();
            if (radii != null) {
                trace.note(tyre, radii.riseM(), radii.afterM(), radii.beforeM());
            }
            return axle.bodyOnly()
                    ? trace.note(frameUnderBody, axle.frameM(), axle.tyreM())
                    : trace.note(frame, axle.frameM(), axle.liftM(), axle.tyreM());
        }
    }
}
