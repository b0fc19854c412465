package org.axlewright.api.stability;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.ROLL_GRADIENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.GroundSections;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.MassSections.Loading;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.SpringSections;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Ground;
import org.axlewright.api.section.Manoeuvre;
import org.axlewright.api.section.Occupant;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Suspension;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Settling;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.stability.Aboard;
import org.axlewright.domain.stability.Aboard.Person;
import org.axlewright.domain.stability.Facing;
import org.axlewright.domain.stability.Footprint;
import org.axlewright.domain.stability.Footprint.Roll;
import org.axlewright.domain.stability.Springs;
import org.axlewright.domain.stability.Stability;
import org.axlewright.domain.stability.Stability.Ratings;
import org.axlewright.domain.stability.Stability.Told;
import org.axlewright.domain.stability.Whole;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From sections to the checked input of the room. */
final class StabilitySections {

    /** No vehicle carries its mass within this of the ground; a lower figure is a mistake, m. */
    private static final double LEAST_HEIGHT_M = 0.01;

    /** A track that spacers and wheels leave; less is a mistake, m. */
    private static final double LEAST_TRACK_M = 0.1;

    private static final Source ROLL_STIFFNESS = Source.memory("roll stiffness of two springs k·t²/2");

    private StabilitySections() {}

    static Stability.Input resolve(Setup setup, Resolution resolution) {
        Chassis chassis = Objects.requireNonNull(setup.chassis(), "chassis");
        double wheelbaseM =
                Objects.requireNonNull(chassis.wheelbase(), "wheelbase").si();
        MassSections.States states = MassSections.states(setup, resolution);
        List<String> unknownLoading = MassSections.loadingMissing(setup);
        Loading loading = unknownLoading.isEmpty() ? MassSections.loading(setup, resolution) : null;
        Footprint footprint = footprint(chassis, wheelbaseM, resolution);
        checkHeights(setup, states, loading, resolution);
        Settling settling = SpringSections.settling(setup, resolution);
        resolution.refuseIfFaulty();

        List<Aboard> movable = loading == null ? List.of() : movable(setup, loading);
        Whole fixed = loading == null ? null : whole(loading.fixed(), 0);
        Whole occupied = occupied(states.occupied(), fixed, movable, footprint != null, resolution);
        PointMass emptyMass = states.empty();
        Whole empty = emptyMass == null || emptyMass.zM() == null || fixed == null
                ? null
                : whole(emptyMass, sideways(fixed, load(movable)));
        Ground ground = setup.ground();
        Manoeuvre manoeuvre = setup.manoeuvre();
        Stability.Input input = new Stability.Input(
                wheelbaseM,
                footprint,
                occupied,
                empty,
                fixed,
                movable,
                setup.laden() != null,
                heightMeasured(setup),
                settling,
                GroundSections.friction(setup, resolution),
                ground == null ? null : si(ground.grade()),
                ground == null ? null : si(ground.sideSlope()),
                si(chassis.turningRadius()),
                manoeuvre == null ? null : si(manoeuvre.radius()),
                manoeuvre == null ? null : si(manoeuvre.speed()),
                setup.drive() == null ? null : si(setup.drive().speedLimit()),
                manoeuvre == null ? null : si(manoeuvre.acceleration()),
                chassis.driven(),
                chassis.braked(),
                roll(setup, footprint, occupied, resolution),
                ratings(chassis),
                told(setup, chassis));
        notAnswered(input, setup, unknownLoading, resolution);
        return input;
    }

    private static @Nullable Footprint footprint(Chassis chassis, double wheelbaseM, Resolution resolution) {
        WheelPlan plan = plan(chassis);
        if (!missingTracks(chassis).isEmpty()) {
            return null;
        }
        Chassis.WheelChanges changes = chassis.wheelChanges();
        double front = plan == WheelPlan.ONE_IN_FRONT
                ? 0
                : track("front", Objects.requireNonNull(chassis.frontTrack()).si(), change(changes, true), resolution);
        double rear = plan == WheelPlan.ONE_BEHIND
                ? 0
                : track("rear", Objects.requireNonNull(chassis.rearTrack()).si(), change(changes, false), resolution);
        resolution.refuseIfFaulty();
        return new Footprint(
                plan, wheelbaseM, front, rear, toRight(change(changes, true)), toRight(change(changes, false)));
    }

    private static WheelPlan plan(Chassis chassis) {
        return chassis.wheelPlan() == null ? WheelPlan.FOUR_WHEELS : chassis.wheelPlan();
    }

    private static List<String> missingTracks(Chassis chassis) {
        List<String> missing = new ArrayList<>();
        if (chassis.frontTrack() == null && plan(chassis) != WheelPlan.ONE_IN_FRONT) {
            missing.add("/chassis/frontTrack");
        }
        if (chassis.rearTrack() == null && plan(chassis) != WheelPlan.ONE_BEHIND) {
            missing.add("/chassis/rearTrack");
        }
        return missing;
    }

