package org.axlewright.domain.lift;

import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.lift.FrontSuspension.Alignment;
import org.axlewright.domain.lift.Gearing.DrivenTyres;
import org.axlewright.domain.lift.LiftGeometry.Change;
import org.axlewright.domain.lift.LiftGeometry.ClearanceAngle;
import org.axlewright.domain.lift.LiftGeometry.Corner;
import org.axlewright.domain.lift.LiftGeometry.Input;
import org.axlewright.domain.lift.LiftGeometry.Result;
import org.axlewright.domain.lift.LiftGeometry.TyreLoad;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.tyre.LoadIndex;
import org.axlewright.domain.tyre.Speedometer;
import org.jspecify.annotations.Nullable;

/** What stands out in a lift. */
final class LiftFindings {

    /** Lift of the suspension without certification, m. */
    private static final double SUSPENSION_GUIDANCE = 0.050;

    /** Rise by the tyre without certification, m: half of 50 mm more diameter. */
    private static final double TYRE_GUIDANCE = 0.025;

    /** Suspension and tyre together, m. */
    private static final double TOTAL_GUIDANCE = 0.075;

    private static final Source ROAD_GUIDANCE = Source.weak(
            "VicRoads VSI 8 / VSB 14 as quoted by owners, four-wheel-drive road vehicles; no such figure is known for this class");

    /** True speed at which a speedometer is held against its upper limit, m/s: 40 km/h, the most of this class of vehicle. */
    private static final double R39_SPEED = 40 / 3.6;

    /** Change of camber that wears tyres, rad: 1 degree. */
    private static final double LARGE_CAMBER = Math.toRadians(1);

    /** Change of toe that wears tyres and unsettles the steering, rad: a quarter of a degree. */
    private static final double LARGE_TOE = Math.toRadians(0.25);

    /** Change of track of both wheels, m. */
    private static final double LARGE_TRACK = 0.010;

    /** Change of the roll centre's height over the ground, m. */
    private static final double LARGE_ROLL_CENTRE = 0.050;

    /** Pitch of the frame that shifts caster and loads, rad: 1 degree. */
    private static final double LARGE_PITCH = Math.toRadians(1);

    private static final Source STATICS = Source.derived("statics of a vehicle standing on its tyres and springs");
    private static final Source STABILITY =
            Source.derived("static stability factor, track over twice the height of the centre of gravity");
    private static final Source LINKAGE = Source.derived("four-bar linkage in front view");

    private static final Caution VERIFY = new Caution(
            "verify-by-test",
            "A change of ride height and a change of tyre act each in its own way: SAE J2492 asks for both to be analysed and proved"
                    + " by test. Braking, steering and stability are tried at walking pace first; the maker's limits and local law decide.");
    private static final Caution STOPS_SHAFTS_LINES = new Caution(
            "stops-shafts-lines",
            "Check at full droop and full bump: bump stops still meet before ball joints, shaft joints, springs or tyres do; drive shafts"
                    + " stay within their makers' angles; brake lines, cables and steering reach without strain.");
    private static final Caution BLOCKS = new Caution(
            "blocks-on-leaf-springs",
            "Blocks are of metal, located by spigot hole and centre bolt; U-bolts hang no lower than the rim's edge and are"
                    + " tightened again after the first drive (South Australian government guidance on suspension). A taller block lets"
                    + " the axle wind up more under torque.");
    private static final Caution ALIGN = new Caution(
            "align-after-lift",
            "Camber, caster and toe are measured and set again after any lift, before the vehicle is driven.");

    private static final Caution RECALLS = new Caution(
            "check-recalls",
            "Steering knuckles and suspension arms of such vehicles have been recalled as delivered. Check the maker's recall list before"
                    + " a lift or wheels farther out load them more.");

    private LiftFindings() {}

    static void find(Input input, Result result, Trace trace) {
        cautions(input, trace);
        AxleLift front = input.rise().front();
        AxleLift rear = input.rise().rear();
        axle(front, input.frontKind(), "front", trace);
        axle(rear, input.rearKind(), "rear", trace);
        pitch(input, result, trace);
        stability(result, trace);
        underside(input, result, trace);
        gearing(input, result, trace);
        if (input.suspension() != null && result.suspension() != null) {
            suspension(input, result.suspension(), trace);
        }
        input.tyreLoads().forEach(load -> tyre(load, trace));
        input.offRoadTyres()
                .forEach(pointer -> trace.find(Finding.of(
                                "tyre-not-for-road",
                                Level.CAUTION,
                                "A tyre marked NHS is not for highway service and stands outside road-tyre approvals",
                                Source.published("NHS marking: not for highway service"))
                        .at(pointer)
                        .action("Use it off the public road only, or fit a tyre with load index and speed symbol")));
    }

