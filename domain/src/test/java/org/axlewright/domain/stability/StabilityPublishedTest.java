package org.axlewright.domain.stability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.RollGradientUnit;
import org.axlewright.domain.stability.Aboard.Person;
import org.axlewright.domain.stability.Footprint.Roll;
import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Printed examples of tipping, sliding and rolling on springs. Each counts with its own gravity. */
class StabilityPublishedTest {

    private static final String CHECKS = "/stability/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();
    private static final double KMH = 3.6;

    private static Footprint evenTracks(double trackM) {
        return new Footprint(WheelPlan.FOUR_WHEELS, 2, trackM, trackM, 0, 0);
    }

    private static SideLimit centred(double trackM, double heightM) {
        return evenTracks(trackM).limit(Side.RIGHT, new Whole(500, 1, 0, heightM), null, SILENT);
    }

    @ParameterizedTest
    @MethodSource
    void rollsOnItsSpringsAsPrinted(Case one) {
        double gradient = Springs.rollGradient(one.in("m_s"), one.in("d"), one.in("k_phi"), one.in("g"));
        one.check("r_phi", Math.toDegrees(gradient * one.in("g")));
    }

    static List<Case> rollsOnItsSpringsAsPrinted() {
        return PublishedChecks.read(CHECKS, "roll gradient");
    }

    /** The load moved is mass times acceleration times arm over track; springs only share it out between the axles. */
    @ParameterizedTest
    @MethodSource
    void movesTheLoadThatIsPrinted(Case one) {
        double share = one.inputs().containsKey("share") ? one.in("share") : 1;
        double acceleration = one.in("a_y") * one.in("g");
        one.check("dw", Springs.loadTransferN(one.in("m") * share, acceleration, one.in("arm"), one.in("t"), SILENT));
    }

    static List<Case> movesTheLoadThatIsPrinted() {
        return PublishedChecks.read(
                CHECKS,
                "load transfer, sprung geometric, front",
                "load transfer, sprung geometric, rear",
                "load transfer, unsprung, front",
                "load transfer, unsprung, rear");
    }

    @ParameterizedTest
    @MethodSource
    void tipsAtThePrintedSpeed(Case one) {
        SideLimit limit = centred(one.in("t"), one.in("h"));
        one.check("v", Turns.tipSpeed(limit.factor(), one.in("r"), one.in("g"), SILENT));
    }

    static List<Case> tipsAtThePrintedSpeed() {
        return PublishedChecks.read(CHECKS, "tip speed");
    }

    @ParameterizedTest
    @MethodSource
    void asksForRadiiAsPrinted(Case one) {
        double speed = 25;
        double g = Constants.STANDARD_GRAVITY;
        one.check("ratio", Turns.radiusM(speed, one.in("ssf_1"), g) / Turns.radiusM(speed, one.in("ssf_2"), g));
    }

    static List<Case> asksForRadiiAsPrinted() {
        return PublishedChecks.read(CHECKS, "minimum-radius ratio");
    }

    @ParameterizedTest
    @MethodSource
    void slidesAndTipsAtThePrintedSpeeds(Case one) {
        SideLimit limit = centred(one.in("t"), one.in("h"));
        if (one.expected().containsKey("ssf")) {
            one.check("ssf", limit.factor());
        }
        one.check("v_tip", KMH * Turns.tipSpeed(limit.factor(), one.in("r"), one.in("g"), SILENT));
        if (one.expected().containsKey("v_slide")) {
            one.check("v_slide", KMH * Turns.slideSpeed(one.in("mu"), one.in("r"), one.in("g"), SILENT));
        }
    }

    static List<Case> slidesAndTipsAtThePrintedSpeeds() {
        return PublishedChecks.read(CHECKS, "slide or tip");
    }

    @ParameterizedTest
    @MethodSource
    void reachesALateralAccelerationAtThePrintedSpeed(Case one) {
        one.check("v", KMH * Turns.tipSpeed(one.in("factor"), one.in("r"), one.in("g"), SILENT));
    }

    static List<Case> reachesALateralAccelerationAtThePrintedSpeed() {
        return PublishedChecks.read(CHECKS, "speed for a lateral acceleration");
    }

    @ParameterizedTest
    @MethodSource
    void pullsSidewaysAsPrinted(Case one) {
        one.check("a", Turns.acceleration(one.in("v") / KMH, one.in("r"), SILENT) / Constants.STANDARD_GRAVITY);
    }

    static List<Case> pullsSidewaysAsPrinted() {
        return PublishedChecks.read(CHECKS, "lateral acceleration");
    }

    @ParameterizedTest
    @MethodSource
    void losesStabilityByALift(Case one) {
        SideLimit before = centred(one.in("t"), one.in("h"));
        one.check("ssf", before.factor());
        one.check("tilt", Math.toDegrees(before.tiltRad()));
        one.check("ssf_raised", centred(one.in("t"), one.in("h") + one.in("dh")).factor());
    }

