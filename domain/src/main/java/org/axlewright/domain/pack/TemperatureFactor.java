package org.axlewright.domain.pack;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** Share of the capacity at 25 degrees Celsius that is there at another cell temperature. */
public final class TemperatureFactor {

    /** Temperature at which capacities are rated, degC. */
    public static final double RATED_C = 25;

    private static final double SLOW_S = TimeUnit.HOUR.toSi(10);
    private static final double FAST_S = TimeUnit.HOUR.toSi(3);

    private static final Symbol T = new Symbol("T", Dimension.TEMPERATURE);

    private static final Step LEAD_ACID = Step.of(
            "fT",
            "share of the capacity at 25 degC, lead-acid",
            "fT = 1 + λ·(T - 25)",
            Dimension.NONE,
            Source.weak(
                    "battery maker's coefficients: 0.006 per K for 10 to 20 h rates, 0.010 per K for 1 to 3 h rates; between them the one that gives less"),
            new Symbol("λ", Dimension.NONE),
            T);
    private static final Step LFP = Step.of(
            "fT",
            "least share of the capacity at 25 degC, lithium iron phosphate",
            "fT = f1 + (f2 - f1)·(T - T1)/(T2 - T1)",
            Dimension.NONE,
            Source.published("module maker's data sheet: least capacity at 0.33 C; a straight line between its rows"),
            new Symbol("T1", Dimension.TEMPERATURE),
            new Symbol("f1", Dimension.NONE),
            new Symbol("T2", Dimension.TEMPERATURE),
            new Symbol("f2", Dimension.NONE),
            T);

    private static final NavigableMap<Double, Double> LFP_LEAST = read();

    private TemperatureFactor() {}

    /** Temperatures for which there is a factor, degC. */
    public record Range(double fromC, double toC, Source source) {}

    /**
     * The range of each chemistry. Lead-acid: the coefficients are printed without a range; capacity tables run from about -20 to 50
     * degrees. NMC: no published law, so the capacity is not changed and any temperature passes.
     */
    public static Range range(Chemistry chemistry) {
        return switch (chemistry) {
            case LFP ->
                new Range(
                        LFP_LEAST.firstKey(),
                        LFP_LEAST.lastKey(),
                        Source.published("module maker's data sheet: least capacity at 0.33 C"));
            case NMC -> new Range(-60, 100, Source.COMMON_PRACTICE);
            case FLOODED, AGM, GEL -> new Range(-20, 50, Source.memory("capacity tables of lead-acid makers"));
        };
    }

    /**
     * The factor.
     *
     * @param temperatureC of the cells, inside {@link #range}
     * @param dischargeTimeS time from full to cut-off at the current and 25 degrees; tells a slow discharge from a fast one
     */
    public static double of(Chemistry chemistry, double temperatureC, double dischargeTimeS, Trace trace) {
        Range range = range(chemistry);
        Check.within(temperatureC, range.fromC(), range.toC(), "temperatureC");
        return switch (chemistry) {
            case LFP -> lfp(temperatureC, trace);
            case NMC -> 1;
            case FLOODED, AGM, GEL -> {
                double lambda = coefficient(chemistry, temperatureC, dischargeTimeS);
                yield trace.note(LEAD_ACID, 1 + lambda * (temperatureC - RATED_C), lambda, temperatureC);
            }
        };
    }

    private static double coefficient(Chemistry chemistry, double temperatureC, double dischargeTimeS) {
        CellData cell = CellData.of(chemistry);
        Datum slow = cell.slowCoefficient();
        Datum fast = cell.fastCoefficient();
        if (slow == null || fast == null) {
            throw new InvalidInput("no temperature coefficient for " + chemistry);
        }
        if (dischargeTimeS >= SLOW_S) {
            return slow.value();
        }
        if (dischargeTimeS <= FAST_S) {
            return fast.value();
        }
        return temperatureC < RATED_C ? fast.value() : slow.value();
    }

    private static double lfp(double temperatureC, Trace trace) {
        Map.Entry<Double, Double> below = LFP_LEAST.floorEntry(temperatureC);
        Map.Entry<Double, Double> above = LFP_LEAST.ceilingEntry(temperatureC);
        if (below.getKey().equals(above.getKey())) {
            below = above.getKey().equals(LFP_LEAST.firstKey()) ? above : LFP_LEAST.lowerEntry(temperatureC);
            above = LFP_LEAST.higherEntry(below.getKey());
        }
        double t1 = below.getKey();
        double t2 = above.getKey();
        double f1 = below.getValue();
        double f2 = above.getValue();
        return trace.note(LFP, f1 + (f2 - f1) * (temperatureC - t1) / (t2 - t1), t1, f1, t2, f2, temperatureC);
    }

    private static NavigableMap<Double, Double> read() {
        NavigableMap<Double, Double> least = new TreeMap<>();
        Datum.table("/pack/temperature.csv")
                .getOrDefault("lfp", Map.of())
                .forEach((celsius, share) -> least.put(Double.valueOf(celsius), share.value()));
        return least;
    }
}