    private static void cautions(Input input, Trace trace) {
        trace.caution(VERIFY);
        boolean lifted =
                input.rise().front().suspensionM() != 0 || input.rise().rear().suspensionM() != 0;
        if (lifted) {
            trace.caution(STOPS_SHAFTS_LINES);
            trace.caution(ALIGN);
            trace.caution(RECALLS);
        }
        if (input.frontKind() == LiftKind.BLOCK || input.rearKind() == LiftKind.BLOCK) {
            trace.caution(BLOCKS);
        }
    }

    private static void axle(AxleLift lift, @Nullable LiftKind kind, String axle, Trace trace) {
        double suspension = lift.suspensionM();
        beyond(
                "lift-beyond-guidance",
                "lift of the " + axle + " suspension",
                suspension,
                SUSPENSION_GUIDANCE,
                axle,
                trace);
        beyond("tyre-beyond-guidance", "rise by the " + axle + " tyres", lift.tyreM(), TYRE_GUIDANCE, axle, trace);
        beyond(
                "rise-beyond-guidance",
                "rise of the " + axle + " axle's frame",
                lift.frameM(),
                TOTAL_GUIDANCE,
                axle,
                trace);
        if (suspension > 0 && lift.tyreM() == 0) {
            trace.find(Finding.of(
                            "axle-not-raised",
                            Level.NOTICE,
                            "The kit raises the " + axle
                                    + " frame by {actual} and leaves the axle itself where it is; only a taller tyre"
                                    + " gives an axle or differential more clearance",
                            STATICS)
                    .at("/lift/" + axle)
                    .actual(new Measure(suspension, CLEARANCE)));
        }
        if (lift.bodyOnly() && lift.liftM() != 0) {
            trace.find(
                    Finding.of(
                                    "body-lift",
                                    Level.CAUTION,
                                    "Raising the body by {actual} leaves frame, clearance angles and suspension as they are, but carries the"
                                            + " centre of gravity up",
                                    STATICS)
                            .at("/lift/" + axle)
                            .actual(new Measure(lift.liftM(), CLEARANCE))
                            .action(
                                    "Check steering shaft, pedals, brake lines and body mounts; bolts through taller mounts bend more"));
        }
        if (kind == LiftKind.SPINDLE && lift.liftM() != 0 && "front".equals(axle)) {
            trace.find(Finding.of(
                            "spindle-keeps-arms",
                            Level.NOTICE,
                            "A lift spindle sets the wheel lower on its knuckle; the arms keep their angles, so camber and toe stay",
                            LINKAGE)
                    .at("/lift/front/kind"));
        }
    }

    private static void beyond(String code, String what, double actual, double limit, String axle, Trace trace) {
        if (Math.abs(actual) <= limit + 1e-9) {
            return;
        }
        trace.find(
                Finding.of(
                                code,
                                Level.CAUTION,
                                "The " + what
                                        + " changes the height by {actual}; road guidance stops at {limit} without certification",
                                ROAD_GUIDANCE)
                        .at("/lift/" + axle)
                        .actual(new Measure(actual, CLEARANCE))
                        .limit(new Measure(Math.copySign(limit, actual), CLEARANCE))
                        .action(
                                "Have suspension, brakes and steering examined by someone licensed to; keep at least two thirds of the travel each way"));
    }

    private static void pitch(Input input, Result result, Trace trace) {
        double difference = result.rearRiseM() - result.frontRiseM();
        Double wheelbase = input.wheelbaseM();
        if (Math.abs(difference) < 0.001) {
            return;
        }
        Double angle = wheelbase == null ? null : (Double) Math.atan(difference / wheelbase);
        boolean large = angle != null && Math.abs(angle) > LARGE_PITCH;
        Finding finding = Finding.of(
                        "rises-differ",
                        large ? Level.CAUTION : Level.NOTICE,
                        "Front and rear rise differently: the frame pitches nose " + (difference > 0 ? "down" : "up")
                                + " by {actual}, caster "
                                + (difference > 0 ? "falls" : "grows") + " as much, and the weight shifts a little "
                                + (difference > 0 ? "forward" : "rearward"),
                        STATICS)
                .at("/lift")
                .actual(
                        angle == null
                                ? new Measure(Math.abs(difference), CLEARANCE)
                                : new Measure(Math.abs(angle), ANGLE));
        trace.find(large ? finding.action("Bring front and rear closer, or set caster again") : finding);
    }

