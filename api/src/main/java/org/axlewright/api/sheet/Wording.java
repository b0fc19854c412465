package org.axlewright.api.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Names, numbers and quantities of the contract as people read them: the wording of the page, on paper. */
final class Wording {

    /** Significant digits of a result; an entry keeps all that were sent. */
    private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

    /** Numbers beyond these are written with an exponent. */
    private static final double LARGE = 1e9;

    private static final double SMALL = 1e-6;

    /** Signs of units as printed (SI Brochure, NIST SP 811); a token that is not listed is its own sign. */
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry("degC", "°C"),
            Map.entry("degF", "°F"),
            Map.entry("deg", "°"),
            Map.entry("mohm", "mΩ"),
            Map.entry("ohm", "Ω"),
            Map.entry("mohm/m", "mΩ/m"),
            Map.entry("ohm/km", "Ω/km"),
            Map.entry("ohm/kft", "Ω/kft"),
            Map.entry("uF", "µF"),
            Map.entry("mm2", "mm²"),
            Map.entry("cm2", "cm²"),
            Map.entry("m2", "m²"),
            Map.entry("ft2", "ft²"),
            Map.entry("m/s2", "m/s²"),
            Map.entry("m3/h", "m³/h"),
            Map.entry("Nm", "N·m"),
            Map.entry("lbf.ft", "lbf·ft"),
            Map.entry("deg/g", "°/g"));

    private Wording() {}

    /** {@code cellsInSeries} and {@code pack-range} as {@code cells in series} and {@code pack range}. */
    static String words(String name) {
        return name.replace('-', ' ').replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A pointer into a result, {@code /circuits/0/dropShare}, as {@code circuits 1 drop share}. */
    static String result(String pointer) {
        return Arrays.stream(pointer.substring(1).split("/", -1))
                .map(step -> isPlace(step) ? String.valueOf(Integer.parseInt(step) + 1) : words(step))
                .collect(Collectors.joining(" "));
    }

    private static boolean isPlace(String step) {
        return step.matches("\\d{1,9}");
    }

    /** A pointer into the request, {@code /items/2/position/x}, as {@code Items 3 › position › x}. */
    static String place(String pointer) {
        List<String> named = new ArrayList<>();
        String[] steps = pointer.split("/", -1);
        for (int i = 1; i < steps.length; i++) {
            String step = steps[i].replace("~1", "/").replace("~0", "~");
            boolean leaf = i == steps.length - 1 && i > 2 && (step.equals("value") || step.equals("unit"));
            if (!named.isEmpty() && isPlace(step)) {
                int last = named.size() - 1;
                named.set(last, named.get(last) + " " + (Integer.parseInt(step) + 1));
            } else if (!leaf) {
                named.add(named.isEmpty() ? capital(words(step)) : words(step));
            }
        }
        return named.isEmpty() ? "The whole setup" : String.join(" › ", named);
    }

    /** A result, rounded for people; shares are read as per cent. */
    static String shown(JsonNode value, String name) {
        return text(value, name, true);
    }

    /** An entry with every digit that was sent. */
    static String sent(JsonNode value, String name) {
        return text(value, name, false);
    }

    private static String text(JsonNode value, String name, boolean rounded) {
        if (isQuantity(value)) {
            String unit = value.path("unit").asString();
            return number(value.path("value").asDouble(), rounded) + (unit.equals("deg") ? "" : " ") + sign(unit);
        }
        if (isMoney(value)) {
            String amount = value.path("amount").asString();
            return (rounded ? cents(amount) : amount) + " "
                    + value.path("currency").asString();
        }
        if (value.isNumber()) {
            boolean share = rounded && name.toLowerCase(Locale.ROOT).endsWith("share");
            return share ? number(value.asDouble() * 100, true) + " %" : number(value.asDouble(), rounded);
        }
        if (value.isBoolean()) {
            return value.asBoolean() ? "yes" : "no";
        }
        List<String> parts = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(part -> parts.add(text(part, name, rounded)));
            return parts.isEmpty() ? "none" : String.join("; ", parts);
        }
        if (value.isObject()) {
            value.properties()
                    .forEach(part ->
                            parts.add(words(part.getKey()) + " " + text(part.getValue(), part.getKey(), rounded)));
            return String.join(", ", parts);
        }
        return value.asString();
    }

    static String sign(String unit) {
        return SIGNS.getOrDefault(unit, unit);
    }

    static String number(double value, boolean rounded) {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal shown = (rounded ? exact.round(DIGITS) : exact).stripTrailingZeros();
        if (shown.signum() == 0) {
            return "0";
        }
        double size = Math.abs(value);
        String text = size >= LARGE || size < SMALL ? exponent(shown) : shown.toPlainString();
        return text.replace('-', '−');
    }

    /** {@code 1.2e-7} as {@code 1.2·10⁻⁷} needs signs that few typefaces have. */
    private static String exponent(BigDecimal value) {
        int power = value.precision() - value.scale() - 1;
        return value.movePointLeft(power).stripTrailingZeros().toPlainString() + "e" + power;
    }

    private static String cents(String amount) {
        BigDecimal exact = new BigDecimal(amount);
        return exact.abs().compareTo(BigDecimal.TEN) < 0
                ? exact.round(DIGITS).stripTrailingZeros().toPlainString()
                : exact.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    static boolean isQuantity(@Nullable JsonNode value) {
        return value != null
                && value.isObject()
                && value.path("value").isNumber()
                && value.path("unit").isString();
    }

    static boolean isMoney(JsonNode value) {
        return value.isObject()
                && value.path("amount").isString()
                && value.path("currency").isString();
    }

    /** Neither a quantity nor money, but something with parts. */
    static boolean isComposite(JsonNode value) {
        return value.isContainer() && !isQuantity(value) && !isMoney(value);
    }
}
