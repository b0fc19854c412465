package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.List;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.lift.FrontSuspension.LiftedWishbone;
import org.axlewright.domain.lift.Gearing.DrivenTyres;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What a lift and other tyres do to heights, clearance angles, gearing and front suspension. */
public final class LiftGeometry {

    private static final Source RIGID_FRAME = Source.derived("a rigid frame, its pitch small");

    private static final Step CLEARANCE_AFTER = Step.of(
            "h_m'",
            "ground clearance at mid-wheelbase after",
            "h_m' = h_m + (Δz_f + Δz_r)/2",
            CLEARANCE,
            RIGID_FRAME,
            new Symbol("h_m", CLEARANCE),
            new Symbol("Δz_f", CLEARANCE),
            new Symbol("Δz_r", CLEARANCE));
    private static final Step CLEARANCE_LADEN = Step.of(
            "h_m″",
            "ground clearance at mid-wheelbase after, as loaded",
            "h_m″ = h_m' − (s_f + s_r)/2",
            CLEARANCE,
            RIGID_FRAME,
            new Symbol("h_m'", CLEARANCE),
            new Symbol("s_f", CLEARANCE),
            new Symbol("s_r", CLEARANCE));
    private static final Step FRONT_CORNER = corner(
            "h_a'", "height of the point ahead of the front wheels after", "h_a' = h_a + Δz_f + (Δz_r − Δz_f) · x/L");
    private static final Step REAR_CORNER = corner(
            "h_d'", "height of the point behind the rear wheels after", "h_d' = h_d + Δz_f + (Δz_r − Δz_f) · x/L");
    private static final Step STABILITY = Step.of(
            "f_s",
            "static stability now over before, track unchanged",
            "f_s = h/(h + Δh)",
            NONE,
            Source.derived("static stability factor, track over twice the height of the centre of gravity"),
            new Symbol("h", LENGTH),
            new Symbol("Δh", LENGTH));

    private static final Underside.Overhang APPROACH_BEFORE = new Underside.Overhang("β_a", "approach angle before");
    private static final Underside.Overhang APPROACH_AFTER = new Underside.Overhang("β_a'", "approach angle after");
    private static final Underside.Overhang DEPARTURE_BEFORE = new Underside.Overhang("β_d", "departure angle before");
    private static final Underside.Overhang DEPARTURE_AFTER = new Underside.Overhang("β_d'", "departure angle after");
    private static final Underside.Breakover BREAKOVER_BEFORE = new Underside.Breakover("β_b", "before");
    private static final Underside.Breakover BREAKOVER_AFTER = new Underside.Breakover("β_b'", "after");

    private LiftGeometry() {}

    private static Step corner(String symbol, String meaning, String formula) {
        return Step.of(
                symbol,
                meaning,
                formula,
                CLEARANCE,
                RIGID_FRAME,
                new Symbol(symbol.replace("'", ""), CLEARANCE),
                new Symbol("Δz_f", CLEARANCE),
                new Symbol("Δz_r", CLEARANCE),
                new Symbol("x/L", NONE));
    }

    /**
     * A point of the underside beyond the wheels, as found.
     *
     * @param reachM horizontal distance beyond the wheel centre, m
     * @param heightM above the ground, m
     */
    public record Corner(double reachM, double heightM) {
        public Corner {
            notNegative(reachM, "reachM");
            notNegative(heightM, "heightM");
        }
    }

    /**
     * Load on one tyre against what it may carry, N.
     *
     * @param pointer what in the request says how much it may carry
     */
    public record TyreLoad(Axle axle, String pointer, double loadN, double limitN) {}

    /** How far springs and tyres bring the frame down over each axle under the load, m; negative when it rises. */
    public record Squat(double frontM, double rearM) {
        public Squat {
            finite(frontM, "frontM");
            finite(rearM, "rearM");
        }
    }

