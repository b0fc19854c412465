package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import java.util.List;
import java.util.OptionalDouble;
import org.axlewright.domain.cable.Copper;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Heat of one insulated copper conductor that lies level in still air, per metre: the copper warms by I²r at its own temperature; heat
 * crosses the insulation by conduction and leaves its surface by free convection and radiation. The insulation follows the copper without
 * delay, so that one temperature tells the state; its heat is shared between the two sides as IEC 60853-1 does. A physical model beside
 * the tables, which govern the size.
 *
 * <p>The heat given off is worked out at some temperatures and taken along straight lines between them. Between two of these the gain is
 * then linear in the temperature, so that every stretch is solved exactly, by one logarithm and one exponential.
 */
final class CableHeat {

    /** Temperature of the copper where the model ends, degC: insulation is gone before. */
    static final double ENDS_C = 300;

    /** Absolute zero, degC. Source: SI brochure. */
    private static final double ZERO_C = -273.15;

    /** Stefan-Boltzmann constant, W/(m2 K4). Source: CODATA 2018. */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Emissivity of rubber and plastic. Source: heat-transfer handbooks, 0.86 to 0.95, recalled. */
    private static final double EMISSIVITY = 0.9;

    /** Thermal resistivity of PVC and rubber, K m/W: the highest of the usual insulations. Source: IEC 60287-2-1 Table 1, recalled. */
    private static final double RESISTIVITY = 5.0;

    /** Volumetric heat of PVC, J/(m3 K): the lowest of the usual insulations. Source: IEC 60853-1, recalled. */
    private static final double INSULATION_HEAT = 1.7e6;

    /** Share of a strand that is copper: seven equal round wires in the circle around them. */
    private static final double FILL = 7.0 / 9;

    /** Where a run that leaves the model is cut off, degC. */
    private static final double CUT_OFF_C = 2 * ENDS_C;

    private static final int KNOTS = 16;
    private static final int MOST_CYCLES = 40;
    private static final int MOST_EVALUATIONS = 100;
    private static final double CLOSE_K = 1e-4;

    static final Source CONVECTION = Source.published(
            "Churchill and Chu 1975, free convection from a horizontal cylinder; air of the US Standard Atmosphere 1976;"
                    + " Stefan-Boltzmann law");

    private static final Step OUTSIDE = Step.of(
            "D",
            "diameter over the insulation",
            "D = sqrt(4·S/(π·7/9)) + 2·w",
            LENGTH,
            Source.derived("seven equal wires fill 7/9 of the circle around them"),
            new Symbol("S", AREA),
            new Symbol("w", LENGTH));
    private static final Step FINAL = Step.of(
            "Tm",
            "hottest moment of the repeated cycle by the physical model, current of one run",
            "C·dT/dt = I²·r(T) − q(T), over the cycle until it repeats; q by conduction, free convection and radiation",
            TEMPERATURE,
            CONVECTION,
            new Symbol("D", LENGTH),
            new Symbol("Ta", TEMPERATURE),
            new Symbol("f", NONE));
    private static final Step TO_LIMIT = Step.of(
            "tl",
            "time in which the peak current brings the conductor to its limit by the physical model",
            "tl = ∫ C·dT/(I²·r(T) − q(T)) from Ts to Tc",
            EVENT_TIME,
            CONVECTION,
            new Symbol("Ts", TEMPERATURE),
            new Symbol("Tc", TEMPERATURE));

    private final double resistance20;
    private final double capacity;
    private final double ambientC;
    private final double outsideM;
    private final double bundleFactor;
    private final double timeConstantS;

    /** Heat given off per metre by temperature of the copper: straight lines between knots. */
    private final double[] knotsC = new double[KNOTS];

    private final double[] knotsW = new double[KNOTS];

