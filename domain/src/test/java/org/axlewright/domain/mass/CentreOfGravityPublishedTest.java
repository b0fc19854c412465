package org.axlewright.domain.mass;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.TwoSupports;
import org.axlewright.domain.mass.CentreOfGravity.Input;
import org.axlewright.domain.mass.CentreOfGravity.Part;
import org.axlewright.domain.mass.CentreOfGravity.Ratings;
import org.axlewright.domain.mass.CentreOfGravity.Result;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Printed examples. Standard gravity turns masses into loads only inside {@link CentreOfGravity}; the functions below take forces, so
 * examples that count with 9.8 or 9.81 bring their own. Positions do not depend on the unit of length or of weight, so inches and
 * pounds go in as printed.
 */
class CentreOfGravityPublishedTest {

    private static final String CHECKS = "/mass/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();

    @ParameterizedTest
    @MethodSource
    void givesThePlanPosition(Case one) {
        double wheelbase = one.in("l");
        Weighing weighing;
        if (one.inputs().containsKey("front_share")) {
            double front = one.in("front_share");
            weighing = new Weighing.FrontShare(one.in("m"), front / (front + one.in("rear_share")), null);
        } else {
            double front = one.in("w_wheel_front");
            double rear = one.in("w_wheel_rear");
            weighing = new Weighing.Scales(front, front, rear, rear);
        }
        double x = weighing.inPlan(wheelbase, null, SILENT).xM();
        if (one.expected().containsKey("l_f")) {
            one.check("l_f", x);
        }
        if (one.expected().containsKey("l_r")) {
            one.check("l_r", wheelbase - x);
        }
    }

    static List<Case> givesThePlanPosition() {
        return PublishedChecks.read(CHECKS, "plan position");
    }

    @ParameterizedTest
    @MethodSource
    void givesTheAxleLoads(Case one) {
        double weight = one.in("m") * one.in("g");
        one.check("w_wheel_front", TwoSupports.frontLoadN(weight, one.in("l_f"), one.in("l"), SILENT) / 2);
        one.check("w_wheel_rear", TwoSupports.rearLoadN(weight, one.in("l_f"), one.in("l"), SILENT) / 2);
    }

    static List<Case> givesTheAxleLoads() {
        return PublishedChecks.read(CHECKS, "axle loads");
    }

    @ParameterizedTest
    @MethodSource
    void sharesALoadBetweenTheAxles(Case one) {
        one.check("w_r", TwoSupports.rearLoadN(one.in("w"), one.in("x"), one.in("l"), SILENT));
        if (one.expected().containsKey("w_f")) {
            one.check("w_f", TwoSupports.frontLoadN(one.in("w"), one.in("x"), one.in("l"), SILENT));
        }
    }

    static List<Case> sharesALoadBetweenTheAxles() {
        return PublishedChecks.read(CHECKS, "load between the axles");
    }

    @ParameterizedTest
    @MethodSource
    void takesWeightOffTheFrontBehindTheRearAxle(Case one) {
        double weight = one.in("dm") * one.in("g");
        one.check("dw_f", TwoSupports.frontLoadN(weight, one.in("l") + one.in("d"), one.in("l"), SILENT));
    }

    static List<Case> takesWeightOffTheFrontBehindTheRearAxle() {
        return PublishedChecks.read(CHECKS, "axle shift from rear overhang");
    }

    @ParameterizedTest
    @MethodSource
    void givesTheHeightByRaisingTheRear(Case one) {
        double wheelbase = one.in("l");
        double rise = wheelbase * Math.sin(Math.toRadians(one.in("alpha")));
        double x = wheelbase * (1 - one.in("w_f1") / one.in("w"));
        RaisedAxle raised = new RaisedAxle(Axle.REAR, rise, one.in("w_f2"), one.in("r_l"), one.in("r_l"));
        one.check("h", raised.heightM(one.in("w"), x, wheelbase, SILENT));
    }

    static List<Case> givesTheHeightByRaisingTheRear() {
        return PublishedChecks.read(CHECKS, "height by raising the rear");
    }

    @Test
    void doesNotMatchThePrintedHeightThatItsOwnEquationDenies() {
        Case one = PublishedChecks.read(CHECKS, "printed example that fails").get(0);
        double rise = one.in("l") * Math.sin(Math.toRadians(one.in("alpha")));
        RaisedAxle raised = new RaisedAxle(Axle.REAR, rise, one.in("w_f2"), one.in("r_l"), one.in("r_l"));
        double height = raised.heightM(one.in("m") * one.in("g"), one.in("a1"), one.in("l"), SILENT);
        one.check("h", height);
        assertThat(height).isGreaterThan(0.34 + 1);
    }

    @ParameterizedTest
    @MethodSource
    void addsUpParts(Case one) {
        PointMass whole = derived(new PointMass(one.in("m1"), one.in("x1"), null, null), parts(one, 2));
        one.check("m", whole.massKg());
        if (one.expected().containsKey("x")) {
            one.check("x", whole.xM());
        }
        if (one.expected().containsKey("moment")) {
            one.check("moment", whole.massKg() * whole.xM());
        }
    }

    static List<Case> addsUpParts() {
        return PublishedChecks.read(CHECKS, "composite");
    }

    @ParameterizedTest
    @MethodSource
    void takesPartsOffAndPutsOthersOn(Case one) {
        double before = one.in("moment0") / one.in("m0");
        PointMass whole = derived(new PointMass(one.in("m0"), before, null, null), parts(one, 1));
        one.check("x", whole.xM());
        one.check("dx", whole.xM() - before);
    }

    static List<Case> takesPartsOffAndPutsOthersOn() {
        return PublishedChecks.read(CHECKS, "parts removed and added");
    }

    @ParameterizedTest
    @MethodSource
    void findsThePositionBetweenTwoWeighedAxles(Case one) {
        double wheelbase = one.in("x_r") - one.in("x_f");
        Weighing weighing = new Weighing.AxleLoads(one.in("w_f"), one.in("w_r"), null);
        one.check("x", one.in("x_f") + weighing.inPlan(wheelbase, null, SILENT).xM());
    }

    static List<Case> findsThePositionBetweenTwoWeighedAxles() {
        return PublishedChecks.read(CHECKS, "plan position from two axles");
    }

    private static List<Part> parts(Case one, int first) {
        List<Part> parts = new ArrayList<>();
        for (int i = first; one.inputs().containsKey("m" + i); i++) {
            PointMass mass = new PointMass(one.in("m" + i), one.in("x" + i), null, null);
            parts.add(new Part("/items/" + i, null, null, false, mass));
        }
        return parts;
    }

    private static PointMass derived(PointMass first, List<Part> parts) {
        Weighing weighing = new Weighing.Placed(first.massKg(), first.xM(), null);
        Input input = new Input(1, null, weighing, null, null, Rise.NONE, parts, null, new Ratings(null, null, null));
        Result result = CentreOfGravity.of(input, SILENT);
        assertThat(CentreOfGravity.derived(input, SILENT))
                .isEqualTo(result.occupied().whole());
        return result.occupied().whole();
    }
}
