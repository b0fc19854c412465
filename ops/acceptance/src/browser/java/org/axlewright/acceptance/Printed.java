package org.axlewright.acceptance;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit as a person reads it off the page. */
record Printed(double number, String unit) {

    /** Printed signs of the tokens that are not their own sign (SI Brochure, NIST SP 811). */
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry("degC", "°C"),
            Map.entry("degF", "°F"),
            Map.entry("deg", "°"),
            Map.entry("mohm", "mΩ"),
            Map.entry("ohm", "Ω"),
            Map.entry("mohm/m", "mΩ/m"),
            Map.entry("uF", "µF"),
            Map.entry("cm2", "cm²"),
            Map.entry("deg/g", "°/g"),
            Map.entry("ohm/km", "Ω/km"),
            Map.entry("ohm/kft", "Ω/kft"),
            Map.entry("mm2", "mm²"),
            Map.entry("m2", "m²"),
            Map.entry("ft2", "ft²"),
            Map.entry("m/s2", "m/s²"),
            Map.entry("m3/h", "m³/h"),
            Map.entry("Nm", "N·m"),
            Map.entry("lbf.ft", "lbf·ft"));

    private static final Pattern TEXT = Pattern.compile("(−?[0-9.]+(?:e[−+]?\\d+)?)\\s*(.*)");

    static Printed read(String text) {
        Matcher matcher = TEXT.matcher(text.replace(' ', ' ').strip());
        if (!matcher.matches()) {
            throw new AssertionError("No number: " + text);
        }
        return new Printed(Double.parseDouble(matcher.group(1).replace('−', '-')), matcher.group(2));
    }

    static String sign(String unit) {
        return SIGNS.getOrDefault(unit, unit);
    }
}