    /**
     * A conductor of one size in its surroundings.
     *
     * @param resistanceOhmPerM at the reference temperature
     * @param referenceC degC
     * @param areaM2 copper, m2
     * @param wallM thickness of the insulation, m
     * @param ambientC air and walls around, degC
     * @param bundleFactor factor of the table on the current of conductors that lie together, 0 to 1: its square is the share of heat given
     *     off
     */
    CableHeat(
            double resistanceOhmPerM,
            double referenceC,
            double areaM2,
            double wallM,
            double ambientC,
            double bundleFactor) {
        Check.positive(resistanceOhmPerM, "resistanceOhmPerM");
        Check.positive(areaM2, "areaM2");
        Check.positive(wallM, "wallM");
        Check.within(ambientC, -100, 200, "ambientC");
        Check.within(bundleFactor, 0.01, 1, "bundleFactor");
        this.resistance20 = resistanceOhmPerM / Copper.ratio(referenceC, 20);
        this.ambientC = ambientC;
        this.bundleFactor = bundleFactor;
        double copperM = strandM(areaM2);
        this.outsideM = copperM + 2 * wallM;
        double ratio = outsideM / copperM;
        double acrossKmPerW = RESISTIVITY / (2 * Math.PI) * Math.log(ratio);
        // knots by temperature of the surface, so that nothing has to be solved
        double hottestRise = ENDS_C - ambientC;
        for (int k = 1; k < KNOTS; k++) {
            double surfaceRise = hottestRise * k * k / ((KNOTS - 1.0) * (KNOTS - 1));
            knotsW[k] = surfaceW(surfaceRise);
            knotsC[k] = surfaceRise + acrossKmPerW * knotsW[k];
        }
        double lossPerK = knotsW[KNOTS / 2] / knotsC[KNOTS / 2];
        double surfaceShare = 1 - acrossKmPerW * lossPerK;
        // IEC 60853-1, Van Wormer: share of the insulation's heat that goes with the conductor
        double inner = 1 / (2 * Math.log(ratio)) - 1 / (ratio * ratio - 1);
        double insulation = INSULATION_HEAT * Math.PI / 4 * (outsideM * outsideM - copperM * copperM);
        this.capacity = Copper.VOLUMETRIC_HEAT_IEC_60949 * areaM2 + insulation * (inner + (1 - inner) * surfaceShare);
        this.timeConstantS = capacity / lossPerK;
    }

    /** Diameter of a strand, m. */
    static double strandM(double areaM2) {
        return Math.sqrt(4 * areaM2 / (Math.PI * FILL));
    }

    /** What the periodic state is like. */
    record Settled(double hottestC, double peakStartC, Balance balance) {}

    /**
     * Heat per metre over a time, J/m.
     *
     * @param inJ made in the copper
     * @param outJ given off to the air
     * @param storedJ kept, less what was kept at the start
     * @param endC temperature of the copper at the end, degC
     */
    record Balance(double inJ, double outJ, double storedJ, double endC) {}

    /** Time constant of the whole cable about halfway to the end of the model, s. */
    double timeConstantS() {
        return timeConstantS;
    }

    /** Heat that leaves a metre of surface this much warmer than what surrounds it, W/m; without the effect of a bundle 1. */
    private double surfaceW(double riseK) {
        double airK = ambientC - ZERO_C;
        double surfaceK = airK + riseK;
        double radiated = EMISSIVITY * STEFAN_BOLTZMANN * (Math.pow(surfaceK, 4) - Math.pow(airK, 4));
        double convected = StillAir.convectionWPerM2K(outsideM, airK, surfaceK) * riseK;
        return bundleFactor * bundleFactor * Math.PI * outsideM * (radiated + convected);
    }

    /** Heat given off by a metre whose copper is at a temperature, W/m; below the air the same with the other sign. */
    double lossW(double copperC) {
        double rise = Math.abs(copperC - ambientC);
        int k = 1;
        while (k < KNOTS - 1 && knotsC[k] < rise) {
            k++;
        }
        double loss = knotsW[k - 1] + slopeWPerK(k) * (rise - knotsC[k - 1]);
        return copperC < ambientC ? -loss : loss;
    }

