package org.axlewright.domain.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.braking.BrakeBalance.NOT_THE_LIMIT_N;
import static org.axlewright.domain.braking.Vehicles.UNKNOWN;
import static org.axlewright.domain.braking.Vehicles.brakes;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.braking.Braking.State;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any stop and any ramp. */
class BrakingInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();

    private static Stance stance(double massKg, double place, double height) {
        return new Stance(massKg, 1.8, 1.8 * place, height);
    }

    @Property(seed = "20261125")
    void eachAxleIsTheLeastOfItsBrakesAndItsTyres(
            @ForAll @DoubleRange(min = 100, max = 2000) double mass,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double place,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double height,
            @ForAll @DoubleRange(min = 0, max = 9000) double front,
            @ForAll @DoubleRange(min = 0, max = 9000) double rear,
            @ForAll @DoubleRange(min = 0.05, max = 1.2) double mu,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double grade) {
        BrakeBalance balance = BrakeBalance.of(
                stance(mass, place, height), brakes(front), brakes(rear), NOT_THE_LIMIT_N, mu, grade, SILENT);
        double close = 1e-6 * mass * Constants.STANDARD_GRAVITY;

        assertThat(balance.frontN() + balance.rearN()).isCloseTo(balance.totalN(), within(close));
        assertThat(balance.frontN()).isLessThanOrEqualTo(front + close);
        assertThat(balance.frontN()).isLessThanOrEqualTo(mu * balance.frontLoadN() + close);
        assertThat(balance.rearN()).isLessThanOrEqualTo(rear + close);
        assertThat(balance.rearN()).isLessThanOrEqualTo(mu * balance.rearLoadN() + close);
        if (balance.frontLimit() != BrakeLimit.TIPPING) {
            double least = Math.min(front, mu * balance.frontLoadN()) + Math.min(rear, mu * balance.rearLoadN());
            assertThat(balance.totalN()).isCloseTo(least, within(close));
        }
        assertThat(balance.frontLoadN() + balance.rearLoadN())
                .isCloseTo(mass * Constants.STANDARD_GRAVITY * Math.cos(grade), within(close));
    }

    @Property(seed = "20261125")
    void agreesWithTheGripOfOneAxleAlone(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double place,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double height,
            @ForAll @DoubleRange(min = 0.05, max = 1.0) double mu,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double grade) {
        Stance stance = stance(600, place, height);
        double rear = BrakeBalance.of(stance, WheelBrakes.NONE, UNKNOWN, NOT_THE_LIMIT_N, mu, grade, SILENT)
                .totalN();
        double front = BrakeBalance.of(stance, UNKNOWN, WheelBrakes.NONE, NOT_THE_LIMIT_N, mu, grade, SILENT)
                .totalN();
        double tips = stance.weightN() * Math.cos(grade) * stance.xM() / height;

        assertThat(rear).isCloseTo(stance.brakeLimitN(AxleSet.REAR, mu, grade, SILENT), within(1e-6 * rear));
        assertThat(front)
                .isCloseTo(Math.min(tips, stance.brakeLimitN(AxleSet.FRONT, mu, grade, SILENT)), within(1e-6 * front));
    }

    @Property(seed = "20261125")
    void theWheelsThatLockFirstAreOnTheLimitThere(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double place,
            @ForAll @DoubleRange(min = 0.2, max = 1.0) double height,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double share,
            @ForAll @DoubleRange(min = 0.05, max = 1.0) double mu) {
        Stance stance = stance(600, place, height);
        BrakeBalance hard =
                BrakeBalance.of(stance, brakes(share * 1e5), brakes((1 - share) * 1e5), NOT_THE_LIMIT_N, mu, 0, SILENT);
        double lockN = Math.min(hard.lockFrontN(), hard.lockRearN());
        BrakeBalance there = BrakeBalance.of(
                stance, brakes(share * lockN), brakes((1 - share) * lockN), NOT_THE_LIMIT_N, mu, 0, SILENT);

        assertThat(there.totalN()).isCloseTo(lockN, within(1e-6 * lockN));
        double usedFront = there.frontN() / (mu * there.frontLoadN());
        double usedRear = there.rearN() / (mu * there.rearLoadN());
        assertThat(Math.max(usedFront, usedRear)).isCloseTo(1, within(1e-6));
        assertThat(hard.firstToLock(1e5)).isEqualTo(usedRear >= usedFront ? FirstToLock.REAR : FirstToLock.FRONT);
    }

    @Property(seed = "20261125")
    void distanceGrowsWithTheSquareOfTheSpeed(
            @ForAll @DoubleRange(min = 0.5, max = 20) double v,
            @ForAll @DoubleRange(min = 200, max = 4000) double force) {
        Stop once = Vehicles.level(Vehicles.stop(
                new State(600, Vehicles.runabout(600)), AxleSet.ALL, brakes(force), brakes(force / 2), 0.7, null, v));
        Stop twice = Vehicles.level(Vehicles.stop(
                new State(600, Vehicles.runabout(600)),
                AxleSet.ALL,
                brakes(force),
                brakes(force / 2),
                0.7,
                null,
                2 * v));

        assertThat(twice.brakingDistanceM())
                .isCloseTo(4 * once.brakingDistanceM(), within(1e-9 * twice.brakingDistanceM()));
        assertThat(twice.heatJ()).isCloseTo(4 * once.heatJ(), within(1e-9 * twice.heatJ()));
    }

    @Property(seed = "20261125")
    void moreMassNeverStopsShorterAndCancelsOnTheTyres(
            @ForAll @DoubleRange(min = 200, max = 1500) double mass,
            @ForAll @DoubleRange(min = 1, max = 2) double more,
            @ForAll @DoubleRange(min = 100, max = 8000) double force) {
        Stop light = Vehicles.level(Vehicles.stop(
                new State(mass, Vehicles.runabout(mass)),
                AxleSet.REAR,
                WheelBrakes.NONE,
                brakes(force),
                0.5,
                null,
                6.0));
        Stop heavy = Vehicles.level(Vehicles.stop(
                new State(mass * more, Vehicles.runabout(mass * more)),
                AxleSet.REAR,
                WheelBrakes.NONE,
                brakes(force),
                0.5,
                null,
                6.0));

        assertThat(heavy.brakingDistanceM()).isGreaterThanOrEqualTo(light.brakingDistanceM() * (1 - 1e-9));
        if (heavy.rear().limit() == BrakeLimit.TYRES) {
            assertThat(heavy.brakingDistanceM())
                    .isCloseTo(light.brakingDistanceM(), within(1e-9 * light.brakingDistanceM()));
        }
    }

    @Property(seed = "20261125")
    void steeperDownhillNeverStopsShorter(
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double grade,
            @ForAll @DoubleRange(min = 0, max = 0.1) double steeper) {
        Stop one = Vehicles.grade(Vehicles.stop(
                new State(600, Vehicles.runabout(600)), AxleSet.ALL, brakes(2500), brakes(1500), 0.6, grade, 5.0));
        Stop other = Vehicles.grade(Vehicles.stop(
                new State(600, Vehicles.runabout(600)),
                AxleSet.ALL,
                brakes(2500),
                brakes(1500),
                0.6,
                grade - steeper,
                5.0));

        assertThat(other.decelerationMPS2()).isLessThanOrEqualTo(one.decelerationMPS2() + 1e-9);
    }

    @Property(seed = "20261125")
    void theWorkOfTheBrakesIsTheEnergyOfTheVehicle(
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double grade,
            @ForAll @DoubleRange(min = 0.5, max = 15) double v) {
        Stop stop = Vehicles.grade(Vehicles.stop(
                new State(600, Vehicles.runabout(600)), AxleSet.ALL, brakes(2500), brakes(1500), 0.6, grade, v));
        Assume.that(stop.brakingDistanceM() != null);

        assertThat(stop.forceN() * stop.brakingDistanceM()).isCloseTo(stop.heatJ(), within(1e-9 * stop.heatJ()));
        assertThat(stop.front().heatJ() + stop.rear().heatJ()).isCloseTo(stop.heatJ(), within(1e-9 * stop.heatJ()));
    }

    /** Turned round, the other axle is held and the other way is down. */
    @Property(seed = "20261125")
    void noseUpOnOneAxleIsNoseDownOnTheOther(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double place,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double height,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double mu,
            @ForAll @DoubleRange(min = 50, max = 6000) double force) {
        Hold up = Hold.of(600, stance(600, place, height), AxleSet.REAR, force, mu, true, SILENT);
        Hold down = Hold.of(600, stance(600, 1 - place, height), AxleSet.FRONT, force, mu, false, SILENT);

        assertThat(up.gradeRad()).isCloseTo(down.gradeRad(), within(1e-12));
        assertThat(up.limit()).isEqualTo(down.limit());
    }

    @Property(seed = "20261125")
    void onTheSteepestRampTheHeldAxleUsesAllItsGrip(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double place,
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double height,
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double mu) {
        Stance stance = stance(600, place, height);
        Hold down = Hold.of(600, stance, AxleSet.REAR, null, mu, false, SILENT);
        Assume.that(down.limit() == HoldLimit.TYRES);
        double rearLoadN = stance.rearLoadN(-down.gradeRad(), 0, SILENT);

        assertThat(mu * rearLoadN)
                .isCloseTo(stance.weightN() * Math.sin(down.gradeRad()), within(1e-6 * stance.weightN()));
    }

    @Property(seed = "20261125")
    void aMeasuredStopIsReproduced(
            @ForAll @DoubleRange(min = 1, max = 15) double v,
            @ForAll @DoubleRange(min = 0.5, max = 4) double deceleration,
            @ForAll @DoubleRange(min = 300, max = 1500) double mass) {
        double distance = v * v / (2 * deceleration);
        MeasuredStop measured = new MeasuredStop(v, distance, 0, mass, 1);
        Braking.Input input = new Braking.Input(
                new State(mass, Vehicles.runabout(mass)),
                null,
                null,
                AxleSet.ALL,
                UNKNOWN,
                UNKNOWN,
                measured,
                0.05,
                0.9,
                true,
                null,
                false,
                v,
                1,
                null,
                null,
                null,
                null);

        assertThat(Vehicles.level(input).brakingDistanceM()).isCloseTo(distance, within(1e-9 * distance));
    }

    @Test
    void aTallerTyreLengthensTheStopAsItsRadius() {
        WheelBrakes rear = new WheelBrakes(1000.0, 1.25, null, null);
        Braking.Result result = Braking.of(
                Vehicles.stop(
                        new State(600, Vehicles.runabout(600)), AxleSet.REAR, WheelBrakes.NONE, rear, 0.9, null, 5.0),
                SILENT);

        assertThat(result.costs().get(0).change()).isEqualTo(Braking.Change.TYRES);
        assertThat(result.costs().get(0).factor()).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void withoutFrictionBothBrakesAndTyresAreBoundFromBelow() {
        MeasuredStop measured = new MeasuredStop(5, 5, 0, 600, 1);
        MeasuredStop.Calibration blind = measured.tells(Vehicles.runabout(600), AxleSet.REAR, null, SILENT);

        assertThat(blind.limit()).isNull();
        assertThat(blind.frictionAtLeast()).isNotNull();
        assertThat(measured.tells(Vehicles.runabout(600), AxleSet.REAR, 0.9, SILENT)
                        .limit())
                .isEqualTo(BrakeLimit.BRAKES);
        assertThat(measured.tells(Vehicles.runabout(600), AxleSet.REAR, blind.frictionAtLeast(), SILENT)
                        .limit())
                .isEqualTo(BrakeLimit.TYRES);
    }
}
