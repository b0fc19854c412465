package org.axlewright.domain.drive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.drive.DrivePerformance.Climb;
import org.axlewright.domain.drive.Gearing.Measured;
import org.axlewright.domain.drive.Gearing.MotorPlate;
import org.axlewright.domain.drive.Gearing.Sensor;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Gearing, motor and hill against what is printed. */
class DrivePublishedTest {

    private static final String CHECKS = "/drive/checks.csv";

    private static final double RPM = 2 * Math.PI / 60;

    static List<Case> roadSpeeds() {
        return PublishedChecks.read(CHECKS, "road speed");
    }

    @ParameterizedTest
    @MethodSource("roadSpeeds")
    void findsTheRoadSpeed(Case row) {
        row.check("v", 3.6 * Gearing.roadSpeedMPS(row.in("omega"), Math.PI * row.in("dia"), row.in("ratio")));
    }

    static List<Case> motorSpeeds() {
        return PublishedChecks.read(CHECKS, "motor speed");
    }

    @ParameterizedTest
    @MethodSource("motorSpeeds")
    void findsTheMotorSpeed(Case row) {
        row.check("omega", Gearing.motorSpeedRadPS(row.in("v") / 3.6, Math.PI * row.in("dia"), row.in("ratio")));
    }

    static List<Case> circumferences() {
        return PublishedChecks.read(CHECKS, "rolling-circumference form");
    }

    @ParameterizedTest
    @MethodSource("circumferences")
    void findsTheSpeedFromTheCircumference(Case row) {
        Gearing.Result result = gearing(
                new Wheel("/tyres/rear", row.in("c_r"), true, null, null),
                row.in("ratio"),
                new MotorPlate(row.in("n") * RPM, null, true, false, null),
                null,
                null);

        row.check("v", 3.6 * result.idealMPS());
    }

    static List<Case> wheelForces() {
        return PublishedChecks.read(CHECKS, "wheel force");
    }

    @ParameterizedTest
    @MethodSource("wheelForces")
    void findsTheWheelForce(Case row) {
        row.check("f", Gearing.wheelForceN(row.in("torque"), row.in("ratio_over_r"), 2 * Math.PI, 1));
    }

    static List<Case> shaftPowers() {
        return PublishedChecks.read(CHECKS, "shaft power");
    }

    @ParameterizedTest
    @MethodSource("shaftPowers")
    void findsTheShaftPower(Case row) {
        Climb climb = Drives.plain()
                .losses(1, 1)
                .geared(1, 2 * Math.PI)
                .road(new Road(600, 0, 1e-9, 1e-9, 1))
                .stretch(Math.asin(row.in("torque") / (600 * 9.80665)), row.in("n") * RPM)
                .ask()
                .climbs()
                .get(0);

        row.check("p", climb.shaftW() / 1000);
    }

    static List<Case> backForces() {
        return PublishedChecks.read(CHECKS, "back-EMF");
    }

    @ParameterizedTest
    @MethodSource("backForces")
    void findsTheBackElectromotiveForce(Case row) {
        double ohm = row.id().equals("M35a") ? row.in("r") : row.in("v") / row.in("i_locked");
        double amperes = row.in(row.id().equals("M35a") ? "i" : "i_run");
        MotorModel motor = new MotorModel.ConstantField(new TorqueLaw(1, 1, false), ohm, null);

        // with one newton metre for an ampere the speed is the electromotive force
        double omega =
                new BisectionSolver(1e-9).solve(200, w -> motor.torqueNm(w, row.in("v")) - amperes, 0, row.in("v"));

        row.check("e", omega);
    }

    static List<Case> impliedWheels() {
        return PublishedChecks.read(CHECKS, "implied wheel");
    }

    @ParameterizedTest
    @MethodSource("impliedWheels")
    void findsTheWheelThatASpeedImplies(Case row) {
        Gearing.Result result =
                gearing(null, row.in("ratio"), null, new Measured(row.in("v"), row.in("n") * RPM, null), null);

        row.check("d", 1000 * result.measured().impliedRolloutM() / Math.PI);
        row.check("wheel", result.measured().wheelRadPS() / RPM);
    }