    /**
     * The vehicle as found and what was done to it; null what is not known.
     *
     * @param frontKind how the front axle was lifted
     * @param rearKind how the rear axle was lifted
     * @param frontRadii loaded radii of the front tyres
     * @param rearRadii loaded radii of the rear tyres
     * @param groundClearanceM lowest point of the frame, at mid-wheelbase
     * @param squat as loaded against as found
     * @param frontShare share of the weight on the front axle
     * @param heightBeforeM height of the centre of gravity before, m
     * @param gearing the driven tyres
     * @param suspension double wishbone in front
     * @param tyreLoads where load and limit are both known
     * @param offRoadTyres pointers of size markings that say NHS
     */
    public record Input(
            Rise rise,
            @Nullable LiftKind frontKind,
            @Nullable LiftKind rearKind,
            @Nullable LoadedRadii frontRadii,
            @Nullable LoadedRadii rearRadii,
            @Nullable Double wheelbaseM,
            @Nullable Double groundClearanceM,
            @Nullable Corner frontCorner,
            @Nullable Corner rearCorner,
            @Nullable Squat squat,
            @Nullable Double frontShare,
            @Nullable Double heightBeforeM,
            @Nullable DrivenTyres gearing,
            @Nullable LiftedWishbone suspension,
            List<TyreLoad> tyreLoads,
            List<String> offRoadTyres) {

        public Input {
            if (wheelbaseM != null) {
                positive(wheelbaseM, "wheelbaseM");
            }
            if (groundClearanceM != null) {
                finite(groundClearanceM, "groundClearanceM");
            }
            tyreLoads = List.copyOf(tyreLoads);
            offRoadTyres = List.copyOf(offRoadTyres);
        }
    }

    /** A value before and after, SI. */
    public record Change(double before, double after) {}

    /**
     * A clearance angle, rad. Null where the radius of the tyre is not known or the point lies within the outline of the tyre.
     *
     * @param before tangent construction
     * @param after tangent construction
     * @param simple from the points under the wheel centres
     */
    public record ClearanceAngle(
            @Nullable Double before, @Nullable Double after, Change simple) {}