    /** Further heat given off by kelvin on the line that ends at a knot, W/(m K). */
    private double slopeWPerK(int k) {
        return (knotsW[k] - knotsW[k - 1]) / (knotsC[k] - knotsC[k - 1]);
    }

    /** Heat made in a metre, W/m. */
    double heatW(double currentA, double copperC) {
        return currentA * currentA * resistance20 * Copper.ratio(copperC, 20);
    }

    /** Temperature at which a current settles, degC; nothing when that is beyond the model. */
    OptionalDouble steadyC(double currentA) {
        if (currentA == 0) {
            return OptionalDouble.of(ambientC);
        }
        if (heatW(currentA, ENDS_C) >= lossW(ENDS_C)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new BracketingNthOrderBrentSolver(1e-9, 5)
                .solve(MOST_EVALUATIONS, copperC -> heatW(currentA, copperC) - lossW(copperC), ambientC, ENDS_C));
    }

    /**
     * A cycle of currents repeated until it repeats itself; nothing when it leaves the model.
     *
     * @param runs over which the current is shared
     */
    @Nullable
    Settled settled(Cycle cycle, double rmsA, int runs) {
        OptionalDouble mean = steadyC(rmsA / runs);
        if (mean.isEmpty()) {
            return null;
        }
        double start = mean.getAsDouble();
        Pass pass = pass(cycle.segments(), start, runs);
        double letGo = -Math.expm1(-Math.min(cycle.durationS() / timeConstantS, 700));
        double before = start;
        double beforeMiss = pass.balance.endC() - start;
        start += beforeMiss / letGo;
        // the secant of a nearly straight line: a few cycles do
        for (int i = 0; i < MOST_CYCLES; i++) {
            if (!(start < ENDS_C && start > ZERO_C)) {
                return null;
            }
            pass = pass(cycle.segments(), start, runs);
            double miss = pass.balance.endC() - start;
            if (Math.abs(miss) <= CLOSE_K * letGo) {
                break;
            }
            double slope = (miss - beforeMiss) / (start - before);
            before = start;
            beforeMiss = miss;
            start -= slope < 0 ? miss / slope : -miss / letGo;
        }
        return pass.hottestC > ENDS_C ? null : new Settled(pass.hottestC, pass.peakStartC, pass.balance);
    }

    /** Heat over some stretches from a starting temperature; for the balance. */
    Balance over(List<Segment> segments, double startC) {
        return pass(segments, startC, 1).balance;
    }

    private record Pass(double hottestC, double peakStartC, Balance balance) {}

    private Pass pass(List<Segment> segments, double startC, int runs) {
        double rise = startC - ambientC;
        double most = CUT_OFF_C - ambientC;
        double in = 0;
        double out = 0;
        double hottest = rise;
        double peakStart = rise;
        double peakA = -1;
        for (Segment segment : segments) {
            if (segment.currentA() > peakA || (segment.currentA() == peakA && rise > peakStart)) {
                peakA = segment.currentA();
                peakStart = rise;
            }
            double left = segment.durationS();
            while (left > 0 && rise < most) {
                Stretch stretch = stretch(segment.currentA() / runs, rise, most, left);
                left = stretch.reachesEnd ? left - stretch.timeS : 0;
                rise = stretch.toK;
                in += stretch.inJ;
                out += stretch.outJ;
            }
            hottest = Math.max(hottest, rise);
            if (rise >= most) {
                break;
            }
        }
        double endC = ambientC + rise;
        return new Pass(
                ambientC + hottest, ambientC + peakStart, new Balance(in, out, capacity * (endC - startC), endC));
    }

