package org.axlewright.domain.charging;

import java.util.EnumMap;
import java.util.Map;
import org.axlewright.domain.trace.Datum;

/** How a charger is built, which decides its efficiency and power factor. {@code toString} is the name in requests. */
public enum ChargerType {
    /** Electronic, holds current or power, then voltage. */
    SWITCH_MODE("switch-mode"),
    /** Transformer at mains frequency (ferroresonant, magnetic amplifier, thyristor): the current tapers as the voltage rises. */
    LINE_FREQUENCY("line-frequency");

    private static final Map<ChargerType, Map<String, Datum>> TABLE = read();

    private final String token;

    ChargerType(String token) {
        this.token = token;
    }

    /** Usual efficiency, output over input, 0 to 1, from {@code charging/chargers.csv}. */
    public Datum efficiency() {
        return Datum.in(TABLE.getOrDefault(this, Map.of()), "efficiency");
    }

    /** Usual power factor at the mains, 0 to 1, from {@code charging/chargers.csv}. */
    public Datum powerFactor() {
        return Datum.in(TABLE.getOrDefault(this, Map.of()), "power-factor");
    }

    @Override
    public String toString() {
        return token;
    }

    private static Map<ChargerType, Map<String, Datum>> read() {
        Map<String, Map<String, Datum>> rows = Datum.table("/charging/chargers.csv");
        Map<ChargerType, Map<String, Datum>> table = new EnumMap<>(ChargerType.class);
        for (ChargerType type : values()) {
            table.put(type, rows.getOrDefault(type.toString(), Map.of()));
        }
        return table;
    }
}
