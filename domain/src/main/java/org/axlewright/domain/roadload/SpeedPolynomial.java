package org.axlewright.domain.roadload;

import org.axlewright.domain.check.Check;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/**
 * What resists at a speed, as coast-down tests state it: F = A + B·v + C·v². Source of the form: SAE J1263 and J2263, named in 40 CFR
 * 1066.301; A + C·v² in 40 CFR 86.529-98.
 *
 * @param a part that does not change with speed, N; negative where a hill pulls harder than it rolls
 * @param b part in proportion to speed, N/(m/s)
 * @param c part in proportion to the square of speed, N/(m/s)²
 */
public record SpeedPolynomial(double a, double b, double c) {

    private static final int POINTS = 20;
    private static final int MAXIMUM_EVALUATIONS = 100_000;
    private static final double RELATIVE = 1e-10;
    private static final double ABSOLUTE_S = 1e-12;

    public SpeedPolynomial {
        Check.finite(a, "a");
        Check.finite(b, "b");
        Check.finite(c, "c");
    }

    /** Force at a speed, N. */
    public double forceN(double speedMPS) {
        return a + speedMPS * (b + speedMPS * c);
    }

    /** Power at a speed, W. */
    public double powerW(double speedMPS) {
        return forceN(speedMPS) * speedMPS;
    }

    /**
     * Time to roll from one speed to another with nothing else acting, s: t = ∫ m/F dv. The force must not change sign between the two
     * speeds: a vehicle does not roll through the speed at which it would stay.
     *
     * @param massKg with the share of the rotating parts, kg
     * @param fromMPS speed at the start, m/s
     * @param toMPS speed at the end, m/s; lower where the force resists, higher where the hill pulls
     */
    public double rollingTimeS(double massKg, double fromMPS, double toMPS) {
        Check.positive(massKg, "massKg");
        double least = Math.min(Check.notNegative(fromMPS, "fromMPS"), Check.notNegative(toMPS, "toMPS"));
        double most = Math.max(fromMPS, toMPS);
        Check.positive(forceN(least) * forceN(most), "force at one speed times force at the other");
        if (least == most) {
            return 0;
        }
        double time = new IterativeLegendreGaussIntegrator(POINTS, RELATIVE, ABSOLUTE_S)
                .integrate(MAXIMUM_EVALUATIONS, speed -> massKg / forceN(speed), least, most);
        return Math.abs(time);
    }
}