    private static Chassis.@Nullable WheelChange change(Chassis.@Nullable WheelChanges changes, boolean front) {
        return changes == null ? null : front ? changes.front() : changes.rear();
    }

    private static double toRight(Chassis.@Nullable WheelChange change) {
        Double shift = change == null ? null : si(change.axleToRight());
        return shift == null ? 0 : shift;
    }

    /** What spacers and wheels add to the track, m. */
    private static double widening(Chassis.@Nullable WheelChange change) {
        if (change == null) {
            return 0;
        }
        Double perWheel = si(change.spacerPerWheel());
        Double perAxle = si(change.spacerPerAxle());
        Double outward = si(change.wheelOutward());
        return (perWheel == null ? 0 : 2 * perWheel)
                + (perAxle == null ? 0 : perAxle)
                + (outward == null ? 0 : 2 * outward);
    }

    private static double track(
            String axle, double measuredM, Chassis.@Nullable WheelChange change, Resolution resolution) {
        double trackM = measuredM + widening(change);
        if (!(trackM >= LEAST_TRACK_M)) {
            resolution.refuse(Fault.contradiction(
                    "/chassis/wheelChanges/" + axle + "/wheelOutward",
                    "The wheels would stand so far in that hardly any track is left; outward counts positive"));
            return measuredM;
        }
        return trackM;
    }

    private static void checkHeights(
            Setup setup, MassSections.States states, @Nullable Loading loading, Resolution resolution) {
        tooLow(states.occupied().zM(), heightMeasured(setup) ? "/laden/position/z" : "/bare", resolution);
        if (states.empty() != null) {
            tooLow(states.empty().zM(), "/bare", resolution);
        }
        if (loading != null) {
            tooLow(loading.fixed().zM(), "/bare", resolution);
            for (MassSections.Aboard part : loading.movable()) {
                Double zM = part.mass().zM();
                if (zM != null && !(zM >= 0)) {
                    resolution.refuse(Fault.contradiction(
                            part.pointer() + "/position/z", "On the lowered vehicle this lies below the ground"));
                }
            }
        }
    }

    private static boolean heightMeasured(Setup setup) {
        return setup.laden() != null
                && setup.laden().position() != null
                && setup.laden().position().z() != null;
    }

    private static void tooLow(@Nullable Double zM, String pointer, Resolution resolution) {
        if (zM != null && !(zM >= LEAST_HEIGHT_M)) {
            resolution.refuse(Fault.contradiction(
                    pointer,
                    "With these heights the centre of gravity of the vehicle lies on the ground or below it; check heights, lift and what"
                            + " was removed"));
        }
    }

    private static Whole whole(PointMass mass, double otherwiseYM) {
        return new Whole(
                mass.massKg(),
                mass.xM(),
                mass.yM() == null ? otherwiseYM : mass.yM(),
                Objects.requireNonNull(mass.zM(), "height"));
    }

    /** Without a measured side the vehicle as driven lies where its parts put it; measured alone it is taken to be even. */
    private static Whole occupied(
            PointMass driven, @Nullable Whole fixed, List<Aboard> movable, boolean sidesMatter, Resolution resolution) {
        if (driven.yM() == null && fixed == null && sidesMatter) {
            resolution.assume(
                    "laden-on-centre-plane",
                    "/laden/position/y",
                    new Measure(0, LENGTH),
                    "a measured vehicle of no known side is taken to weigh as much left as right",
                    Source.COMMON_PRACTICE);
        }
        return whole(driven, fixed == null ? 0 : sideways(fixed, movable));
    }

    private static double sideways(Whole fixed, List<Aboard> aboard) {
        double mass = fixed.massKg();
        double moment = mass * fixed.yM();
        for (Aboard one : aboard) {
            mass += one.massKg();
            moment += one.massKg() * one.yM();
        }
        return moment / mass;
    }

    private static List<Aboard> load(List<Aboard> movable) {
        return movable.stream().filter(one -> one.person() == null).toList();
    }

    private static List<Aboard> movable(Setup setup, Loading loading) {
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        int driver = 0;
        for (int i = 0; i < occupants.size(); i++) {
            if (Boolean.TRUE.equals(occupants.get(i).driver())) {
                driver = i;
            }
        }
        List<Aboard> movable = new ArrayList<>();
        int person = 0;
        for (MassSections.Aboard part : loading.movable()) {
            PointMass mass = part.mass();
            Person sits = null;
            if (part.occupant()) {
                Occupant occupant = occupants.get(person);
                sits = new Person(
                        person == driver,
                        occupant.facing() == null ? Facing.FORWARD : occupant.facing(),
                        occupant.belt(),
                        si(occupant.restraintHeight()));
                person++;
            }
            movable.add(new Aboard(
                    part.pointer(),
                    part.name(),
                    part.reference(),
                    sits,
                    mass.massKg(),
                    mass.xM(),
                    Objects.requireNonNull(mass.yM()),
                    Objects.requireNonNull(mass.zM())));
        }
        return movable;
    }

