package org.axlewright.api.braking;

import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.MASS;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.GroundSections;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Pointer;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Brakes;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Ground;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.braking.Braking;
import org.axlewright.domain.braking.Braking.Parking;
import org.axlewright.domain.braking.Braking.Regeneration;
import org.axlewright.domain.braking.Braking.State;
import org.axlewright.domain.braking.MeasuredStop;
import org.axlewright.domain.braking.WheelBrakes;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Torque;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections to the checked input of the room. */
final class BrakingSections {

    private static final String[] REGENERATION = {
        "/drive/controller/regenerationTorque", "/drive/controller/regenerationCurrent", "/drive/regenerationShare"
    };

    private final Setup setup;
    private final Resolution resolution;
    private final Rise rise;

    BrakingSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
        this.rise = Rises.resolve(setup, resolution);
        resolution.refuseIfFaulty();
    }

    Braking.Input resolve() {
        Brakes brakes = setup.brakes();
        Chassis chassis = Objects.requireNonNull(setup.chassis(), "chassis");
        AxleSet braked = Objects.requireNonNull(chassis.braked(), "braked");
        AxleSet driven = chassis.driven();
        Ground ground = setup.ground();
        boolean graded = ground != null && ground.grade() != null;
        Double speedMPS =
                setup.manoeuvre() == null ? null : si(setup.manoeuvre().speed());
        States states = states();
        WheelBrakes front = braked == AxleSet.REAR
                ? WheelBrakes.NONE
                : wheelBrakes(brakes == null ? null : brakes.front(), Axle.FRONT);
        WheelBrakes rear = braked == AxleSet.FRONT
                ? WheelBrakes.NONE
                : wheelBrakes(brakes == null ? null : brakes.rear(), Axle.REAR);
        MeasuredStop stop = measuredStop(brakes, braked, states.occupied().massKg());
        Parking parking = parking(brakes, braked);
        Double motorBrakeN = motorBrakeN(brakes, driven);
        Regeneration regeneration = regeneration(driven);
        resolution.refuseIfFaulty();
        notAnswered(states, braked, parking, speedMPS, graded, front, rear);
        return new Braking.Input(
                states.occupied(),
                states.empty(),
                states.bare(),
                braked,
                front,
                rear,
                stop,
                rotatingMassShare(),
                GroundSections.friction(setup, resolution),
                ground != null && ground.friction() != null,
                graded && ground != null ? si(ground.grade()) : null,
                graded
                        && ground != null
                        && ground.grade() != null
                        && ground.grade().unit() == GradeUnit.DEGREE,
                speedMPS,
                reactionS(brakes),
                parking,
                driven,
                motorBrakeN,
                regeneration);
    }

    /** The vehicle in its states, and what lacks for the position of its centre of gravity. */
    private record States(
            State occupied, @Nullable State empty, @Nullable State bare, List<String> missing) {}

    private States states() {
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        List<String> missing = new ArrayList<>(MassSections.POSITION_IN_PLAN.missing(setup));
        if (wheelbaseM == null) {
            missing.add(0, "/chassis/wheelbase");
        }
        if (!missing.isEmpty() || wheelbaseM == null) {
            State occupied = new State(MassSections.massAsDrivenKg(setup, resolution), null);
            return new States(occupied, null, null, missing);
        }
        missing.addAll(MassSections.heightMissing(setup));
        MassSections.States found = MassSections.states(setup, resolution);
        State occupied = state(found.occupied(), wheelbaseM);
        State empty = found.empty() == null ? null : state(found.empty(), wheelbaseM);
        PointMass weighed = MassSections.asWeighed(setup);
        State bare = weighed == null ? null : state(weighed, wheelbaseM);
        if (empty != null && empty.equals(occupied)) {
            empty = null;
        }
        if (bare != null && (empty == null || bare.equals(empty))) {
            bare = null;
        }
        return new States(occupied, empty, bare, missing);
    }

    private static State state(PointMass mass, double wheelbaseM) {
        Double heightM = mass.zM();
        return new State(
                mass.massKg(),
                heightM != null && heightM > 0 ? new Stance(mass.massKg(), wheelbaseM, mass.xM(), heightM) : null);
    }

    private WheelBrakes wheelBrakes(Brakes.@Nullable AxleBrakes sent, Axle axle) {
        LoadedRadii radii = Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution);
        Double formerFactor =
                radii == null || radii.afterM() == radii.beforeM() ? null : (Double) (radii.afterM() / radii.beforeM());
        if (sent == null) {
            return new WheelBrakes(null, formerFactor, null, null);
        }
        return new WheelBrakes(
                forceN(sent.torque(), sent.force(), axle, radii), formerFactor, si(sent.mass()), sent.kind());
    }

    /** At the ground with the tyre now; null when no strength was sent, or a fault when the radius of a torque is not known. */
    private @Nullable Double forceN(
            @Nullable Torque torque, @Nullable Force force, Axle axle, @Nullable LoadedRadii radii) {
        if (torque == null) {
            return si(force);
        }
        if (radii == null) {
            resolution.missing("/tyres/" + axle + "/size");
            return null;
        }
        return torque.si() / radii.afterM();
    }

    private @Nullable MeasuredStop measuredStop(@Nullable Brakes brakes, AxleSet braked, double drivenKg) {
        Brakes.MeasuredStop sent = brakes == null ? null : brakes.measuredStop();
        if (sent == null || sent.speed() == null || sent.distance() == null) {
            return null;
        }
        double massKg = sent.mass() != null
                ? sent.mass().si()
                : resolution.assume(
                        "measured-as-driven",
                        "/brakes/measuredStop/mass",
                        new Measure(drivenKg, MASS),
                        "the stop is taken to have been measured with the mass as driven",
                        Source.COMMON_PRACTICE);
        double gradeRad = sent.grade() != null
                ? sent.grade().si()
                : resolution.assume(
                        "measured-on-level",
                        "/brakes/measuredStop/grade",
                        new Measure(0, GRADE),
                        "the stop is taken to have been measured on the level",
                        Source.COMMON_PRACTICE);
        double tyreFactor = Boolean.TRUE.equals(sent.onTyreBefore()) ? tyreFactor(braked) : 1;
        MeasuredStop stop = new MeasuredStop(sent.speed().si(), sent.distance().si(), gradeRad, massKg, tyreFactor);
        if (!(stop.forceN() > 0)) {
            resolution.refuse(Fault.contradiction(
                    "/brakes/measuredStop",
                    "On this slope the vehicle slows down by more than was measured without any brakes: check speed, distance and"
                            + " the sign of the grade, uphill positive"));
            return null;
        }
        return stop;
    }

    /** Former over present loaded radius of the braked axles; the one that takes more where they differ. */
    private double tyreFactor(AxleSet braked) {
        double factor = Double.POSITIVE_INFINITY;
        for (Axle axle : Axle.values()) {
            boolean brakes = braked == AxleSet.ALL || braked == (axle == Axle.FRONT ? AxleSet.FRONT : AxleSet.REAR);
            LoadedRadii radii = brakes
                    ? Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution)
                    : null;
            if (radii != null) {
                factor = Math.min(factor, radii.beforeM() / radii.afterM());
            }
        }
        return factor <= Double.MAX_VALUE ? factor : 1;
    }

    private Parking parking(@Nullable Brakes brakes, AxleSet braked) {
        Brakes.ParkingBrake sent = brakes == null ? null : brakes.parking();
        AxleSet held = sent != null && sent.holds() != null
                ? sent.holds()
                : resolution.assume(
                        "parked-on-one-axle",
                        "/brakes/parking/holds",
                        braked == AxleSet.FRONT ? AxleSet.FRONT : AxleSet.REAR,
                        "a parking brake usually holds the rear wheels, or the only ones that brake",
                        Source.COMMON_PRACTICE);
        if (sent == null) {
            return new Parking(held, null);
        }
        Axle axle = held == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        LoadedRadii radii = Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution);
        return new Parking(held, forceN(sent.torque(), sent.force(), axle, radii));
    }

    /** Torque at the motor shaft as a force at the ground; null when reduction or tyre is not known. */
    private @Nullable Double throughMotorN(Torque torque, AxleSet driven) {
        Drive drive = setup.drive();
        LoadedRadii radii = drivenRadii(driven);
        Double ratio = drive == null || drive.ratio() == null
                ? null
                : (Double) drive.ratio().value();
        return ratio == null || radii == null ? null : (Double) (torque.si() * ratio / radii.afterM());
    }

    private @Nullable LoadedRadii drivenRadii(AxleSet driven) {
        Axle axle = driven == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        return Rises.radii(axle == Axle.FRONT ? rise.front() : rise.rear(), setup, axle, resolution);
    }

    private List<String> throughMotorMissing(@Nullable AxleSet driven) {
        List<String> missing = new ArrayList<>();
        if (driven == null) {
            missing.add("/chassis/driven");
        }
        if (!Pointer.of("/drive/ratio").isIn(setup)) {
            missing.add("/drive/ratio");
        }
        if (driven != null && drivenRadii(driven) == null) {
            missing.add("/tyres/" + (driven == AxleSet.FRONT ? Axle.FRONT : Axle.REAR) + "/size");
        }
        return missing;
    }

    private @Nullable Double motorBrakeN(@Nullable Brakes brakes, @Nullable AxleSet driven) {
        Torque torque = brakes == null || brakes.motorBrake() == null
                ? null
                : brakes.motorBrake().torque();
        if (torque == null) {
            resolution.notAnswered("/motorBrake", "/brakes/motorBrake/torque");
            return null;
        }
        resolution.notAnswered("/motorBrake", throughMotorMissing(driven));
        return driven == null ? null : throughMotorN(torque, driven);
    }

    private @Nullable Regeneration regeneration(@Nullable AxleSet driven) {
        Drive drive = setup.drive();
        Drive.Controller controller = drive == null ? null : drive.controller();
        Torque torque = controller == null ? null : controller.regenerationTorque();
        Double powerW = regenerationPowerW(drive, controller);
        if (torque == null && powerW == null) {
            resolution.notAnswered("/regeneration", REGENERATION);
            return null;
        }
        List<String> missing =
                torque == null ? driven == null ? List.of("/chassis/driven") : List.of() : throughMotorMissing(driven);
        resolution.notAnswered("/regeneration", missing);
        if (!missing.isEmpty() || driven == null) {
            return null;
        }
        return new Regeneration(torque == null ? null : throughMotorN(torque, driven), powerW);
    }

    /** Power at the wheel that the largest charging current takes up; null when nothing bounds it or it can't be told. */
    private @Nullable Double regenerationPowerW(@Nullable Drive drive, Drive.@Nullable Controller controller) {
        Double share = drive == null ? null : drive.regenerationShare();
        Pack pack = setup.pack();
        Integer cells = pack == null ? null : PackSections.cellsInSeries(pack);
        if (share == null || share == 0 || pack == null || cells == null || pack.chemistry() == null) {
            return null;
        }
        Double controllerA = controller == null ? null : si(controller.regenerationCurrent());
        Double packA = pack.limits() == null ? null : si(pack.limits().charge());
        if (controllerA == null && packA == null) {
            return null;
        }
        double currentA = Math.min(
                controllerA == null ? Double.MAX_VALUE : controllerA, packA == null ? Double.MAX_VALUE : packA);
        return currentA * cells * CellData.of(pack.chemistry()).nominalV().value() / share;
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

    private double reactionS(@Nullable Brakes brakes) {
        return brakes != null && brakes.reactionTime() != null
                ? brakes.reactionTime().si()
                : resolution.assume(
                        "reaction-time",
                        "/brakes/reactionTime",
                        new Measure(1, EVENT_TIME),
                        "a driver who is ready; road design reckons with 2.5 s (AASHTO)",
                        Source.COMMON_PRACTICE);
    }

    private void notAnswered(
            States states,
            AxleSet braked,
            Parking parking,
            @Nullable Double speedMPS,
            boolean graded,
            WheelBrakes front,
            WheelBrakes rear) {
        boolean placed = states.occupied().stance() != null;
        List<String> position = states.missing().isEmpty() ? List.of("/bare/height") : states.missing();
        boolean strong = (front.forceN() != null && rear.forceN() != null) || braked == AxleSet.ALL;
        if (!placed && !strong && setup.brakes() == null) {
            List<String> either = new ArrayList<>(position);
            either.add("/brakes/measuredStop");
            resolution.notAnswered("/level", either);
        } else if (!placed) {
            resolution.notAnswered("/level/frontAxle", position);
            resolution.notAnswered("/level/rearAxle", position);
        }
        if (speedMPS == null) {
            resolution.notAnswered("/level/totalDistance", "/manoeuvre/speed");
            resolution.notAnswered("/reactionDistance", "/manoeuvre/speed");
        }
        if (!graded) {
            resolution.notAnswered("/onGrade", "/ground/grade");
        }
        if (!placed && parking.held() != AxleSet.ALL) {
            resolution.notAnswered("/parking", position);
        }
        if (braked != AxleSet.REAR && front.heatMassKg() == null) {
            resolution.notAnswered("/level/frontAxle/temperatureRise", "/brakes/front/mass");
        }
        if (braked != AxleSet.FRONT && rear.heatMassKg() == null) {
            resolution.notAnswered("/level/rearAxle/temperatureRise", "/brakes/rear/mass");
        }
        Brakes brakes = setup.brakes();
        if (brakes == null || brakes.measuredStop() == null) {
            resolution.notAnswered("/calibration", "/brakes/measuredStop");
        }
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null
                ? null
                : (Double) Objects.requireNonNull(quantity).si();
    }
}
