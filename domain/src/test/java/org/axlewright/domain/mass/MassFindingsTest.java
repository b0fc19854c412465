package org.axlewright.domain.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.mass.CentreOfGravity.Input;
import org.axlewright.domain.mass.CentreOfGravity.Laden;
import org.axlewright.domain.mass.CentreOfGravity.Part;
import org.axlewright.domain.mass.CentreOfGravity.Ratings;
import org.axlewright.domain.mass.Weighing.Tracks;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Standing;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

class MassFindingsTest {

    private static final double L = 1.6;
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final Ratings NONE = new Ratings(null, null, null);

    private static List<Finding> findings(Weighing weighing, Ratings ratings, Laden laden, Part... parts) {
        Trace trace = Trace.withoutWorking();
        CentreOfGravity.of(
                new Input(
                        L, new Tracks(0.9, 0.9), weighing, null, null, Rise.NONE, Arrays.asList(parts), laden, ratings),
                trace);
        return trace.findings();
    }

    private static Part item(int index, double massKg, double xM, double yM) {
        return new Part("/items/" + index, null, null, false, new PointMass(massKg, xM, yM, null));
    }

    private static Part occupant(double massKg, double xM, double yM) {
        return new Part("/occupants/0", null, null, true, new PointMass(massKg, xM, yM, null));
    }

    @Test
    void isSilentAboutABalancedVehicle() {
        assertThat(findings(new Weighing.FrontShare(400, 0.45, 0.0), NONE, null))
                .isEmpty();
    }

    @Test
    void warnsBelowAFifthOnTheFrontAxleButNotAtIt() {
        assertThat(findings(new Weighing.FrontShare(400, 0.25, 0.0), NONE, null))
                .isEmpty();
        List<Finding> found = findings(new Weighing.FrontShare(400, 0.19, 0.0), NONE, null);
        assertThat(found)
                .extracting(Finding::code, Finding::level)
                .containsExactly(tuple("front-axle-light", Level.WARNING));
        assertThat(found.get(0).actual().si()).isCloseTo(0.19, within(1e-12));
        assertThat(found.get(0).limit().si()).isEqualTo(0.20);
        assertThat(found.get(0).source().standing()).isEqualTo(Standing.WEAK);
    }

    @Test
    void pointsAtThePartThatUnloadsTheFrontMostAndNeverAtSomebodyNotAboard() {
        List<Finding> found = findings(
                new Weighing.FrontShare(400, 0.25, 0.0), NONE, null, item(0, 30, 2.2, 0), occupant(150, 2.3, 0));
        assertThat(found)
                .extracting(Finding::code, Finding::state, Finding::pointer)
                .contains(tuple("front-axle-light", "occupied", "/occupants/0/position/x"));
        List<Finding> emptyOnly = findings(
                new Weighing.FrontShare(400, 0.21, 0.0), NONE, null, item(0, 60, 2.2, 0), occupant(150, 2.3, 0));
        assertThat(emptyOnly)
                .extracting(Finding::code, Finding::state, Finding::pointer)
                .contains(tuple("front-axle-light", "empty", "/items/0/position/x"));
    }

    @Test
    void pointsAtThePartTakenOffTheFront() {
        List<Finding> found = findings(new Weighing.FrontShare(400, 0.25, 0.0), NONE, null, item(0, -60, 0.1, 0));
        assertThat(found)
                .extracting(Finding::code, Finding::pointer)
                .containsExactly(tuple("front-axle-light", "/items/0"));
    }

    @Test
    void callsItADangerWhenAnAxleLeavesTheGround() {
        assertThat(findings(new Weighing.Placed(400, L + 0.1, 0.0), NONE, null))
                .extracting(Finding::code, Finding::level)
                .containsExactly(tuple("tips-rearward", Level.DANGER));
        assertThat(findings(new Weighing.Placed(400, -0.1, 0.0), NONE, null))
                .extracting(Finding::code, Finding::level)
                .containsExactly(tuple("tips-forward", Level.DANGER));
    }

