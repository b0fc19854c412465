package org.axlewright.domain.braking;

import static org.axlewright.domain.braking.BrakeBalance.NOT_THE_LIMIT_N;
import static org.axlewright.domain.braking.Vehicles.UNKNOWN;
import static org.axlewright.domain.braking.Vehicles.brakes;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.braking.Braking.State;
import org.axlewright.domain.quantity.AccelerationUnit;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Stops and holds against what is printed. */
class BrakingPublishedTest {

    private static final Trace SILENT = Trace.withoutWorking();

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/braking/checks.csv", topics);
    }

    static List<Case> loads() {
        return of("front load, braking");
    }

    static List<Case> largest() {
        return of("largest front brake force", "largest rear brake force");
    }

    static List<Case> locked() {
        return of("locked-wheel stop");
    }

    static List<Case> distances() {
        return of("stopping distance");
    }

    static List<Case> shortest() {
        return of("shortest stop");
    }

    static List<Case> onGrades() {
        return of("stop on a grade");
    }

    static List<Case> heats() {
        return of("heat of a stop");
    }

    static List<Case> singles() {
        return of("single axle");
    }

    static List<Case> parked() {
        return of("parking on the rear wheels");
    }

    static List<Case> downhill() {
        return of("rear wheels down a hill");
    }

    static List<Case> reactions() {
        return of("reaction and braking");
    }

    static List<Case> thinking() {
        return of("thinking and braking");
    }

    static List<Case> holding() {
        return of("friction that holding a speed takes");
    }

    private static Stance byLoads(Case row, double g) {
        double weightN = row.in("w_f0") + row.in("w_r0");
        return new Stance(weightN / g, row.in("l"), row.in("l") * row.in("w_r0") / weightN, row.in("h"), g);
    }

    private static Stance runabout(Case row, double g) {
        return new Stance(650, row.in("l"), row.in("l_f"), row.in("h"), g);
    }

    private static double kmh(double value) {
        return SpeedUnit.KILOMETRE_PER_HOUR.toSi(value);
    }

    private static double mph(double value) {
        return SpeedUnit.MILE_PER_HOUR.toSi(value);
    }

    @ParameterizedTest
    @MethodSource("loads")
    void loadMovesForward(Case row) {
        Stance stance = byLoads(row, row.in("g"));
        double v = kmh(row.in("v"));
        double forceN = stance.massKg() * v * v / (2 * row.in("s"));
        row.check(
                "w_f",
                BrakeBalance.of(stance, UNKNOWN, UNKNOWN, forceN, 0.9, 0, SILENT)
                        .frontLoadN());
    }

    @ParameterizedTest
    @MethodSource("largest")
    void anAxleBrakesAsItsTyresAllow(Case row) {
        BrakeBalance balance =
                BrakeBalance.of(byLoads(row, 9.81), UNKNOWN, UNKNOWN, NOT_THE_LIMIT_N, row.in("mu"), 0, SILENT);
        if (row.expected().containsKey("f_front")) {
            row.check("f_front", balance.frontN());
        } else {
            row.check("f_rear", balance.rearN());
        }
    }

    @ParameterizedTest
    @MethodSource("locked")
    void lockedWheelsShareLoadAndForce(Case row) {
        double g = row.in("g");
        Stance stance = new Stance(row.in("w") * 1000 / g, row.in("l"), row.in("l_f"), row.in("h"), g);
        BrakeBalance balance = BrakeBalance.of(stance, UNKNOWN, UNKNOWN, NOT_THE_LIMIT_N, row.in("mu"), 0, SILENT);
        row.check("a", balance.totalN() / stance.massKg());
        row.check("w_wheel_rear", balance.rearLoadN() / 2);
        row.check("w_wheel_front", balance.frontLoadN() / 2);
    }

    @ParameterizedTest
    @MethodSource("distances")
    void thinksBrakesAndStops(Case row) {
        double forceN = row.in("f");
        Braking.Input known = Vehicles.stop(
                new State(row.in("m"), null), AxleSet.REAR, WheelBrakes.NONE, brakes(forceN), null, null, row.in("v"));
        Stop stop = Vehicles.level(withReaction(known, row.in("t_r")));
        row.check("thinking", stop.totalDistanceM() - stop.brakingDistanceM());
        row.check("braking", stop.brakingDistanceM());
        row.check("total", stop.totalDistanceM());
    }

    private static Braking.Input withReaction(Braking.Input input, double reactionS) {
        return new Braking.Input(
                input.occupied(),
                null,
                null,
                input.braked(),
                input.front(),
                input.rear(),
                null,
                0,
                input.friction(),
                input.frictionSent(),
                input.gradeRad(),
                false,
                input.speedMPS(),
                reactionS,
                null,
                null,
                null,
                null);
    }

    /** A stop at a deceleration of the brakes on the level, with a reaction time. */
    private static Stop at(double deceleration, double gradeRad, double v, double reactionS, boolean graded) {
        Braking.Input input = withReaction(
                Vehicles.stop(
                        new State(1000, null),
                        AxleSet.REAR,
                        WheelBrakes.NONE,
                        brakes(1000 * deceleration),
                        null,
                        gradeRad,
                        v),
                reactionS);
        return graded ? Vehicles.grade(input) : Vehicles.level(input);
    }

    @ParameterizedTest
    @MethodSource("shortest")
    void stopsAsShortAsAllFourTyresAllow(Case row) {
        Stance stance = new Stance(1000, 2.5, 1.2, 0.5, row.in("g"));
        BrakeBalance balance = BrakeBalance.of(stance, UNKNOWN, UNKNOWN, NOT_THE_LIMIT_N, row.in("mu"), 0, SILENT);
        double a = balance.totalN() / stance.massKg();
        row.check("a", a);
        row.check("s", at(a, 0, row.in("v"), 0, false).brakingDistanceM());
    }

    @ParameterizedTest
    @MethodSource("onGrades")
    void aGradeTakesItsPart(Case row) {
        double v = mph(row.in("v"));
        double grade = GradeUnit.PERCENT.toSi(row.in("grade"));
        row.check(
                "s",
                LengthUnit.FOOT.fromSi(
                        at(row.in("a"), grade, v, row.in("t_r"), true).brakingDistanceM()));
        row.check(
                "level",
                LengthUnit.FOOT.fromSi(
                        at(row.in("a"), grade, v, row.in("t_r"), false).brakingDistanceM()));
    }

    @ParameterizedTest
    @MethodSource("heats")
    void theBrakesTakeTheEnergyOfTheVehicle(Case row) {
        Braking.Input input = Vehicles.stop(
                new State(row.in("m"), null), AxleSet.REAR, WheelBrakes.NONE, brakes(3000), null, null, row.in("v"));
        double heatJ = Vehicles.level(input).heatJ();
        row.check("e", heatJ / 1000);
        Datum metal = new Datum(row.in("c"), Source.COMMON_PRACTICE);
        row.check("rise", BrakeHeat.riseK(heatJ, row.in("m_b"), metal, SILENT));
    }

    @ParameterizedTest
    @MethodSource("singles")
    void oneAxleAloneIsWorthLess(Case row) {
        Stance stance = runabout(row, row.in("g"));
        double mu = row.in("mu");
        row.check("rear", decelerationOf(stance, WheelBrakes.NONE, UNKNOWN, mu));
        row.check("front", decelerationOf(stance, UNKNOWN, WheelBrakes.NONE, mu));
        row.check("all", decelerationOf(stance, UNKNOWN, UNKNOWN, mu));
    }

    private static double decelerationOf(Stance stance, WheelBrakes front, WheelBrakes rear, double mu) {
        return BrakeBalance.of(stance, front, rear, NOT_THE_LIMIT_N, mu, 0, SILENT)
                        .totalN()
                / stance.massKg();
    }

    @ParameterizedTest
    @MethodSource("parked")
    void noseDownHoldsLessThanNoseUp(Case row) {
        Stance stance = runabout(row, 9.80665);
        row.check("up", percent(Hold.of(650, stance, AxleSet.REAR, null, row.in("mu"), true, SILENT)));
        row.check("down", percent(Hold.of(650, stance, AxleSet.REAR, null, row.in("mu"), false, SILENT)));
    }

    private static double percent(Hold hold) {
        return GradeUnit.PERCENT.fromSi(hold.gradeRad());
    }

    @ParameterizedTest
    @MethodSource("downhill")
    void theRearWheelsAloneStopAVehicleBadlyDownhill(Case row) {
        Braking.Input input = Vehicles.stop(
                new State(650, runabout(row, 9.80665)),
                AxleSet.REAR,
                WheelBrakes.NONE,
                UNKNOWN,
                row.in("mu"),
                GradeUnit.PERCENT.toSi(row.in("grade")),
                kmh(row.in("v")));
        row.check(
                "a",
                AccelerationUnit.STANDARD_GRAVITY.fromSi(Vehicles.grade(input).decelerationMPS2()));
        row.check("s", Vehicles.grade(input).brakingDistanceM());
        row.check("level", Vehicles.level(input).brakingDistanceM());
    }

    @ParameterizedTest
    @MethodSource("reactions")
    void reactionAndBrakingAddUp(Case row) {
        row.check(
                "total",
                at(row.in("a"), 0, kmh(row.in("v")), row.in("t_r"), false).totalDistanceM());
    }

    @ParameterizedTest
    @MethodSource("thinking")
    void agreesWithTheTableOfTheDrivingTest(Case row) {
        Stop stop = at(row.in("a"), 0, mph(row.in("v")), row.in("t_r"), false);
        row.check("thinking", stop.totalDistanceM() - stop.brakingDistanceM());
        row.check("braking", stop.brakingDistanceM());
        row.check("total", stop.totalDistanceM());
    }

    @ParameterizedTest
    @MethodSource("holding")
    void holdingASpeedByOneAxleTakesItsFriction(Case row) {
        Stance stance = runabout(row, 9.80665);
        double grade = GradeUnit.PERCENT.toSi(row.in("grade"));
        double forceN = -stance.weightN() * Math.sin(grade);
        row.check("mu", Retarder.frictionNeeded(650, stance, AxleSet.REAR, forceN, grade, SILENT));
    }
}
