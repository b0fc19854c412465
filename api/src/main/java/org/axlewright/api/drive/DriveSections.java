package org.axlewright.api.drive;

import static org.axlewright.api.drive.DrivenWheel.si;
import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.POWER;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.axlewright.api.calculation.GroundSections;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Leg;
import org.axlewright.api.section.Occupant;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.RoadLoad;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.drive.DrivePerformance;
import org.axlewright.domain.drive.DrivePerformance.Duty;
import org.axlewright.domain.drive.DrivePerformance.Grip;
import org.axlewright.domain.drive.DrivePerformance.PackLimits;
import org.axlewright.domain.drive.DrivePerformance.Stretch;
import org.axlewright.domain.drive.Gearing;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.drive.MotorModel;
import org.axlewright.domain.drive.MotorModel.ConstantField;
import org.axlewright.domain.drive.MotorModel.Curve;
import org.axlewright.domain.drive.MotorModel.Plate;
import org.axlewright.domain.drive.MotorModel.SeriesDc;
import org.axlewright.domain.drive.Reduction;
import org.axlewright.domain.drive.Road;
import org.axlewright.domain.drive.Supply;
import org.axlewright.domain.drive.TorqueLaw;
import org.axlewright.domain.motor.MotorType;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.roadload.RollingResistance;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections of one request to the checked question of the drive, with every default noted. */
final class DriveSections {

    /** Pack to wheel, and shaft to wheel, when nothing was sent. */
    private static final double EFFICIENCY = 0.70;

    private static final double GEAR_EFFICIENCY = 0.90;

    private final Setup setup;
    private final Resolution resolution;
    private final Drive drive;
    private final Drive.Motor motor;

    DriveSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
        this.drive = Objects.requireNonNull(setup.drive(), "drive");
        this.motor = Objects.requireNonNull(drive.motor(), "motor");
    }

    DrivePerformance.Input resolve() {
        checkCurve();
        resolution.refuseIfFaulty();
        Wheel wheel = Objects.requireNonNull(DrivenWheel.wheel(setup, resolution));
        Reduction reduction = Objects.requireNonNull(DrivenWheel.reduction(drive.ratio()));
        double rolloutM = calibrated(wheel, reduction);
        double gearEfficiency = gearEfficiency();
        double efficiency = efficiency(gearEfficiency);
        Supply supply = supply();
        TorqueLaw law = law();
        Drive.Controller controller = drive.controller();
        Double motorLimitA = controller == null ? null : si(controller.motorCurrent());
        MotorModel model = model(law, motorLimitA, supply);
        Double capMPS = si(drive.speedLimit());
        String capPointer = capMPS == null ? null : "/drive/speedLimit";
        if (controller != null && controller.speedCap() != null) {
            double byMotor = Gearing.roadSpeedMPS(controller.speedCap().si(), rolloutM, reduction.ratio());
            if (capMPS == null || byMotor < capMPS) {
                capMPS = byMotor;
                capPointer = "/drive/controller/speedCap";
            }
        }
        Drive.MeasuredSpeed measured = drive.measured();
        Double target = setup.manoeuvre() == null ? null : si(setup.manoeuvre().speed());
        Grip grip = grip();
        double massKg = grip == null
                ? MassSections.massAsDrivenKg(setup, resolution)
                : grip.stance().massKg();
        DrivePerformance.Input input = new DrivePerformance.Input(
                model,
                law,
                si(motor.resistance()),
                reduction,
                wheel,
                rolloutM,
                gearEfficiency,
                efficiency,
                supply,
                accessoriesW(),
                si(motor.maximumTorque()),
                motorLimitA,
                capMPS,
                capPointer,
                si(motor.maximumSpeed()),
                si(motor.power()),
                model instanceof Plate && motor.power() != null,
                controller == null ? null : si(controller.minimumVoltage()),
                road(massKg),
                new Duty(ratedNm(law), motor.duty(), si(motor.dutyTime())),
                limits(),
                grip,
                stretches(target),
                target,
                measured == null ? null : si(measured.speed()),
                rearwardSeats());
        notAnswered(input);
        resolution.refuseIfFaulty();
        return input;
    }

    private List<String> rearwardSeats() {
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        return IntStream.range(0, occupants.size())
                .filter(i -> occupants.get(i).facesRearward())
                .mapToObj(i -> "/occupants/" + i + "/facing")
                .toList();
    }

    /** A rollout that speed and motor speed imply, where it is near the reckoned one, is better than it. */
    private double calibrated(Wheel wheel, Reduction reduction) {
        Drive.MeasuredSpeed measured = drive.measured();
        if (wheel.measured() || measured == null || measured.speed() == null || measured.motorSpeed() == null) {
            return wheel.rolloutM();
        }
        double implied = Gearing.impliedRolloutM(
                measured.speed().si(), measured.motorSpeed().si(), reduction.ratio());
        if (!(Math.abs(implied / wheel.rolloutM() - 1) <= Gearing.CALIBRATION_SPAN)) {
            return wheel.rolloutM();
        }
        return resolution.assume(
                "rollout-calibrated",
                wheel.pointer() + "/rollout",
                new Measure(implied, CLEARANCE),
                "as the measured speed and the motor's speed at the same time imply",
                Source.derived("measured beats theory"));
    }

    /** By rising speed, something at every point. */
    private void checkCurve() {
        List<Drive.CurvePoint> curve = motor.curve();
        if (curve == null) {
            return;
        }
        for (int i = 0; i < curve.size(); i++) {
            Drive.CurvePoint point = curve.get(i);
            String pointer = "/drive/motor/curve/" + i;
            if (point.speed() == null) {
                resolution.missing(pointer + "/speed");
            }
            if (point.torque() == null) {
                resolution.missing(pointer + "/torque");
            }
            Drive.CurvePoint before = i == 0 ? null : curve.get(i - 1);
            if (before != null
                    && point.speed() != null
                    && before.speed() != null
                    && !(point.speed().si() > before.speed().si())) {
                resolution.refuse(Fault.contradiction(
                        pointer + "/speed", "The points of a curve stand by rising speed; this one does not rise"));
            }
        }
    }

    private double gearEfficiency() {
        if (drive.gearEfficiency() != null) {
            if (drive.efficiency() != null && drive.efficiency() > drive.gearEfficiency()) {
                resolution.refuse(Fault.contradiction(
                        "/drive/efficiency",
                        "From pack to wheel no more can arrive than the reduction alone lets through, "
                                + drive.gearEfficiency()));
                resolution.refuseIfFaulty();
            }
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

    private double efficiency(double gearEfficiency) {
        return drive.efficiency() != null
                ? drive.efficiency()
                : resolution.assume(
                        "drive-efficiency",
                        "/drive/efficiency",
                        Measure.number(Math.min(EFFICIENCY, EFFICIENCY / GEAR_EFFICIENCY * gearEfficiency)),
                        "controller, motor and axle together, 0.60 to 0.85",
                        Source.memory(
                                "brushed motor with a worn axle to a new permanent-magnet drive; no source for this class"));
    }

    private @Nullable Supply supply() {
        PackVoltages voltages = DrivenWheel.voltages(setup);
        Pack pack = setup.pack();
        if (voltages == null || pack == null) {
            return null;
        }
        Drive.Controller controller = drive.controller();
        return new Supply(
                voltages.nominalV(), packOhm(pack), controller == null ? null : si(controller.batteryCurrent()));
    }

    /** Of the whole pack; 0 where it is not known. */
    private double packOhm(Pack pack) {
        Pack.InternalResistance sent = pack.resistance();
        Integer cells = PackSections.cellsInSeries(pack);
        if (sent == null || sent.value() == null || cells == null) {
            return 0;
        }
        if (sent.of() == null) {
            resolution.missing("/pack/resistance/of");
            return 0;
        }
        int strings = PackSections.strings(pack, resolution);
        double ohm = sent.value().si();
        return switch (sent.of()) {
            case CELL -> Sag.packOhm(ohm, cells, strings);
            case BLOCK -> {
                if (pack.blocks() == null || pack.blocks().count() == null) {
                    resolution.missing("/pack/blocks/count");
                    yield 0;
                }
                yield Sag.packOhm(ohm, pack.blocks().count(), strings);
            }
            case PACK -> Sag.packOhm(ohm, 1, 1);
        };
    }

    /** Torque for current: the pair sent, else the rating, else the strongest point of the curve. */
    private @Nullable TorqueLaw law() {
        boolean square = motor.type() == MotorType.SERIES_DC;
        Double torque = motor.maximumTorque() != null ? si(motor.maximumTorque()) : si(motor.ratedTorque());
        if (motor.torqueCurrent() != null && torque != null) {
            return new TorqueLaw(torque, motor.torqueCurrent().si(), square);
        }
        Double rated = plateTorqueNm();
        if (motor.ratedCurrent() != null && rated != null) {
            return new TorqueLaw(rated, motor.ratedCurrent().si(), square);
        }
        TorqueLaw strongest = null;
        for (Drive.CurvePoint point : motor.curve() == null ? List.<Drive.CurvePoint>of() : motor.curve()) {
            double nm = Objects.requireNonNull(point.torque()).si();
            if (point.current() != null
                    && point.current().si() > 0
                    && nm > (strongest == null ? 0 : strongest.torqueNm())) {
                strongest = new TorqueLaw(nm, point.current().si(), square);
            }
        }
        return strongest;
    }

    /** As rated, else power over speed. */
    private @Nullable Double plateTorqueNm() {
        if (motor.ratedTorque() != null) {
            return motor.ratedTorque().si();
        }
        return motor.power() == null || motor.speed() == null
                ? null
                : (Double) (motor.power().si() / motor.speed().si());
    }

    private @Nullable Double ratedNm(@Nullable TorqueLaw law) {
        Double plate = plateTorqueNm();
        if (plate != null) {
            return plate;
        }
        return law == null || motor.ratedCurrent() == null
                ? null
                : (Double) law.torqueNm(motor.ratedCurrent().si());
    }

    private MotorModel model(@Nullable TorqueLaw law, @Nullable Double motorLimitA, @Nullable Supply supply) {
        Double statedV = si(motor.voltage());
        List<Drive.CurvePoint> curve = motor.curve();
        if (curve != null && !curve.isEmpty()) {
            return new Curve(
                    curve.stream()
                            .map(point -> new MotorModel.Point(
                                    Objects.requireNonNull(point.speed()).si(),
                                    Objects.requireNonNull(point.torque()).si()))
                            .toList(),
                    statedV);
        }
        Double ohm = si(motor.resistance());
        if (law != null && ohm != null && (supply != null || statedV != null)) {
            if (motor.type() == MotorType.SERIES_DC) {
                return new SeriesDc(law, ohm, statedV);
            }
            if (motor.type() == MotorType.PERMANENT_MAGNET_DC) {
                return new ConstantField(law, ohm, statedV);
            }
        }
        boolean bound = motor.maximumTorque() != null || (law != null && motorLimitA != null);
        boolean weakens = DrivenWheel.weakensField(motor);
        if (!weakens && motor.speed() != null) {
            DrivenWheel.loaded(motor, resolution);
        }
        return new Plate(
                bound ? si(motor.maximumTorque()) : plateTorqueNm(),
                si(motor.power()),
                weakens ? si(motor.maximumSpeed()) : si(motor.speed()),
                weakens,
                statedV);
    }

    private double accessoriesW() {
        return setup.accessories() != null && setup.accessories().power() != null
                ? setup.accessories().power().si()
                : resolution.assume(
                        "no-accessories",
                        "/accessories/power",
                        new Measure(0, POWER),
                        "nothing else on board unless sent; lights alone take 50 to 150 W",
                        Source.memory("lights of this class"));
    }

    private Road road(double massKg) {
        RoadLoad sent = setup.roadLoad();
        double rotating = sent != null && sent.rotatingMassShare() != null
                ? sent.rotatingMassShare()
                : resolution.assume(
                        "rotating-mass",
                        "/roadLoad/rotatingMassShare",
                        Measure.number(0.05),
                        "what wheels, gears and rotor add when the speed changes",
                        Source.published("NPTEL Electric Vehicles, week 4: 5 %"));
        double dragArea = sent != null && sent.dragArea() != null
                ? sent.dragArea().si()
                : resolution.assume(
                        "drag-area",
                        "/roadLoad/dragArea",
                        new Measure(1.4, BODY_AREA),
                        "open vehicle with roof and screen, 1.0 to 1.8 m2; matters little below 25 km/h",
                        Source.memory(
                                "frontal area 1.8 to 2.4 m2, drag coefficient 0.6 to 0.8; none published for this class"));
        Surface surface = setup.ground() == null ? null : setup.ground().surface();
        return new Road(massKg, rotating, rolling(surface, "/ground/surface"), dragArea, 1);
    }

    private double rolling(@Nullable Surface sent, String pointer) {
        RoadLoad roadLoad = setup.roadLoad();
        if (roadLoad != null && roadLoad.rollingResistance() != null) {
            return roadLoad.rollingResistance();
        }
        Surface surface = sent != null
                ? sent
                : resolution.assume(
                        "surface",
                        pointer,
                        Surface.WORN_ASPHALT,
                        "an ordinary road unless sent",
                        Source.COMMON_PRACTICE);
        RollingResistance row = RollingResistance.of(surface);
        return resolution.assume(
                "rolling-resistance",
                "/roadLoad/rollingResistance",
                Measure.number(row.typical().value()),
                "surface " + surface + "; sources print " + row.low().value() + " to "
                        + row.high().value(),
                row.typical().source());
    }

    private PackLimits limits() {
        Pack.Limits sent = setup.pack() == null ? null : setup.pack().limits();
        if (sent == null) {
            return new PackLimits(null, null, null);
        }
        Pack.Peak peak = sent.peakDischarge();
        return new PackLimits(
                si(sent.continuousDischarge()),
                peak == null ? null : si(peak.current()),
                peak == null ? null : si(peak.duration()));
    }

    /** Null where position or height of the centre of gravity are not known. */
    private @Nullable Grip grip() {
        if (gripMissing().isEmpty()) {
            PointMass mass = MassSections.states(setup, resolution).occupied();
            double wheelbaseM = Objects.requireNonNull(
                            Objects.requireNonNull(setup.chassis()).wheelbase())
                    .si();
            Double height = mass.zM();
            if (height != null && height > 0 && mass.massKg() > 0) {
                return new Grip(
                        new Stance(mass.massKg(), wheelbaseM, mass.xM(), height),
                        DrivenWheel.driven(setup, resolution),
                        GroundSections.friction(setup, resolution));
            }
        }
        return null;
    }

    private List<String> gripMissing() {
        List<String> missing = new ArrayList<>();
        if (setup.chassis() == null || setup.chassis().wheelbase() == null) {
            missing.add("/chassis/wheelbase");
        }
        List<String> position = MassSections.POSITION_IN_PLAN.missing(setup);
        missing.addAll(position);
        if (position.isEmpty()) {
            missing.addAll(MassSections.heightMissing(setup));
        }
        return missing;
    }

    private List<Stretch> stretches(@Nullable Double target) {
        List<Stretch> stretches = new ArrayList<>();
        Double wanted = target == null || target > 0 ? target : null;
        if (setup.ground() != null && setup.ground().grade() != null) {
            stretches.add(new Stretch(
                    "/ground/grade",
                    null,
                    setup.ground().grade().si(),
                    setup.ground().grade().unit() == GradeUnit.DEGREE,
                    rolling(setup.ground().surface(), "/ground/surface"),
                    wanted,
                    null,
                    0));
        }
        List<Leg> legs = setup.route() == null ? List.of() : setup.route();
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            String pointer = "/route/" + i;
            double grade = leg.grade() != null
                    ? leg.grade().si()
                    : resolution.assume(
                            "level",
                            pointer + "/grade",
                            new Measure(0, GRADE),
                            "a leg without a grade is level",
                            Source.COMMON_PRACTICE);
            Double speed = si(leg.speed());
            stretches.add(new Stretch(
                    pointer,
                    leg.reference(),
                    grade,
                    leg.grade() != null && leg.grade().unit() == GradeUnit.DEGREE,
                    rolling(leg.surface(), pointer + "/surface"),
                    speed,
                    speed == null || leg.distance() == null
                            ? null
                            : (Double) (leg.distance().si() / speed),
                    leg.waiting() == null ? 0 : leg.waiting().si()));
        }
        return stretches;
    }

    private void notAnswered(DrivePerformance.Input input) {
        if (input.supply() == null) {
            List<String> cells = List.of("/pack/chemistry", "/pack/cellsInSeries");
            resolution.notAnswered("/greatestPackCurrent", cells);
            resolution.notAnswered("/atTopSpeed/current", cells);
        } else if (input.supply().ohm() == 0) {
            resolution.notAnswered("/atTopSpeed/voltage", "/pack/resistance");
        }
        if (input.limits().peakA() == null && input.limits().continuousA() == null) {
            resolution.notAnswered("/tripGrade", "/pack/limits/peakDischarge", "/pack/limits/continuousDischarge");
        }
        if (input.duty().torqueNm() == null) {
            resolution.notAnswered("/sustainedGrade", "/drive/motor/ratedTorque", "/drive/motor/speed");
        }
        if (input.targetMPS() == null || input.targetMPS() == 0) {
            resolution.notAnswered("/toSpeed", "/manoeuvre/speed");
        }
        if (input.grip() == null) {
            List<String> missing = gripMissing();
            for (String result : List.of("/gripLimit", "/gripGrade", "/launch/frontAxleLoad")) {
                resolution.notAnswered(result, missing.isEmpty() ? List.of("/laden/position/z") : missing);
            }
        }
        if (input.law() == null) {
            resolution.notAnswered("/climbs/0/motorCurrent", "/drive/motor/torqueCurrent", "/drive/motor/ratedCurrent");
        }
        if (!input.motor().boundAtRest() && (input.law() == null || input.motorLimitA() == null)) {
            for (String result : List.of("/launch", "/startGrade", "/stallGrade", "/toSpeed")) {
                resolution.notAnswered(result, "/drive/motor/maximumTorque", "/drive/motor/speed");
            }
        }
        if (input.stretches().isEmpty()) {
            resolution.notAnswered("/climbs", "/ground/grade", "/route");
        }
    }
}
