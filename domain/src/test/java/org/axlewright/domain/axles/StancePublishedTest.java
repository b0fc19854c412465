package org.axlewright.domain.axles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Printed examples of axle loads under thrust and brakes. Each counts with its own gravity. */
class StancePublishedTest {

    private static final String CHECKS = "/axles/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();

    /** Forces that don't name a gravity don't depend on it. */
    private static final double ANY_GRAVITY = 9.81;

    private static double gravity(Case one) {
        return one.inputs().containsKey("g") ? one.in("g") : ANY_GRAVITY;
    }

    /** Mass and place in any of the ways the examples give them. */
    private static Stance stance(Case one) {
        Map<String, String> inputs = one.inputs();
        double g = gravity(one);
        double wheelbase = one.in("l");
        double mass;
        if (inputs.containsKey("m")) {
            mass = one.in("m");
        } else if (inputs.containsKey("w")) {
            mass = 1000 * one.in("w") / g;
        } else if (inputs.containsKey("w_f0")) {
            mass = (one.in("w_f0") + one.in("w_r0")) / g;
        } else {
            mass = 1;
        }
        double x;
        if (inputs.containsKey("l_f")) {
            x = one.in("l_f");
        } else if (inputs.containsKey("w_f0")) {
            x = wheelbase * one.in("w_r0") / (one.in("w_f0") + one.in("w_r0"));
        } else {
            x = wheelbase * one.in("rear_share") / (one.in("front_share") + one.in("rear_share"));
        }
        return new Stance(mass, wheelbase, x, one.in("h"), g);
    }

    @ParameterizedTest
    @MethodSource
    void carriesWhatIsPrintedWhileItSpeedsUp(Case one) {
        Stance stance = stance(one);
        if (one.expected().containsKey("w_f")) {
            one.check("w_f", stance.frontLoadN(0, one.in("a"), SILENT));
        }
        if (one.expected().containsKey("w_r")) {
            one.check("w_r", stance.rearLoadN(0, one.in("a"), SILENT));
        }
    }

    static List<Case> carriesWhatIsPrintedWhileItSpeedsUp() {
        return PublishedChecks.read(
                CHECKS, "front load, accelerating", "rear load, accelerating", "both axles accelerating");
    }

    @ParameterizedTest
    @MethodSource
    void carriesWhatIsPrintedWhileItStops(Case one) {
        double speed = one.in("v") / 3.6;
        one.check("w_f", stance(one).frontLoadN(0, -speed * speed / (2 * one.in("s")), SILENT));
    }

    static List<Case> carriesWhatIsPrintedWhileItStops() {
        return PublishedChecks.read(CHECKS, "front load, braking");
    }

    /** All wheels brake at the limit of grip; the force of one axle is its load times the friction. */
    @ParameterizedTest
    @MethodSource
    void brakesAnAxleAsHardAsPrintedWithAllWheelsAtTheLimit(Case one) {
        Stance stance = stance(one);
        double retardation = stance.brakeLimitN(AxleSet.ALL, one.in("mu"), 0, SILENT) / stance.massKg();
        if (one.expected().containsKey("f_front")) {
            one.check("f_front", one.in("mu") * stance.frontLoadN(0, -retardation, SILENT));
        } else {
            one.check("f_rear", one.in("mu") * stance.rearLoadN(0, -retardation, SILENT));
        }
    }

    static List<Case> brakesAnAxleAsHardAsPrintedWithAllWheelsAtTheLimit() {
        return PublishedChecks.read(CHECKS, "largest front brake force", "largest rear brake force");
    }

    @ParameterizedTest
    @MethodSource
    void speedsUpAsPrinted(Case one) {
        Stance stance = stance(one);
        checkRate(one, "a_rwd", stance.thrustLimitN(AxleSet.REAR, one.in("mu"), 0, SILENT), stance);
        checkRate(one, "a_fwd", stance.thrustLimitN(AxleSet.FRONT, one.in("mu"), 0, SILENT), stance);
        checkRate(one, "a_awd", stance.thrustLimitN(AxleSet.ALL, one.in("mu"), 0, SILENT), stance);
    }

