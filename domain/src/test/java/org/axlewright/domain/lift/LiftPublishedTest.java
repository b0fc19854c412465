package org.axlewright.domain.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.lift.DoubleWishbone.InstantCentre;
import org.axlewright.domain.lift.DoubleWishbone.Pose;
import org.axlewright.domain.lift.Gearing.DrivenTyres;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Linkage, roll centre, clearance angles and gearing against their sources. */
class LiftPublishedTest {

    private static final String CHECKS = "/lift/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> linkages() {
        return PublishedChecks.read(CHECKS, "four-bar linkage, continuous branch");
    }

    @ParameterizedTest
    @MethodSource("linkages")
    void followsTheLinkageOnItsContinuousBranch(Case row) {
        DoubleWishbone linkage = linkage(row, 0, 0);

        row.check("a2", upperAngle(row, linkage.at(Math.toRadians(row.in("a1")))));
    }

    static List<Case> branches() {
        return PublishedChecks.read(CHECKS, "four-bar linkage, branch following");
    }

    @ParameterizedTest
    @MethodSource("branches")
    void staysOnTheBranchWhereTheOtherRootIsNear(Case row) {
        DoubleWishbone linkage = linkage(row, row.in("a1_from"), row.in("a2_from"));

        row.check("a2", upperAngle(row, linkage.at(Math.toRadians(row.in("a1_to")))));
    }

    static List<Case> knuckles() {
        return PublishedChecks.read(CHECKS, "four-bar linkage, knuckle");
    }

    @ParameterizedTest
    @MethodSource("knuckles")
    void leansTheTopInWhereTheKnuckleTurnsPastUpright(Case row) {
        DoubleWishbone linkage = linkage(row, 0, 0);
        Pose pose = Objects.requireNonNull(linkage.at(Math.toRadians(row.in("a1"))));

        row.check("turn", -Math.toDegrees(linkage.camberChange(pose)));
    }

    static List<Case> rollCentres() {
        return PublishedChecks.read(CHECKS, "roll centre, wishbone");
    }

    @ParameterizedTest
    @MethodSource("rollCentres")
    void constructsTheRollCentre(Case row) {
        DoubleWishbone linkage = new DoubleWishbone(
                point(row, "lower_in"), point(row, "lower_out"), point(row, "upper_in"), point(row, "upper_out"));

        InstantCentre centre = linkage.instantCentre(linkage.asFound());

        row.check("ic_y", centre.y() / centre.weight());
        row.check("ic_z", centre.z() / centre.weight());
        row.check("rc", Objects.requireNonNull(centre.rollCentreHeight(new Point(row.in("half_track"), 0))));
    }

    static List<Case> simpleCrests() {
        return PublishedChecks.read(CHECKS, "breakover, simple");
    }

    @ParameterizedTest
    @MethodSource("simpleCrests")
    void drawsTheSimpleBreakoverAngle(Case row) {
        Underside.Breakover breakover = new Underside.Breakover("b", "as found");

        row.check("angle", Math.toDegrees(breakover.simple(row.in("l"), row.in("h"), SILENT)));
    }

    static List<Case> tangentCrests() {
        return PublishedChecks.read(CHECKS, "breakover, tangent");
    }

    @ParameterizedTest
    @MethodSource("tangentCrests")
    void laysTheCrestAgainstBothTyres(Case row) {
        Underside.Breakover breakover = new Underside.Breakover("b", "as found");
        Double angle = breakover.tangent(row.in("l"), row.in("h"), row.in("r"), row.in("r"), SILENT);

        row.check("angle", Math.toDegrees(Objects.requireNonNull(angle)));
    }

    static List<Case> overhangs() {
        return PublishedChecks.read(CHECKS, "overhang, tangent");
    }

    @ParameterizedTest
    @MethodSource("overhangs")
    void laysTheRampAgainstTheTyre(Case row) {
        Underside.Overhang overhang = new Underside.Overhang("a", "approach angle");
        Double angle = overhang.tangent(row.in("a"), row.in("h"), row.in("r"), SILENT);

        row.check("angle", Math.toDegrees(Objects.requireNonNull(angle)));
        row.check("simple", Math.toDegrees(overhang.simple(row.in("a"), row.in("h"), SILENT)));
    }

    static List<Case> speedometers() {
        return PublishedChecks.read(CHECKS, "speedometer error");
    }

    @ParameterizedTest
    @MethodSource("speedometers")
    void findsSpeedAndSpeedometerAfterAChangeOfTyre(Case row) {
        Gearing.Result gearing =
                Gearing.of(new DrivenTyres("/tyres/rear", false, row.in("d_old"), row.in("d_new"), null), SILENT);

        row.check("speed", gearing.speedFactor());
        row.check("error", gearing.speedometerError());
        assertThat(gearing.tractionFactor()).isGreaterThan(1);
    }

    static List<Case> rises() {
        return PublishedChecks.read(CHECKS, "rise, tyre and lift");
    }

    @ParameterizedTest
    @MethodSource("rises")
    void addsHalfTheGrowthOfTheTyreToTheLift(Case row) {
        double now = row.in("d_new") / 2000 - 0.01;
        double before = row.in("d_old") / 2000 - 0.01;
        AxleLift lift = new AxleLift(row.in("amount") / 1000, 1, false, 1, new LoadedRadii(before, now));

        row.check("rise", new Rise(lift, lift).frontM(SILENT) * 1000);
    }

    private static DoubleWishbone linkage(Case row, double lowerDegrees, double upperDegrees) {
        Point lowerInner = point(row, "p1");
        Point upperInner = point(row, "p2");
        return new DoubleWishbone(
                lowerInner,
                lowerInner.polar(row.in("lower"), Math.toRadians(lowerDegrees)),
                upperInner,
                upperInner.polar(row.in("upper"), Math.toRadians(upperDegrees)));
    }

    private static double upperAngle(Case row, Pose pose) {
        double degrees = Math.toDegrees(point(row, "p2").directionOf(pose.upperOuter()));
        return degrees < -90 ? degrees + 360 : degrees;
    }

    private static Point point(Case row, String key) {
        String[] coordinates = row.inText(key).replace("m", "").strip().split("\\|");
        return new Point(Double.parseDouble(coordinates[0]), Double.parseDouble(coordinates[1].strip()));
    }
}
