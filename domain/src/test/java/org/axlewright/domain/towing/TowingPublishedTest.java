package org.axlewright.domain.towing;

import static org.axlewright.domain.towing.Trains.G;
import static org.axlewright.domain.towing.Trains.SMOOTH;
import static org.axlewright.domain.towing.Trains.ask;
import static org.axlewright.domain.towing.Trains.bound;
import static org.axlewright.domain.towing.Trains.engine;
import static org.axlewright.domain.towing.Trains.footing;
import static org.axlewright.domain.towing.Trains.need;
import static org.axlewright.domain.towing.Trains.trailers;
import static org.axlewright.domain.towing.Trains.tug;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Drawbar;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.quantity.ForceUnit;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.quantity.TorqueUnit;
import org.axlewright.domain.towing.HitchedBraking.Holding;
import org.axlewright.domain.towing.HitchedBraking.Stop;
import org.axlewright.domain.towing.Towing.Effort;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Towing against what is printed. A vehicle alone is asked as one that tows a feather. */
class TowingPublishedTest {

    private static final double FEATHER_KG = 1e-6;
    private static final Drawbar LOW = new Drawbar(0, 0, 0);
    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> stops() {
        return of("locked-wheel stop");
    }

    static List<Case> wheelForces() {
        return of("wheel force");
    }

    static List<Case> massesFromGrade() {
        return of("mass from grade");
    }

    static List<Case> overhangs() {
        return of("axle shift from rear overhang");
    }

    static List<Case> trucks() {
        return of("trailer behind a truck");
    }

    static List<Case> allWheelDrives() {
        return of("drawbar pull of an all-wheel drive");
    }

    static List<Case> motors() {
        return of("drawbar pull of a motor");
    }

    static List<Case> rules() {
        return of("towed mass by rule");
    }

    static List<Case> heights() {
        return of("drawbar height");
    }

    static List<Case> slopes() {
        return of("load on a slope");
    }

    static List<Case> oneAxle() {
        return of("brakes of one axle");
    }

    static List<Case> noseDown() {
        return of("rear brakes nose down");
    }

    static List<Case> held() {
        return of("rear tyres hold a descent");
    }

