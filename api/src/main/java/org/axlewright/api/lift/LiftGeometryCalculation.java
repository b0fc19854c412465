package org.axlewright.api.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.calculation.SpringSections;
import org.axlewright.api.lift.LiftGeometryResult.AxleClearanceRise;
import org.axlewright.api.lift.LiftGeometryResult.ClearanceAngle;
import org.axlewright.api.lift.LiftGeometryResult.FrontTravel;
import org.axlewright.api.lift.LiftGeometryResult.GroundClearance;
import org.axlewright.api.lift.LiftGeometryResult.LengthChange;
import org.axlewright.api.lift.LiftGeometryResult.SimpleAngle;
import org.axlewright.api.lift.LiftGeometryResult.Squat;
import org.axlewright.api.lift.LiftGeometryResult.WheelChange;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Lift;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Suspension;
import org.axlewright.api.section.Tyres;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.lift.DoubleWishbone;
import org.axlewright.domain.lift.FrontSuspension;
import org.axlewright.domain.lift.FrontSuspension.LiftedWishbone;
import org.axlewright.domain.lift.Gearing;
import org.axlewright.domain.lift.Gearing.DrivenTyres;
import org.axlewright.domain.lift.LiftGeometry;
import org.axlewright.domain.lift.LiftGeometry.Corner;
import org.axlewright.domain.lift.LiftGeometry.Input;
import org.axlewright.domain.lift.LiftGeometry.Result;
import org.axlewright.domain.lift.LiftGeometry.TyreLoad;
import org.axlewright.domain.lift.LiftKind;
import org.axlewright.domain.lift.Point;
import org.axlewright.domain.lift.TieRod;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.tyre.LoadIndex;
import org.axlewright.domain.tyre.TyreSize;
import org.jspecify.annotations.Nullable;

/** Lift and tyres: heights, clearance angles, gearing, front suspension. */
public final class LiftGeometryCalculation implements Calculation<Input, Result, LiftGeometryResult> {

    private static final Needs NEEDS = Needs.one(
            Needs.value("/lift/front/amount"),
            Needs.value("/lift/rear/amount"),
            Needs.all("/lift/front/tyreBefore", "/tyres/front"),
            Needs.all("/lift/rear/tyreBefore", "/tyres/rear"));

    /** Joints that are closer than this can't be told apart from a mistake, m. */
    private static final double SHORTEST_ARM = 0.02;

    @Override
    public String name() {
        return "lift-geometry";
    }

