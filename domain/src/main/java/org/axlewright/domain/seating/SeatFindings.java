package org.axlewright.domain.seating;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import org.axlewright.domain.seating.SeatReach.Fit;
import org.axlewright.domain.seating.SeatReach.Input;
import org.axlewright.domain.seating.SeatReach.Result;
import org.axlewright.domain.seating.SeatReach.Sitter;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What a foreman would say of a seat and its pedals. */
final class SeatFindings {

    private static final Source LEG =
            Source.memory("leg as two links; comfortable knee 110 to 140 deg; sizes of ANSUR II and NATICK/TR-15/007");

    private static final Caution SAMPLE = new Caution(
            "survey-not-customers",
            "The sizes are those of soldiers, the seat lines those of truck drivers: younger and fitter than most owners, and not your"
                    + " customers. Percentiles don't add up in one body. Sit the people in the seat before anything is welded.");
    private static final Caution BRAKE = new Caution(
            "brake-to-its-stop",
            "The smallest driver must press the brake to its stop with the belt on, and the largest must lift the foot over it without"
                    + " hitting wheel or dash.");

    private SeatFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(SAMPLE);
        trace.caution(BRAKE);
        result.drivers().forEach(sitter -> sitter(sitter, trace));
        if (result.positions() == null) {
            boolean low = result.hipZM() < SeatPositions.LOWEST_M;
            trace.find(Finding.of(
                            "outside-class-b",
                            Level.NOTICE,
                            "With the hip point {actual} above the heel the survey's seat lines don't hold: the heights that they are"
                                    + " made for end at {limit}"
                                    + (low ? ", below which lie car seats, SAE J4004" : "")
                                    + ". Nothing is read off beyond",
                            SeatPositions.SOURCE)
                    .at("/seat/lowered")
                    .actual(new Measure(result.hipZM(), CLEARANCE))
                    .limit(new Measure(low ? SeatPositions.LOWEST_M : SeatPositions.HIGHEST_M, CLEARANCE))
                    .action("Go by the knee angles, and sit people in the seat"));
        }
        disagreement(result, trace);
        if (result.sliderTravelM() > input.sliderM()) {
            trace.find(Finding.of(
                            "slider-too-short",
                            Level.CAUTION,
                            "Small, middle and large drivers sit in comfort with a slider of {limit} or more; this one has {actual}",
                            LEG)
                    .at("/seat/sliderTravel")
                    .actual(new Measure(input.sliderM(), CLEARANCE))
                    .limit(new Measure(result.sliderTravelM(), CLEARANCE))
                    .action("Fit a longer slider, or pedals in two places"));
        }
    }

    /** Measured drivers beat a sum of limbs: where the two differ, the answer says so. */
    private static void disagreement(Result result, Trace trace) {
        if (result.positions() == null) {
            return;
        }
        double half = SeatPositions.xM("50", result.hipZM(), Trace.withoutWorking());
        for (Sitter sitter : result.drivers()) {
            if (sitter.driver() == Driver.MIDDLE && half < sitter.nearXM()) {
                trace.find(Finding.of(
                                "legs-read-long",
                                Level.NOTICE,
                                "Half of the surveyed drivers sit {actual} behind the heel point or nearer; by the leg sum the middle"
                                        + " driver wants {limit} at least. The sum takes the limbs to the outside of the knee, not to its"
                                        + " pivot: its room is an upper bound and its knee angles read low",
                                SeatPositions.SOURCE)
                        .at("/seat/hipPoint")
                        .actual(new Measure(half, CLEARANCE))
                        .limit(new Measure(sitter.nearXM(), CLEARANCE))
                        .action("Take the seat lines as the lower figure, and sit people in the seat before cutting"));
            }
        }
    }

    private static void sitter(Sitter sitter, Trace trace) {
        String who = "The " + sitter.driver() + " driver";
        Fit fit = sitter.fit();
        switch (fit) {
            case COMFORTABLE -> {}
            case OUT_OF_REACH ->
                trace.find(
                        Finding.of(
                                        "cannot-reach",
                                        Level.WARNING,
                                        who
                                                + " does not reach the pedals with a straight leg, slider right forward; the seat is {actual} too far"
                                                + " away for a comfortable knee",
                                        LEG)
                                .at("/seat")
                                .actual(new Measure(-sitter.roomM(), CLEARANCE))
                                .action(
                                        "Bring seat or pedals nearer by that much, or lower a seat that is too high: a brake that can't be pressed is no brake"));
            case TOO_FAR ->
                trace.find(Finding.of(
                                "leg-too-straight",
                                Level.CAUTION,
                                who + " sits {actual} too far from the pedals for a knee of 140°, slider right forward",
                                LEG)
                        .at("/seat")
                        .actual(new Measure(-sitter.roomM(), CLEARANCE))
                        .action("Bring seat or pedals nearer, or lengthen the slider"));
            case TOO_CLOSE ->
                trace.find(Finding.of(
                                "leg-too-bent",
                                Level.CAUTION,
                                who + " lacks {actual} of room for a knee of 110°, slider right back",
                                LEG)
                        .at("/seat")
                        .actual(new Measure(sitter.roomM(), CLEARANCE))
                        .action("Move the pedals forward or the seat back by that much, or stretch the frame"));
        }
    }
}
