package org.axlewright.domain.charging;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Datum;
import org.jspecify.annotations.Nullable;

/**
 * How a pack of one chemistry takes its charge: constant current to a state of charge, then constant voltage with a falling current.
 *
 * @param constantVoltageFrom state of charge at which the constant-voltage phase starts, 0 to 1
 * @param constantVoltageTimeS from there to full, s
 * @param endRate current at which the charge counts as full, A per Ah of capacity
 * @param chargeFactor charge put in for each charge taken out
 * @param averageVoltageV volts per cell, mean over the charge put in
 * @param usualRate largest rate in ordinary use, A per Ah
 * @param largestRate largest rate allowed, A per Ah
 * @param gassingRate gas-producing current at constant voltage, A per 100 Ah; null where nothing gasses
 * @param taperGassingRate the same at the end of a taper charge, A per 100 Ah
 */
public record ChargeProfile(
        Chemistry chemistry,
        Datum constantVoltageFrom,
        Datum constantVoltageTimeS,
        Datum endRate,
        Datum chargeFactor,
        Datum averageVoltageV,
        Datum usualRate,
        Datum largestRate,
        @Nullable Datum gassingRate,
        @Nullable Datum taperGassingRate) {

    private static final Map<Chemistry, ChargeProfile> PROFILES = read();

    /** The profile of a chemistry, from {@code charging/chemistries.csv}. */
    public static ChargeProfile of(Chemistry chemistry) {
        ChargeProfile profile = PROFILES.get(chemistry);
        if (profile == null) {
            throw new IllegalStateException("the table of chemistries lacks " + chemistry);
        }
        return profile;
    }

    /** Gas-producing current under such a charger, A per 100 Ah; null where nothing gasses. */
    @Nullable
    Datum gassing(ChargerType type) {
        return type == ChargerType.LINE_FREQUENCY ? taperGassingRate : gassingRate;
    }

    private static Map<Chemistry, ChargeProfile> read() {
        Map<String, Map<String, Datum>> table = Datum.table("/charging/chemistries.csv");
        Map<Chemistry, ChargeProfile> profiles = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<String, Datum> row = table.getOrDefault(chemistry.toString(), Map.of());
            Datum hours = Datum.in(row, "constant-voltage-time");
            profiles.put(
                    chemistry,
                    new ChargeProfile(
                            chemistry,
                            Datum.in(row, "constant-voltage-from"),
                            new Datum(TimeUnit.HOUR.toSi(hours.value()), hours.source()),
                            Datum.in(row, "end-current"),
                            Datum.in(row, "charge-factor"),
                            Datum.in(row, "average-voltage"),
                            Datum.in(row, "usual-rate"),
                            Datum.in(row, "largest-rate"),
                            row.get("gassing-current"),
                            row.get("taper-gassing-current")));
        }
        return profiles;
    }
}