    static List<Case> teeth() {
        return PublishedChecks.read(CHECKS, "teeth");
    }

    @ParameterizedTest
    @MethodSource("teeth")
    void readsTeethEitherWayRound(Case row) {
        row.check("ratio", Teeth.parse(row.inText("text")).reduction());
        String[] turned = row.inText("text").split("[:/]");
        row.check("ratio", Teeth.parse(turned[1] + ":" + turned[0]).reduction());
    }

    static List<Case> hills() {
        return PublishedChecks.read(CHECKS, "hill");
    }

    @ParameterizedTest
    @MethodSource("hills")
    void findsWhatAHillTakes(Case row) {
        Climb climb = Drives.plain()
                .geared(39.06, row.in("c_r"))
                .road(new Road(row.in("m"), 0, row.in("f_r"), 1e-9, 1))
                .stretch(Math.toRadians(row.in("theta")), row.in("v") / 3.6)
                .ask()
                .climbs()
                .get(0);

        row.check("f", climb.forceN());
        row.check("pw", climb.wheelW());
        if (row.expected().containsKey("tw")) {
            row.check("tw", climb.wheelTorqueNm());
        }
    }

    static List<Case> accelerations() {
        return PublishedChecks.read(CHECKS, "acceleration");
    }

    @ParameterizedTest
    @MethodSource("accelerations")
    void findsTheAcceleration(Case row) {
        double torque = row.in("f") * 1.4 / (2 * Math.PI * 12);
        DrivePerformance.Result result = Drives.plain()
                .losses(1, 0.9)
                .motor(new MotorModel.Plate(torque, null, 400.0, false, null))
                .road(new Road(row.in("m"), row.in("rotating") / 100, row.in("f_r"), 0.5, 1))
                .ask();

        row.check("a", result.pullAway().acceleration());
    }

    static List<Case> currents() {
        return PublishedChecks.read(CHECKS, "current for a power");
    }

    @ParameterizedTest
    @MethodSource("currents")
    void findsTheCurrentForAPower(Case row) {
        Climb climb = Drives.plain()
                .losses(1, row.in("eta"))
                .supply(new Supply(row.in("v"), 0, null))
                .road(new Road(500, 0, 1e-9, 1e-9, 1))
                .stretch(Math.asin(row.in("p") / 5 / (500 * 9.80665)), 5.0)
                .ask()
                .climbs()
                .get(0);

        row.check("i", climb.packA());
    }

    static List<Case> displays() {
        return PublishedChecks.read(CHECKS, "display");
    }

    @ParameterizedTest
    @MethodSource("displays")
    void tellsWhatADisplayPointsTo(Case row) {
        Gearing.Result result =
                gearing(null, null, null, null, new Sensor(null, null, row.in("shown"), row.in("true")));

        row.check("correction", result.display().correction());
        assertThat(result.display().cause()).hasToString(row.outText("cause"));
    }

    static List<Case> shares() {
        return PublishedChecks.read(CHECKS, "share on the road");
    }

    @ParameterizedTest
    @MethodSource("shares")
    void tellsWhatShareOfTheIdealSpeedIsReached(Case row) {
        double omega = Gearing.motorSpeedRadPS(row.in("predicted") / 3.6, 2, 4);
        Gearing.Result result = gearing(
                new Wheel("/tyres/rear", 2, true, null, null),
                4.0,
                new MotorPlate(omega, null, true, false, null),
                new Measured(row.in("measured") / 3.6, null, null),
                null);

        row.check("share", result.measured().shareOfIdeal());
    }

    private static Gearing.Result gearing(
            @Nullable Wheel wheel,
            @Nullable Double ratio,
            @Nullable MotorPlate motor,
            @Nullable Measured measured,
            @Nullable Sensor sensor) {
        Gearing.Input input = new Gearing.Input(
                wheel,
                ratio == null ? null : new Reduction(ratio, null),
                motor,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                measured,
                null,
                sensor);
        return Gearing.of(input, Trace.withWorking());
    }
}
