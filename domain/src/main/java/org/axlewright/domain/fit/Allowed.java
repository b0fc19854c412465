package org.axlewright.domain.fit;

import java.util.List;
import java.util.function.Function;
import org.axlewright.domain.fit.FitInput.AtTemperature;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Pack;
import org.jspecify.annotations.Nullable;

/**
 * What the pack allows at its temperature: the lesser of the plain limit and of the two rows that stand beside the temperature. Outside
 * the rows the maker says nothing, and the limit is unknown.
 *
 * @param continuousA discharge, A; null when unknown
 * @param chargeA charge, A; null when unknown
 * @param missingDischarge pointer to what would tell the discharge limit
 * @param missingCharge pointer to what would tell the charge limit
 */
record Allowed(@Nullable Double continuousA, @Nullable Double chargeA, String missingDischarge, String missingCharge) {

    private static final String ROWS = "/pack/limits/byTemperature";

    static Allowed of(Pack pack) {
        Limits limits = pack.limits();
        String discharge = "/pack/limits/continuousDischarge";
        String charge = "/pack/limits/charge";
        List<AtTemperature> rows = limits.byTemperature();
        Double celsius = pack.temperatureC();
        if (rows.isEmpty() || celsius == null) {
            return new Allowed(limits.continuousA(), limits.chargeA(), discharge, charge);
        }
        if (celsius < rows.get(0).temperatureC()
                || celsius > rows.get(rows.size() - 1).temperatureC()) {
            return new Allowed(null, null, ROWS, ROWS);
        }
        return new Allowed(
                lesser(limits.continuousA(), beside(rows, celsius, AtTemperature::dischargeA)),
                lesser(limits.chargeA(), beside(rows, celsius, AtTemperature::chargeA)),
                discharge,
                charge);
    }

    private static @Nullable Double beside(
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

    private static @Nullable Double lesser(@Nullable Double one, @Nullable Double other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return Math.min(one, other);
    }
}
