package org.axlewright.domain.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.axlewright.domain.drive.Gearing.Before;
import org.axlewright.domain.drive.Gearing.Change;
import org.axlewright.domain.drive.Gearing.MotorPlate;
import org.axlewright.domain.drive.Gearing.Part;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;

/** What holds of every gearing and every drive. */
class DriveInvariantsTest {

    /** A series motor: 9 N m at 58 A, 18 milliohm. */
    private static final TorqueLaw SERIES = new TorqueLaw(9, 58, true);

    private static Drives series(double emfV, double ohm, double limitA) {
        return Drives.plain()
                .circuit(SERIES, 0.018)
                .motor(new MotorModel.SeriesDc(SERIES, 0.018, null))
                .supply(new Supply(emfV, ohm, null))
                .motorLimit(limitA);
    }

    private static Gearing.Input gearing(
            double rollout,
            double rolloutBefore,
            double ratio,
            double ratioBefore,
            double volts,
            double voltsBefore,
            double mass,
            double massBefore) {
        return new Gearing.Input(
                new Wheel("/tyres/rear", rollout, false, rolloutBefore, null),
                new Reduction(ratio, null),
                new MotorPlate(300, 48.0, false, false, null),
                volts,
                null,
                null,
                mass,
                5.0,
                6.0,
                250.0,
                400.0,
                null,
                new Before(new Reduction(ratioBefore, null), voltsBefore, massBefore),
                null);
    }

    @Property(seed = "20261125", tries = 100)
    void speedGoesWithVoltageAndWheelAndAgainstRatio(
            @ForAll @DoubleRange(min = 0.5, max = 4) double rollout,
            @ForAll @DoubleRange(min = 1, max = 60) double ratio,
            @ForAll @DoubleRange(min = 12, max = 120) double volts,
            @ForAll @DoubleRange(min = 0.2, max = 5) double factor) {
        double once = ideal(rollout, ratio, volts);

        assertThat(ideal(rollout * factor, ratio, volts)).isCloseTo(once * factor, relative(once * factor));
        assertThat(ideal(rollout, ratio * factor, volts)).isCloseTo(once / factor, relative(once / factor));
        assertThat(ideal(rollout, ratio, volts * factor)).isCloseTo(once * factor, relative(once * factor));
    }

    private static double ideal(double rollout, double ratio, double volts) {
        return Gearing.of(gearing(rollout, rollout, ratio, ratio, volts, volts, 500, 500), Trace.withoutWorking())
                .idealMPS();
    }

    @Property(seed = "20261125", tries = 100)
    void motorAndRoadSpeedTurnIntoEachOther(
            @ForAll @DoubleRange(min = 0.3, max = 6) double rollout,
            @ForAll @DoubleRange(min = 0.1, max = 200) double ratio,
            @ForAll @DoubleRange(min = 0.1, max = 60) double speed) {
        double omega = Gearing.motorSpeedRadPS(speed, rollout, ratio);

        assertThat(Gearing.roadSpeedMPS(omega, rollout, ratio)).isCloseTo(speed, relative(speed));
        assertThat(Gearing.impliedRolloutM(speed, omega, ratio)).isCloseTo(rollout, relative(rollout));
    }

    @Property(seed = "20261125", tries = 100)
    void theFactorsOfAChangeMultiplyAndItsSharesAddUp(
            @ForAll @DoubleRange(min = 1, max = 2) double rollout,
            @ForAll @DoubleRange(min = 6, max = 20) double ratio,
            @ForAll @DoubleRange(min = 30, max = 90) double volts,
            @ForAll @DoubleRange(min = 300, max = 900) double mass) {
        Change change = Gearing.of(gearing(rollout, 1.41, ratio, 12.3, volts, 48, mass, 611), Trace.withoutWorking())
                .change();

        double speed = rollout / 1.41 * 12.3 / ratio * volts / 48;
        assertThat(change.speedFactor()).isCloseTo(speed, relative(speed));
        assertThat(change.parts()).extracting(Part::name).containsExactly("tyre", "ratio", "voltage", "mass");
        double product = change.parts().stream().mapToDouble(Part::speedFactor).reduce(1, (a, b) -> a * b);
        assertThat(product).isCloseTo(change.speedFactor(), relative(product));
        if (Math.abs(Math.log(change.speedFactor())) > 1e-3) {
            assertThat(change.parts().stream().mapToDouble(Part::speedShare).sum())
                    .isCloseTo(1, within(1e-9));
        }
        if (Math.abs(Math.log(change.pullFactor())) > 1e-3) {
            assertThat(change.parts().stream().mapToDouble(Part::pullShare).sum())
                    .isCloseTo(1, within(1e-9));
        }
    }

