package org.axlewright.domain.roadload;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.PressureUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Road load against what is printed. */
class RoadLoadPublishedTest {

    static List<Case> massesFromGrade() {
        return of("mass from grade");
    }

    static List<Case> tractiveForces() {
        return of("tractive force");
    }

    static List<Case> forces() {
        return of("four forces", "two forces on the level and a grade");
    }

    static List<Case> headwinds() {
        return of("headwind");
    }

    static List<Case> laws() {
        return of("rolling-resistance law");
    }

    static List<Case> accelerations() {
        return of("acceleration");
    }

    static List<Case> grades() {
        return of("power on a grade");
    }

    static List<Case> surfaces() {
        return of("surface");
    }

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/roadload/checks.csv", topics);
    }

    private static double metresPerSecond(double kilometresPerHour) {
        return SpeedUnit.KILOMETRE_PER_HOUR.toSi(kilometresPerHour);
    }

    @ParameterizedTest
    @MethodSource("massesFromGrade")
    void aGradeTellsTheMass(Case row) {
        double perKilogram = RoadLoad.gradeN(1, GradeUnit.PERCENT.toSi(row.in("grade")), row.in("g"));
        row.check("m", row.in("f") / perKilogram);
    }

    @ParameterizedTest
    @MethodSource("tractiveForces")
    void addsWhatSpeedingUpTakes(Case row) {
        double v = metresPerSecond(row.in("v"));
        double distance = v * row.in("t") / 2;
        double force = RoadLoad.rollingN(row.in("m"), row.in("f_r"), 0, row.in("g"))
                + RoadLoad.dragN(row.in("rho"), row.in("cd") * row.in("a"), v)
                + RoadLoad.kineticJ(row.in("m"), row.in("rotating") / 100, v) / distance;
        row.check("f", force);
    }

    @ParameterizedTest
    @MethodSource("accelerations")
    void theRestOfTheForceSpeedsUp(Case row) {
        double rest = row.in("f") - RoadLoad.rollingN(row.in("m"), row.in("f_r"), 0, row.in("g"));
        double perAcceleration = 2 * RoadLoad.kineticJ(row.in("m"), row.in("rotating") / 100, 1);
        row.check("a", rest / perAcceleration);
    }

    @ParameterizedTest
    @MethodSource("forces")
    void agreesForceByForce(Case row) {
        double theta = Math.toRadians(row.in("theta"));
        double area = row.in("cd") * row.in("a");
        row.check("drag_30", RoadLoad.dragN(row.in("rho"), area, metresPerSecond(30)));
        row.check("drag_80", RoadLoad.dragN(row.in("rho"), area, metresPerSecond(80)));
        row.check("grade", RoadLoad.gradeN(row.in("m"), theta, row.in("g")));
        if (row.expected().containsKey("rolling")) {
            row.check("rolling", RoadLoad.rollingN(row.in("m"), row.in("f_r"), theta, row.in("g")));
        } else {
            row.check("rolling_level", RoadLoad.rollingN(row.in("m"), row.in("f_r"), 0, row.in("g")));
        }
    }

    @ParameterizedTest
    @MethodSource("headwinds")
    void forceTakesAirSpeedAndPowerRoadSpeed(Case row) {
        double force = RoadLoad.dragN(
                row.in("rho"), row.in("cd") * row.in("a"), metresPerSecond(row.in("v") + row.in("wind")));
        row.check("f", force);
        row.check("p", force * metresPerSecond(row.in("v")));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void followsThePressureAndSpeedLaw(Case row) {
        row.check("f_r", RollingResistance.paved(PressureUnit.BAR.toSi(row.in("p")), metresPerSecond(row.in("v"))));
    }

    @ParameterizedTest
    @MethodSource("grades")
    void climbsAsWorkedByHand(Case row) {
        double theta = GradeUnit.PERCENT.toSi(row.in("grade"));
        double force = RoadLoad.gradeN(row.in("m"), theta, Constants.STANDARD_GRAVITY);
        row.check("grade_force", force);
        row.check("grade_power", force * row.in("v"));
        row.check(
                "rolling_power",
                RoadLoad.rollingN(row.in("m"), row.in("f_r"), theta, Constants.STANDARD_GRAVITY) * row.in("v"));
        row.check("energy", force * row.in("h") / Math.sin(theta) / 3600);
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    void takesThePrintedCoefficient(Case row) {
        Surface surface = Arrays.stream(Surface.values())
                .filter(one -> one.toString().equals(row.inText("surface")))
                .findFirst()
                .orElseThrow();
        row.check("f_r", RollingResistance.of(surface).typical().value());
    }

    @Test
    void everySurfaceHasItsSpanAroundWhatIsReckonedWith() {
        for (Surface surface : Surface.values()) {
            RollingResistance row = RollingResistance.of(surface);
            assertThat(row.typical().value())
                    .as(surface.toString())
                    .isBetween(row.low().value(), row.high().value());
        }
    }
}