    static List<Case> starts() {
        return of("starting pull");
    }

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/towing/checks.csv", topics);
    }

    private static Stop stop(Stance stance, AxleSet braked, double friction) {
        Tug alone = tug(stance.massKg(), SMOOTH, footing(stance, AxleSet.REAR, braked, friction, LOW), null);
        Towing.Result result = ask(trailers(FEATHER_KG, SMOOTH, 0), alone, 0.1, null);
        return Objects.requireNonNull(result.braking()).level();
    }

    @ParameterizedTest
    @MethodSource("stops")
    void lockedWheelsStopAtTheirFriction(Case row) {
        double mass = row.in("w") * 1000 / row.in("g");
        Stance stance = new Stance(mass, row.in("l"), row.in("l_f"), row.in("h"));
        double b = need(stop(stance, AxleSet.ALL, row.in("mu")).deceleration());
        row.check("a", b);
        row.check("w_wheel_front", stance.frontLoadN(0, -b, SILENT) / 2);
        row.check("w_wheel_rear", stance.rearLoadN(0, -b, SILENT) / 2);
    }

    @ParameterizedTest
    @MethodSource("wheelForces")
    void aTorquePushesByTheReductionOverTheRadius(Case row) {
        Tug.Engine engine = engine(row.in("ratio_over_r"), 1, 1, row.in("torque"));
        row.check("f", engine.thrustN(row.in("torque")));
        Tug puller = tug(100, SMOOTH, null, engine);
        double towed = bound(ask(trailers(50, 0.02, 0), puller, 0, null), Limit.MOTOR_DUTY_LEVEL);
        row.check("f", towed * 0.02 * G);
    }

    @ParameterizedTest
    @MethodSource("massesFromGrade")
    void aPullTellsTheMassOnAGrade(Case row) {
        Tug puller = tug(1e-6, SMOOTH, null, engine(1, 1, 1, row.in("f")));
        Towing.Result result = ask(trailers(50, SMOOTH, 0), puller, 0, GradeUnit.PERCENT.toSi(row.in("grade")));
        row.check("m", bound(result, Limit.MOTOR_DUTY_GRADE));
    }

    @ParameterizedTest
    @MethodSource("overhangs")
    void loadBehindTheAxleLiftsTheFront(Case row) {
        Drawbar drawbar = new Drawbar(0.3, row.in("d"), row.in("dm") * row.in("g"));
        row.check("dw_f", drawbar.frontChangeN(0, row.in("l"), 0, SILENT));
    }

    @ParameterizedTest
    @MethodSource("heights")
    void pullAtAHeightLiftsTheFront(Case row) {
        Drawbar drawbar = new Drawbar(row.in("h"), 0.2, 0);
        row.check("dw_f", drawbar.frontChangeN(row.in("p"), row.in("l"), 0, SILENT));
    }

    @ParameterizedTest
    @MethodSource("trucks")
    void theHitchPullsWhatTheTrailerNeeds(Case row) {
        Tug truck = tug(row.in("m"), row.in("f_v"), null, null);
        Effort start = ask(trailers(row.in("m_t"), row.in("f_t"), 0), truck, row.in("a"), null)
                .start();
        row.check("pull", start.pullN());
        row.check("thrust", need(start.thrustN()));
    }

    @ParameterizedTest
    @MethodSource("allWheelDrives")
    void allWheelsPullTheirFrictionTimesTheWeight(Case row) {
        double mass = MassUnit.POUND.toSi(row.in("w"));
        Stance stance = new Stance(mass, 2, 1, 0.6);
        Tug truck = tug(mass, SMOOTH, footing(stance, AxleSet.ALL, AxleSet.ALL, row.in("mu"), LOW), null);
        double towed = bound(ask(trailers(500, 0.02, 0), truck, 0, null), Limit.GRIP_LEVEL);
        row.check("pull", ForceUnit.POUND_FORCE.fromSi(towed * 0.02 * G));
    }

    @ParameterizedTest
    @MethodSource("motors")
    void whatTheVehicleTakesForItselfDoesNotPull(Case row) {
        double torque = TorqueUnit.POUND_FORCE_FOOT.toSi(row.in("torque") / 12);
        Tug.Engine engine = engine(row.in("ratio"), LengthUnit.INCH.toSi(row.in("r")), 1, torque);
        row.check("thrust", ForceUnit.POUND_FORCE.fromSi(engine.thrustN(torque)));
        Tug puller = tug(MassUnit.POUND.toSi(row.in("gvw")), row.in("rolling"), null, engine);
        double towed = bound(ask(trailers(500, 0.02, 0), puller, 0, null), Limit.MOTOR_DUTY_LEVEL);
        row.check("pull", ForceUnit.POUND_FORCE.fromSi(towed * 0.02 * G));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void towsByRule(Case row) {
        boolean braked = row.inText("braked").equals("true");
        Trailers trailers = new Trailers(100, 1, 0.02, 1, braked, null, 0, 0);
        Tug quad = new Tug(400, row.in("m_0"), 0.02, null, null, null);
        row.check("m_t", bound(ask(trailers, quad, 0, null), braked ? Limit.BRAKED_RULE : Limit.UNBRAKED_RULE));
    }

    @ParameterizedTest
    @MethodSource("slopes")
    void aSlopeTakesItsShareOfTheWeight(Case row) {
        Towing.Result result = ask(trailers(row.in("m"), row.in("f"), 0), null, 0, Math.toRadians(row.in("slope")));
        row.check("flat", result.level().pullN());
        row.check("up", Objects.requireNonNull(result.grade()).pullN());
    }

    @ParameterizedTest
    @MethodSource("oneAxle")
    void brakesOfOneAxleStopWithWhatItCarries(Case row) {
        Stance stance = new Stance(500, row.in("l"), row.in("l_f"), row.in("h"));
        row.check("rear", need(stop(stance, AxleSet.REAR, row.in("mu")).deceleration()));
        row.check("front", need(stop(stance, AxleSet.FRONT, row.in("mu")).deceleration()));
        row.check("all", need(stop(stance, AxleSet.ALL, row.in("mu")).deceleration()));
    }

    @ParameterizedTest
    @MethodSource("noseDown")
    void rearBrakesAloneHoldASteepestDescent(Case row) {
        Stance stance = new Stance(500, row.in("l"), row.in("l_f"), row.in("h"));
        Tug alone = tug(500, SMOOTH, footing(stance, AxleSet.REAR, AxleSet.REAR, row.in("mu"), LOW), null);
        HitchedBraking.Result braking = Objects.requireNonNull(
                ask(trailers(FEATHER_KG, SMOOTH, 0), alone, 0, null).braking());
        row.check("grade", GradeUnit.PERCENT.fromSi(need(braking.jackKnifeRad())));
    }

    @ParameterizedTest
    @MethodSource("held")
    void holdingTheSpeedTakesGripOfTheRearTyres(Case row) {
        Stance stance = new Stance(500, row.in("l"), row.in("l_f"), row.in("h"));
        Tug alone = tug(500, SMOOTH, footing(stance, AxleSet.REAR, AxleSet.REAR, 1, LOW), null);
        Towing.Result result = ask(trailers(FEATHER_KG, SMOOTH, 0), alone, 0, GradeUnit.PERCENT.toSi(row.in("grade")));
        Holding holding =
                Objects.requireNonNull(Objects.requireNonNull(result.braking()).holding());
        row.check("mu", need(holding.rearGripUse()));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void startingTakesTwiceTheRolling(Case row) {
        Trailers trailers = new Trailers(row.in("m"), 1, row.in("coefficient") / 2, 2, false, null, 0, 0);
        row.check("pull", ask(trailers, null, 0, null).start().pullN());
    }
}
