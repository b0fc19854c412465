package org.axlewright.api.towing;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.GroundSections;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Manoeuvre;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Trailer;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Drawbar;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.roadload.RollingResistance;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.towing.Towing;
import org.axlewright.domain.towing.Trailers;
import org.axlewright.domain.towing.Tug;
import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections of one request to the checked question, with every default noted. */
final class TowingSections {

    private static final Needs PLACED = Needs.all(Needs.value("/chassis/wheelbase"), MassSections.POSITION_IN_PLAN);

    /** Between motor shaft and wheel. */
    private static final double GEAR_EFFICIENCY = 0.9;

    private static final double WALKING_PACE = SpeedUnit.KILOMETRE_PER_HOUR.toSi(5);
    private static final double GENTLE_START = 0.3;
    private static final double STARTING_FACTOR = 2;
    private static final double DRAG_AREA = 1.4;

    private final Setup setup;
    private final Resolution resolution;
    private final Trailer trailer;

    TowingSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
        this.trailer = Objects.requireNonNull(setup.trailer(), "trailer");
    }

    Towing.Input resolve() {
        double rolling = rolling();
        Trailers trailers = trailers(rolling);
        Tug tug = tug(rolling, trailers);
        resolution.refuseIfFaulty();
        Double grade = setup.ground() == null || setup.ground().grade() == null
                ? null
                : (Double) Math.abs(setup.ground().grade().si());
        boolean inDegrees = grade != null
                && Objects.requireNonNull(Objects.requireNonNull(setup.ground()).grade())
                                .unit()
                        == GradeUnit.DEGREE;
        Towing.Input input = new Towing.Input(trailers, tug, speed(), acceleration(), grade, inDegrees);
        notAnswered(input);
        return input;
    }

    private Trailers trailers(double rolling) {
        int count = trailer.count() != null
                ? trailer.count()
                : (int) resolution.assume(
                        "one-trailer",
                        "/trailer/count",
                        Measure.number(1),
                        "one trailer unless sent",
                        Source.COMMON_PRACTICE);
        return new Trailers(
                need(trailer.mass()) * count,
                count,
                trailer.rollingResistance() != null
                        ? trailer.rollingResistance()
                        : resolution.assume(
                                "trailer-rolls-as-vehicle",
                                "/trailer/rollingResistance",
                                Measure.number(rolling),
                                "the wheels of the trailers are taken to roll as those of the vehicle; small hard castors roll harder",
                                Source.COMMON_PRACTICE),
                trailer.startingFactor() != null
                        ? trailer.startingFactor()
                        : resolution.assume(
                                "starting-factor",
                                "/trailer/startingFactor",
                                Measure.number(STARTING_FACTOR),
                                "the first movement takes twice as much as rolling",
                                Source.weak(
                                        "a maker of battery tugs reckons 0.04 of the towed weight to start on a flat floor, twice a rolling"
                                                + " resistance of 0.02")),
                braked(),
                trailer.brakeForce() == null
                        ? null
                        : (Double) (trailer.brakeForce().si() * count),
                trailer.hitchLoad() != null
                        ? trailer.hitchLoad().si()
                        : resolution.assume(
                                "no-hitch-load",
                                "/trailer/hitchLoad",
                                new Measure(0, LOAD),
                                "as of a trolley on four wheels; a trailer on one axle puts about a tenth of its weight on the hitch",
                                Source.published("HSE information sheet AIS33: hitch load about 10 %")),
                trailer.hitchAngle() != null
                        ? trailer.hitchAngle().si()
                        : resolution.assume(
                                "straight-train",
                                "/trailer/hitchAngle",
                                new Measure(0, ANGLE),
                                "the train runs straight: in a bend the trailers push the rear aside as well",
                                Source.derived("lower bound")));
    }

    private boolean braked() {
        if (trailer.braked() != null) {
            return trailer.braked();
        }
        boolean force = trailer.brakeForce() != null;
        return resolution.assume(
                force ? "braked-by-its-force" : "unbraked-trailer",
                "/trailer/braked",
                force,
                force ? "a brake force was sent" : "no brakes on a trailer unless sent",
                Source.COMMON_PRACTICE);
    }

    private @Nullable Tug tug(double rolling, Trailers trailers) {
        boolean placed = PLACED.missing(setup).isEmpty();
        if (!placed && !MassSections.MASS_ONLY.missing(setup).isEmpty()) {
            return null;
        }
        MassSections.States states = placed ? MassSections.states(setup, resolution) : null;
        double massKg = states != null ? states.massKg() : MassSections.massAsDrivenKg(setup, resolution);
        double dragArea = setup.roadLoad() != null && setup.roadLoad().dragArea() != null
                ? setup.roadLoad().dragArea().si()
                : resolution.assume(
                        "drag-area",
                        "/roadLoad/dragArea",
                        new Measure(DRAG_AREA, BODY_AREA),
                        "open vehicle with roof and screen, 1.0 to 1.8 m2; nothing to speak of at walking pace",
                        Source.memory(
                                "frontal area 1.8 to 2.4 m2, drag coefficient 0.6 to 0.8; none published for this class"));
        return new Tug(
                massKg,
                MassSections.unladenMassKg(setup),
                rolling,
                dragArea,
                states == null || !footingMissing(trailers).isEmpty() ? null : footing(states, trailers),
                engine());
    }

    /** What lacks for axle loads, grip and braking. */
    private List<String> footingMissing(Trailers trailers) {
        List<String> missing = new ArrayList<>(PLACED.missing(setup));
        if (missing.isEmpty()) {
            missing.addAll(MassSections.heightMissing(setup));
        }
        if (trailer.hitchHeight() == null) {
            missing.add("/trailer/hitchHeight");
        }
        boolean matters = trailers.hitchLoadN() != 0 || trailers.hitchAngleRad() != 0;
        if (matters && trailer.hitchOverhang() == null) {
            missing.add("/trailer/hitchOverhang");
        }
        return missing;
    }

    private @Nullable Footing footing(MassSections.States states, Trailers trailers) {
        Chassis chassis = Objects.requireNonNull(setup.chassis());
        double heightM = Objects.requireNonNull(states.heightM(), "height");
        if (!(heightM > 0)) {
            resolution.refuse(Fault.contradiction(
                    "/laden/position/z", "The centre of gravity of the vehicle as driven must lie above the ground"));
            return null;
        }
        Chassis.Ratings ratings = chassis.ratings();
        return new Footing(
                new Stance(states.massKg(), need(chassis.wheelbase()), states.xM(), heightM),
                new Drawbar(
                        need(trailer.hitchHeight()),
                        trailer.hitchOverhang() == null
                                ? 0
                                : trailer.hitchOverhang().si(),
                        trailers.hitchLoadN()),
                driven(),
                chassis.braked(),
                GroundSections.friction(setup, resolution),
                ratings == null || ratings.rear() == null
                        ? null
                        : ratings.rear().si(),
                ratings == null || ratings.total() == null
                        ? null
                        : ratings.total().si());
    }

    private AxleSet driven() {
        AxleSet driven = setup.chassis() == null ? null : setup.chassis().driven();
        return driven != null
                ? driven
                : resolution.assume(
                        "rear-driven",
                        "/chassis/driven",
                        AxleSet.REAR,
                        "the rear axle drives most vehicles of this class",
                        Source.COMMON_PRACTICE);
    }

    private @Nullable Engine engine() {
        Drive drive = setup.drive();
        if (drive == null || drive.ratio() == null) {
            return null;
        }
        Double radius = drivenRadiusM();
        if (radius == null) {
            return null;
        }
        Drive.Motor motor = drive.motor();
        Double ratedTorque = ratedTorque(motor);
        Double maximum = motor == null ? null : si(motor.maximumTorque());
        Double at = motor == null ? null : si(motor.torqueCurrent());
        Double ratedCurrent = motor == null ? null : si(motor.ratedCurrent());
        Double reference = maximum != null ? maximum : ratedTorque;
        if (at == null) {
            reference = ratedTorque;
            at = ratedCurrent;
        }
        boolean shortTime =
                motor != null && motor.duty() != null && motor.duty().toString().equals("s2");
        return new Engine(
                drive.ratio().value(),
                radius,
                gearEfficiency(drive),
                ratedTorque,
                maximum,
                reference,
                at,
                ratedCurrent,
                motor != null && motor.type() != null && motor.type().toString().equals("series-dc"),
                shortTime ? si(Objects.requireNonNull(motor).dutyTime()) : null,
                motor != null && motor.duty() != null && motor.duty().toString().equals("s1"),
                drive.controller() == null ? null : si(drive.controller().motorCurrent()),
                motor == null ? null : si(motor.speed()),
                motor == null ? null : si(motor.resistance()));
    }

    private double gearEfficiency(Drive drive) {
        if (drive.gearEfficiency() != null) {
            return drive.gearEfficiency();
        }
        double whole = drive.efficiency() == null ? 0 : drive.efficiency();
        return resolution.assume(
                "gear-efficiency",
                "/drive/gearEfficiency",
                Measure.number(Math.max(GEAR_EFFICIENCY, whole)),
                "of the reduction, from shaft to wheel; never less than the whole drive",
                Source.published("NPTEL Electric Vehicles, week 4: 0.9 between motor and wheel"));
    }

    /** As sent, else what power and speed of the data plate make. */
    private @Nullable Double ratedTorque(Drive.@Nullable Motor motor) {
        if (motor == null || motor.ratedTorque() != null) {
            return motor == null ? null : si(motor.ratedTorque());
        }
        if (motor.power() == null || motor.speed() == null || Boolean.FALSE.equals(motor.loaded())) {
            return null;
        }
        return resolution.assume(
                "rated-torque",
                "/drive/motor/ratedTorque",
                new Measure(motor.power().si() / motor.speed().si(), TORQUE),
                "rated power over rated speed of the data plate",
                Source.derived("P = T·ω"));
    }

    private @Nullable Double drivenRadiusM() {
        Axle axle = driven() == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        Rise rise = Rises.resolve(setup, resolution);
        LoadedRadii radii = Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution);
        return radii == null ? null : (Double) radii.afterM();
    }

    private double rolling() {
        if (setup.roadLoad() != null && setup.roadLoad().rollingResistance() != null) {
            return setup.roadLoad().rollingResistance();
        }
        Surface sent = setup.ground() == null ? null : setup.ground().surface();
        Surface surface = sent != null
                ? sent
                : resolution.assume(
                        "surface",
                        "/ground/surface",
                        Surface.WORN_ASPHALT,
                        "an ordinary road unless sent",
                        Source.COMMON_PRACTICE);
        Datum typical = RollingResistance.of(surface).typical();
        return resolution.assume(
                "rolling-resistance",
                "/roadLoad/rollingResistance",
                Measure.number(typical.value()),
                "surface " + surface,
                typical.source());
    }

    private double speed() {
        Manoeuvre manoeuvre = setup.manoeuvre();
        return manoeuvre != null && manoeuvre.speed() != null
                ? manoeuvre.speed().si()
                : resolution.assume(
                        "walking-pace",
                        "/manoeuvre/speed",
                        new Measure(WALKING_PACE, SPEED),
                        "a brisk walk",
                        Source.COMMON_PRACTICE);
    }

    private double acceleration() {
        Manoeuvre manoeuvre = setup.manoeuvre();
        boolean forward = manoeuvre != null
                && manoeuvre.acceleration() != null
                && manoeuvre.acceleration().si() >= 0;
        return forward
                ? need(Objects.requireNonNull(manoeuvre).acceleration())
                : resolution.assume(
                        "gentle-start",
                        "/manoeuvre/acceleration",
                        new Measure(GENTLE_START, ACCELERATION),
                        "a gentle start: walking pace in about four seconds",
                        Source.COMMON_PRACTICE);
    }

    private void notAnswered(Towing.Input input) {
        Tug tug = input.tug();
        if (input.gradeRad() == null) {
            resolution.notAnswered("/grade", "/ground/grade");
        }
        if (tug == null) {
            resolution.notAnswered("/level/thrust", MassSections.MASS_ONLY.missing(setup));
            resolution.notAnswered("/standing", PLACED.missing(setup));
            return;
        }
        if (tug.emptyMassKg() == null) {
            resolution.notAnswered("/towedMassLimit", "/bare");
        }
        if (tug.engine() == null) {
            List<String> missing = new ArrayList<>();
            boolean ratio = setup.drive() != null && setup.drive().ratio() != null;
            if (!ratio) {
                missing.add("/drive/ratio");
            } else {
                missing.add("/tyres/" + (driven() == AxleSet.FRONT ? "front" : "rear") + "/loadedRadius");
            }
            resolution.notAnswered("/level/motor", missing);
        } else {
            if (tug.engine().ratedTorqueNm() == null && tug.engine().ratedCurrentA() == null) {
                resolution.notAnswered("/level/motor/heatRatio", "/drive/motor/ratedTorque");
            }
            if (tug.engine().referenceCurrentA() == null) {
                resolution.notAnswered("/level/motor/current", "/drive/motor/torqueCurrent");
            }
        }
        Footing footing = tug.footing();
        if (footing == null) {
            List<String> missing = footingMissing(input.trailers());
            resolution.notAnswered("/standing", missing);
            resolution.notAnswered("/braking", missing);
            return;
        }
        List<String> braking = new ArrayList<>();
        if (footing.braked() == null) {
            braking.add("/chassis/braked");
        }
        if (input.trailers().braked() && input.trailers().brakeForceN() == null) {
            braking.add("/trailer/brakeForce");
        }
        resolution.notAnswered("/braking", braking);
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
