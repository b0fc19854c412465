package org.axlewright.domain.towing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.towing.Trains.G;
import static org.axlewright.domain.towing.Trains.ask;
import static org.axlewright.domain.towing.Trains.bound;
import static org.axlewright.domain.towing.Trains.engine;
import static org.axlewright.domain.towing.Trains.footing;
import static org.axlewright.domain.towing.Trains.need;
import static org.axlewright.domain.towing.Trains.trailers;
import static org.axlewright.domain.towing.Trains.tug;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Drawbar;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.towing.HitchedBraking.Holding;
import org.axlewright.domain.towing.HitchedBraking.Stop;
import org.axlewright.domain.towing.Towing.Effort;
import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What must hold for every train. */
class TowingInvariantsTest {

    private static final Stance STANCE = new Stance(388, 1.18, 0.66, 0.5);
    private static final double MU = 0.6;

    private static Tug tugWith(AxleSet driven, AxleSet braked, double hitchLoadN) {
        return tug(388, 0.015, footing(STANCE, driven, braked, MU, new Drawbar(0.3, 0.26, hitchLoadN)), null);
    }

    private static Tug rearTug(double hitchLoadN) {
        return tugWith(AxleSet.REAR, AxleSet.REAR, hitchLoadN);
    }

    @Property
    void axleLoadsAddUpToTheWeightAndTheHitchLoad(
            @ForAll @DoubleRange(min = 10, max = 3000) double towed,
            @ForAll @DoubleRange(min = -50, max = 50) double hitchLoad,
            @ForAll @DoubleRange(min = 0, max = 0.4) double grade,
            @ForAll @DoubleRange(min = 0, max = 2) double acceleration) {
        Towing.Result result = ask(trailers(towed, 0.02, hitchLoad), rearTug(hitchLoad), acceleration, grade);
        for (Effort effort : new Effort[] {result.level(), result.start()}) {
            assertThat(need(effort.frontN()) + need(effort.rearN())).isCloseTo(388 * G + hitchLoad, within(1e-6));
        }
        Effort uphill = Objects.requireNonNull(result.startOnGrade());
        assertThat(need(uphill.frontN()) + need(uphill.rearN()))
                .isCloseTo((388 * G + hitchLoad) * Math.cos(grade), within(1e-6));
    }

    @Property
    void pullIsLinearInTheTowedMass(
            @ForAll @DoubleRange(min = 10, max = 3000) double towed,
            @ForAll @DoubleRange(min = 0, max = 0.7) double grade,
            @ForAll @DoubleRange(min = 0, max = 2) double acceleration) {
        Effort one = Objects.requireNonNull(
                ask(trailers(towed, 0.02, 0), null, acceleration, grade).startOnGrade());
        Effort three = Objects.requireNonNull(
                ask(trailers(3 * towed, 0.02, 0), null, acceleration, grade).startOnGrade());
        assertThat(three.pullN() / one.pullN()).isCloseTo(3, within(1e-9));
    }

    @Property
    void aHitchThatLiftsDoesTheOppositeOfOneThatPresses(
            @ForAll @DoubleRange(min = 0, max = 2000) double load,
            @ForAll @DoubleRange(min = -0.5, max = 1) double overhang,
            @ForAll @DoubleRange(min = -2000, max = 2000) double pull) {
        Trace silent = Trace.withoutWorking();
        Drawbar presses = new Drawbar(0.3, overhang, load);
        Drawbar lifts = new Drawbar(0.3, overhang, -load);
        assertThat(presses.frontChangeN(pull, 1.2, 0, silent))
                .isCloseTo(-lifts.frontChangeN(-pull, 1.2, 0, silent), within(1e-9));
        assertThat(presses.rearChangeN(pull, 1.2, 0, silent))
                .isCloseTo(-lifts.rearChangeN(-pull, 1.2, 0, silent), within(1e-9));
    }

