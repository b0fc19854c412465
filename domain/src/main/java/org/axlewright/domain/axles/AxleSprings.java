package org.axlewright.domain.axles;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPRING_RATE;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Springs and tyres of one axle, both sides together: straight lines of force over travel, in series. Good for small movements about the
 * ride height, before the bump stops.
 *
 * @param suspensionRate force at the wheels for travel of the wheels against the frame, N/m, above 0
 * @param tyreRate force for what the tyres give, N/m, above 0; null when they are taken as rigid, or are part of a measured rate
 */
public record AxleSprings(double suspensionRate, @Nullable Double tyreRate) {

    private static final Source WHEEL_RATE =
            Source.published("Automotive Chassis Engineering, p. 179: k_w = k_s (c/b)^2, small movements");
    private static final Source IN_SERIES = Source.derived("suspension and tyre carry the same load, one on the other");

    private static final Step FROM_SPRINGS = Step.of(
            "K",
            "rate of the suspension at the wheels of the axle",
            "K = n·k_s·i²",
            SPRING_RATE,
            WHEEL_RATE,
            new Symbol("n", NONE),
            new Symbol("k_s", SPRING_RATE),
            new Symbol("i", NONE));
    private static final Step FROM_DROP = Step.of(
            "K′",
            "rate of the axle over the ground, as measured",
            "K′ = ΔW/s",
            SPRING_RATE,
            Source.derived("Hooke's law"),
            new Symbol("ΔW", LOAD),
            new Symbol("s", CLEARANCE));
    private static final Step WITHOUT_TYRES = Step.of(
            "K",
            "rate of the suspension at the wheels of the axle",
            "K = K′·K_t/(K_t − K′)",
            SPRING_RATE,
            IN_SERIES,
            new Symbol("K′", SPRING_RATE),
            new Symbol("K_t", SPRING_RATE));
    private static final Step SERIES = Step.of(
            "K′",
            "rate of the axle over the ground",
            "K′ = K·K_t/(K + K_t)",
            SPRING_RATE,
            IN_SERIES,
            new Symbol("K", SPRING_RATE),
            new Symbol("K_t", SPRING_RATE));
    private static final Step SQUAT = Step.of(
            "s",
            "how far the frame comes down over the axle",
            "s = ΔW/K′",
            CLEARANCE,
            Source.derived("Hooke's law"),
            new Symbol("ΔW", LOAD),
            new Symbol("K′", SPRING_RATE));

    public AxleSprings {
        Check.positive(suspensionRate, "suspensionRate");
        if (tyreRate != null) {
            Check.positive(tyreRate, "tyreRate");
        }
    }

    /**
     * From the rate of one spring.
     *
     * @param springRate of one spring, N/m
     * @param springs on the axle, both sides together
     * @param motionRatio travel of the spring for travel of the wheel
     */
    public static AxleSprings ofSprings(
            double springRate, int springs, double motionRatio, @Nullable Double tyreRate, Trace trace) {
        Check.positive(springRate, "springRate");
        Check.positive(springs, "springs");
        Check.positive(motionRatio, "motionRatio");
        double rate = trace.note(
                FROM_SPRINGS, springs * springRate * motionRatio * motionRatio, springs, springRate, motionRatio);
        return new AxleSprings(rate, tyreRate);
    }

    /**
     * From one measurement of what the whole axle gave, tyres included.
     *
     * @param loadN what the axle carried more, N
     * @param dropM how far the frame came down over it, m
     * @param tyreRate of the tyres of the axle, N/m, above {@code loadN/dropM}; null leaves them in the rate
     */
    public static AxleSprings ofMeasurement(double loadN, double dropM, @Nullable Double tyreRate, Trace trace) {
        Check.positive(loadN, "load");
        Check.positive(dropM, "drop");
        double rate = trace.note(FROM_DROP, loadN / dropM, loadN, dropM);
        return tyreRate == null
                ? new AxleSprings(rate, null)
                : new AxleSprings(
                        trace.note(WITHOUT_TYRES, rate * tyreRate / (tyreRate - rate), rate, tyreRate), tyreRate);
    }

    /** Rate of the axle over the ground, springs and tyres in series, N/m. */
    public double rate() {
        return tyreRate == null ? suspensionRate : suspensionRate * tyreRate / (suspensionRate + tyreRate);
    }

    /** The same, noted. */
    public double rate(Trace trace) {
        return tyreRate == null ? suspensionRate : trace.note(SERIES, rate(), suspensionRate, tyreRate);
    }

    /** How far the frame comes down over the axle, m, when the axle carries so much more; negative when it rises. */
    public double squatM(double loadChangeN, Trace trace) {
        return trace.note(SQUAT, loadChangeN / rate(), loadChangeN, rate());
    }

    /** Part of the squat that is travel of the wheels against the frame, m. */
    public double suspensionTravelM(double loadChangeN) {
        return loadChangeN / suspensionRate;
    }

    /** Part of the squat that is in the tyres, m. */
    public double tyreTravelM(double loadChangeN) {
        return tyreRate == null ? 0 : loadChangeN / tyreRate;
    }
}
