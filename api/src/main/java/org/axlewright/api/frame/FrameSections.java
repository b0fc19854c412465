package org.axlewright.api.frame;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.STRESS;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Frame;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.Crest;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.LiftedWheel;
import org.axlewright.domain.frame.FrameOverhang.PlacedMass;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.Spread;
import org.axlewright.domain.frame.FrameOverhang.Stretch;
import org.axlewright.domain.frame.FrameOverhang.Tie;
import org.axlewright.domain.frame.FrameOverhang.Weld;
import org.axlewright.domain.frame.LoadCase;
import org.axlewright.domain.frame.Rail;
import org.axlewright.domain.frame.SteelGrade;
import org.axlewright.domain.frame.Tube;
import org.axlewright.domain.frame.TubeShape;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Stress;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections to the checked input of the frame. */
final class FrameSections {

    /** Wheelbases closer than this, m, are the same to a tape measure. */
    private static final double SAME_WHEELBASE_M = 0.005;

    private static final double SHORTEST_WHEELBASE_M = 0.5;

    private static final Source MODULUS =
            Source.published("steel 200 to 210 GPa: mechanics of materials; the lower end bends more");
    private static final Source A500_WALL =
            Source.weak("ASTM A500 admits a wall 10 % under nominal: a steel supplier's summary");
    private static final Source CORNERS =
            Source.memory("corner radii of cold-formed tube, 2 to 3 walls, cost 3 to 8 % of area and moduli");
    private static final Source MARGIN = Source.memory(
            "1.5 on yield with the dynamic factor, 2 to 3 on the static load alone; welds and fatigue need more");

    /** Where a rail is taken to stand on either side when nothing needs to know, m. */
    private static final double RAIL_ASIDE_M = 0.25;

    private FrameSections() {}

    static Input resolve(Setup setup, Resolution resolution, List<String> stretchMissing) {
        Frame frame = Objects.requireNonNull(setup.frame(), "frame");
        List<Rail> rails = rails(frame, resolution);
        double vertical = verticalFactor(frame, resolution);
        Stretch stretch = stretchMissing.isEmpty() ? stretch(setup, frame, resolution) : null;
        resolution.refuseIfFaulty();
        Input input = new Input(
                rails,
                frame.elasticModulus() != null
                        ? frame.elasticModulus().si()
                        : rails.isEmpty()
                                ? 200e9
                                : resolution.assume(
                                        "steel-modulus",
                                        "/frame/elasticModulus",
                                        new Measure(200e9, STRESS),
                                        "rails of steel",
                                        MODULUS),
                vertical,
                torsionFactor(frame, resolution),
                safetyFactor(frame, vertical, rails, resolution),
                box(frame.box(), resolution),
                stretch,
                rails.isEmpty() ? null : liftedWheel(setup, stretch, resolution),
                Constants.STANDARD_GRAVITY);
        resolution.refuseIfFaulty();
        notAnswered(input, setup, stretchMissing, resolution);
        return input;
    }

    private static double verticalFactor(Frame frame, Resolution resolution) {
        if (frame.dynamicFactor() != null) {
            return frame.dynamicFactor();
        }
        LoadCase loadCase = frame.loadCase();
        if (loadCase == null) {
            loadCase = resolution.assume(
                    "rough-ground",
                    "/frame/loadCase",
                    LoadCase.ROUGH,
                    "these vehicles leave the road: the upper end of the published factors",
                    LoadCase.ROUGH.vertical().source());
        }
        return loadCase.vertical().value();
    }

    private static double torsionFactor(Frame frame, Resolution resolution) {
        if (frame.torsionFactor() != null) {
            return frame.torsionFactor();
        }
        if (frame.loadCase() != null || frame.dynamicFactor() == null) {
            return Objects.requireNonNullElse(frame.loadCase(), LoadCase.ROUGH)
                    .torsion()
                    .value();
        }
        Datum rough = LoadCase.ROUGH.torsion();
        return resolution.assume(
                "torsion-factor",
                "/frame/torsionFactor",
                Measure.number(rough.value()),
                "the upper end of the published factors",
                rough.source());
    }

    private static double safetyFactor(Frame frame, double vertical, List<Rail> rails, Resolution resolution) {
        if (frame.safetyFactor() != null) {
            return frame.safetyFactor();
        }
        double factor = vertical > 1 ? 1.5 : 3;
        return rails.isEmpty()
                ? factor
                : resolution.assume(
                        "safety-factor",
                        "/frame/safetyFactor",
                        Measure.number(factor),
                        vertical > 1 ? "on yield, with the dynamic factor" : "on yield, with the weight at rest alone",
                        MARGIN);
    }

