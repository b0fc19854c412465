package org.axlewright.domain.packcheck;

import java.util.List;
import org.axlewright.domain.check.InvalidInput;

/**
 * Median and median absolute deviation: one wild reading does not move them. Source: Iglewicz and Hoaglin, How to Detect and Handle
 * Outliers, ASQC Quality Press, 1993: a value stands out when 0.6745 times its distance from the median is more than 3.5 times the median
 * absolute deviation.
 */
record Robust(double median, double deviation) {

    private static final double CONSISTENCY = 0.6745;
    private static final double OUTLYING = 3.5;

    static Robust of(List<Double> values) {
        if (values.isEmpty()) {
            throw new InvalidInput("no values");
        }
        double median = median(values);
        return new Robust(
                median,
                median(values.stream().map(value -> Math.abs(value - median)).toList()));
    }

    /** Whether the value stands out by the rule and by more than the floor, which keeps meter resolution from counting. */
    boolean standsOut(double value, double floor) {
        double distance = Math.abs(value - median);
        return distance > floor && CONSISTENCY * distance > OUTLYING * deviation;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }
}
