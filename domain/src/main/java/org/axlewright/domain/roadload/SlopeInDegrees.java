package org.axlewright.domain.roadload;

import static org.axlewright.domain.quantity.Dimension.GRADE;

import java.util.Locale;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** A slope that was sent in degrees is told back in per cent, lest 9 degrees were meant for 9 %. */
public final class SlopeInDegrees {

    /** From here the two differ by enough to matter, rad: 4 degrees, 7 %. */
    private static final double STEEP = Math.toRadians(4);

    private static final Source TANGENT = Source.derived("grade in per cent is 100 times the tangent of the angle");

    private SlopeInDegrees() {}

    /**
     * Says so, from 4 degrees on.
     *
     * @param slopeRad as sent in degrees, rad, of either sign
     * @param pointer where it was sent
     */
    public static void find(double slopeRad, String pointer, Trace trace) {
        double slope = Math.abs(slopeRad);
        if (slope < STEEP) {
            return;
        }
        String degrees = String.format(Locale.ROOT, "%.3g", Math.toDegrees(slope));
        trace.find(Finding.of(
                        "slope-in-degrees",
                        Level.NOTICE,
                        "Taken as " + degrees + " degrees, which is a grade of {actual}; if " + degrees
                                + " % was meant, send it with %",
                        TANGENT)
                .at(pointer)
                .actual(new Measure(slope, GRADE)));
    }
}