    /**
     * The answer; null what can't be given.
     *
     * @param frontRiseM rise of the frame at the front axle
     * @param rearRiseM rise of the frame at the rear axle
     * @param frontAxleRiseM rise of the axle itself, by the tyre alone
     * @param rearAxleRiseM rise of the axle itself, by the tyre alone
     * @param stabilityFactor static stability now over before
     * @param squat as loaded against as found
     * @param clearanceLadenM ground clearance after, as loaded
     */
    public record Result(
            double frontRiseM,
            double rearRiseM,
            @Nullable Double centreOfGravityRiseM,
            @Nullable Double stabilityFactor,
            double frontAxleRiseM,
            double rearAxleRiseM,
            @Nullable Change groundClearance,
            @Nullable Squat squat,
            @Nullable Double clearanceLadenM,
            @Nullable ClearanceAngle approach,
            @Nullable ClearanceAngle breakover,
            @Nullable ClearanceAngle departure,
            Gearing.@Nullable Result gearing,
            FrontSuspension.@Nullable Result suspension) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        Rise rise = input.rise();
        double front = rise.frontM(trace);
        double rear = rise.rearM(trace);
        Double centreOfGravity =
                input.frontShare() == null ? null : (Double) rise.centreOfGravityM(input.frontShare(), trace);
        Change clearance = clearance(input, front, rear, trace);
        DrivenTyres gearing = input.gearing();
        LiftedWishbone suspension = input.suspension();
        Result result = new Result(
                front,
                rear,
                centreOfGravity,
                stability(input.heightBeforeM(), centreOfGravity, trace),
                rise.front().tyreM(),
                rise.rear().tyreM(),
                clearance,
                input.squat(),
                laden(input.squat(), clearance, trace),
                approach(input, trace),
                breakover(input, clearance, trace),
                departure(input, trace),
                gearing == null ? null : Gearing.of(gearing, trace),
                suspension == null ? null : FrontSuspension.of(suspension, trace));
        LiftFindings.find(input, result, trace);
        return result;
    }

    private static @Nullable Double stability(@Nullable Double height, @Nullable Double rise, Trace trace) {
        if (height == null || rise == null || !(height > 0) || !(height + rise > 0)) {
            return null;
        }
        return trace.note(STABILITY, height / (height + rise), height, rise);
    }

    private static @Nullable Change clearance(Input input, double frontM, double rearM, Trace trace) {
        Double before = input.groundClearanceM();
        return before == null
                ? null
                : new Change(before, trace.note(CLEARANCE_AFTER, before + (frontM + rearM) / 2, before, frontM, rearM));
    }

    private static @Nullable Double laden(@Nullable Squat squat, @Nullable Change clearance, Trace trace) {
        return squat == null || clearance == null
                ? null
                : (Double) trace.note(
                        CLEARANCE_LADEN,
                        clearance.after() - (squat.frontM() + squat.rearM()) / 2,
                        clearance.after(),
                        squat.frontM(),
                        squat.rearM());
    }

    private static @Nullable ClearanceAngle approach(Input input, Trace trace) {
        Corner corner = input.frontCorner();
        Double place = corner == null ? null : place(input, -corner.reachM(), 0);
        return corner == null || place == null
                ? null
                : angle(
                        corner,
                        raised(FRONT_CORNER, corner, place, input.rise(), trace),
                        input.frontRadii(),
                        APPROACH_BEFORE,
                        APPROACH_AFTER,
                        trace);
    }

    private static @Nullable ClearanceAngle departure(Input input, Trace trace) {
        Corner corner = input.rearCorner();
        Double place = corner == null ? null : place(input, corner.reachM(), 1);
        return corner == null || place == null
                ? null
                : angle(
                        corner,
                        raised(REAR_CORNER, corner, place, input.rise(), trace),
                        input.rearRadii(),
                        DEPARTURE_BEFORE,
                        DEPARTURE_AFTER,
                        trace);
    }

    /** Place along the wheelbase; without a wheelbase it matters only when front and rear rise differently. */
    private static @Nullable Double place(Input input, double beyondM, double axle) {
        if (input.wheelbaseM() != null) {
            return axle + beyondM / input.wheelbaseM();
        }
        return input.rise().front().frameM() == input.rise().rear().frameM() ? (Double) axle : null;
    }

    private static double raised(Step step, Corner corner, double place, Rise rise, Trace trace) {
        return trace.note(
                step,
                corner.heightM() + rise.frameAtM(place),
                corner.heightM(),
                rise.front().frameM(),
                rise.rear().frameM(),
                place);
    }

    private static ClearanceAngle angle(
            Corner corner,
            double heightAfterM,
            @Nullable LoadedRadii radii,
            Underside.Overhang before,
            Underside.Overhang after,
            Trace trace) {
        Double tangentBefore =
                radii == null ? null : before.tangent(corner.reachM(), corner.heightM(), radii.beforeM(), trace);
        Double tangentAfter =
                radii == null ? null : after.tangent(corner.reachM(), heightAfterM, radii.afterM(), trace);
        return new ClearanceAngle(
                tangentBefore,
                tangentAfter,
                new Change(
                        before.simple(corner.reachM(), corner.heightM(), trace),
                        after.simple(corner.reachM(), heightAfterM, trace)));
    }

    private static @Nullable ClearanceAngle breakover(Input input, @Nullable Change clearance, Trace trace) {
        Double wheelbase = input.wheelbaseM();
        if (wheelbase == null || clearance == null) {
            return null;
        }
        LoadedRadii front = input.frontRadii();
        LoadedRadii rear = input.rearRadii();
        Double before = null;
        Double after = null;
        if (front != null && rear != null) {
            before = BREAKOVER_BEFORE.tangent(wheelbase, clearance.before(), front.beforeM(), rear.beforeM(), trace);
            after = BREAKOVER_AFTER.tangent(wheelbase, clearance.after(), front.afterM(), rear.afterM(), trace);
        }
        return new ClearanceAngle(
                before,
                after,
                new Change(
                        BREAKOVER_BEFORE.simple(wheelbase, clearance.before(), trace),
                        BREAKOVER_AFTER.simple(wheelbase, clearance.after(), trace)));
    }
}
