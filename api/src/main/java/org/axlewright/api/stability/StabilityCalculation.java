package org.axlewright.api.stability;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Setup;
import org.axlewright.api.stability.StabilityResult.AxleLoadsAt;
import org.axlewright.api.stability.StabilityResult.Band;
import org.axlewright.api.stability.StabilityResult.BrakingLimits;
import org.axlewright.api.stability.StabilityResult.CentreOfGravityPlace;
import org.axlewright.api.stability.StabilityResult.Empty;
import org.axlewright.api.stability.StabilityResult.OnBoard;
import org.axlewright.api.stability.StabilityResult.ParkedFilling;
import org.axlewright.api.stability.StabilityResult.RearmostFilling;
import org.axlewright.api.stability.StabilityResult.SideLimits;
import org.axlewright.api.stability.StabilityResult.SimpleTurn;
import org.axlewright.api.stability.StabilityResult.SlopeLimits;
import org.axlewright.api.stability.StabilityResult.SlopeTurnLimits;
import org.axlewright.api.stability.StabilityResult.TractionLimits;
import org.axlewright.api.stability.StabilityResult.TurnLimits;
import org.axlewright.api.stability.StabilityResult.WheelLift;
import org.axlewright.api.stability.StabilityResult.WorstFilling;
import org.axlewright.domain.quantity.Acceleration;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.stability.Aboard;
import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.stability.Lengthways;
import org.axlewright.domain.stability.Sideways;
import org.axlewright.domain.stability.Sideways.Slope;
import org.axlewright.domain.stability.Sideways.SlopeTurn;
import org.axlewright.domain.stability.Sideways.Turn;
import org.axlewright.domain.stability.Stability;
import org.axlewright.domain.stability.Whole;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Tipping, sliding, front lift, grip of driven and braked axles. */
public final class StabilityCalculation implements Calculation<Stability.Input, Stability.Result, StabilityResult> {

    private static final Needs NEEDS = Needs.all(Needs.value("/chassis/wheelbase"), MassSections.POSITION);

    @Override
    public String name() {
        return "stability";
    }