    static List<Case> losesStabilityByALift() {
        return PublishedChecks.read(CHECKS, "tilt of a raised vehicle");
    }

    @ParameterizedTest
    @MethodSource
    void keepsItsFactorOnAWiderTrack(Case one) {
        SideLimit before = centred(one.in("t"), one.in("h"));
        SideLimit after = centred(one.out("t_new"), one.in("h") + one.in("dh"));
        assertThat(after.factor())
                .isCloseTo(before.factor(), org.assertj.core.api.Assertions.within(0.0005 / (2 * one.in("h"))));
    }

    static List<Case> keepsItsFactorOnAWiderTrack() {
        return PublishedChecks.read(CHECKS, "track that keeps the factor");
    }

    @ParameterizedTest
    @MethodSource
    void standsLessOnItsSprings(Case one) {
        double height = 0.7;
        Roll roll = new Roll(RollGradientUnit.DEGREE_PER_G.toSi(one.in("r_phi")), one.in("axis_share") * height);
        SideLimit limit = evenTracks(1).limit(Side.LEFT, new Whole(500, 1, 0, height), roll, SILENT);
        one.check("share", limit.suspended() / limit.factor());
    }

    static List<Case> standsLessOnItsSprings() {
        return PublishedChecks.read(CHECKS, "body on its springs");
    }

    @ParameterizedTest
    @MethodSource
    void standsLessWithTheDriverAloneThanTwoUp(Case one) {
        Whole bare = new Whole(one.in("m"), 1, 0, one.in("z"));
        List<Aboard> people = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            Person person = new Person(side < 0, Facing.FORWARD, null, null);
            people.add(new Aboard(
                    "/occupants/" + people.size(),
                    null,
                    null,
                    person,
                    one.in("m_d"),
                    1,
                    side * one.in("y_d"),
                    one.in("z_d")));
        }
        Footprint footprint = evenTracks(one.in("t"));
        Whole alone = Fillings.of(bare, people.subList(0, 1)).whole();
        Whole both = Fillings.of(bare, people).whole();
        one.check("alone", footprint.limit(Side.LEFT, alone, null, SILENT).factor());
        one.check("two", footprint.limit(Side.LEFT, both, null, SILENT).factor());
        Fillings.Filling worst = Fillings.least(bare, people, true, (x, y) -> footprint.leverM(Side.LEFT, x, y));
        assertThat(worst.aboard()).isEqualTo(people.subList(0, 1));
    }

    static List<Case> standsLessWithTheDriverAloneThanTwoUp() {
        return PublishedChecks.read(CHECKS, "driver alone and two-up");
    }

    @ParameterizedTest
    @MethodSource
    void standsOnThreeWheelsByTheDistanceFromTheSingleOne(Case one) {
        Whole whole = new Whole(500, one.in("x"), 0, one.in("h"));
        Footprint front = new Footprint(WheelPlan.ONE_IN_FRONT, one.in("l"), 0, one.in("t"), 0, 0);
        Footprint behind = new Footprint(WheelPlan.ONE_BEHIND, one.in("l"), one.in("t"), 0, 0, 0);
        one.check("one_in_front", front.limit(Side.LEFT, whole, null, SILENT).factor());
        one.check("one_behind", behind.limit(Side.LEFT, whole, null, SILENT).factor());
    }

    static List<Case> standsOnThreeWheelsByTheDistanceFromTheSingleOne() {
        return PublishedChecks.read(CHECKS, "single wheel");
    }

    @ParameterizedTest
    @MethodSource
    void gainsBySpacersWhatTheTrackAtTheCentreOfGravityGains(Case one) {
        Whole whole = new Whole(500, one.in("x"), 0, one.in("h"));
        double front = one.in("t_f");
        double rear = one.in("t_r");
        Footprint before = new Footprint(WheelPlan.FOUR_WHEELS, one.in("l"), front, rear, 0, 0);
        Footprint after = new Footprint(WheelPlan.FOUR_WHEELS, one.in("l"), front, rear + 2 * one.in("spacer"), 0, 0);
        one.check("before", before.limit(Side.RIGHT, whole, null, SILENT).factor());
        one.check("after", after.limit(Side.RIGHT, whole, null, SILENT).factor());
    }

    static List<Case> gainsBySpacersWhatTheTrackAtTheCentreOfGravityGains() {
        return PublishedChecks.read(CHECKS, "spacers at the rear wheels");
    }

    /** Level circle on a bank whose tangent is the friction's reciprocal: no speed reaches the limit. */
    @Test
    void noSpeedTipsItOutwardOnASteepEnoughBank() {
        assertThat(Turns.speedBanked(1.2, 20, Math.atan(1 / 1.2) + 0.01, false, 9.81, SILENT))
                .isNull();
    }
}
