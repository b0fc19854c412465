package org.axlewright.domain.legalclass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.legalclass.Classification.JudgedClass;
import org.axlewright.domain.legalclass.Classification.Neighbours;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

class ClassificationInvariantsTest {

    private static Vehicle vehicle(
            double speed,
            @Nullable Double former,
            @Nullable Double gross,
            @Nullable Double unladen,
            int seats,
            Place place) {
        return new Vehicle(
                speed,
                former,
                new Vehicle.Ratings(gross, null, null),
                new Vehicle.Masses(unladen, null, null),
                seats,
                4,
                3000.0,
                new Vehicle.Size(2.5, 1.2, 1.8, 1.7, 0.15, 0.7),
                null,
                place,
                Carries.BOTH,
                false,
                null,
                null);
    }

    private static Classification.Result result(Vehicle vehicle) {
        return Classification.of(vehicle, Trace.withWorking());
    }

    /** What the class may not be beyond a speed it may not be beyond a higher one, and the other way round below. */
    @Property(seed = "20261125")
    void moreSpeedNeverBringsASlowClassBack(
            @ForAll @DoubleRange(min = 0.1, max = 30) double slow,
            @ForAll @DoubleRange(min = 0, max = 30) double more,
            @ForAll Place place) {
        List<JudgedClass> before =
                result(vehicle(slow, null, 900.0, 500.0, 2, place)).classes();
        List<JudgedClass> after =
                result(vehicle(slow + more, null, 900.0, 500.0, 2, place)).classes();
        for (int i = 0; i < before.size(); i++) {
            boolean upperFails = before.get(i).conditions().stream()
                    .anyMatch(one -> one.condition().aspect() == Aspect.TOP_SPEED
                            && one.condition().relation().upper()
                            && one.verdict() == Verdict.NOT_MET);
            if (upperFails) {
                assertThat(after.get(i).verdict()).isEqualTo(Verdict.NOT_MET);
            }
        }
    }

    /** On the road a vehicle with all its figures known falls into one class at most of each ladder of speed. */
    @Property(seed = "20261125")
    void aKnownVehicleIsNoLowSpeedAndFullMotorVehicleAtOnce(
            @ForAll @DoubleRange(min = 0.1, max = 60) double speed,
            @ForAll @DoubleRange(min = 300, max = 3000) double gross) {
        List<JudgedClass> classes =
                result(vehicle(speed, null, gross, 250.0, 2, Place.PUBLIC_ROAD)).classes();
        for (String region : List.of("us", "ca")) {
            long met = classes.stream()
                    .filter(one -> one.type().code().equals(region + "-low-speed-vehicle")
                            || one.type().code().equals(region + "-motor-vehicle"))
                    .filter(one -> one.verdict() == Verdict.MET)
                    .count();
            assertThat(met).isLessThanOrEqualTo(1);
        }
    }

    @Property(seed = "20261125")
    void knowingLessNeverDecidesOtherwise(
            @ForAll @DoubleRange(min = 0.1, max = 30) double speed,
            @ForAll @DoubleRange(min = 600, max = 2000) double gross,
            @ForAll @DoubleRange(min = 200, max = 400) double unladen,
            @ForAll @IntRange(min = 1, max = 2) int seats,
            @ForAll Place place) {
        List<JudgedClass> known =
                result(vehicle(speed, null, gross, unladen, seats, place)).classes();
        List<JudgedClass> less =
                result(vehicle(speed, null, null, unladen, seats, place)).classes();
        for (int i = 0; i < known.size(); i++) {
            if (less.get(i).verdict() != Verdict.UNDECIDED) {
                assertThat(less.get(i).verdict())
                        .as(known.get(i).type().code())
                        .isEqualTo(known.get(i).verdict());
            }
        }
    }

    @Property(seed = "20261125")
    void theNearestLimitsLieOnEitherSide(@ForAll @DoubleRange(min = 0.1, max = 60) double speed) {
        Neighbours next = Objects.requireNonNull(result(vehicle(speed, null, 900.0, 500.0, 2, Place.PUBLIC_ROAD))
                .neighbours()
                .get(Aspect.TOP_SPEED));
        if (next.above() != null) {
            double limit = next.above().condition().lowSi();
            assertThat(next.above().distance()).isCloseTo(Math.max(0, limit - speed), within(1e-12));
        } else {
            assertThat(speed).isGreaterThan(25);
        }
        if (next.below() != null) {
            double limit = next.below().condition().highSi();
            assertThat(next.below().distance()).isCloseTo(Math.max(0, speed - limit), within(1e-12));
        }
    }

    /** There and back again: what one change leaves, the other enters. */
    @Property(seed = "20261125")
    void goingBackEntersWhatWasLeft(
            @ForAll @DoubleRange(min = 0.5, max = 30) double one,
            @ForAll @DoubleRange(min = 0.5, max = 30) double other) {
        Classification.Crossing there = Objects.requireNonNull(
                result(vehicle(other, one, 900.0, 500.0, 2, Place.PUBLIC_ROAD)).crossing());
        Classification.Crossing back = Objects.requireNonNull(
                result(vehicle(one, other, 900.0, 500.0, 2, Place.PUBLIC_ROAD)).crossing());
        assertThat(there.left().stream().map(left -> left.type().code()))
                .isEqualTo(
                        back.entered().stream().map(left -> left.type().code()).toList());
        assertThat(there.passed()).hasSameSizeAs(back.passed());
    }
}
