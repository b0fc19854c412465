package org.axlewright.domain.axles;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.check.Check.within;

import org.jspecify.annotations.Nullable;

/**
 * What was done to raise one axle.
 *
 * @param amountM amount of the lift where it was measured, m; negative lowers, zero when only the tyre changed
 * @param motionRatio travel at the place of measurement for travel of the wheel: 1 when the amount is the rise of the frame over the
 *     wheel itself
 * @param bodyOnly whether the body alone was raised off its frame, so that frame and suspension stay where they are
 * @param sprungShare share of the axle's load that is above its springs, 0 to 1
 * @param radii loaded radii of the tyre before and after; null when the tyre stays and its radius is not known
 */
public record AxleLift(
        double amountM,
        double motionRatio,
        boolean bodyOnly,
        double sprungShare,
        @Nullable LoadedRadii radii) {

    public AxleLift {
        finite(amountM, "amountM");
        positive(motionRatio, "motionRatio");
        within(sprungShare, 0, 1, "sprungShare");
    }

    /** An axle left as it was. */
    public static AxleLift none(@Nullable LoadedRadii radii) {
        return new AxleLift(0, 1, false, 1, radii);
    }

    /** Rise of what rests on the springs over the wheel, m: of the frame, or of the body alone. */
    public double liftM() {
        return amountM / motionRatio;
    }

    /** Rise through the change of tyre, m. */
    public double tyreM() {
        return radii == null ? 0 : radii.riseM();
    }

    /** Rise of the frame over the wheel, m. */
    public double suspensionM() {
        return bodyOnly ? 0 : liftM();
    }

    /** Rise of the frame over the ground, m. */
    public double frameM() {
        return suspensionM() + tyreM();
    }

    /** Rise of the centre of gravity of this axle's load, m. */
    public double centreOfGravityM() {
        return sprungShare * liftM() + tyreM();
    }
}
