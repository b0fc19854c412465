package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;

import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What a vehicle stands sideways.
 *
 * @param left pushed to the left
 * @param right pushed to the right
 * @param fullLock turning at full lock; null when the turning radius is not known
 * @param turn turning on the planned radius; null when none is planned
 * @param slope across the planned slope; null when none is planned
 */
public record Sideways(
        SideLimit left,
        SideLimit right,
        @Nullable Turn fullLock,
        @Nullable Turn turn,
        @Nullable Slope slope) {

    /**
     * The turn that it stands least, of the two directions.
     *
     * @param radiusM of the path of the centre of gravity, m
     * @param corrected whether that differs from the path that was sent, by geometry
     * @param outside where it tips or slides to
     * @param tipSpeed m/s, rigid
     * @param tipSpeedLow m/s, low end of the band
     * @param slideSpeed m/s
     * @param speed the lower of tip and slide, m/s
     * @param acceleration at the planned speed, m/s²; null when none is planned
     * @param loadTransferN inner to outer wheels at that acceleration, N; null when not known
     * @param simple the same with the path that was sent taken as that of the centre of gravity; null where it is
     */
    public record Turn(
            double radiusM,
            boolean corrected,
            Side outside,
            double tipSpeed,
            double tipSpeedLow,
            double slideSpeed,
            First first,
            double speed,
            @Nullable Double acceleration,
            @Nullable Double loadTransferN,
            @Nullable Turn simple) {

        private Turn beside(Turn other) {
            return new Turn(
                    radiusM,
                    corrected,
                    outside,
                    tipSpeed,
                    tipSpeedLow,
                    slideSpeed,
                    first,
                    speed,
                    acceleration,
                    loadTransferN,
                    other);
        }
    }

    /**
     * Across a slope.
     *
     * @param slopeRad angle, rad, not negative
     * @param downhill the lower side; on the level the weaker one
     * @param tipsAtRad slope at which it goes over standing, rad
     * @param slidesAtRad slope at which it slides standing, rad
     * @param downhillOutside turning in the plane of the slope, uphill side inside; null without a radius
     * @param uphillOutside turning in the plane of the slope, downhill side inside
     * @param offCamber level circle of a banked road, outer side lower
     * @param banked level circle of a banked road, outer side higher
     */
    public record Slope(
            double slopeRad,
            Side downhill,
            double tipsAtRad,
            double slidesAtRad,
            First first,
            @Nullable SlopeTurn downhillOutside,
            @Nullable SlopeTurn uphillOutside,
            @Nullable SlopeTurn offCamber,
            @Nullable SlopeTurn banked) {}

    /**
     * A turn on a slope or a bank; speeds in m/s.
     *
     * @param tipSpeed null where no speed tips it
     * @param slideSpeed null where no speed lets it slide
     * @param speed the lower of the two; null where neither is reached
     */
    public record SlopeTurn(
            double radiusM,
            Side outside,
            @Nullable Double tipSpeed,
            @Nullable Double slideSpeed,
            First first,
            @Nullable Double speed) {}

    /** The side it goes over first. */
    public SideLimit weaker() {
        return left.factor() < right.factor() ? left : right;
    }

    SideLimit limit(Side side) {
        return side == Side.LEFT ? left : right;
    }

    static Sideways of(Whole whole, Footprint footprint, Stability.Input input, Trace trace) {
        SideLimit left = footprint.limit(Side.LEFT, whole, input.roll(), trace);
        SideLimit right = footprint.limit(Side.RIGHT, whole, input.roll(), trace);
        Sideways limits = new Sideways(left, right, null, null, null);
        Turn fullLock = null;
        if (input.turningRadiusM() != null) {
            Turn toLeft = limits.fullLock(Side.LEFT, whole, footprint, input, input.turningRadiusM(), trace);
            Turn toRight = limits.fullLock(Side.RIGHT, whole, footprint, input, input.turningRadiusM(), trace);
            fullLock = toLeft.tipSpeed() < toRight.tipSpeed() ? toLeft : toRight;
        }
        Turn turn = input.radiusM() == null
                ? null
                : limits.turn(limits.weaker().side(), input.radiusM(), false, whole, footprint, input, trace);
        Double radius =
                input.radiusM() != null ? input.radiusM() : fullLock == null ? null : (Double) fullLock.radiusM();
        Slope slope = input.sideSlopeRad() == null
                ? null
                : limits.slope(input.sideSlopeRad(), radius, input.friction(), trace);
        return new Sideways(left, right, fullLock, turn, slope);
    }

    private Turn fullLock(
            Side outside, Whole whole, Footprint footprint, Stability.Input input, double outerFrontM, Trace trace) {
        Double radius = Turns.fullLockM(footprint, whole, outside, outerFrontM, trace);
        Turn simple = turn(
                outside,
                outerFrontM,
                false,
                whole,
                footprint,
                input,
                radius == null ? trace : trace.of("turning radius as sent"));
        return radius == null
                ? simple
                : turn(outside, radius, true, whole, footprint, input, trace).beside(simple);
    }

    private Turn turn(
            Side outside,
            double radiusM,
            boolean corrected,
            Whole whole,
            Footprint footprint,
            Stability.Input input,
            Trace trace) {
        SideLimit limit = limit(outside);
        double tip = Turns.tipSpeed(limit.factor(), radiusM, STANDARD_GRAVITY, trace);
        double low = Turns.tipSpeed(limit.bandLow(), radiusM, STANDARD_GRAVITY, trace);
        double slide = Turns.slideSpeed(input.friction(), radiusM, STANDARD_GRAVITY, trace);
        Double acceleration = null;
        Double transferN = null;
        if (input.speedMPS() != null) {
            acceleration = Turns.acceleration(input.speedMPS(), radiusM, trace);
            double track = footprint.acrossM(Side.LEFT, whole.xM(), whole.yM())
                    + footprint.acrossM(Side.RIGHT, whole.xM(), whole.yM());
            transferN = track < LEAST_TRACK_M
                    ? null
                    : (Double) Springs.loadTransferN(whole.massKg(), acceleration, whole.zM(), track, trace);
        }
        return new Turn(
                radiusM,
                corrected,
                outside,
                tip,
                low,
                slide,
                First.of(limit.factor(), input.friction()),
                Math.min(tip, slide),
                acceleration,
                transferN,
                null);
    }

    /** Below this the centre of gravity sits over a single wheel and no pair of wheels shares the load, m. */
    private static final double LEAST_TRACK_M = 0.01;

    private Slope slope(double slopeRad, @Nullable Double radiusM, double friction, Trace trace) {
        Side downhill = slopeRad == 0 ? weaker().side() : slopeRad < 0 ? Side.LEFT : Side.RIGHT;
        double angle = Math.abs(slopeRad);
        return new Slope(
                angle,
                downhill,
                limit(downhill).tiltRad(),
                Math.atan(friction),
                First.of(limit(downhill).factor(), friction),
                radiusM == null ? null : onSlope(downhill, true, radiusM, angle, friction, trace),
                radiusM == null ? null : onSlope(downhill.other(), false, radiusM, angle, friction, trace),
                radiusM == null ? null : onBank(downhill, true, radiusM, angle, friction, trace),
                radiusM == null ? null : onBank(downhill.other(), false, radiusM, angle, friction, trace));
    }

    private SlopeTurn onSlope(
            Side outside, boolean downhill, double radiusM, double slopeRad, double friction, Trace trace) {
        double factor = limit(outside).factor();
        return slopeTurn(
                outside,
                radiusM,
                factor,
                friction,
                Turns.speedOnSlope(factor, radiusM, slopeRad, downhill, STANDARD_GRAVITY, trace),
                Turns.speedOnSlope(friction, radiusM, slopeRad, downhill, STANDARD_GRAVITY, trace));
    }

    private SlopeTurn onBank(
            Side outside, boolean lower, double radiusM, double bankRad, double friction, Trace trace) {
        double factor = limit(outside).factor();
        return slopeTurn(
                outside,
                radiusM,
                factor,
                friction,
                Turns.speedBanked(factor, radiusM, bankRad, lower, STANDARD_GRAVITY, trace),
                Turns.speedBanked(friction, radiusM, bankRad, lower, STANDARD_GRAVITY, trace));
    }

    private static SlopeTurn slopeTurn(
            Side outside,
            double radiusM,
            double factor,
            double friction,
            @Nullable Double tip,
            @Nullable Double slide) {
        Double speed = tip == null ? slide : slide == null ? tip : (Double) Math.min(tip, slide);
        return new SlopeTurn(radiusM, outside, tip, slide, First.of(factor, friction), speed);
    }
}