    /** Time in which a current brings the copper from one temperature to a higher one, s; nothing when it never does. */
    OptionalDouble timeS(double currentA, double fromC, double toC) {
        double time = 0;
        double rise = fromC - ambientC;
        double most = toC - ambientC;
        while (rise < most) {
            Stretch stretch = stretch(currentA, rise, most, Double.POSITIVE_INFINITY);
            if (!stretch.reachesEnd || stretch.toK <= rise) {
                return OptionalDouble.empty();
            }
            time += stretch.timeS;
            rise = stretch.toK;
        }
        return OptionalDouble.of(time);
    }

    /** A time along one straight line of the heat given off, up to a rise over the air; whether it ended at the end of the line. */
    private record Stretch(double toK, double timeS, double inJ, double outJ, boolean reachesEnd) {}

    /**
     * Exact solution of {@code C·dT/dt = g + b·(T − T0)} along the line on which the temperature moves, up to its end or a time.
     *
     * @param fromK rise over the air at the start
     * @param mostK where a warming ends at the latest
     */
    private Stretch stretch(double currentA, double fromK, double mostK, double mostS) {
        double heat = heatW(currentA, ambientC + fromK);
        double heatPerK = currentA * currentA * resistance20 * Copper.ratioPerK(20);
        double gain = heat - lossW(ambientC + fromK);
        boolean warms = gain > 0;
        boolean away = fromK == 0 || warms == (fromK > 0);
        int k = line(Math.abs(fromK), away);
        double lossPerK = slopeWPerK(k);
        double change = heatPerK - lossPerK;
        boolean above = fromK > 0 || (fromK == 0 && warms);
        double knot = away ? knotsC[k] : knotsC[k - 1];
        double end = above ? knot : -knot;
        if (warms && (end > mostK || (away && above && k == KNOTS - 1))) {
            end = mostK;
        }
        double toEnd = capacity / gain * (end - fromK) * logOver(change / gain * (end - fromK));
        boolean reaches = gain != 0 && toEnd <= mostS;
        double time = reaches ? toEnd : mostS;
        if (Double.isInfinite(time)) {
            return new Stretch(fromK, time, 0, 0, false);
        }
        double alone = gain * time / capacity;
        double exponent = change * time / capacity;
        double mean = alone * meanOver(exponent);
        return new Stretch(
                reaches ? end : fromK + alone * expOver(exponent),
                time,
                (heat + heatPerK * mean) * time,
                (heat - gain + lossPerK * mean) * time,
                reaches);
    }

    /** Number of the line on which a distance from the temperature of the air lies, towards the larger or the smaller. */
    private int line(double riseK, boolean away) {
        int k = 1;
        while (k < KNOTS - 1 && (away ? knotsC[k] <= riseK : knotsC[k] < riseK)) {
            k++;
        }
        return k;
    }

    /** {@code ln(1 + x)/x}; infinite where the end is never reached. */
    private static double logOver(double x) {
        return x <= -1 ? Double.POSITIVE_INFINITY : Math.abs(x) < 1e-9 ? 1 : Math.log1p(x) / x;
    }

    /** {@code (eˣ − 1)/x}. */
    private static double expOver(double x) {
        return Math.abs(x) < 1e-9 ? 1 : Math.expm1(x) / x;
    }

    /** {@code (eˣ − 1 − x)/x²}, the mean of the rise over its rate and time; by its series where the difference would lose its digits. */
    private static double meanOver(double x) {
        return Math.abs(x) < 1e-3 ? 0.5 + x / 6 + x * x / 24 + x * x * x / 120 : (Math.expm1(x) - x) / (x * x);
    }

    /** Takes down what the model gave. */
    void note(
            double areaM2,
            double wallM,
            @Nullable Double hottestC,
            @Nullable Double toLimitS,
            double fromC,
            double toC,
            Trace trace) {
        trace.note(OUTSIDE, outsideM, areaM2, wallM);
        if (hottestC != null) {
            trace.note(FINAL, hottestC, outsideM, ambientC, bundleFactor);
        }
        if (toLimitS != null) {
            trace.note(TO_LIMIT, toLimitS, fromC, toC);
        }
    }
}
