package org.axlewright.domain.pack;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What the maker of a pack allows at one temperature. Rows go by rising temperature; between two the lesser holds, and outside them the
 * maker says nothing.
 *
 * @param temperatureC of the cells, degC
 * @param chargeA regeneration included, A; 0 where none is allowed, null when not said
 * @param dischargeA continuous, A; 0 where none is allowed, null when not said
 */
public record AtTemperature(
        double temperatureC,
        @Nullable Double chargeA,
        @Nullable Double dischargeA) {

    /** Whether the rows reach a temperature. */
    public static boolean reach(List<AtTemperature> rows, double celsius) {
        return !rows.isEmpty()
                && celsius >= rows.get(0).temperatureC()
                && celsius <= rows.get(rows.size() - 1).temperatureC();
    }

    /** The least that the rows beside a temperature allow, A; null when they say nothing. */
    public static @Nullable Double least(
            List<AtTemperature> rows, double celsius, Function<AtTemperature, @Nullable Double> limit) {
        Double least = null;
        for (int i = 0; i < rows.size(); i++) {
            boolean below = rows.get(i).temperatureC() <= celsius
                    && (i + 1 == rows.size() || rows.get(i + 1).temperatureC() > celsius);
            boolean above = rows.get(i).temperatureC() >= celsius
                    && (i == 0 || rows.get(i - 1).temperatureC() < celsius);
            if (below || above) {
                least = lesser(least, limit.apply(rows.get(i)));
            }
        }
        return least;
    }

    /** The lesser of two limits, of which each may be unknown. */
    public static @Nullable Double lesser(@Nullable Double one, @Nullable Double other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return Math.min(one, other);
    }
}
