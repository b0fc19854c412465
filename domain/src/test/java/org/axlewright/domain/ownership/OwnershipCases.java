package org.axlewright.domain.ownership;

import java.util.List;
import org.axlewright.domain.ownership.Ownership.Input;
import org.jspecify.annotations.Nullable;

/** Options for the tests. */
final class OwnershipCases {

    /** A kilowatt-hour. */
    static final double KWH = 3.6e6;

    private OwnershipCases() {}

    static CostOption option(int index, double price, double lifeYears, double upkeep, double outJ, double efficiency) {
        return new CostOption(
                index,
                "option " + index,
                null,
                price,
                0,
                price,
                0,
                0,
                upkeep,
                lifeYears,
                Double.POSITIVE_INFINITY,
                0,
                outJ,
                efficiency);
    }

    static Input input(double years, double rate, @Nullable Double energyPrice, CostOption... options) {
        return new Input(years, rate, energyPrice, null, List.of(options));
    }

    /** The lead-acid set and the lithium pack that are nearly even: eight years, 200 charges a year, 5.4 kWh out of each, 5 %. */
    static Input nearlyEven() {
        return input(
                8,
                0.05,
                0.17,
                option(0, 900, 4, 0, 200 * 5.4 * KWH, 0.80 * 0.85),
                option(1, 2200, 10, 0, 200 * 5.4 * KWH, 0.95 * 0.92));
    }
}