    @Provide
    Arbitrary<Drives> drives() {
        Arbitrary<Double> mass = Arbitraries.doubles().between(250, 1500).ofScale(4);
        Arbitrary<Double> rolling = Arbitraries.doubles().between(0.008, 0.05).ofScale(4);
        Arbitrary<Double> drag = Arbitraries.doubles().between(0.5, 2.5).ofScale(4);
        Arbitrary<Double> emf = Arbitraries.doubles().between(34, 90).ofScale(4);
        Arbitrary<Double> ohm = Arbitraries.doubles().between(0, 0.04).ofScale(4);
        Arbitrary<Double> limit = Arbitraries.doubles().between(200, 500).ofScale(4);
        Arbitrary<Double> ratio = Arbitraries.doubles().between(8, 20).ofScale(4);
        return Combinators.combine(mass, rolling, drag, emf, ohm, limit, ratio)
                .as((m, f, a, e, r, i, n) ->
                        series(e, r, i).road(new Road(m, 0.05, f, a, 1)).geared(n, 1.4));
    }

    @Property(seed = "20261125", tries = 100)
    void theEnergyOfTheLaunchIsTheSumOfItsParts(@ForAll("drives") Drives drive) {
        double top = drive.ask().top().speedMPS();
        Launch launch = drive.target(0.9 * top).ask().launch();

        assertThat(launch).isNotNull();
        double parts = launch.kineticJ() + launch.rollingJ() + launch.dragJ() + launch.lossJ() + launch.accessoriesJ();
        assertThat(launch.packJ()).isCloseTo(parts, relative(parts));
        double rolled = drive.road().rollingN(drive.road().rollingResistance(), 0) * launch.distanceM();
        assertThat(launch.rollingJ()).isCloseTo(rolled, relative(rolled));
        assertThat(launch.lossJ()).isPositive();
        double kinetic = 1.05 * drive.road().massKg() * Math.pow(0.9 * top, 2) / 2;
        assertThat(launch.kineticJ()).isCloseTo(kinetic, relative(kinetic));
    }

    @Property(seed = "20261125", tries = 50)
    void aConstantThrustAgainstDragHasAKnownTime(
            @ForAll @DoubleRange(min = 20, max = 90) double torque,
            @ForAll @DoubleRange(min = 300, max = 1200) double mass,
            @ForAll @DoubleRange(min = 0.5, max = 3) double drag) {
        Road road = new Road(mass, 0.05, 0.02, drag, 1);
        Drives drive = Drives.plain()
                .motor(new MotorModel.Plate(torque, null, 800.0, false, null))
                .road(road)
                .target(6);
        double thrust = 2 * Math.PI * torque * 12 * 0.9 / 1.4;
        double net = thrust - mass * 9.80665 * 0.02;
        double c = 1.225 * drag / 2;
        double m = 1.05 * mass;
        // m·dv/dt = N − c·v²
        double x = 6 * Math.sqrt(c / net);
        double time = m / Math.sqrt(c * net) * 0.5 * Math.log((1 + x) / (1 - x));
        double distance = -m / (2 * c) * Math.log1p(-x * x);

        Launch launch = drive.ask().launch();

        assertThat(launch.timeS()).isCloseTo(time, within(1e-7 * time));
        assertThat(launch.distanceM()).isCloseTo(distance, within(1e-7 * distance));
    }

    @Property(seed = "20261125", tries = 60)
    void atTopSpeedThePullEqualsWhatResists(@ForAll("drives") Drives drive) {
        DrivePerformance.Result result = drive.ask();
        double v = result.top().speedMPS();
        DrivePerformance.Climb climb = drive.stretch(0, v).ask().climbs().get(0);

        assertThat(climb.forceN()).isCloseTo(drive.road().levelN(v), relative(climb.forceN()));
        assertThat(climb.reachable().speedMPS()).isCloseTo(v, relative(v));
        assertThat(climb.possible()).isTrue();
        assertThat(drive.stretch(0, 1.01 * v).ask().climbs().get(0).possible()).isFalse();
    }

    @Property(seed = "20261125", tries = 60)
    void moreMassIsNeverFasterAndNeverClimbsMore(
            @ForAll("drives") Drives drive, @ForAll @DoubleRange(min = 1.01, max = 2) double factor) {
        Road road = drive.road();
        DrivePerformance.Result light = drive.ask();
        DrivePerformance.Result heavy = drive.road(
                        new Road(factor * road.massKg(), 0.05, road.rollingResistance(), road.dragAreaM2(), 1))
                .ask();

        Assume.that(heavy.top() != null); // too heavy to move at all is not faster either
        assertThat(heavy.top().speedMPS()).isLessThan(light.top().speedMPS());
        assertThat(heavy.stallGrade().gradeRad()).isLessThan(light.stallGrade().gradeRad());
        assertThat(heavy.startGrade().gradeRad()).isLessThan(heavy.stallGrade().gradeRad());
        assertThat(heavy.pullAway().acceleration()).isLessThan(light.pullAway().acceleration());
    }