    /** Tow exactly the mass of a limit: the limit is met exactly. */
    @Property
    void towingTheLimitMeetsIt(
            @ForAll @DoubleRange(min = 0.01, max = 0.15) double grade,
            @ForAll @DoubleRange(min = 0, max = 300) double hitchLoad) {
        for (AxleSet driven : AxleSet.values()) {
            Footing footing =
                    new Footing(STANCE, new Drawbar(0.3, 0.26, hitchLoad), driven, AxleSet.ALL, MU, 2900.0, null);
            Tug puller = tug(388, 0.015, footing, engine(24, 0.19, 0.9, 4.3));
            Towing.Result asked = ask(trailers(100, 0.02, hitchLoad), puller, 0.3, grade);
            assertThat(need(effort(puller, hitchLoad, grade, bound(asked, Limit.GRIP_GRADE))
                            .gripUse()))
                    .isCloseTo(1, within(1e-9));
            assertThat(need(effort(puller, hitchLoad, grade, bound(asked, Limit.FRONT_AXLE_GRADE))
                            .frontShare()))
                    .isCloseTo(0.2, within(1e-9));
            Towing.Result atRating =
                    ask(trailers(bound(asked, Limit.REAR_RATING), 0.02, hitchLoad), puller, 0.3, grade);
            assertThat(need(atRating.level().rearN())).isCloseTo(2900, within(1e-6));
            Towing.Result atStart = ask(trailers(bound(asked, Limit.GRIP_START), 0.02, hitchLoad), puller, 0.3, grade);
            assertThat(need(atStart.start().gripUse())).isCloseTo(1, within(1e-9));
            double duty = bound(asked, Limit.MOTOR_DUTY_GRADE);
            if (duty > 0) {
                assertThat(Objects.requireNonNull(
                                        effort(puller, hitchLoad, grade, duty).motor())
                                .torqueNm())
                        .isCloseTo(4.3, within(1e-9));
            }
        }
    }

    private static Effort effort(Tug puller, double hitchLoad, double grade, double towed) {
        return Objects.requireNonNull(
                ask(trailers(towed, 0.02, hitchLoad), puller, 0.3, grade).grade());
    }

    /** Newton for the train, grip for the braked axle: both must hold at the deceleration given. */
    @Property
    void aStopBalancesForcesAndUsesTheGripOfTheBrakedAxle(
            @ForAll @DoubleRange(min = 10, max = 1500) double towed,
            @ForAll @DoubleRange(min = 0, max = 300) double hitchLoad,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double grade,
            @ForAll @DoubleRange(min = 0, max = 2000) double brakes) {
        for (AxleSet braked : AxleSet.values()) {
            Tug stopping = tugWith(AxleSet.REAR, braked, hitchLoad);
            Trailers train = new Trailers(towed, 1, 0.02, 1, true, brakes, hitchLoad, 0);
            HitchedBraking.Result result =
                    Objects.requireNonNull(ask(train, stopping, 0.3, grade).braking());
            Stop stop = Objects.requireNonNull(result.downhill());
            if (stop.deceleration() == null) {
                continue;
            }
            double b = stop.deceleration();
            double push = need(stop.hitchPushN());
            double cos = Math.cos(grade);
            double trailerPress = (towed * G - hitchLoad) * cos;
            double trailerHold = Math.min(brakes, MU * Math.max(0, trailerPress)) + 0.02 * trailerPress;
            assertThat(towed * b).isCloseTo(trailerHold + push - towed * G * Math.sin(grade), within(1e-6));
            double force = 388 * b + 388 * G * Math.sin(grade) + push - 0.015 * (388 * G + hitchLoad) * cos;
            double rear = 388 * G * cos * 0.66 / 1.18
                    - 388 * 0.5 * (G * Math.sin(grade) + b) / 1.18
                    - push * 0.3 / 1.18
                    + hitchLoad * cos * (1.18 + 0.26) / 1.18;
            double whole = (388 * G + hitchLoad) * cos;
            double held = switch (braked) {
                case REAR -> rear;
                case FRONT -> whole - rear;
                case ALL -> whole;
            };
            assertThat(force).isCloseTo(MU * held, within(1e-6));
        }
    }

    @Property
    void atTheJackKnifeGradeTheRearTyresAreAtTheirLimit(
            @ForAll @DoubleRange(min = 10, max = 1500) double towed,
            @ForAll @DoubleRange(min = 0, max = 1.2) double angle) {
        for (AxleSet braked : new AxleSet[] {AxleSet.REAR, AxleSet.ALL}) {
            Trailers train = new Trailers(towed, 2, 0.02, 2, false, null, 0, angle);
            Tug holding = tugWith(AxleSet.REAR, braked, 0);
            Double knife = Objects.requireNonNull(ask(train, holding, 0.3, null).braking())
                    .jackKnifeRad();
            if (knife == null || knife == 0) {
                continue;
            }
            Holding there = Objects.requireNonNull(
                    Objects.requireNonNull(ask(train, holding, 0.3, knife).braking())
                            .holding());
            assertThat(need(there.rearGripUse())).isCloseTo(1, within(1e-6));
            assertThat(bound(ask(train, holding, 0.3, knife), Limit.DESCENT_GRIP) / towed)
                    .isCloseTo(1, within(1e-5));
        }
    }