    private static void stability(Result result, Trace trace) {
        Double rise = result.centreOfGravityRiseM();
        if (rise == null || !(rise > 0)) {
            return;
        }
        Double factor = result.stabilityFactor();
        Finding finding = factor == null
                ? Finding.of(
                                "less-stable",
                                Level.CAUTION,
                                "The centre of gravity rises by {actual}: on the same track it tips sideways and lifts its front earlier",
                                STABILITY)
                        .actual(new Measure(rise, CLEARANCE))
                : Finding.of(
                                "less-stable",
                                factor < 0.9 ? Level.WARNING : Level.CAUTION,
                                "Static stability falls to {actual} of what it was, the track unchanged: it tips sideways and lifts its"
                                        + " front earlier",
                                STABILITY)
                        .actual(Measure.number(factor))
                        .limit(Measure.number(1));
        trace.find(finding.at("/lift")
                .action("Widen the track in proportion, or lower speed in turns and keep off side slopes"));
    }

    private static void underside(Input input, Result result, Trace trace) {
        Change clearance = result.groundClearance();
        if (clearance != null && !(clearance.after() > 0)) {
            trace.find(Finding.of(
                            "frame-on-ground",
                            Level.DANGER,
                            "Lowered so far the frame would stand at {actual}: it rests on the ground",
                            STATICS)
                    .at("/chassis/groundClearance")
                    .actual(new Measure(clearance.after(), CLEARANCE))
                    .limit(new Measure(0, CLEARANCE))
                    .action("Lower it less"));
        }
        Double laden = result.clearanceLadenM();
        if (laden != null && !(laden > 0)) {
            trace.find(Finding.of(
                            "frame-on-ground-laden",
                            Level.DANGER,
                            "On these springs the loaded frame would stand at {actual}: it rests on the ground or on its bump stops",
                            STATICS)
                    .at("/suspension")
                    .actual(new Measure(laden, CLEARANCE))
                    .limit(new Measure(0, CLEARANCE))
                    .action("Check the rates; take load off or fit stiffer springs"));
        }
        withinTyre(input.frontCorner(), result.approach(), "/chassis/frontOverhang", input.frontRadii() != null, trace);
        withinTyre(input.rearCorner(), result.departure(), "/chassis/rearOverhang", input.rearRadii() != null, trace);
        withinTyre(
                new Corner(0, 0),
                result.breakover(),
                "/chassis/groundClearance",
                input.frontRadii() != null && input.rearRadii() != null,
                trace);
    }

    private static void withinTyre(
            @Nullable Corner corner, @Nullable ClearanceAngle angle, String pointer, boolean radiiKnown, Trace trace) {
        if (corner == null || angle == null || !radiiKnown) {
            return;
        }
        if (angle.before() == null || angle.after() == null) {
            trace.find(Finding.of(
                            "point-within-tyre",
                            Level.NOTICE,
                            "The point lies within the outline of the tyre, where no ramp reaches it: the tangent construction has no"
                                    + " angle to give",
                            Underside.DEFINITION)
                    .at(pointer)
                    .action("Give the point of the underside that lies farthest from the wheel"));
        }
    }

    private static void gearing(Input input, Result result, Trace trace) {
        DrivenTyres tyres = input.gearing();
        Gearing.Result gearing = result.gearing();
        if (tyres == null || gearing == null) {
            return;
        }
        double error = gearing.speedometerError();
        if (error < 0) {
            trace.find(Finding.of(
                            "true-speed-above-shown",
                            Level.WARNING,
                            "An uncorrected speedometer now shows less than the true speed, by a share of {actual}; every limit set by"
                                    + " motor speed rises with it",
                            Speedometer.SOURCE)
                    .at(tyres.pointer())
                    .actual(Measure.number(error))
                    .limit(Measure.number(0))
                    .action(
                            "Correct the speedometer and set every speed limit again; a faster vehicle may fall into another class of"
                                    + " law"));
        } else if (error > Speedometer.largestError(R39_SPEED)) {
            trace.find(Finding.of(
                            "speedometer-reads-high",
                            Level.CAUTION,
                            "An uncorrected speedometer shows more than the true speed, by a share of {actual}; {limit} is allowed at"
                                    + " 40 km/h",
                            Speedometer.SOURCE)
                    .at(tyres.pointer())
                    .actual(Measure.number(error))
                    .limit(Measure.number(Speedometer.largestError(R39_SPEED)))
                    .action("Correct the speedometer"));
        }
        if (gearing.tractionFactor() < 1) {
            trace.find(Finding.of(
                            "less-pull",
                            Level.CAUTION,
                            "The taller tyre leaves {actual} of the force at the rim: it climbs less, draws more current on a hill and may"
                                    + " stall there",
                            Source.derived("force is wheel torque over wheel radius"))
                    .at(tyres.pointer())
                    .actual(Measure.number(gearing.tractionFactor()))
                    .limit(Measure.number(1))
                    .action("On hills or with a weak pack choose a smaller tyre or a lower gear ratio"));
        }
    }

