package org.axlewright.domain.seating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.seating.SeatReach.Fit;
import org.axlewright.domain.seating.SeatReach.Input;
import org.axlewright.domain.seating.SeatReach.Result;
import org.axlewright.domain.seating.SeatReach.Sitter;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What must hold whatever the numbers. */
class SeatInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();

    @Property(seed = "20261125")
    void kneeAngleAndDistanceAreOneAndTheSame(
            @ForAll @DoubleRange(min = 0.35, max = 0.6) double thigh,
            @ForAll @DoubleRange(min = 0.4, max = 0.7) double shank,
            @ForAll @DoubleRange(min = 0.5, max = 3) double knee) {
        assertThat(SeatReach.kneeRad(thigh, shank, SeatReach.legM(thigh, shank, knee)))
                .isCloseTo(knee, within(1e-9));
    }

    /** Moving by the room that is lacking keeps every knee as it was, whoever sits there. */
    @Property(seed = "20261125")
    void theRoomAsFoundKeepsEveryKnee(
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double x,
            @ForAll @DoubleRange(min = 0.3, max = 0.5) double z,
            @ForAll @DoubleRange(min = 0, max = 0.25) double lowered) {
        Double room = SeatReach.of(new Input(x, z, lowered, 0, 0, 0), SILENT).asFoundRoomM();
        assertThat(room).isNotNull().isGreaterThan(-1e-12);
        Result moved = SeatReach.of(new Input(x, z, lowered, room, 0, 0), SILENT);

        assertThat(moved.pedalDistanceAfterM()).isCloseTo(moved.pedalDistanceBeforeM(), within(1e-12));
        assertThat(moved.asFoundRoomM()).isCloseTo(0, within(1e-9));
    }

    /** Taking the answer's advice ends in comfort. */
    @Property(seed = "20261125")
    void theRoomThatALegLacksIsWhatItNeeds(
            @ForAll @DoubleRange(min = 0.4, max = 1.2) double x,
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double z,
            @ForAll @DoubleRange(min = 0, max = 0.3) double slider) {
        for (Sitter sitter :
                SeatReach.of(new Input(x, z, 0, 0, 0, slider), SILENT).drivers()) {
            double eased = sitter.roomM() + Math.signum(sitter.roomM()) * 1e-9;
            Result moved = SeatReach.of(new Input(x, z, 0, eased, 0, slider), SILENT);
            assertThat(moved.drivers())
                    .filteredOn(one -> one.driver() == sitter.driver())
                    .allSatisfy(one -> assertThat(one.fit()).isEqualTo(Fit.COMFORTABLE));
        }
    }

    @Property(seed = "20261125")
    void aLowerSeatNeedsMoreRoom(
            @ForAll @DoubleRange(min = 0.4, max = 1) double x, @ForAll @DoubleRange(min = 0.01, max = 0.3) double by) {
        Result high = SeatReach.of(new Input(x, 0.42, 0, 0, 0, 0), SILENT);
        Result low = SeatReach.of(new Input(x, 0.42, by, 0, 0, 0), SILENT);

        for (int i = 0; i < 3; i++) {
            assertThat(low.drivers().get(i).nearXM())
                    .isGreaterThan(high.drivers().get(i).nearXM());
        }
    }

    @Property(seed = "20261125")
    void pedalsForwardAndSeatBackAreTheSame(@ForAll @DoubleRange(min = 0, max = 0.5) double by) {
        Result back = SeatReach.of(new Input(0.6, 0.4, 0.1, by, 0, 0.1), SILENT);
        Result forward = SeatReach.of(new Input(0.6, 0.4, 0.1, 0, by, 0.1), SILENT);

        assertThat(back.drivers()).isEqualTo(forward.drivers());
    }

    @Property(seed = "20261125")
    void theSliderThatIsAskedForSeatsAllThree(@ForAll @DoubleRange(min = 0.1, max = 0.5) double z) {
        Result wanted = SeatReach.of(new Input(0.7, z, 0, 0, 0, 0), SILENT);
        double travel = wanted.sliderTravelM() + 1e-9;
        double middle =
                (wanted.drivers().get(0).farXM() + wanted.drivers().get(2).nearXM()) / 2;
        Result seated = SeatReach.of(new Input(middle, z, 0, 0, 0, travel), SILENT);

        assertThat(seated.drivers()).allSatisfy(one -> assertThat(one.fit()).isEqualTo(Fit.COMFORTABLE));
    }

    @Property(seed = "20261125")
    void everyLineOfTheWorkingIsANumber(
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double x,
            @ForAll @DoubleRange(min = 0.02, max = 0.9) double z,
            @ForAll @DoubleRange(min = 0, max = 0.6) double slider) {
        Trace trace = Trace.withWorking();
        SeatReach.of(new Input(x, z, -0.5, 1.5, 1.5, slider), trace);

        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
    }

    @Test
    void readsNothingOffBeyondTheEndOfTheLines() {
        assertThat(SeatPositions.cover(0.405)).isTrue();
        assertThat(SeatPositions.cover(0.530)).isTrue();
        assertThat(SeatPositions.cover(0.404)).isFalse();
        assertThatThrownBy(() -> SeatPositions.xM("50", 0.531, SILENT)).isInstanceOf(InvalidInput.class);
        Trace trace = Trace.withoutWorking();
        Result low = SeatReach.of(new Input(0.7, 0.43, 0.1, 0, 0, 0), trace);

        assertThat(low.positions()).isNull();
        assertThat(low.surveyTravelM()).isNull();
        assertThat(trace.findings()).extracting(Finding::code).contains("outside-class-b", "slider-too-short");
        assertThat(trace.cautions())
                .extracting(caution -> caution.code())
                .containsExactly("survey-not-customers", "brake-to-its-stop");
    }

    @Test
    void saysWhereSurveyedDriversSitNearerThanTheLegSumWants() {
        Trace trace = Trace.withoutWorking();
        Result result = SeatReach.of(new Input(0.7, 0.45, 0, 0, 0, 0), trace);

        assertThat(trace.findings())
                .filteredOn(one -> one.code().equals("legs-read-long"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.actual().si()).isCloseTo(0.5980, within(1e-4));
                    assertThat(one.limit().si())
                            .isEqualTo(result.drivers().get(1).nearXM());
                });
    }

    @Test
    void saysWhoCannotReach() {
        Trace trace = Trace.withoutWorking();
        Result far = SeatReach.of(new Input(0.95, 0.3, 0, 0, 0, 0), trace);

        assertThat(far.drivers())
                .extracting(Sitter::fit)
                .containsExactly(Fit.OUT_OF_REACH, Fit.TOO_FAR, Fit.COMFORTABLE);
        assertThat(trace.findings()).extracting(Finding::code).contains("cannot-reach", "leg-too-straight");
        Trace near = Trace.withoutWorking();
        SeatReach.of(new Input(0.5, 0.3, 0, 0, 0, 0), near);
        assertThat(near.findings()).extracting(Finding::code).contains("leg-too-bent");
    }
}