    @Override
    public String question() {
        return "Will it tip in a turn or on a slope, lift its front wheels on a climb, lose the rear when braking downhill?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/worstFilling/staticStabilityFactor",
                "/worstFilling/side",
                "/worstFilling/fullLock/speed",
                "/worstFilling/fullLock/first",
                "/worstFilling/band/low",
                "/worstFilling/tiltAngle",
                "/frontLift/grade");
    }

    @Override
    public Class<StabilityResult> resultType() {
        return StabilityResult.class;
    }

    @Override
    public Stability.Input resolve(Setup setup, Resolution resolution) {
        return StabilitySections.resolve(setup, resolution);
    }

    @Override
    public Stability.Result calculate(Stability.Input input, Trace trace) {
        return Stability.of(input, trace);
    }

    @Override
    public StabilityResult show(Stability.Result result, UnitSystem units) {
        Stability.State state = result.occupied();
        Sideways sideways = state.sideways();
        SideLimit weaker = sideways == null ? null : sideways.weaker();
        Lengthways lengthways = state.lengthways();
        return new StabilityResult(
                worst(result.worst(), units),
                result.worstParked() == null
                        ? null
                        : new ParkedFilling(
                                who(result.worstParked().aboard()),
                                side(result.worstParked().limit(), units)),
                rearmost(result.rearmost(), units),
                rearmost(result.rearmostParked(), units),
                result.driverAlone() == null ? null : side(result.driverAlone(), units),
                units.mass(state.whole().massKg()),
                place(state.whole(), sideways != null, units),
                weaker == null ? null : (Double) weaker.factor(),
                weaker == null ? null : weaker.side(),
                weaker == null ? null : band(weaker),
                weaker == null ? null : weaker.suspended(),
                weaker == null ? null : units.angle(weaker.tiltRad()),
                sideways == null ? null : side(sideways.left(), units),
                sideways == null ? null : side(sideways.right(), units),
                sideways == null ? null : turn(sideways.fullLock(), units),
                sideways == null ? null : turn(sideways.turn(), units),
                sideways == null ? null : slope(sideways.slope(), units),
                lift(lengthways.frontLift(), units),
                lift(lengthways.rearLift(), units),
                units.angle(lengthways.tailTipRad()),
                loads(lengthways, units),
                traction(lengthways.traction(), units),
                braking(lengthways.braking(), units),
                empty(result.empty(), units));
    }

    private static @Nullable Empty empty(Stability.@Nullable State state, UnitSystem units) {
        if (state == null) {
            return null;
        }
        Sideways sideways = state.sideways();
        SideLimit weaker = sideways == null ? null : sideways.weaker();
        Lengthways lengthways = state.lengthways();
        return new Empty(
                units.mass(state.whole().massKg()),
                place(state.whole(), sideways != null, units),
                weaker == null ? null : (Double) weaker.factor(),
                weaker == null ? null : weaker.side(),
                weaker == null ? null : band(weaker),
                weaker == null ? null : weaker.suspended(),
                weaker == null ? null : units.angle(weaker.tiltRad()),
                sideways == null ? null : side(sideways.left(), units),
                sideways == null ? null : side(sideways.right(), units),
                sideways == null ? null : turn(sideways.fullLock(), units),
                sideways == null ? null : turn(sideways.turn(), units),
                sideways == null ? null : slope(sideways.slope(), units),
                lift(lengthways.frontLift(), units),
                lift(lengthways.rearLift(), units),
                units.angle(lengthways.tailTipRad()),
                loads(lengthways, units),
                traction(lengthways.traction(), units),
                braking(lengthways.braking(), units));
    }

    private static @Nullable WorstFilling worst(Stability.@Nullable Worst worst, UnitSystem units) {
        Sideways sideways = worst == null ? null : worst.state().sideways();
        if (worst == null || sideways == null) {
            return null;
        }
        SideLimit weaker = sideways.weaker();
        return new WorstFilling(
                who(worst.aboard()),
                worst.asDriven(),
                units.mass(worst.state().whole().massKg()),
                place(worst.state().whole(), true, units),
                weaker.factor(),
                weaker.side(),
                band(weaker),
                weaker.suspended(),
                units.angle(weaker.tiltRad()),
                side(sideways.left(), units),
                side(sideways.right(), units),
                turn(sideways.fullLock(), units),
                turn(sideways.turn(), units),
                slope(sideways.slope(), units));
    }

    private static @Nullable RearmostFilling rearmost(Stability.@Nullable Rearmost rearmost, UnitSystem units) {
        return rearmost == null
                ? null
                : new RearmostFilling(
                        who(rearmost.aboard()),
                        units.grade(rearmost.gradeRad()),
                        units.acceleration(rearmost.acceleration()));
    }

    private static List<OnBoard> who(List<Aboard> aboard) {
        return aboard.stream()
                .map(one -> new OnBoard(one.name(), one.reference(), one.pointer()))
                .toList();
    }

    private static CentreOfGravityPlace place(Whole whole, boolean sideKnown, UnitSystem units) {
        return new CentreOfGravityPlace(
                units.length(whole.xM()), sideKnown ? units.length(whole.yM()) : null, units.length(whole.zM()));
    }

    private static Band band(SideLimit limit) {
        return new Band(limit.bandLow(), limit.bandHigh());
    }

    private static SideLimits side(SideLimit limit, UnitSystem units) {
        return new SideLimits(
                limit.side(),
                limit.factor(),
                limit.least(),
                band(limit),
                limit.suspended(),
                units.angle(limit.tiltRad()));
    }

    private static @Nullable TurnLimits turn(@Nullable Turn turn, UnitSystem units) {
        return turn == null
                ? null
                : new TurnLimits(
                        units.length(turn.radiusM()),
                        turn.corrected(),
                        turn.outside(),
                        units.speed(turn.speed()),
                        turn.first(),
                        units.speed(turn.tipSpeed()),
                        units.speed(turn.tipSpeedLow()),
                        units.speed(turn.slideSpeed()),
                        acceleration(turn.acceleration(), units),
                        turn.loadTransferN() == null ? null : units.load(turn.loadTransferN()),
                        simple(turn.simple(), units));
    }

    private static @Nullable SimpleTurn simple(@Nullable Turn turn, UnitSystem units) {
        return turn == null
                ? null
                : new SimpleTurn(
                        units.length(turn.radiusM()),
                        units.speed(turn.tipSpeed()),
                        units.speed(turn.slideSpeed()),
                        acceleration(turn.acceleration(), units));
    }

    private static @Nullable SlopeLimits slope(@Nullable Slope slope, UnitSystem units) {
        return slope == null
                ? null
                : new SlopeLimits(
                        units.angle(slope.slopeRad()),
                        slope.downhill(),
                        units.angle(slope.tipsAtRad()),
                        units.angle(slope.slidesAtRad()),
                        slope.first(),
                        slopeTurn(slope.downhillOutside(), units),
                        slopeTurn(slope.uphillOutside(), units),
                        slopeTurn(slope.offCamber(), units),
                        slopeTurn(slope.banked(), units));
    }

    private static @Nullable SlopeTurnLimits slopeTurn(@Nullable SlopeTurn turn, UnitSystem units) {
        return turn == null
                ? null
                : new SlopeTurnLimits(
                        units.length(turn.radiusM()),
                        turn.outside(),
                        speed(turn.speed(), units),
                        turn.first(),
                        speed(turn.tipSpeed(), units),
                        speed(turn.slideSpeed(), units));
    }

    private static WheelLift lift(Lengthways.Lift lift, UnitSystem units) {
        return new WheelLift(
                lift.coefficient(),
                units.acceleration(lift.acceleration()),
                units.grade(lift.gradeRad()),
                acceleration(lift.onGrade(), units));
    }

    private static List<AxleLoadsAt> loads(Lengthways lengthways, UnitSystem units) {
        return lengthways.loads().stream()
                .map(loads -> new AxleLoadsAt(
                        loads.condition(),
                        units.grade(loads.gradeRad()),
                        units.acceleration(loads.acceleration()),
                        units.load(loads.frontN()),
                        units.load(loads.rearN()),
                        loads.frontShare()))
                .toList();
    }

    private static @Nullable TractionLimits traction(Lengthways.@Nullable Traction traction, UnitSystem units) {
        return traction == null
                ? null
                : new TractionLimits(
                        traction.driven(),
                        units.acceleration(traction.acceleration()),
                        traction.limitedBy(),
                        acceleration(traction.onGrade(), units),
                        units.grade(traction.gradeRad()));
    }

    private static @Nullable BrakingLimits braking(Lengthways.@Nullable Braking braking, UnitSystem units) {
        return braking == null
                ? null
                : new BrakingLimits(
                        braking.braked(),
                        units.acceleration(braking.deceleration()),
                        braking.limitedBy(),
                        acceleration(braking.downhill(), units),
                        units.grade(braking.noseUpRad()),
                        units.grade(braking.noseDownRad()));
    }

    private static @Nullable Acceleration acceleration(@Nullable Double si, UnitSystem units) {
        return si == null ? null : units.acceleration(si);
    }

    private static @Nullable Speed speed(@Nullable Double si, UnitSystem units) {
        return si == null ? null : units.speed(si);
    }
}