    private static @Nullable Roll roll(
            Setup setup, @Nullable Footprint footprint, Whole occupied, Resolution resolution) {
        Suspension suspension = setup.suspension();
        Suspension.Roll sent = suspension == null ? null : suspension.roll();
        Double axisM = sent == null ? null : si(sent.axisHeight());
        if (suspension == null || sent == null || axisM == null || footprint == null) {
            return null;
        }
        if (sent.gradient() != null) {
            return new Roll(sent.gradient().si(), axisM);
        }
        double stiffness = stiffness(suspension.front(), footprint.frontTrackM())
                + stiffness(suspension.rear(), footprint.rearTrackM());
        double armM = occupied.zM() - axisM;
        if (!(stiffness > 0) || !(armM > 0)) {
            return null;
        }
        double sprungKg = occupied.massKg() - unsprungKg(suspension.front()) - unsprungKg(suspension.rear());
        double gradient = sprungKg > 0
                ? Springs.rollGradient(sprungKg, armM, stiffness, STANDARD_GRAVITY)
                : Double.POSITIVE_INFINITY;
        if (Double.isInfinite(gradient)) {
            return null;
        }
        resolution.assume(
                "roll-gradient-from-springs",
                "/suspension/roll/gradient",
                new Measure(gradient, ROLL_GRADIENT),
                "springs taken to stand at the wheels, without anti-roll bars; leaf springs stand closer together, and the body rolls more",
                ROLL_STIFFNESS);
        return new Roll(gradient, axisM);
    }

    /** NaN when the springs of the axle are not known. */
    private static double stiffness(Suspension.@Nullable AxleSuspension axle, double trackM) {
        Double rate = axle == null ? null : si(axle.springRate());
        if (axle == null || rate == null) {
            return Double.NaN;
        }
        double ratio = axle.motionRatio() == null ? 1 : axle.motionRatio();
        double springsPerWheel = (axle.springs() == null ? 2 : axle.springs()) / 2.0;
        return Springs.rollStiffness(springsPerWheel * rate * ratio * ratio, trackM);
    }

    private static double unsprungKg(Suspension.@Nullable AxleSuspension axle) {
        Double mass = axle == null ? null : si(axle.unsprungMass());
        return mass == null ? 0 : mass;
    }

    private static Ratings ratings(Chassis chassis) {
        Chassis.Ratings sent = chassis.ratings();
        return sent == null
                ? new Ratings(null, null, null)
                : new Ratings(si(sent.front()), si(sent.rear()), si(sent.total()));
    }

    private static Told told(Setup setup, Chassis chassis) {
        Ground ground = setup.ground();
        Chassis.WheelChanges changes = chassis.wheelChanges();
        return new Told(
                ground == null || ground.friction() == null ? null : ground.surface(),
                ground != null && ground.grade() != null && ground.grade().unit() == GradeUnit.DEGREE,
                ground != null
                        && ground.sideSlope() != null
                        && ground.sideSlope().unit() == GradeUnit.DEGREE,
                Math.max(widening(change(changes, true)), widening(change(changes, false))),
                setup.lift() != null);
    }

    private static void notAnswered(
            Stability.Input input, Setup setup, List<String> unknownLoading, Resolution resolution) {
        List<String> tracks = missingTracks(Objects.requireNonNull(setup.chassis()));
        if (!tracks.isEmpty()) {
            for (String result : List.of("/worstFilling", "/staticStabilityFactor", "/left", "/right", "/sideSlope")) {
                resolution.notAnswered(result, tracks);
            }
        }
        if (input.fixed() == null) {
            for (String result : List.of("/empty", "/parkedFilling", "/frontLiftFilling", "/driverAlone")) {
                resolution.notAnswered(result, unknownLoading);
            }
        }
        lacking(input.turningRadiusM(), "/fullLock", "/chassis/turningRadius", resolution);
        lacking(input.radiusM(), "/turn", "/manoeuvre/radius", resolution);
        lacking(input.speedMPS(), "/turn/lateralAcceleration", "/manoeuvre/speed", resolution);
        if (tracks.isEmpty()) {
            lacking(input.sideSlopeRad(), "/sideSlope", "/ground/sideSlope", resolution);
        }
        lacking(input.gradeRad(), "/frontLift/onGrade", "/ground/grade", resolution);
        lacking(input.driven(), "/traction", "/chassis/driven", resolution);
        lacking(input.braked(), "/braking", "/chassis/braked", resolution);
        if (input.roll() == null && tracks.isEmpty()) {
            Suspension.Roll roll =
                    setup.suspension() == null ? null : setup.suspension().roll();
            List<String> missing = new ArrayList<>();
            if (roll == null || roll.gradient() == null) {
                missing.add("/suspension/roll/gradient");
            }
            if (roll == null || roll.axisHeight() == null) {
                missing.add("/suspension/roll/axisHeight");
            }
            resolution.notAnswered("/suspendedFactor", missing);
        }
    }

    private static void lacking(@Nullable Object input, String result, String pointer, Resolution resolution) {
        if (input == null) {
            resolution.notAnswered(result, pointer);
        }
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