    static List<Case> speedsUpAsPrinted() {
        return PublishedChecks.read(CHECKS, "largest acceleration");
    }

    @ParameterizedTest
    @MethodSource
    void slowsDownAsDerived(Case one) {
        Stance stance = stance(one);
        checkRate(one, "a_rear", stance.brakeLimitN(AxleSet.REAR, one.in("mu"), 0, SILENT), stance);
        checkRate(one, "a_front", stance.brakeLimitN(AxleSet.FRONT, one.in("mu"), 0, SILENT), stance);
        checkRate(one, "a_all", stance.brakeLimitN(AxleSet.ALL, one.in("mu"), 0, SILENT), stance);
    }

    static List<Case> slowsDownAsDerived() {
        return PublishedChecks.read(CHECKS, "largest deceleration");
    }

    private static void checkRate(Case one, String key, double forceN, Stance stance) {
        if (one.expected().containsKey(key)) {
            one.check(key, forceN / stance.massKg());
        }
    }

    @ParameterizedTest
    @MethodSource
    void standsOnItsWheelsAsPrintedWithAllOfThemLocked(Case one) {
        Stance stance = stance(one);
        double retardation = stance.brakeLimitN(AxleSet.ALL, one.in("mu"), 0, SILENT) / stance.massKg();
        double front = stance.frontLoadN(0, -retardation, SILENT) / 2;
        double rear = stance.rearLoadN(0, -retardation, SILENT) / 2;
        if (one.expected().containsKey("a")) {
            one.check("a", retardation);
            one.check("w_wheel_front", front);
            one.check("w_wheel_rear", rear);
        } else {
            one.check("f_wheel_front", one.in("mu") * front);
            one.check("f_wheel_rear", one.in("mu") * rear);
        }
    }

    static List<Case> standsOnItsWheelsAsPrintedWithAllOfThemLocked() {
        return PublishedChecks.read(CHECKS, "locked-wheel stop", "locked-wheel brake force");
    }

    /** A centre of gravity on the ground shifts no load: the share of the driven axle alone counts. */
    @ParameterizedTest
    @MethodSource
    void leavesTheLoadsAloneWithTheCentreOfGravityOnTheGround(Case one) {
        double share = one.in("driven_share") / 100;
        Stance stance = new Stance(1, 1, share, 1e-9, one.in("g"));
        double rate = stance.thrustLimitN(AxleSet.REAR, one.in("mu"), 0, SILENT);
        one.check("a", rate);
        one.check("t", one.in("v") / 3.6 / rate);
    }

    static List<Case> leavesTheLoadsAloneWithTheCentreOfGravityOnTheGround() {
        return PublishedChecks.read(CHECKS, "no load transfer");
    }

    /** On the steepest grade that the rear brakes hold, they pass to the ground just what gravity pulls along the slope. */
    @ParameterizedTest
    @MethodSource
    void holdsOnTheGradeAsDerived(Case one) {
        Stance stance = stance(one);
        double up = Math.atan(one.out("nose_up"));
        double down = Math.atan(one.out("nose_down"));
        double tolerance = 0.005 * stance.weightN();
        assertThat(stance.thrustLimitN(AxleSet.REAR, one.in("mu"), up, SILENT))
                .isCloseTo(stance.weightN() * Math.sin(up), within(tolerance));
        assertThat(stance.brakeLimitN(AxleSet.REAR, one.in("mu"), -down, SILENT))
                .isCloseTo(stance.weightN() * Math.sin(down), within(tolerance));
    }

    static List<Case> holdsOnTheGradeAsDerived() {
        return PublishedChecks.read(CHECKS, "rear brakes hold");
    }
}