    @Override
    public String question() {
        return "What does the lift and the bigger tyre do to height, clearance, camber, track, steering and gearing?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/frontRise",
                "/rearRise",
                "/centreOfGravityRise",
                "/groundClearance/after",
                "/breakoverAngle/after",
                "/speedFactor",
                "/camberChange");
    }

    @Override
    public Class<LiftGeometryResult> resultType() {
        return LiftGeometryResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        Rise rise = Rises.resolve(setup, resolution);
        Chassis chassis = setup.chassis();
        Double wheelbase = chassis == null ? null : si(chassis.wheelbase());
        Double clearance = chassis == null ? null : si(chassis.groundClearance());
        Corner frontCorner = chassis == null ? null : corner(chassis.frontOverhang());
        Corner rearCorner = chassis == null ? null : corner(chassis.rearOverhang());
        boolean crest = wheelbase != null && clearance != null;
        LoadedRadii frontRadii = crest || frontCorner != null
                ? Rises.radii(rise.front(), setup, Axle.FRONT, resolution)
                : rise.front().radii();
        LoadedRadii rearRadii = crest || rearCorner != null
                ? Rises.radii(rise.rear(), setup, Axle.REAR, resolution)
                : rise.rear().radii();
        Double frontShare = frontShare(setup, wheelbase);
        Input input = new Input(
                rise,
                kind(setup, Axle.FRONT),
                kind(setup, Axle.REAR),
                frontRadii,
                rearRadii,
                wheelbase,
                clearance,
                frontCorner,
                rearCorner,
                squat(setup, resolution),
                frontShare,
                heightBefore(setup, rise, frontShare),
                gearing(setup, resolution),
                suspension(setup, rise.front(), resolution),
                tyreLoads(setup, resolution),
                offRoadTyres(setup));
        notAnswered(input, setup, resolution);
        return input;
    }

    private static @Nullable LiftKind kind(Setup setup, Axle axle) {
        Lift.AxleLift sent = Rises.sent(setup, axle);
        return sent == null ? null : sent.kind();
    }

    private static @Nullable Corner corner(Chassis.@Nullable Overhang overhang) {
        return overhang == null || overhang.reach() == null || overhang.height() == null
                ? null
                : new Corner(overhang.reach().si(), overhang.height().si());
    }

    private static LiftGeometry.@Nullable Squat squat(Setup setup, Resolution resolution) {
        SpringSections.Squat squat = SpringSections.squat(setup, resolution);
        return squat == null ? null : new LiftGeometry.Squat(squat.frontM(), squat.rearM());
    }

    /** As driven when measured, else as weighed. */
    private static @Nullable Double frontShare(Setup setup, @Nullable Double wheelbaseM) {
        if (wheelbaseM != null && setup.laden() != null && setup.laden().position() != null) {
            Double x = si(setup.laden().position().x());
            if (x != null) {
                return 1 - x / wheelbaseM;
            }
        }
        return MassSections.frontShareAsWeighed(setup);
    }

    /** Of the centre of gravity; the laden vehicle is measured as it stands now, the bare one before the lift. */
    private static @Nullable Double heightBefore(Setup setup, Rise rise, @Nullable Double frontShare) {
        if (setup.laden() != null && setup.laden().position() != null) {
            Double now = si(setup.laden().position().z());
            if (now != null) {
                return frontShare == null
                        ? null
                        : (Double) (now - rise.centreOfGravityM(frontShare, Trace.withoutWorking()));
            }
        }
        return MassSections.heightAsWeighedM(setup);
    }

    private static @Nullable DrivenTyres gearing(Setup setup, Resolution resolution) {
        AxleSet driven = setup.chassis() == null ? null : setup.chassis().driven();
        if (driven == null) {
            driven = resolution.assume(
                    "rear-driven",
                    "/chassis/driven",
                    AxleSet.REAR,
                    "the rear axle drives most vehicles of this class",
                    Source.COMMON_PRACTICE);
        }
        Axle axle = driven == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        Lift.AxleLift lift = Rises.sent(setup, axle);
        Tyres.Tyre before = lift == null ? null : lift.tyreBefore();
        Tyres.Tyre now = Rises.tyreNow(setup, axle);
        String pointer = "/tyres/" + axle;
        if (before == null) {
            return new DrivenTyres(pointer, false, 1, 1, null);
        }
        return now == null ? null : rolled(before, now, pointer);
    }

    private static @Nullable DrivenTyres rolled(Tyres.Tyre before, Tyres.Tyre now, String pointer) {
        LoadedRadii measured = before.loadedRadius() == null || now.loadedRadius() == null
                ? null
                : new LoadedRadii(before.loadedRadius().si(), now.loadedRadius().si());
        if (before.rollout() != null && now.rollout() != null) {
            return new DrivenTyres(
                    pointer, true, before.rollout().si(), now.rollout().si(), measured);
        }
        Double diameterBefore = Rises.diameterM(before);
        Double diameterNow = Rises.diameterM(now);
        return diameterBefore == null || diameterNow == null
                ? null
                : new DrivenTyres(pointer, false, diameterBefore, diameterNow, measured);
    }

    private static @Nullable LiftedWishbone suspension(Setup setup, AxleLift lift, Resolution resolution) {
        Suspension.AxleSuspension front =
                setup.suspension() == null ? null : setup.suspension().front();
        Double track = setup.chassis() == null ? null : si(setup.chassis().frontTrack());
        if (front == null || track == null) {
            return null;
        }
        Point lowerInner = point(front.lowerInner());
        Point lowerOuter = point(front.lowerOuter());
        Point upperInner = point(front.upperInner());
        Point upperOuter = point(front.upperOuter());
        if (lowerInner == null || lowerOuter == null || upperInner == null || upperOuter == null) {
            return null;
        }
        int faultless = 0;
        faultless += apart(
                lowerOuter.y() - lowerInner.y(), "/lowerOuter/y", "lies outboard of the lower inner joint", resolution);
        faultless += apart(
                upperOuter.y() - upperInner.y(), "/upperOuter/y", "lies outboard of the upper inner joint", resolution);
        faultless +=
                apart(upperInner.z() - lowerInner.z(), "/upperInner/z", "lies above the lower inner joint", resolution);
        faultless +=
                apart(upperOuter.z() - lowerOuter.z(), "/upperOuter/z", "lies above the lower ball joint", resolution);
        TieRod tieRod = tieRod(front.tieRod(), resolution);
        if (faultless < 4) {
            return null;
        }
        DoubleWishbone linkage = new DoubleWishbone(lowerInner, lowerOuter, upperInner, upperOuter);
        if (linkage.isAtDeadPoint()) {
            resolution.refuse(
                    Fault.contradiction(
                            "/suspension/front/upperOuter",
                            "The upper arm and the line of the ball joints lie in one line: no suspension can stand so; check the points"));
            return null;
        }
        double stubDrop = lift.tyreM() + (kind(setup, Axle.FRONT) == LiftKind.SPINDLE ? lift.suspensionM() : 0);
        return new LiftedWishbone(linkage, tieRod, track / 2, lift.frameM(), stubDrop);
    }

    private static @Nullable Point point(Suspension.@Nullable Point point) {
        return point == null || point.y() == null || point.z() == null
                ? null
                : new Point(point.y().si(), point.z().si());
    }

    /** 1 when the joints are far enough apart, 0 with a fault. */
    private static int apart(double distanceM, String pointer, String where, Resolution resolution) {
        if (distanceM >= SHORTEST_ARM) {
            return 1;
        }
        resolution.refuse(Fault.contradiction(
                "/suspension/front" + pointer, "This joint of a double wishbone " + where + ", by at least 20 mm"));
        return 0;
    }

    private static @Nullable TieRod tieRod(Suspension.@Nullable TieRod sent, Resolution resolution) {
        Point inner = sent == null ? null : point(sent.inner());
        Point outer = sent == null ? null : point(sent.outer());
        if (sent == null || inner == null || outer == null || sent.armLength() == null) {
            return null;
        }
        double arm = sent.armLength().si();
        if (!(Math.abs(arm) >= SHORTEST_ARM)) {
            resolution.refuse(
                    Fault.contradiction(
                            "/suspension/front/tieRod/armLength",
                            "A joint less than 20 mm from the line through the ball joints turns no wheel; give how far behind it lies"));
            return null;
        }
        if (!(Math.abs(outer.y() - inner.y()) >= SHORTEST_ARM)) {
            resolution.refuse(Fault.contradiction(
                    "/suspension/front/tieRod/outer/y",
                    "The joints of a tie rod lie at least 20 mm apart across the vehicle"));
            return null;
        }
        return new TieRod(inner, outer, arm);
    }

    private static List<TyreLoad> tyreLoads(Setup setup, Resolution resolution) {
        List<TyreLoad> loads = new ArrayList<>();
        Double frontLimit = limitN(Rises.tyreNow(setup, Axle.FRONT));
        Double rearLimit = limitN(Rises.tyreNow(setup, Axle.REAR));
        if (frontLimit == null && rearLimit == null) {
            return loads;
        }
        MassSections.AxleLoads axles = MassSections.axleLoadsAsDriven(setup, resolution);
        if (axles == null) {
            return loads;
        }
        if (frontLimit != null) {
            loads.add(new TyreLoad(Axle.FRONT, limitPointer(setup, Axle.FRONT), axles.frontN() / 2, frontLimit));
        }
        if (rearLimit != null) {
            loads.add(new TyreLoad(Axle.REAR, limitPointer(setup, Axle.REAR), axles.rearN() / 2, rearLimit));
        }
        return loads;
    }

    private static String limitPointer(Setup setup, Axle axle) {
        boolean given = Objects.requireNonNull(Rises.tyreNow(setup, axle)).maximumLoad() != null;
        return "/tyres/" + axle + (given ? "/maximumLoad" : "/size");
    }

    /** What one tyre may carry, N: as given, else by the load index behind its size. */
    private static @Nullable Double limitN(Tyres.@Nullable Tyre tyre) {
        if (tyre == null) {
            return null;
        }
        if (tyre.maximumLoad() != null) {
            return tyre.maximumLoad().si();
        }
        Integer index = tyre.size() == null ? null : TyreSize.parse(tyre.size()).loadIndex();
        return index == null ? null : (Double) (LoadIndex.massKg(index) * Constants.STANDARD_GRAVITY);
    }

    private static List<String> offRoadTyres(Setup setup) {
        List<String> pointers = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            Tyres.Tyre tyre = Rises.tyreNow(setup, axle);
            if (tyre != null
                    && tyre.size() != null
                    && TyreSize.parse(tyre.size()).offRoadOnly()) {
                pointers.add("/tyres/" + axle + "/size");
            }
        }
        return pointers;
    }

    private static void notAnswered(Input input, Setup setup, Resolution resolution) {
        if (input.frontShare() == null) {
            resolution.notAnswered(
                    "/centreOfGravityRise", "/bare/scales", "/bare/axles", "/bare/frontShare", "/laden/position/x");
        }
        if (input.groundClearanceM() == null) {
            resolution.notAnswered("/groundClearance", "/chassis/groundClearance");
        }
        resolution.notAnswered("/squat", SpringSections.squatMissing(setup));
        angle("/approachAngle", input.frontCorner(), "/chassis/frontOverhang", input, resolution);
        if (input.groundClearanceM() == null || input.wheelbaseM() == null) {
            resolution.notAnswered(
                    "/breakoverAngle", input.wheelbaseM() == null ? "/chassis/wheelbase" : "/chassis/groundClearance");
        } else {
            tangent("/breakoverAngle", input.frontRadii(), "/tyres/front/size", resolution);
            tangent("/breakoverAngle", input.rearRadii(), "/tyres/rear/size", resolution);
        }
        angle("/departureAngle", input.rearCorner(), "/chassis/rearOverhang", input, resolution);
        if (input.gearing() == null) {
            String axle = setup.chassis() != null && setup.chassis().driven() == AxleSet.FRONT ? "front" : "rear";
            String[] missing = {"/tyres/" + axle + "/size", "/lift/" + axle + "/tyreBefore/size"};
            resolution.notAnswered("/speedFactor", missing);
            resolution.notAnswered("/tractionFactor", missing);
            resolution.notAnswered("/speedometerError", missing);
        }
        suspensionNotAnswered(input, setup, resolution);
    }

    private static void angle(
            String result, @Nullable Corner corner, String overhang, Input input, Resolution resolution) {
        boolean pitches = input.rise().front().frameM() != input.rise().rear().frameM();
        if (corner == null) {
            resolution.notAnswered(result, overhang + "/reach", overhang + "/height");
        } else if (input.wheelbaseM() == null && pitches) {
            resolution.notAnswered(result, "/chassis/wheelbase");
        } else {
            boolean front = overhang.contains("front");
            tangent(
                    result,
                    front ? input.frontRadii() : input.rearRadii(),
                    front ? "/tyres/front/size" : "/tyres/rear/size",
                    resolution);
        }
    }

    private static void tangent(String result, @Nullable LoadedRadii radii, String missing, Resolution resolution) {
        if (radii == null) {
            resolution.notAnswered(result + "/before", missing);
            resolution.notAnswered(result + "/after", missing);
        }
    }

    private static void suspensionNotAnswered(Input input, Setup setup, Resolution resolution) {
        Suspension.AxleSuspension front =
                setup.suspension() == null ? null : setup.suspension().front();
        if (input.suspension() == null) {
            List<String> missing = new ArrayList<>();
            if (setup.chassis() == null || setup.chassis().frontTrack() == null) {
                missing.add("/chassis/frontTrack");
            }
            String at = "/suspension/front/";
            missing(front == null ? null : front.lowerInner(), at + "lowerInner", missing);
            missing(front == null ? null : front.lowerOuter(), at + "lowerOuter", missing);
            missing(front == null ? null : front.upperInner(), at + "upperInner", missing);
            missing(front == null ? null : front.upperOuter(), at + "upperOuter", missing);
            String[] pointers = missing.toArray(String[]::new);
            for (String result :
                    List.of("/camberChange", "/trackChange", "/rollCentreHeight", "/toeChange", "/frontTravel")) {
                resolution.notAnswered(result, pointers);
            }
        } else if (input.suspension().tieRod() == null) {
            List<String> missing = new ArrayList<>();
            Suspension.TieRod rod = front == null ? null : front.tieRod();
            missing(rod == null ? null : rod.inner(), "/suspension/front/tieRod/inner", missing);
            missing(rod == null ? null : rod.outer(), "/suspension/front/tieRod/outer", missing);
            if (rod == null || rod.armLength() == null) {
                missing.add("/suspension/front/tieRod/armLength");
            }
            resolution.notAnswered("/toeChange", missing.toArray(String[]::new));
        }
    }

    private static void missing(Suspension.@Nullable Point point, String pointer, List<String> missing) {
        if (point == null || point.y() == null) {
            missing.add(pointer + "/y");
        }
        if (point == null || point.z() == null) {
            missing.add(pointer + "/z");
        }
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }

    @Override
    public Result calculate(Input input, Trace trace) {
        return LiftGeometry.of(input, trace);
    }

    @Override
    public LiftGeometryResult show(Result result, UnitSystem units) {
        Gearing.Result gearing = result.gearing();
        FrontSuspension.Result suspension = result.suspension();
        FrontSuspension.Alignment alignment = suspension == null ? null : suspension.alignment();
        LiftGeometry.Change clearance = result.groundClearance();
        return new LiftGeometryResult(
                units.clearance(result.frontRiseM()),
                units.clearance(result.rearRiseM()),
                result.centreOfGravityRiseM() == null ? null : units.clearance(result.centreOfGravityRiseM()),
                new AxleClearanceRise(
                        units.clearance(result.frontAxleRiseM()), units.clearance(result.rearAxleRiseM())),
                clearance == null
                        ? null
                        : new GroundClearance(
                                units.clearance(clearance.before()),
                                units.clearance(clearance.after()),
                                result.clearanceLadenM() == null ? null : units.clearance(result.clearanceLadenM())),
                result.squat() == null
                        ? null
                        : new Squat(
                                units.clearance(result.squat().frontM()),
                                units.clearance(result.squat().rearM())),
                angle(result.approach(), units),
                angle(result.breakover(), units),
                angle(result.departure(), units),
                gearing == null ? null : (Double) gearing.speedFactor(),
                gearing == null ? null : (Double) gearing.tractionFactor(),
                gearing == null ? null : (Double) gearing.speedometerError(),
                alignment == null ? null : units.angle(alignment.camberChangeRad()),
                alignment == null ? null : units.clearance(alignment.trackChangeM()),
                suspension == null ? null : rollCentre(suspension, units),
                alignment == null || alignment.toeChangeRad() == null ? null : units.angle(alignment.toeChangeRad()),
                suspension == null || alignment == null
                        ? null
                        : suspension.travel().stream()
                                .map(travel -> new FrontTravel(
                                        units.clearance(travel.travelM()),
                                        change(travel.before(), units),
                                        change(travel.after(), units)))
                                .toList());
    }

    private static @Nullable ClearanceAngle angle(LiftGeometry.@Nullable ClearanceAngle angle, UnitSystem units) {
        return angle == null
                ? null
                : new ClearanceAngle(
                        angle.before() == null ? null : units.angle(angle.before()),
                        angle.after() == null ? null : units.angle(angle.after()),
                        new SimpleAngle(
                                units.angle(angle.simple().before()),
                                units.angle(angle.simple().after())));
    }

    private static @Nullable LengthChange rollCentre(FrontSuspension.Result suspension, UnitSystem units) {
        FrontSuspension.Alignment alignment = suspension.alignment();
        Double before = suspension.rollCentreBeforeM();
        Double after = alignment == null ? null : alignment.rollCentreM();
        return before == null && after == null
                ? null
                : new LengthChange(
                        before == null ? null : units.clearance(before), after == null ? null : units.clearance(after));
    }

    private static @Nullable WheelChange change(FrontSuspension.@Nullable Change change, UnitSystem units) {
        return change == null
                ? null
                : new WheelChange(
                        units.angle(change.camberRad()),
                        units.clearance(change.trackM()),
                        change.toeRad() == null ? null : units.angle(change.toeRad()));
    }
}
