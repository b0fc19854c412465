package org.axlewright.api.descent;

import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.GroundSections;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Pointer;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.section.Brakes;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Hill;
import org.axlewright.api.section.Leg;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.descent.Descent;
import org.axlewright.domain.descent.Descent.FrictionBrakes;
import org.axlewright.domain.descent.Descent.Pack;
import org.axlewright.domain.descent.Descent.Regeneration;
import org.axlewright.domain.descent.Descent.Resistor;
import org.axlewright.domain.descent.Descent.State;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.roadload.RollingResistance;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections to the checked input of the room. */
final class DescentSections {

    private static final Pointer HILL = Pointer.of("/hill");

    /** Least slope of a hill, as that of {@code hill.grade}, rad. */
    private static final double LEAST_FALL = Math.toRadians(0.05);

    private final Setup setup;
    private final Resolution resolution;
    private final Rise rise;

    DescentSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
        this.rise = Rises.resolve(setup, resolution);
        resolution.refuseIfFaulty();
    }

    Descent.Input resolve() {
        List<State> states = states();
        AxleSet driven = setup.chassis() == null ? null : setup.chassis().driven();
        Drive drive = setup.drive();
        Drive.Controller controller = drive == null ? null : drive.controller();
        boolean hill = HILL.isIn(setup);
        Grade sent = hill ? fall(Objects.requireNonNull(setup.hill())) : steepestLeg();
        boolean inDegrees = sent != null && sent.unit() == GradeUnit.DEGREE;
        Descent.Input input = new Descent.Input(
                states.get(0),
                states.size() > 1 ? states.get(1) : null,
                hill ? List.of(hill(Objects.requireNonNull(setup.hill()))) : legs(),
                dragAreaM2(),
                rotatingMassShare(),
                GroundSections.friction(setup, resolution),
                driven,
                regeneration(drive, controller, driven),
                pack(),
                controller == null ? null : si(controller.maximumVoltage()),
                resistor(drive),
                brakes(states.get(0)),
                sensorFactor(drive),
                inDegrees);
        notAnswered(input);
        return input;
    }

    /** As driven, and empty where that is known and differs. */
    private List<State> states() {
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        List<String> missing = new ArrayList<>(MassSections.POSITION_IN_PLAN.missing(setup));
        if (wheelbaseM == null) {
            missing.add(0, "/chassis/wheelbase");
        }
        if (!missing.isEmpty() || wheelbaseM == null) {
            resolution.notAnswered("/adhesion/byMotor", missing);
            return List.of(new State(MassSections.massAsDrivenKg(setup, resolution), null));
        }
        resolution.notAnswered("/adhesion/byMotor", MassSections.heightMissing(setup));
        MassSections.States found = MassSections.states(setup, resolution);
        State occupied = state(found.occupied(), wheelbaseM);
        State empty = found.empty() == null ? null : state(found.empty(), wheelbaseM);
        return empty == null || empty.equals(occupied) ? List.of(occupied) : List.of(occupied, empty);
    }

    private static State state(PointMass mass, double wheelbaseM) {
        Double heightM = mass.zM();
        return new State(
                mass.massKg(),
                heightM != null && heightM > 0 ? new Stance(mass.massKg(), wheelbaseM, mass.xM(), heightM) : null);
    }

    private Descent.Leg hill(Hill hill) {
        Grade sent = fall(hill);
        double fallRad = sent == null ? Math.asin(need(hill.drop()) / need(hill.length())) : Math.abs(sent.si());
        double lengthM = hill.length() != null ? hill.length().si() : need(hill.drop()) / Math.sin(fallRad);
        if (!(fallRad >= LEAST_FALL)) {
            resolution.missing("/hill/grade");
            resolution.refuseIfFaulty();
        }
        if (sent != null && hill.grade() == null) {
            resolution.assume(
                    "hill-as-ground",
                    "/hill/grade",
                    new Measure(fallRad, GRADE),
                    "the slope of the ground, gone down",
                    Source.COMMON_PRACTICE);
        }
        double speedMPS = hill.speed() != null
                ? hill.speed().si()
                : resolution.assume(
                        "speed-as-planned",
                        "/hill/speed",
                        new Measure(
                                need(Objects.requireNonNull(setup.manoeuvre()).speed()), SPEED),
                        "the planned speed is held",
                        Source.COMMON_PRACTICE);
        return new Descent.Leg(lengthM, fallRad, speedMPS, rolling(hill.surface(), "/hill/surface"), "/hill");
    }

    /** The grade of the hill, else that of the ground; null where drop and length tell it. */
    private @Nullable Grade fall(Hill hill) {
        if (hill.grade() != null || (hill.drop() != null && hill.length() != null)) {
            return hill.grade();
        }
        return Objects.requireNonNull(setup.ground()).grade();
    }

    private List<Descent.Leg> legs() {
        List<Descent.Leg> legs = new ArrayList<>();
        List<Leg> sent = setup.route() == null ? List.of() : setup.route();
        for (int i = 0; i < sent.size(); i++) {
            Leg leg = sent.get(i);
            if (leg.grade() != null && leg.grade().si() < 0) {
                String pointer = "/route/" + i;
                legs.add(new Descent.Leg(
                        need(leg.distance()),
                        -leg.grade().si(),
                        need(leg.speed()),
                        rolling(leg.surface(), pointer + "/surface"),
                        pointer));
            }
        }
        return legs;
    }

    private @Nullable Grade steepestLeg() {
        Grade steepest = null;
        for (Leg leg : setup.route() == null ? List.<Leg>of() : setup.route()) {
            Grade grade = leg.grade();
            if (grade != null && grade.si() < (steepest == null ? 0 : steepest.si())) {
                steepest = grade;
            }
        }
        return steepest;
    }

    private double rolling(@Nullable Surface sent, String pointer) {
        if (setup.roadLoad() != null && setup.roadLoad().rollingResistance() != null) {
            return setup.roadLoad().rollingResistance();
        }
        Surface surface = sent != null
                ? sent
                : resolution.assume(
                        "surface",
                        pointer,
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

    private double dragAreaM2() {
        return setup.roadLoad() != null && setup.roadLoad().dragArea() != null
                ? setup.roadLoad().dragArea().si()
                : resolution.assume(
                        "drag-area",
                        "/roadLoad/dragArea",
                        new Measure(1.4, BODY_AREA),
                        "open vehicle with roof and screen, 1.0 to 1.8 m2; matters little below 25 km/h",
                        Source.memory(
                                "frontal area 1.8 to 2.4 m2, drag coefficient 0.6 to 0.8; none published for this class"));
    }

    private double rotatingMassShare() {
        return setup.roadLoad() != null && setup.roadLoad().rotatingMassShare() != null
                ? setup.roadLoad().rotatingMassShare()
                : resolution.assume(
                        "rotating-mass",
                        "/roadLoad/rotatingMassShare",
                        Measure.number(0.05),
                        "what wheels, gears and rotor add when the speed changes",
                        Source.published("NPTEL Electric Vehicles, week 4: 5 %"));
    }

    private Regeneration regeneration(
            @Nullable Drive drive, Drive.@Nullable Controller controller, @Nullable AxleSet driven) {
        double share = drive != null && drive.regenerationShare() != null
                ? drive.regenerationShare()
                : resolution.assume(
                        "no-regeneration",
                        "/drive/regenerationShare",
                        Measure.number(0),
                        "nothing comes back unless the drive is known to regenerate",
                        Source.COMMON_PRACTICE);
        Double torqueNm = controller == null ? null : si(controller.regenerationTorque());
        Double ratio = drive == null || drive.ratio() == null
                ? null
                : (Double) drive.ratio().value();
        Axle axle = driven == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        LoadedRadii radii = torqueNm == null ? null : radii(axle);
        Double forceN = torqueNm == null || ratio == null || radii == null
                ? null
                : (Double) (torqueNm * ratio / radii.afterM());
        return new Regeneration(share, forceN, controller == null ? null : si(controller.regenerationCurrent()));
    }

    private @Nullable LoadedRadii radii(Axle axle) {
        return Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution);
    }

    /** Null without chemistry or cells: then nothing can be said of voltage and current. */
    private @Nullable Pack pack() {
        org.axlewright.api.section.Pack sent = setup.pack();
        Chemistry chemistry = sent == null ? null : sent.chemistry();
        Integer cells = sent == null ? null : PackSections.cellsInSeries(sent);
        if (sent == null || chemistry == null || cells == null) {
            return null;
        }
        Double capacityC = sent.capacity() == null
                ? null
                : (Double) (sent.capacity().si() * PackSections.strings(sent, resolution));
        double celsius = sent.temperature() != null
                ? sent.temperature().si()
                : resolution.assume(
                        "rated-temperature",
                        "/pack/temperature",
                        new Measure(TemperatureFactor.RATED_C, TEMPERATURE),
                        "a pack that is not cold",
                        Source.COMMON_PRACTICE);
        CellData cell = CellData.of(chemistry);
        return new Pack(
                chemistry,
                cells,
                cells * cell.nominalV().value(),
                cells * cell.fullV().value(),
                capacityC,
                sent.stateOfCharge(),
                celsius,
                sent.limits() == null ? null : si(sent.limits().charge()));
    }

    private static @Nullable Resistor resistor(@Nullable Drive drive) {
        Drive.BrakingResistor sent = drive == null ? null : drive.brakingResistor();
        boolean there = sent != null
                && (sent.resistance() != null || sent.continuousPower() != null || sent.heatSinkMass() != null);
        return sent != null && there
                ? new Resistor(si(sent.resistance()), si(sent.continuousPower()), si(sent.heatSinkMass()))
                : null;
    }

    private FrictionBrakes brakes(State occupied) {
        AxleSet braked = setup.chassis() == null ? null : setup.chassis().braked();
        Brakes sent = setup.brakes();
        Brakes.AxleBrakes front = sent == null ? null : sent.front();
        Brakes.AxleBrakes rear = sent == null ? null : sent.rear();
        return new FrictionBrakes(
                braked,
                braked == null ? null : frontShare(braked, front, rear, occupied),
                front == null ? null : si(front.mass()),
                rear == null ? null : si(rear.mass()));
    }

    /** As the strengths of the brakes, else as the axle loads on the level. */
    private @Nullable Double frontShare(
            AxleSet braked, Brakes.@Nullable AxleBrakes front, Brakes.@Nullable AxleBrakes rear, State occupied) {
        if (braked != AxleSet.ALL) {
            return braked == AxleSet.FRONT ? 1.0 : 0.0;
        }
        Double frontN = forceN(front, Axle.FRONT);
        Double rearN = forceN(rear, Axle.REAR);
        if (frontN != null && rearN != null) {
            return frontN / (frontN + rearN);
        }
        Stance stance = occupied.stance();
        return stance == null ? null : (Double) Math.max(0, Math.min(1, 1 - stance.xM() / stance.wheelbaseM()));
    }

    private @Nullable Double forceN(Brakes.@Nullable AxleBrakes brakes, Axle axle) {
        if (brakes == null || brakes.torque() == null) {
            return brakes == null ? null : si(brakes.force());
        }
        LoadedRadii radii = radii(axle);
        return radii == null ? null : (Double) (brakes.torque().si() / radii.afterM());
    }

    /** True speed over the one the controller reckons with: by what was shown, else by the pulses. */
    private static double sensorFactor(@Nullable Drive drive) {
        Drive.SpeedSensor sensor = drive == null ? null : drive.speedSensor();
        if (sensor == null) {
            return 1;
        }
        if (sensor.shown() != null
                && sensor.trueSpeed() != null
                && sensor.shown().si() > 0) {
            return sensor.trueSpeed().si() / sensor.shown().si();
        }
        return sensor.pulsesExpected() != null && sensor.pulsesGiven() != null
                ? sensor.pulsesExpected() / sensor.pulsesGiven()
                : 1;
    }

    private void notAnswered(Descent.Input input) {
        Pack pack = input.pack();
        if (pack == null) {
            resolution.notAnswered("/pack", "/pack/chemistry", "/pack/cellsInSeries");
        } else {
            List<String> missing = new ArrayList<>();
            if (pack.capacityC() == null) {
                missing.add("/pack/capacity");
            }
            if (pack.stateOfCharge() == null) {
                missing.add("/pack/stateOfCharge");
            }
            resolution.notAnswered("/pack/headroom", missing);
        }
        if (input.driven() == null) {
            resolution.notAnswered("/adhesion/byMotor", "/chassis/driven");
        }
        AxleSet braked = input.brakes().braked();
        if (braked == null) {
            resolution.notAnswered("/adhesion/byBrakes", "/chassis/braked");
        }
        if (braked != AxleSet.REAR && input.brakes().frontKg() == null) {
            resolution.notAnswered("/brakesAlone/frontTemperatureRise", "/brakes/front/mass");
        }
        if (braked != AxleSet.FRONT && input.brakes().rearKg() == null) {
            resolution.notAnswered("/brakesAlone/rearTemperatureRise", "/brakes/rear/mass");
        }
        if (!(input.regeneration().share() > 0)) {
            resolution.notAnswered("/brakingResistor", "/drive/regenerationShare");
        } else if (input.resistor() == null || input.resistor().heatSinkKg() == null) {
            resolution.notAnswered("/brakingResistor/temperatureRise", "/drive/brakingResistor/heatSinkMass");
        }
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }
}
