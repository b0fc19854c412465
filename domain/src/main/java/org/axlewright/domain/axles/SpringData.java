package org.axlewright.domain.axles;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What is known of the springs of one axle. */
public sealed interface SpringData {

    /** Springs on the axle, both sides together. */
    int springs();

    /** Travel of the spring for travel of the wheel. */
    double motionRatio();

    /** Rates of the axle. */
    AxleSprings rates(Trace trace);

    /**
     * The rate of one spring is known.
     *
     * @param springRate N/m
     * @param tyreRate of the tyres of the axle together, N/m; null takes them as rigid
     */
    record ByRate(
            double springRate,
            int springs,
            double motionRatio,
            @Nullable Double tyreRate) implements SpringData {
        public ByRate {
            Check.positive(springRate, "springRate");
            Check.positive(springs, "springs");
            Check.positive(motionRatio, "motionRatio");
        }

        @Override
        public AxleSprings rates(Trace trace) {
            return AxleSprings.ofSprings(springRate, springs, motionRatio, tyreRate, trace);
        }
    }

    /**
     * It is known how far the axle came down under a load.
     *
     * @param loadN what the axle carried more, N
     * @param dropM how far the frame came down over it, m
     * @param tyreRate of the tyres of the axle together, N/m, above {@code loadN/dropM}; null leaves them in the rate
     */
    record ByDrop(
            double loadN,
            double dropM,
            int springs,
            double motionRatio,
            @Nullable Double tyreRate) implements SpringData {
        public ByDrop {
            Check.positive(loadN, "load");
            Check.positive(dropM, "drop");
            Check.positive(springs, "springs");
            Check.positive(motionRatio, "motionRatio");
        }

        @Override
        public AxleSprings rates(Trace trace) {
            return AxleSprings.ofMeasurement(loadN, dropM, tyreRate, trace);
        }
    }
}
