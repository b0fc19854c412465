package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.TableFile;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Which fuse protects a cable and still carries its current; one in each run.
 *
 * @param ratingA smallest standard rating in the window, A; null when there is none or the window is not known
 * @param lowerA least rating that carries the current, A
 * @param upperA largest rating that protects the cable, A; null when the voltage is not known
 * @param voltageV least voltage rating, V; null when the full-charge voltage is not known
 * @param interruptingA least interrupting rating, A; null when the resistance of the pack is not known
 * @param clearingS time in which the fuse must end a short circuit at that current, s; null when the current is not known or the
 *     cable stands it beyond the range of the law
 */
public record FuseWindow(
        @Nullable Double ratingA,
        double lowerA,
        @Nullable Double upperA,
        @Nullable Double voltageV,
        @Nullable Double interruptingA,
        @Nullable Double clearingS) {

    /** Voltage at full charge from which the stricter rule for the largest fuse holds, V. */
    public static final double STRICTER_FROM_V = 50;

    static final Source CONTINUOUS = Source.regulation("NEC 210.20(A)");
    static final Source LARGEST = Source.regulation("33 CFR 183.455(c)");
    static final Source PROSPECTIVE =
            Source.derived("Ohm's law, a fault right behind the fuse: no resistance but the pack's");

    private static final double CONTINUOUS_FACTOR = 1.25;
    private static final double LARGEST_FACTOR = 1.5;

    private static final List<Double> STANDARD = TableFile.read("/conductor/fuse-ratings.csv").rows().stream()
            .map(row -> Double.valueOf(row[0]))
            .sorted(Comparator.naturalOrder())
            .toList();

    private static final Map<String, SmallConductor> SMALL =
            TableFile.read("/conductor/small-conductors.csv").rows().stream()
                    .map(row -> new SmallConductor(
                            row[0],
                            Double.parseDouble(row[1]),
                            new Source("NEC 240.4(D)", Standing.valueOf(row[2].toUpperCase(Locale.ROOT)))))
                    .collect(Collectors.toUnmodifiableMap(SmallConductor::awg, row -> row));

    private static final Step LOWER = Step.of(
            "F1",
            "least rating of the fuse of one run",
            "F1 = 1.25·Irms/(n·fT), fT = 1 − 0.005·(T − 25) in a compartment above 25 degC",
            CURRENT,
            CONTINUOUS,
            new Symbol("Irms", CURRENT),
            new Symbol("n", NONE),
            new Symbol("fT", NONE));
    private static final Step UPPER_BELOW_50 = Step.of(
            "F2",
            "largest rating of the fuse of one run, below 50 V at full charge",
            "F2 = 1.5·A1",
            CURRENT,
            LARGEST,
            new Symbol("A1", CURRENT));
    private static final Step UPPER_FROM_50 = Step.of(
            "F2",
            "largest rating of the fuse of one run, 50 V and over at full charge",
            "F2 = min(standard rating not below A1, 1.5·A1)",
            CURRENT,
            LARGEST,
            new Symbol("A1", CURRENT));
    private static final Step UPPER_SMALL = Step.of(
            "F2",
            "largest rating of the fuse, held down by the rule of small conductors",
            "F2 = min(F2, limit of the gauge)",
            CURRENT,
            Source.regulation("NEC 240.4(D)"),
            new Symbol("F2", CURRENT),
            new Symbol("limit", CURRENT));
    private static final Step SHORT_CIRCUIT = Step.of(
            "Isc",
            "current of a short circuit behind the fuse",
            "Isc = E/R",
            CURRENT,
            PROSPECTIVE,
            new Symbol("E", VOLTAGE),
            new Symbol("R", RESISTANCE));

    /** Largest protection of a small conductor, A. */
    public record SmallConductor(String awg, double ratingA, Source source) {
        /** The rule for a gauge, if it has one. */
        public static Optional<SmallConductor> of(ConductorSize gauge) {
            return Optional.ofNullable(SMALL.get(gauge.designation()));
        }
    }

    /** The smallest standard rating that is not below a current, A. */
    public static OptionalDouble standardRating(double currentA) {
        return STANDARD.stream()
                .mapToDouble(Double::doubleValue)
                .filter(rating -> rating >= currentA)
                .findFirst();
    }

    /** Least rating that carries a current for hours, A. */
    public static double lowerA(double rmsA) {
        return CONTINUOUS_FACTOR * rmsA;
    }

    /**
     * Largest rating that protects a conductor, A.
     *
     * @param ampacityA of one run, A
     * @param highestV of the circuit, at full charge, V
     */
    public static double upperA(double ampacityA, double highestV) {
        double most = LARGEST_FACTOR * ampacityA;
        return highestV < STRICTER_FROM_V
                ? most
                : Math.min(standardRating(ampacityA).orElse(ampacityA), most);
    }

    /** Current of a short circuit, A. */
    public static double shortCircuitA(double voltageV, double resistanceOhm) {
        if (!(resistanceOhm > 0)) {
            throw new InvalidInput("resistance must be positive, was " + resistanceOhm);
        }
        return voltageV / resistanceOhm;
    }

    static FuseWindow of(CircuitInput input, double rmsA, Candidate cable, Trace trace) {
        int runs = cable.parallel();
        double warm = input.fuse().temperatureFactor();
        double lower = trace.note(LOWER, lowerA(rmsA / runs) / warm, rmsA, runs, warm);
        Double highest = input.supply().highestV();
        Double upper = highest == null ? null : (Double) largest(input, cable, highest, trace);
        Double rating = null;
        OptionalDouble standard = standardRating(lower);
        if (upper != null && standard.isPresent() && standard.getAsDouble() <= upper) {
            rating = standard.getAsDouble();
        }
        Double full = input.supply().fullV();
        Double pack = input.supply().packOhm();
        if (full == null || pack == null) {
            return new FuseWindow(rating, lower, upper, full, null, null);
        }
        double fault = trace.note(SHORT_CIRCUIT, shortCircuitA(full, pack), full, pack);
        return new FuseWindow(rating, lower, upper, full, fault, clearing(input, cable, fault, trace));
    }

    private static double largest(CircuitInput input, Candidate cable, double highestV, Trace trace) {
        double ampacity = cable.ampacityA() / cable.parallel();
        double upper = trace.note(
                highestV < STRICTER_FROM_V ? UPPER_BELOW_50 : UPPER_FROM_50, upperA(ampacity, highestV), ampacity);
        Optional<SmallConductor> small = SmallConductor.of(cable.tableRow());
        if (input.table() == AmpacityTable.NEC_310_16 && small.isPresent()) {
            double limit = small.get().ratingA();
            return trace.note(UPPER_SMALL, Math.min(upper, limit), upper, limit);
        }
        return upper;
    }

    private static @Nullable Double clearing(CircuitInput input, Candidate cable, double faultA, Trace trace) {
        double initial = input.columnC();
        if (initial >= Adiabatic.FAULT_END_C) {
            return null;
        }
        double area = cable.conductor().areaM2();
        double time = Adiabatic.timeS(faultA, area, initial, Adiabatic.FAULT_END_C, Trace.withoutWorking());
        return time > Adiabatic.LONGEST_FAULT_S
                ? null
                : (Double) Adiabatic.timeS(faultA, area, initial, Adiabatic.FAULT_END_C, trace);
    }
}