    @Property
    void moreTowedMassStopsLaterAndBrakesOnItStopSooner(
            @ForAll @DoubleRange(min = 10, max = 1500) double towed,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double grade) {
        Tug puller = rearTug(0);
        double alone = need(stopLevel(trailers(1, 0.02, 0), puller).deceleration());
        double train = need(stopLevel(trailers(1 + towed, 0.02, 0), puller).deceleration());
        Trailers own = new Trailers(1 + towed, 1, 0.02, 1, true, 0.2 * towed * G, 0, 0);
        assertThat(train).isLessThan(alone);
        assertThat(need(stopLevel(own, puller).deceleration())).isGreaterThan(train);
        Stop down = Objects.requireNonNull(Objects.requireNonNull(
                        ask(trailers(towed, 0.02, 0), puller, 0, grade).braking())
                .downhill());
        assertThat(need(down.deceleration()))
                .isLessThan(need(stopLevel(trailers(towed, 0.02, 0), puller).deceleration()));
    }

    private static Stop stopLevel(Trailers train, Tug puller) {
        return Objects.requireNonNull(ask(train, puller, 0, null).braking()).level();
    }

    @Property
    void aSeriesMotorTakesTheRootOfTheTorque(@ForAll @DoubleRange(min = 0.1, max = 20) double torque) {
        Engine series = new Engine(24, 0.19, 0.9, 4.0, null, 4.0, 30.0, 30.0, true, 1800.0, false, null, null, 0.05);
        MotorLoad.Result load = MotorLoad.of(series, torque, 1, Trace.withoutWorking());
        assertThat(need(load.currentA())).isCloseTo(30 * Math.sqrt(torque / 4), within(1e-9));
        assertThat(need(load.heatRatio())).isCloseTo(torque / 4, within(1e-9));
        assertThat(need(load.windingLossW())).isCloseTo(30 * 30 * torque / 4 * 0.05, within(1e-9));
        assertThat(need(load.timeS())).isCloseTo(torque > 4 ? 1800 * 4 / torque : 1800, within(1e-6));
    }

    @Test
    void findsWhatStandsOut() {
        Trace trace = Trace.withWorking();
        Footing footing = new Footing(
                new Stance(388, 1.18, 0.9, 0.5),
                new Drawbar(0.6, 0.5, 300),
                AxleSet.REAR,
                AxleSet.REAR,
                0.4,
                3000.0,
                4000.0);
        Engine engine = new Engine(8, 0.19, 0.9, 2.0, 6.0, 6.0, 60.0, 20.0, false, 1800.0, false, 40.0, 400.0, 0.06);
        Tug puller = new Tug(388, 310.0, 0.015, 1.0, footing, engine);
        Trailers train = new Trailers(1500, 3, 0.03, 2, false, null, 300, 0.3);
        Towing.of(new Towing.Input(train, puller, 1, 0.5, 0.15, false), trace);
        assertThat(trace.findings())
                .extracting(Finding::code)
                .contains(
                        "towed-mass-over-rule",
                        "unbraked-on-a-grade",
                        "front-axle-light",
                        "front-wheels-lift",
                        "over-rating",
                        "wheels-slip",
                        "motor-stalls",
                        "controller-holds-back",
                        "motor-overheats",
                        "near-stall",
                        "brakes-taken-at-grip",
                        "runs-away",
                        "jack-knife");
        assertThat(trace.findings())
                .allSatisfy(finding -> assertThat(finding.pointer()).startsWith("/"));
        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
        assertThat(trace.cautions()).extracting("code").containsExactly("towing-limits");
    }

    @Test
    void aHitchThatLiftsAndBrakesThatLockAreTold() {
        Trace trace = Trace.withoutWorking();
        Footing footing = footing(STANCE, AxleSet.REAR, AxleSet.REAR, 0.4, new Drawbar(0.3, 0.2, -200));
        Trailers train = new Trailers(200, 1, 0.02, 1, true, 5000.0, -200, 0);
        Towing.of(new Towing.Input(train, tug(388, 0.015, footing, null), 1, 0, 0.02, false), trace);
        assertThat(trace.findings()).extracting(Finding::code).contains("hitch-lifts", "trailer-wheels-lock");
    }

    @Test
    void withoutTheVehicleThePullIsStillTold() {
        Towing.Result result = ask(trailers(480, 0.02, 0), null, 0.3, null);
        assertThat(result.level().pullN()).isCloseTo(480 * 0.02 * G, within(1e-9));
        assertThat(result.level().thrustN()).isNull();
        assertThat(result.bounds()).isEmpty();
        assertThat(result.braking()).isNull();
    }
}