    private static void suspension(Input input, FrontSuspension.Result result, Trace trace) {
        Alignment alignment = result.alignment();
        if (alignment == null) {
            trace.find(Finding.of(
                            "beyond-linkage",
                            Level.DANGER,
                            "The lift asks the front wheels to move {actual} against the frame; these arms go no farther than {limit}",
                            LINKAGE)
                    .at("/lift/front/amount")
                    .actual(new Measure(result.droopM(), CLEARANCE))
                    .limit(new Measure(result.reachedM(), CLEARANCE))
                    .action("Check the measured joints; lift less, or with longer arms or other knuckles"));
            return;
        }
        if (input.frontKind() == LiftKind.ARMS && result.droopM() != 0) {
            trace.find(Finding.of(
                            "arms-as-measured",
                            Level.CAUTION,
                            "Camber, track and toe are worked out for the arms as measured, drooping by {actual}; other arms have a geometry"
                                    + " of their own",
                            LINKAGE)
                    .at("/lift/front/kind")
                    .actual(new Measure(result.droopM(), CLEARANCE))
                    .action("Measure the joints with the new arms fitted and leave out the lift they give"));
        }
        large(
                "camber-change",
                Level.CAUTION,
                "Each front wheel's camber changes by {actual}; {limit} wears tyres",
                alignment.camberChangeRad(),
                LARGE_CAMBER,
                ANGLE,
                "Set camber again, or lift with spindles or longer upper arms",
                trace);
        large(
                "track-change",
                Level.NOTICE,
                "The front track changes by {actual} as the arms swing; the tyres scrub that far over each" + " stroke",
                alignment.trackChangeM(),
                LARGE_TRACK,
                CLEARANCE,
                "Check tyre against body and arms at full lock",
                trace);
        if (alignment.toeChangeRad() != null) {
            large(
                    "toe-change",
                    Level.WARNING,
                    "Each front wheel's toe changes by {actual}; {limit} wears tyres and unsettles the steering",
                    alignment.toeChangeRad(),
                    LARGE_TOE,
                    ANGLE,
                    "Set toe again before driving, and watch it over the travel",
                    trace);
        } else if (input.suspension() != null && input.suspension().tieRod() != null) {
            trace.find(Finding.of(
                            "tie-rod-too-short",
                            Level.DANGER,
                            "The tie rod does not reach its joint at the lifted ride height: the steering would bind",
                            LINKAGE)
                    .at("/suspension/front/tieRod")
                    .action("Check the measured points; lower the rack or lengthen the rods with parts made for it"));
        }
        rollCentre(result, alignment, trace);
    }

    private static void rollCentre(FrontSuspension.Result result, Alignment alignment, Trace trace) {
        Double before = result.rollCentreBeforeM();
        Double after = alignment.rollCentreM();
        if (before != null && after != null && Math.abs(after - before) > LARGE_ROLL_CENTRE) {
            trace.find(Finding.of(
                            "roll-centre-moves",
                            Level.CAUTION,
                            "The front roll centre moves by {actual} over the ground, more than {limit}: balance in turns changes, and a"
                                    + " high one lifts the outer side of the vehicle",
                            Source.COMMON_PRACTICE)
                    .at("/suspension/front")
                    .actual(new Measure(after - before, CLEARANCE))
                    .limit(new Measure(LARGE_ROLL_CENTRE, CLEARANCE)));
        }
        if (alignment.instantCentreFlips()) {
            trace.find(Finding.of(
                            "instant-centre-flips",
                            Level.CAUTION,
                            "The instant centre of the front wheels changes sides: camber now goes the other way over bumps",
                            LINKAGE)
                    .at("/suspension/front")
                    .action("Bring the arms back towards the angles they had, with drop brackets or spindles"));
        }
    }

    private static void large(
            String code,
            Level level,
            String message,
            double actual,
            double limit,
            Dimension dimension,
            String action,
            Trace trace) {
        if (Math.abs(actual) > limit) {
            trace.find(Finding.of(code, level, message, Source.COMMON_PRACTICE)
                    .at("/suspension/front")
                    .actual(new Measure(actual, dimension))
                    .limit(new Measure(limit, dimension))
                    .action(action));
        }
    }

    private static void tyre(TyreLoad tyre, Trace trace) {
        if (tyre.loadN() > tyre.limitN()) {
            trace.find(Finding.of(
                            "tyre-overloaded",
                            Level.WARNING,
                            "Each " + tyre.axle() + " tyre carries {actual}, and may carry {limit}",
                            LoadIndex.SOURCE)
                    .at(tyre.pointer())
                    .actual(new Measure(tyre.loadN(), LOAD))
                    .limit(new Measure(tyre.limitN(), LOAD))
                    .action("Fit tyres that carry the axle as it is now, or take weight off it"));
        }
    }
}
