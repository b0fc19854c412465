package org.axlewright.domain.fit;

import java.util.List;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.pack.AtTemperature;
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
        if (!AtTemperature.reach(rows, celsius)) {
            return new Allowed(null, null, ROWS, ROWS);
        }
        return new Allowed(
                AtTemperature.lesser(
                        limits.continuousA(), AtTemperature.least(rows, celsius, AtTemperature::dischargeA)),
                AtTemperature.lesser(limits.chargeA(), AtTemperature.least(rows, celsius, AtTemperature::chargeA)),
                discharge,
                charge);
    }
}