    private static List<Rail> rails(Frame frame, Resolution resolution) {
        List<Rail> rails = new ArrayList<>();
        List<Frame.Rail> sent = frame.rails() == null ? List.of() : frame.rails();
        List<Double> places = places(sent, frame, resolution);
        for (int i = 0; i < sent.size(); i++) {
            Frame.Rail rail = sent.get(i);
            String pointer = "/frame/rails/" + i;
            Tube tube = tube(Objects.requireNonNull(rail.section()), pointer + "/section", rail.grade(), resolution);
            if (tube != null) {
                rails.add(new Rail(
                        pointer,
                        rail.name() == null ? String.valueOf(i + 1) : rail.name(),
                        rail.reference(),
                        tube,
                        places.get(i),
                        yieldPa(rail.grade(), rail.yieldStrength(), tube.shape()),
                        weld(rail)));
            }
        }
        return rails;
    }

    /**
     * Where the rails stand, m to the right. Where nothing is told off the middle they share alike wherever they stand, so that nobody
     * need measure them; else each must be told.
     */
    private static List<Double> places(List<Frame.Rail> rails, Frame frame, Resolution resolution) {
        boolean anyTold = rails.stream().anyMatch(rail -> rail.y() != null);
        boolean assumed = !anyTold && rails.size() <= 2 && allInTheMiddle(frame);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < rails.size(); i++) {
            Length sent = rails.get(i).y();
            String pointer = "/frame/rails/" + i + "/y";
            if (sent != null) {
                places.add(sent.si());
            } else if (assumed) {
                places.add(resolution.assume(
                        "rails-either-side",
                        pointer,
                        new Measure(rails.size() == 1 ? 0 : i == 0 ? -RAIL_ASIDE_M : RAIL_ASIDE_M, LENGTH),
                        "a load in the middle of two rails is shared alike wherever they stand",
                        Source.derived("statics of two rails")));
            } else {
                resolution.missing(pointer);
                places.add(0.0);
            }
        }
        return places;
    }

    private static boolean allInTheMiddle(Frame frame) {
        Frame.HungBox box = frame.box();
        Frame.Stretch stretch = frame.stretch();
        boolean points = stretch != null
                && stretch.pointMasses() != null
                && stretch.pointMasses().stream().anyMatch(one -> one.y() != null);
        return (box == null || box.y() == null) && (stretch == null || stretch.distributedY() == null) && !points;
    }

    private static @Nullable Double yieldPa(
            @Nullable SteelGrade grade, @Nullable Stress yieldStrength, TubeShape shape) {
        if (yieldStrength != null) {
            return yieldStrength.si();
        }
        return grade == null ? null : (Double) grade.yieldPa(shape).value();
    }

    /** The correlation factor of a steel that EN 1993-1-8 does not name is its highest, 1.0. */
    private static Rail.@Nullable WeldStrength weld(Frame.Rail rail) {
        SteelGrade grade = rail.grade();
        Datum factor = grade == null ? null : grade.weldFactor();
        Datum tensile = grade == null ? null : grade.tensilePa();
        Double tensilePa = rail.tensileStrength() != null
                ? (Double) rail.tensileStrength().si()
                : tensile == null ? null : (Double) tensile.value();
        return tensilePa == null ? null : new Rail.WeldStrength(tensilePa, factor == null ? 1.0 : factor.value());
    }

    /** Null, and a fault, when a rectangular tube has no height. */
    private static @Nullable Tube tube(
            Frame.Tube sent, String pointer, @Nullable SteelGrade grade, Resolution resolution) {
        TubeShape shape = Objects.requireNonNull(sent.shape());
        double width = Objects.requireNonNull(sent.width()).si();
        Length height = shape == TubeShape.RECTANGULAR ? sent.height() : sent.width();
        if (height == null) {
            resolution.missing(pointer + "/height");
            return null;
        }
        double radius = 0;
        if (shape != TubeShape.ROUND) {
            radius = sent.cornerRadius() != null
                    ? sent.cornerRadius().si()
                    : resolution.assume(
                            "sharp-corners",
                            pointer + "/cornerRadius",
                            new Measure(0, CLEARANCE),
                            "sharp corners; a real cold-formed tube is 3 to 8 % weaker",
                            CORNERS);
        }
        double under = 0;
        if (sent.wallUnderShare() != null) {
            under = sent.wallUnderShare();
        } else if (grade != null && grade.wallMayBeUnder()) {
            under = resolution.assume(
                    "wall-under-nominal",
                    pointer + "/wallUnderShare",
                    Measure.number(0.1),
                    "the wall may be this much under nominal",
                    A500_WALL);
        }
        double wall = Objects.requireNonNull(sent.wall()).si() * (1 - under);
        return new Tube(shape, width, height.si(), wall, radius);
    }

    private static @Nullable Box box(Frame.@Nullable HungBox sent, Resolution resolution) {
        if (sent == null || sent.mass() == null) {
            return null;
        }
        double y = 0;
        double backSpan = sent.backSpan() == null ? 0 : sent.backSpan().si();
        if (sent.arm() != null) {
            y = middle("box-in-the-middle", "/frame/box/y", sent.y(), resolution);
            if (sent.backSpan() == null) {
                resolution.assume(
                        "built-in",
                        "/frame/box/backSpan",
                        new Measure(0, LENGTH),
                        "the rails are built in at the last crossmember; a frame that gives there lets the box come down farther",
                        Source.derived("cantilever"));
            }
        }
        List<Tie> ties = new ArrayList<>();
        List<Frame.Tie> sentTies = sent.ties() == null ? List.of() : sent.ties();
        for (int i = 0; i < sentTies.size(); i++) {
            Frame.Tie tie = sentTies.get(i);
            Frame.Weld weld = tie.weld();
            ties.add(new Tie(
                    "/frame/box/ties/" + i,
                    tie.name(),
                    Objects.requireNonNull(tie.x()).si(),
                    weld == null || weld.throat() == null || weld.length() == null
                            ? null
                            : new Weld(weld.throat().si(), weld.length().si())));
        }
        return new Box(
                sent.mass().si(),
                sent.arm() == null ? null : (Double) sent.arm().si(),
                y,
                backSpan,
                ties,
                sent.prop() == null || sent.prop().x() == null ? null : prop(sent.prop(), resolution));
    }

    private static double middle(String code, String pointer, @Nullable Length sent, Resolution resolution) {
        return sent != null
                ? sent.si()
                : resolution.assume(
                        code,
                        pointer,
                        new Measure(0, LENGTH),
                        "without a sideways position it is taken to sit in the middle",
                        Source.COMMON_PRACTICE);
    }

    private static Prop prop(Frame.Prop sent, Resolution resolution) {
        double footX = sent.footX() != null
                ? sent.footX().si()
                : resolution.assume(
                        "prop-foot",
                        "/frame/box/prop/footX",
                        new Measure(0, LENGTH),
                        "the foot stands below the last crossmember",
                        Source.COMMON_PRACTICE);
        Tube tube = sent.section() == null || sent.section().shape() == null
                ? null
                : tube(sent.section(), "/frame/box/prop/section", sent.grade(), resolution);
        return new Prop(
                Objects.requireNonNull(sent.x()).si(),
                footX,
                Objects.requireNonNull(sent.drop()).si(),
                tube,
                tube == null ? null : yieldPa(sent.grade(), sent.yieldStrength(), tube.shape()));
    }

    private static @Nullable Stretch stretch(Setup setup, Frame frame, Resolution resolution) {
        Frame.Stretch sent = Objects.requireNonNull(frame.stretch());
        Chassis chassis = setup.chassis();
        Length standing = chassis == null ? null : chassis.wheelbase();
        double added = Objects.requireNonNull(sent.lengthAdded()).si();
        double before = sent.wheelbaseBefore() != null
                ? sent.wheelbaseBefore().si()
                : resolution.assume(
                        "wheelbase-before",
                        "/frame/stretch/wheelbaseBefore",
                        new Measure(Objects.requireNonNull(standing).si(), LENGTH),
                        "the chassis is described as it was before the stretch",
                        Source.derived("chassis/wheelbase"));
        double after = before + added;
        boolean standsAfter = false;
        if (standing != null && sent.wheelbaseBefore() != null) {
            standsAfter = Math.abs(standing.si() - after) <= SAME_WHEELBASE_M;
            if (!standsAfter && Math.abs(standing.si() - before) > SAME_WHEELBASE_M) {
                resolution.refuse(
                        Fault.contradiction(
                                "/frame/stretch/wheelbaseBefore",
                                "/chassis/wheelbase is neither the wheelbase before the stretch nor the one after it; send one of the two there"));
            }
        }
        if (!(after >= SHORTEST_WHEELBASE_M)) {
            resolution.refuse(Fault.contradiction(
                    "/frame/stretch/lengthAdded", "As much or more is cut out than the wheelbase was long"));
            return null;
        }
        double cut = sent.cutX() != null
                ? sent.cutX().si()
                : resolution.assume(
                        "cut-midway",
                        "/frame/stretch/cutX",
                        new Measure(Math.min(before, after) / 2, LENGTH),
                        "the frame was cut midway between the axles",
                        Source.COMMON_PRACTICE);
        if (sent.cutX() != null && !(cut <= Math.min(before, after))) {
            resolution.refuse(
                    Form.outOfRange("/frame/stretch/cutX/value", sent.cutX(), Math.min(before, after), false));
        }
        List<PlacedMass> points = points(sent, after, resolution);
        Spread spread = sent.distributedMass() == null
                ? null
                : new Spread(
                        sent.distributedMass().si(),
                        middle("load-in-the-middle", "/frame/stretch/distributedY", sent.distributedY(), resolution));
        boolean loads = frame.rails() != null && !frame.rails().isEmpty();
        return new Stretch(
                before,
                added,
                cut,
                loads ? spread : null,
                loads ? points : List.of(),
                turningRadius(chassis, before, standsAfter ? after : before, resolution),
                sent.steeringAngle() == null
                        ? null
                        : (Double) sent.steeringAngle().si(),
                crest(setup, resolution));
    }

    private static List<PlacedMass> points(Frame.Stretch sent, double afterM, Resolution resolution) {
        List<PlacedMass> points = new ArrayList<>();
        List<Frame.PointMass> masses = sent.pointMasses() == null ? List.of() : sent.pointMasses();
        for (int i = 0; i < masses.size(); i++) {
            Frame.PointMass mass = masses.get(i);
            String pointer = "/frame/stretch/pointMasses/" + i;
            Length x = Objects.requireNonNull(mass.x());
            if (!(x.si() <= afterM)) {
                resolution.refuse(Form.outOfRange(pointer + "/x/value", x, afterM, false));
            } else {
                points.add(new PlacedMass(
                        mass.name(),
                        Objects.requireNonNull(mass.mass()).si(),
                        x.si(),
                        middle("load-in-the-middle", pointer + "/y", mass.y(), resolution)));
            }
        }
        return points;
    }

    /** Of the outer front wheel before the stretch, m; measured with the wheelbase that the chassis has. */
    private static @Nullable Double turningRadius(
            @Nullable Chassis chassis, double beforeM, double measuredM, Resolution resolution) {
        if (chassis == null || chassis.turningRadius() == null) {
            return null;
        }
        double radius = chassis.turningRadius().si();
        if (!(radius > measuredM)) {
            resolution.refuse(Fault.contradiction(
                    "/chassis/turningRadius",
                    "No wheel turns on a radius smaller than the wheelbase; give the path of the outer front wheel"));
            return null;
        }
        return radius * beforeM / measuredM;
    }

    private static @Nullable Crest crest(Setup setup, Resolution resolution) {
        Chassis chassis = setup.chassis();
        if (chassis == null || chassis.groundClearance() == null) {
            return null;
        }
        Rise rise = Rises.resolve(setup, resolution);
        LoadedRadii front = Rises.radii(rise.front(), setup, Axle.FRONT, resolution);
        LoadedRadii rear = Rises.radii(rise.rear(), setup, Axle.REAR, resolution);
        return new Crest(
                chassis.groundClearance().si() + rise.frameAtM(0.5),
                front == null ? null : (Double) front.afterM(),
                rear == null ? null : (Double) rear.afterM());
    }

    /** Null where the loads of the axles or a track lack, and where an axle carries nothing. */
    private static @Nullable LiftedWheel liftedWheel(Setup setup, @Nullable Stretch stretch, Resolution resolution) {
        Chassis chassis = setup.chassis();
        if (chassis == null || chassis.wheelbase() == null) {
            return null;
        }
        MassSections.AxleLoads loads = MassSections.axleLoadsAsDriven(setup, resolution);
        if (loads == null) {
            return null;
        }
        boolean front = loads.frontN() <= loads.rearN();
        Length track = front ? chassis.frontTrack() : chassis.rearTrack();
        double load = Math.min(loads.frontN(), loads.rearN());
        if (track == null || !(load > 0)) {
            return null;
        }
        Chassis.WheelChanges changes = chassis.wheelChanges();
        return new LiftedWheel(
                front ? "front" : "rear",
                load,
                track.si() + widened(changes == null ? null : front ? changes.front() : changes.rear()),
                stretch == null ? chassis.wheelbase().si() : stretch.wheelbaseBeforeM() + stretch.addedM());
    }

    /** What spacers and wheels added to a track, m. */
    private static double widened(Chassis.@Nullable WheelChange change) {
        return change == null
                ? 0
                : 2 * si(change.spacerPerWheel()) + si(change.spacerPerAxle()) + 2 * si(change.wheelOutward());
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private static void notAnswered(Input input, Setup setup, List<String> stretchMissing, Resolution resolution) {
        List<String> overhang = new ArrayList<>();
        if (input.rails().isEmpty()) {
            overhang.add("/frame/rails");
        }
        if (input.box() == null) {
            overhang.add("/frame/box/mass");
            resolution.notAnswered("/holdDown", "/frame/box/mass");
        }
        if (input.box() == null || input.box().armM() == null) {
            overhang.add("/frame/box/arm");
        }
        resolution.notAnswered("/overhang", overhang);
        if (overhang.isEmpty()) {
            hungNotAnswered(input, Objects.requireNonNull(input.box()), resolution);
        }
        if (input.stretch() == null) {
            resolution.notAnswered("/stretch", stretchMissing);
        } else {
            stretchNotAnswered(input, input.stretch(), resolution);
        }
        if (input.liftedWheel() == null) {
            List<String> torsion = new ArrayList<>();
            if (input.rails().isEmpty()) {
                torsion.add("/frame/rails");
            }
            Chassis chassis = setup.chassis();
            if (chassis == null || chassis.wheelbase() == null) {
                torsion.add("/chassis/wheelbase");
            }
            if (chassis == null || chassis.frontTrack() == null) {
                torsion.add("/chassis/frontTrack");
            }
            if (chassis == null || chassis.rearTrack() == null) {
                torsion.add("/chassis/rearTrack");
            }
            torsion.addAll(MassSections.POSITION_IN_PLAN.missing(setup));
            resolution.notAnswered("/torsion", torsion.isEmpty() ? List.of("/laden/position/x") : torsion);
        }
        for (Rail rail : input.rails()) {
            if (rail.yieldPa() == null) {
                resolution.notAnswered("/worstRail/utilisation", rail.pointer() + "/grade");
            }
        }
    }

    private static void hungNotAnswered(Input input, Box box, Resolution resolution) {
        if (box.ties().isEmpty()) {
            resolution.notAnswered("/overhang/rails/0/ties/0", "/frame/box/ties");
        }
        for (int i = 0; i < box.ties().size(); i++) {
            if (box.ties().get(i).weld() == null) {
                resolution.notAnswered(
                        "/overhang/rails/0/ties/" + i + "/throatStress",
                        box.ties().get(i).pointer() + "/weld");
            } else {
                for (int j = 0; j < input.rails().size(); j++) {
                    Rail rail = input.rails().get(j);
                    if (rail.weld() == null) {
                        resolution.notAnswered(
                                "/overhang/rails/" + j + "/ties/" + i + "/allowableStress",
                                rail.pointer() + "/tensileStrength",
                                rail.pointer() + "/grade");
                    }
                }
            }
        }
        Prop prop = box.prop();
        if (prop != null && prop.tube() == null) {
            resolution.notAnswered("/overhang/rails/0/prop/stress", "/frame/box/prop/section");
        } else if (prop != null && prop.yieldPa() == null) {
            resolution.notAnswered("/overhang/rails/0/prop/utilisation", "/frame/box/prop/grade");
        }
    }

    private static void stretchNotAnswered(Input input, Stretch stretch, Resolution resolution) {
        List<String> rails = new ArrayList<>();
        if (input.rails().isEmpty()) {
            rails.add("/frame/rails");
        }
        if (stretch.spread() == null && stretch.points().isEmpty()) {
            rails.add("/frame/stretch/distributedMass");
        }
        resolution.notAnswered("/stretch/rails", rails);
        if (stretch.turningRadiusM() == null && stretch.steeringRad() == null) {
            resolution.notAnswered("/stretch/turningRadius", "/chassis/turningRadius", "/frame/stretch/steeringAngle");
        }
        Crest crest = stretch.crest();
        if (crest == null) {
            resolution.notAnswered("/stretch/breakoverAngle", "/chassis/groundClearance");
        } else {
            List<String> tyres = new ArrayList<>();
            if (crest.frontRadiusM() == null) {
                tyres.add("/tyres/front/size");
            }
            if (crest.rearRadiusM() == null) {
                tyres.add("/tyres/rear/size");
            }
            resolution.notAnswered("/stretch/breakoverAngle", tyres);
        }
    }
}