    @Property(seed = "20261125", tries = 60)
    void moreResistanceOfThePackIsNeverFaster(@ForAll("drives") Drives drive) {
        Supply pack = drive.supply();
        double stiff =
                drive.supply(new Supply(pack.emfV(), 0, null)).ask().top().speedMPS();
        double soft = drive.supply(new Supply(pack.emfV(), pack.ohm() + 0.02, null))
                .ask()
                .top()
                .speedMPS();

        assertThat(soft).isLessThan(stiff);
    }

    @Property(seed = "20261125", tries = 60)
    void aBiggerControllerRaisesThePullAndNotTheTopSpeed(@ForAll("drives") Drives drive) {
        Drives bigger = drive.motorLimit(1.5 * drive.motorLimitA());
        double v = drive.ask().top().speedMPS();

        assertThat(drive.ask().top().limitedBy()).isEqualTo(DriveLimit.VOLTAGE);
        assertThat(bigger.ask().top().speedMPS()).isCloseTo(v, relative(v));
        assertThat(bigger.ask().pullAway().forceN())
                .isGreaterThanOrEqualTo(drive.ask().pullAway().forceN());
        assertThat(drive.trace().findings()).extracting(Finding::code).contains("controller-is-not-the-limit");
    }

    @Property(seed = "20261125", tries = 60)
    void theBatterySideLimitHoldsOnTheBatterySideOnly(
            @ForAll("drives") Drives drive, @ForAll @DoubleRange(min = 60, max = 150) double amperes) {
        Supply pack = drive.supply();
        DrivePerformance.Result result =
                drive.supply(new Supply(pack.emfV(), pack.ohm(), amperes)).ask();

        assertThat(result.greatestPackA()).isLessThanOrEqualTo(amperes * (1 + 1e-9));
        assertThat(result.curve().get(0).motorA()).isGreaterThan(amperes);
    }

    @Property(seed = "20261125", tries = 60)
    void aMeasuredTopSpeedIsMetAfterCalibration(@ForAll @DoubleRange(min = 0.85, max = 1.0) double share) {
        Drives drive = Drives.plain();
        double reckoned = drive.ask().top().speedMPS();

        DrivePerformance.Result result = drive.measured(share * reckoned).ask();

        assertThat(result.calibration()).isNotNull();
        assertThat(result.top().speedMPS()).isCloseTo(share * reckoned, within(1e-6));
    }

    @Property(seed = "20261125", tries = 60)
    void powerSufficesExactlyForThePowerLimitedSpeed(
            @ForAll @DoubleRange(min = 500, max = 20_000) double power,
            @ForAll @DoubleRange(min = 300, max = 1500) double mass) {
        Road road = new Road(mass, 0.05, 0.02, 1.4, 1);
        double v = Drives.plain()
                .motor(new MotorModel.Plate(200.0, power, 2000.0, false, null))
                .road(road)
                .ask()
                .powerLimitedMPS();

        double resistanceW = (mass * 9.80665 * 0.02 + 0.5 * 1.225 * 1.4 * v * v) * v;
        assertThat(resistanceW).isCloseTo(0.9 * power, within(1e-6 * power));
    }

    @Example
    void aKartGearedForTwiceItsPowerIsToldSo() {
        Trace trace = Drives.plain()
                .motor(new MotorModel.Plate(null, 3000.0, 6000 * 2 * Math.PI / 60, false, null))
                .geared(60.0 / 14, 1.59593)
                .road(new Road(250, 0.05, 0.02, 0.7, 1))
                .trace();

        assertThat(trace.findings()).extracting(Finding::code).contains("geared-beyond-power");
    }

    @Example
    void aCurveIsStraightBetweenItsPointsAndStretchedByVoltage() {
        MotorModel curve =
                new MotorModel.Curve(List.of(new MotorModel.Point(100, 40), new MotorModel.Point(300, 20)), 48.0);

        assertThat(curve.torqueNm(0, 48)).isEqualTo(40);
        assertThat(curve.torqueNm(200, 48)).isCloseTo(30, within(1e-12));
        assertThat(curve.torqueNm(400, 96)).isCloseTo(30, within(1e-12));
        assertThat(curve.torqueNm(301, 48)).isZero();
    }

    @Example
    void nearStandstillHalfOfThePowerIsHeat() {
        Drives drive = series(48, 0.01, 400);

        DrivePerformance.Climb crawling =
                drive.stretch(0.25, 0.2).ask().climbs().get(0);
        DrivePerformance.Climb rolling = drive.stretch(0.02, 5.0).ask().climbs().get(0);

        assertThat(crawling.nearStall()).isTrue();
        assertThat(crawling.packW()).isGreaterThan(crawling.wheelW() / 0.7);
        assertThat(rolling.nearStall()).isFalse();
        assertThat(rolling.packW()).isCloseTo(rolling.wheelW() / 0.7, relative(rolling.packW()));
    }

    private static Offset<Double> relative(double value) {
        return within(1e-9 * Math.abs(value) + 1e-12);
    }
}