    @Test
    void tellsALeanFromATipToTheSide() {
        assertThat(findings(new Weighing.Placed(400, 0.8, 0.04), NONE, null)).isEmpty();
        List<Finding> lean = findings(new Weighing.Placed(400, 0.8, -0.09), NONE, null);
        assertThat(lean)
                .extracting(Finding::code, Finding::level)
                .containsExactly(tuple("side-imbalance", Level.CAUTION));
        assertThat(lean.get(0).message()).startsWith("The left wheels");
        assertThat(lean.get(0).actual().si()).isCloseTo(0.6, within(1e-12));
        assertThat(findings(new Weighing.Placed(400, 0.8, 0.5), NONE, null))
                .extracting(Finding::code, Finding::level)
                .containsExactly(tuple("tips-sideways", Level.DANGER));
    }

    @Test
    void warnsOfEveryRatingThatIsExceededInEitherState() {
        Ratings ratings = new Ratings(150 * G, 230 * G, 420 * G);
        assertThat(findings(new Weighing.FrontShare(400, 0.40, 0.0), ratings, null, occupant(80, 0.8, 0)))
                .extracting(Finding::code, Finding::state, Finding::pointer)
                .containsExactly(
                        tuple("over-rating", "occupied", "/chassis/ratings/front"),
                        tuple("over-rating", "occupied", "/chassis/ratings/rear"),
                        tuple("over-rating", "occupied", "/chassis/ratings/total"),
                        tuple("over-rating", "empty", "/chassis/ratings/front"),
                        tuple("over-rating", "empty", "/chassis/ratings/rear"));
    }

    @Test
    void isContentWithALoadAtItsRating() {
        double weightN = 400 * G;
        assertThat(findings(new Weighing.Placed(400, 0.8, 0.0), new Ratings(null, null, weightN), null))
                .isEmpty();
    }

    @Test
    void saysThatAMeasuredVehicleOverrides() {
        assertThat(findings(new Weighing.FrontShare(400, 0.45, 0.0), NONE, new Laden(430.0, null, null, null)))
                .extracting(Finding::code, Finding::pointer)
                .containsExactly(tuple("laden-overrides", "/laden"));
        assertThat(findings(null, NONE, new Laden(430.0, 0.8, null, null))).isEmpty();
    }

    @Test
    void doesNotTrustASmallAngle() {
        assertThat(raised(16)).extracting(Finding::code).containsExactly("height-scale-error");
        assertThat(raised(12))
                .extracting(Finding::code, Finding::level)
                .containsExactly(
                        tuple("raised-axle-angle-small", Level.CAUTION), tuple("height-scale-error", Level.NOTICE));
        assertThat(raised(8))
                .extracting(Finding::code, Finding::level)
                .containsExactly(
                        tuple("raised-axle-angle-small", Level.WARNING), tuple("height-scale-error", Level.NOTICE));
    }

    /** Reference, sensitivity: L 1.65 m, W 5000 N, 20 degrees, an error of 10 N is 9.1 mm. */
    @Test
    void saysWhatAKilogramOnTheScaleDoes() {
        Trace trace = Trace.withoutWorking();
        new RaisedAxle(Axle.REAR, 1.65 * Math.sin(Math.toRadians(20)), 2500, 0.22, 0.22)
                .heightM(5000, 0.8, 1.65, trace);
        double perNewtonMm = trace.findings().get(0).actual().si() / G * 1000;
        assertThat(10 * perNewtonMm).isCloseTo(9.1, within(0.05));
        assertThat(trace.cautions()).extracting(caution -> caution.code()).containsExactly("blocked-springs");
    }

    private static List<Finding> raised(double degrees) {
        Trace trace = Trace.withoutWorking();
        new RaisedAxle(Axle.REAR, L * Math.sin(Math.toRadians(degrees)), 2000, 0.22, 0.22).heightM(4000, 0.8, L, trace);
        return trace.findings();
    }
}
