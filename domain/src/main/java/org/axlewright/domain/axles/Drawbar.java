package org.axlewright.domain.axles;

import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * Where a trailer takes hold of a vehicle, and how hard it presses down there. What it does to the axles adds to {@link Stance}: all
 * moments are linear.
 *
 * @param heightM of the hitch above the ground, m, 0 or more
 * @param overhangM of the hitch behind the rear axle, m; negative ahead of it
 * @param loadN vertical load on the hitch, standing level, N; negative when the trailer lifts it
 */
public record Drawbar(double heightM, double overhangM, double loadN) {

    private static final Source MOMENTS = Source.memory(
            "Gillespie, Fundamentals of Vehicle Dynamics, eq. 1-6, towing terms; the same moments by hand");

    private static final Step FRONT =
            step("ΔW_f", "what the drawbar adds to the front axle", "ΔW_f = −(P·h_h + Z·cos θ·d)/L");
    private static final Step REAR =
            step("ΔW_r", "what the drawbar adds to the rear axle", "ΔW_r = [P·h_h + Z·cos θ·(d + L)]/L");

    private static Step step(String symbol, String meaning, String formula) {
        return Step.of(
                symbol,
                meaning,
                formula,
                LOAD,
                MOMENTS,
                new Symbol("P", FORCE),
                new Symbol("h_h", LENGTH),
                new Symbol("Z", LOAD),
                new Symbol("d", LENGTH),
                new Symbol("L", LENGTH),
                new Symbol("θ", ANGLE));
    }

    public Drawbar {
        Check.notNegative(heightM, "hitch height");
        Check.finite(overhangM, "hitch overhang");
        Check.finite(loadN, "hitch load");
    }

    /**
     * What the drawbar adds to the front axle, N.
     *
     * @param pullN backward pull on the vehicle, along the road, N; negative when the trailer pushes
     */
    public double frontChangeN(double pullN, double wheelbaseM, double gradeRad, Trace trace) {
        double change = -(pullN * heightM + loadN * Math.cos(gradeRad) * overhangM) / wheelbaseM;
        return trace.note(FRONT, change, pullN, heightM, loadN, overhangM, wheelbaseM, gradeRad);
    }

    /** What the drawbar adds to the rear axle, N. Same inputs as {@link #frontChangeN}. */
    public double rearChangeN(double pullN, double wheelbaseM, double gradeRad, Trace trace) {
        double change = (pullN * heightM + loadN * Math.cos(gradeRad) * (overhangM + wheelbaseM)) / wheelbaseM;
        return trace.note(REAR, change, pullN, heightM, loadN, overhangM, wheelbaseM, gradeRad);
    }
}
