package org.axlewright.domain.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSprings;
import org.axlewright.domain.axles.SpringData;
import org.axlewright.domain.ride.RideHeight.AxleInput;
import org.axlewright.domain.ride.RideHeight.AxleRide;
import org.axlewright.domain.ride.RideHeight.Input;
import org.axlewright.domain.ride.RideHeight.Loading;
import org.axlewright.domain.ride.RideHeight.Restoring;
import org.axlewright.domain.ride.RideHeight.Result;
import org.axlewright.domain.ride.RideHeight.State;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What must hold for every set of springs. */
class RideHeightInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();
    private static final double L = 1.67;
    private static final double FOUND_FRONT = 1850;
    private static final double FOUND_REAR = 2560;

    private static AxleInput axle(
            Axle axle, double springRate, @Nullable Double tyreRate, double unsprungKg, @Nullable Double freeTravelM) {
        return new AxleInput(
                axle,
                new SpringData.ByRate(springRate, 2, 0.8, tyreRate),
                unsprungKg,
                freeTravelM,
                0.9,
                axle == Axle.FRONT ? FOUND_FRONT : FOUND_REAR,
                0);
    }

    private static State stand(AxleInput front, AxleInput rear, double frontN, double rearN, Trace trace) {
        Loading loading = new Loading("occupied", "occupied", frontN, rearN);
        Result result = RideHeight.of(new Input(L, front, rear, loading, null, List.of()), trace);
        return Objects.requireNonNull(result.occupied());
    }

    private static AxleRide rear(double springRate, @Nullable Double tyreRate, double unsprungKg, double rearN) {
        State state = stand(
                axle(Axle.FRONT, 40_000, tyreRate, 20, null),
                axle(Axle.REAR, springRate, tyreRate, unsprungKg, 0.07),
                FOUND_FRONT,
                rearN,
                SILENT);
        return Objects.requireNonNull(state.rear());
    }

    private static double squat(AxleRide ride) {
        return Objects.requireNonNull(ride.squatM());
    }

    @Property(seed = "20261125")
    void squatIsLinearInTheLoadAndAddsUp(
            @ForAll @DoubleRange(min = -1000, max = 4000) double one,
            @ForAll @DoubleRange(min = -1000, max = 4000) double other,
            @ForAll @DoubleRange(min = 5_000, max = 200_000) double rate) {
        double both = squat(rear(rate, 200_000.0, 40, FOUND_REAR + one + other));
        double apart = squat(rear(rate, 200_000.0, 40, FOUND_REAR + one))
                + squat(rear(rate, 200_000.0, 40, FOUND_REAR + other));
        assertThat(both).isCloseTo(apart, within(1e-9));
    }

    @Property(seed = "20261125")
    void whatIsTakenOffLiftsAsFarAsItPressed(
            @ForAll @DoubleRange(min = 1, max = 2000) double load,
            @ForAll @DoubleRange(min = 5_000, max = 200_000) double rate) {
        assertThat(squat(rear(rate, null, 40, FOUND_REAR + load)))
                .isCloseTo(-squat(rear(rate, null, 40, FOUND_REAR - load)), within(1e-9));
    }

    @Property(seed = "20261125")
    void suspensionAndTyreAddUpToTheSquat(
            @ForAll @DoubleRange(min = 1_000, max = 1e6) double suspension,
            @ForAll @DoubleRange(min = 1_000, max = 1e7) double tyre,
            @ForAll @DoubleRange(min = -5_000, max = 20_000) double load) {
        AxleSprings springs = new AxleSprings(suspension, tyre);
        assertThat(springs.suspensionTravelM(load) + springs.tyreTravelM(load))
                .isCloseTo(springs.squatM(load, SILENT), within(1e-9));
        assertThat(springs.rate()).isLessThan(Math.min(suspension, tyre));
    }

    @Property(seed = "20261125")
    void aMeasurementGivesBackTheRateItWasMadeWith(
            @ForAll @DoubleRange(min = 1_000, max = 1e6) double suspension,
            @ForAll @DoubleRange(min = 1_000, max = 1e6) double tyre,
            @ForAll @DoubleRange(min = 10, max = 10_000) double load) {
        AxleSprings known = new AxleSprings(suspension, tyre);
        AxleSprings measured = AxleSprings.ofMeasurement(load, known.squatM(load, SILENT), tyre, SILENT);
        assertThat(measured.suspensionRate() / suspension).isCloseTo(1, within(1e-6));
    }

    @Property(seed = "20261125")
    void springsInPairsAddAndTheMotionRatioIsSquared(
            @ForAll @DoubleRange(min = 1_000, max = 1e6) double rate,
            @ForAll @IntRange(min = 1, max = 8) int springs,
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratio) {
        double axle = AxleSprings.ofSprings(rate, springs, ratio, null, SILENT).suspensionRate();
        assertThat(AxleSprings.ofSprings(rate, 1, ratio, null, SILENT).suspensionRate() * springs / axle)
                .isCloseTo(1, within(1e-12));
        assertThat(AxleSprings.ofSprings(rate, springs, 2 * ratio, null, SILENT).suspensionRate() / axle)
                .isCloseTo(4, within(1e-12));
    }

    /** The frame is put on the restoring spring: loaded as it is, it must stand at the height as found. */
    @Property(seed = "20261125")
    void theRestoringRateStandsAsFound(
            @ForAll @DoubleRange(min = -800, max = 4000) double load,
            @ForAll @DoubleRange(min = 20_000, max = 60_000) double rate,
            @ForAll @DoubleRange(min = 0, max = 60) double unsprungKg) {
        double tyre = 220_000;
        AxleRide ride = rear(rate, tyre, unsprungKg, FOUND_REAR + load);
        Restoring restoring = Objects.requireNonNull(ride.restoring());
        double ratio = 0.8;
        double freeLength = (FOUND_REAR - unsprungKg * STANDARD_GRAVITY) / (2 * rate * ratio * ratio);
        double pressedNow =
                (FOUND_REAR + load - unsprungKg * STANDARD_GRAVITY) / (2 * restoring.springRate() * ratio * ratio);
        double tyreNow = load / tyre;
        assertThat(pressedNow + tyreNow).isCloseTo(freeLength, within(1e-9));
    }

    @Property(seed = "20261125")
    void theSpacerTakesUpTheSquat(@ForAll @DoubleRange(min = -800, max = 4000) double load) {
        AxleRide ride = rear(30_000, null, 40, FOUND_REAR + load);
        assertThat(Objects.requireNonNull(ride.spacerM())).isCloseTo(0.8 * squat(ride), within(1e-12));
    }

    @Property(seed = "20261125")
    void heavierRidesSlowerAndStifferFaster(
            @ForAll @DoubleRange(min = 10, max = 3000) double load,
            @ForAll @DoubleRange(min = 20_000, max = 60_000) double rate) {
        double light = Objects.requireNonNull(rear(rate, null, 40, FOUND_REAR).frequencyHz());
        double heavy =
                Objects.requireNonNull(rear(rate, null, 40, FOUND_REAR + load).frequencyHz());
        double stiff =
                Objects.requireNonNull(rear(4 * rate, null, 40, FOUND_REAR).frequencyHz());
        assertThat(heavy).isLessThan(light);
        assertThat(stiff / light).isCloseTo(2, within(1e-9));
    }

    @Property(seed = "20261125")
    void swappingFrontAndRearTurnsThePitchAround(@ForAll @DoubleRange(min = -500, max = 3000) double load) {
        AxleInput front =
                new AxleInput(Axle.FRONT, new SpringData.ByRate(30_000, 2, 1, null), 0, null, null, FOUND_REAR, 0);
        AxleInput rear =
                new AxleInput(Axle.REAR, new SpringData.ByRate(30_000, 2, 1, null), 0, null, null, FOUND_REAR, 0);
        double noseUp = Objects.requireNonNull(
                stand(front, rear, FOUND_REAR, FOUND_REAR + load, SILENT).pitchRad());
        double noseDown = Objects.requireNonNull(
                stand(front, rear, FOUND_REAR + load, FOUND_REAR, SILENT).pitchRad());
        assertThat(noseUp).isCloseTo(-noseDown, within(1e-12));
        assertThat(Math.signum(noseUp)).isEqualTo(Math.signum(load));
    }

    @Property(seed = "20261125")
    void nothingChangedMovesNothing(@ForAll @DoubleRange(min = 5_000, max = 200_000) double rate) {
        State state = stand(
                axle(Axle.FRONT, rate, 200_000.0, 20, 0.05),
                axle(Axle.REAR, rate, 200_000.0, 40, 0.05),
                FOUND_FRONT,
                FOUND_REAR,
                SILENT);
        assertThat(state.pitchRad()).isEqualTo(0);
        assertThat(state.centreOfGravityDropM()).isEqualTo(0);
        AxleRide rear = Objects.requireNonNull(state.rear());
        assertThat(rear.travelLeftM()).isEqualTo(0.05);
        assertThat(Objects.requireNonNull(rear.restoring()).factor()).isCloseTo(1, within(1e-12));
    }

    @Test
    void theCentreOfGravityComesDownWithASpringsMassAlone() {
        State state = stand(
                axle(Axle.FRONT, 31_250, null, 0, null), axle(Axle.REAR, 31_250, null, 0, null), 1850, 3360, SILENT);
        assertThat(state.centreOfGravityDropM()).isCloseTo(3360.0 / 5210 * 800 / 40_000, within(1e-12));
    }

    @Test
    void rollStiffnessGoesWithTheSquareOfTheBase() {
        Loading loading = new Loading("occupied", "occupied", 1850, 2560);
        AxleInput solid = new AxleInput(Axle.REAR, new SpringData.ByRate(25_000, 2, 1, null), 0, null, 0.72, 2560.0, 0);
        Result result = RideHeight.of(new Input(L, null, solid, loading, null, List.of()), SILENT);
        assertThat(Objects.requireNonNull(result.rear()).rollStiffness())
                .isCloseTo(25_000 * 0.72 * 0.72 / 2, within(1e-9));
    }

    @Test
    void findsWhatStandsOut() {
        Trace trace = Trace.withWorking();
        AxleInput front =
                new AxleInput(Axle.FRONT, new SpringData.ByRate(200_000, 1, 1, null), 0, 0.05, null, FOUND_FRONT, 0.05);
        stand(front, axle(Axle.REAR, 12_000, null, 40, 0.05), 1800, 5600, trace);
        assertThat(trace.findings())
                .extracting(Finding::code)
                .contains(
                        "one-spring",
                        "tyres-not-told-apart",
                        "travel-after-lift",
                        "ride-frequency",
                        "bottoms-out",
                        "nose-high",
                        "stiffer-springs-cost-comfort");
        assertThat(trace.findings().stream().filter(finding -> finding.code().equals("bottoms-out")))
                .allSatisfy(finding -> {
                    assertThat(finding.level()).isEqualTo(Level.WARNING);
                    assertThat(Objects.requireNonNull(finding.actual()).si())
                            .isCloseTo((5600 - FOUND_REAR) / (2 * 12_000 * 0.64) - 0.05, within(1e-12));
                });
        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
        assertThat(trace.cautions()).extracting("code").containsExactly("spring-work");
    }

    @Test
    void anAxleThatCarriesNothingHasNoFrequencyAndNoRestoringSpring() {
        Trace trace = Trace.withoutWorking();
        State state = stand(
                axle(Axle.FRONT, 30_000, null, 20, 0.05), axle(Axle.REAR, 30_000, null, 40, 0.05), -50, 4000, trace);
        AxleRide front = Objects.requireNonNull(state.front());
        assertThat(front.frequencyHz()).isNull();
        assertThat(front.restoring()).isNull();
        assertThat(trace.findings()).extracting(Finding::code).contains("springs-unloaded");
    }

    @Test
    void travelBelowTwoThirdsIsACautionOnlyWhereItIsForGood() {
        Trace trace = Trace.withoutWorking();
        Loading occupied = new Loading("occupied", "occupied", FOUND_FRONT, FOUND_REAR + 1000);
        Loading empty = new Loading("empty", "empty", FOUND_FRONT, FOUND_REAR + 1000);
        RideHeight.of(new Input(L, null, axle(Axle.REAR, 31_250, null, 40, 0.05), occupied, empty, List.of()), trace);
        assertThat(trace.findings().stream().filter(finding -> finding.code().equals("travel-short")))
                .extracting(finding -> finding.state() + " " + finding.level())
                .containsExactly("occupied notice", "empty caution");
    }
}
