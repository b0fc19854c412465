package org.axlewright.domain.fit;

import java.util.List;
import org.axlewright.domain.trace.Measure;
import org.jspecify.annotations.Nullable;

/**
 * One value held against one limit.
 *
 * @param name stable name, lower case with hyphens
 * @param margin share of the limit that is left, negative beyond it; null without a limit or with a limit of nothing
 * @param missing pointers without which it can't be decided
 */
public record FitCheck(
        String name,
        Verdict verdict,
        @Nullable Measure actual,
        @Nullable Measure limit,
        @Nullable Double margin,
        List<String> missing) {

    /** Worse verdict, then less margin. */
    boolean decidesOver(FitCheck other) {
        if (verdict != other.verdict) {
            return verdict.compareTo(other.verdict) > 0;
        }
        return order(this) < order(other);
    }

    /** Checks without a margin decide last among equals. */
    private static double order(FitCheck check) {
        return check.margin == null ? Double.MAX_VALUE : check.margin;
    }
}
