package org.axlewright.domain.seating;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.seating.SeatReach.Sitter;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seat lines, body sizes and the leg against their sources. */
class SeatPublishedTest {

    private static final String CHECKS = "/seating/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> positions() {
        return PublishedChecks.read(CHECKS, "seat position, class B, 95 %");
    }

    @ParameterizedTest
    @MethodSource("positions")
    void putsTheReferenceSeatWhereTheLineOf95PerCentDoes(Case row) {
        row.check("x", SeatPositions.xM("95", row.in("z") / 1000, SILENT) * 1000);
    }

    static List<Case> lines() {
        return PublishedChecks.read(CHECKS, "seat line");
    }

    @ParameterizedTest
    @MethodSource("lines")
    void followsEveryLineOverItsHeights(Case row) {
        row.check("x", SeatPositions.xM(row.inText("p"), row.in("z") / 1000, SILENT) * 1000);
    }

    static List<Case> popliteals() {
        return PublishedChecks.read(CHECKS, "female popliteal height");
    }

    @ParameterizedTest
    @MethodSource("popliteals")
    void carriesTheSurveyAsPrinted(Case row) {
        row.check("p5", Driver.sizeM("female-5", "popliteal-height") * 1000);
        row.check("p50", Driver.sizeM("female-50", "popliteal-height") * 1000);
        row.check("p95", Driver.sizeM("female-95", "popliteal-height") * 1000);
    }

    static List<Case> legs() {
        return PublishedChecks.read(CHECKS, "leg");
    }

    @ParameterizedTest
    @MethodSource("legs")
    void bridgesTheDistanceByTheLawOfCosines(Case row) {
        double leg = SeatReach.legM(row.in("t") / 1000, row.in("s") / 1000, Math.toRadians(row.in("knee")));

        row.check("d", leg * 1000);
    }

    static List<Case> sizes() {
        return PublishedChecks.read(CHECKS, "sizes");
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void makesThighAndShankOfTheSurvey(Case row) {
        Sitter sitter = SeatReach.of(new SeatReach.Input(0.6, 0.4, 0, 0, 0, 0), SILENT).drivers().stream()
                .filter(one -> one.driver().toString().equals(row.inText("driver")))
                .findFirst()
                .orElseThrow();

        row.check("thigh", sitter.thighM() * 1000);
        row.check("shank", sitter.shankM() * 1000);
    }
}
