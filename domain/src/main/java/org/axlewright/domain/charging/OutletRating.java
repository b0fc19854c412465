package org.axlewright.domain.charging;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.trace.Datum;
import org.jspecify.annotations.Nullable;

/**
 * What an outlet carries.
 *
 * @param nominalVoltageV nominal voltage of the supply it belongs to, V
 * @param ratedA rated current, A
 * @param continuousA current for a load of three hours or more, A
 * @param largestBreakerA largest breaker that may stand before it, A; null where no rule is known
 */
public record OutletRating(
        Outlet outlet,
        Datum nominalVoltageV,
        Datum ratedA,
        Datum continuousA,
        @Nullable Datum largestBreakerA) {

    private static final Map<Outlet, OutletRating> RATINGS = read();

    /** The rating of an outlet, from {@code charging/outlets.csv}. */
    public static OutletRating of(Outlet outlet) {
        OutletRating rating = RATINGS.get(outlet);
        if (rating == null) {
            throw new IllegalStateException("the table of outlets lacks " + outlet);
        }
        return rating;
    }

    private static Map<Outlet, OutletRating> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/charging/outlets.csv");
        Map<Outlet, OutletRating> ratings = new EnumMap<>(Outlet.class);
        for (Outlet outlet : Outlet.values()) {
            Map<String, Datum> row = table.getOrDefault(outlet.toString(), Map.of());
            ratings.put(
                    outlet,
                    new OutletRating(
                            outlet,
                            Datum.in(row, "nominal-voltage"),
                            Datum.in(row, "rated-current"),
                            Datum.in(row, "continuous-current"),
                            row.get("largest-breaker")));
        }
        return ratings;
    }
}
