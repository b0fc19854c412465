package org.axlewright.api.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;

/** Results as lines of text for a person: the pointer in words, the value rounded for the shop, its unit. */
final class PlainTable {

    private static final int LABEL_WIDTH = 38;

    private final List<String> lines = new ArrayList<>();

    /** A result. What is absent gets no line; of a list every entry gets its own. */
    void add(String pointer, JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return;
        }
        if (value.isArray()) {
            int place = 1;
            for (JsonNode entry : value) {
                String name = entry.path("name").asString(String.valueOf(place++));
                line(words(pointer) + ", " + name, text(entry));
            }
        } else {
            line(words(pointer), text(value));
        }
    }

    /** A line of words. */
    void add(String label, String text) {
        line(label, text);
    }

    private void line(String label, String text) {
        lines.add(("  %-" + LABEL_WIDTH + "s %s").formatted(label, text).stripTrailing());
    }

    @Override
    public String toString() {
        return lines.isEmpty() ? "" : String.join(System.lineSeparator(), lines) + System.lineSeparator();
    }

    /** {@code /frontAxle/share} as {@code front axle share}. */
    static String words(String pointer) {
        return pointer.substring(1)
                .replace('/', ' ')
                .replaceAll("(?<=[a-z])(?=[A-Z0-9])|(?<=[0-9])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
    }

    private static String text(JsonNode value) {
        if (value.isNumber()) {
            return rounded(value.asDouble());
        }
        if (value.has("value") && value.has("unit")) {
            return rounded(value.path("value").asDouble()) + " "
                    + value.path("unit").asString();
        }
        if (value.has("amount") && value.has("currency")) {
            return rounded(value.path("amount").asDouble()) + " "
                    + value.path("currency").asString();
        }
        if (value.isObject()) {
            List<String> parts = new ArrayList<>();
            value.properties().forEach(part -> {
                if (!part.getKey().equals("name") && !part.getValue().isArray()) {
                    parts.add(words("/" + part.getKey()) + " " + text(part.getValue()));
                }
            });
            return String.join(", ", parts);
        }
        return value.asString();
    }

    /** Three significant digits, and never fewer than the whole number. */
    private static String rounded(double value) {
        if (value == 0) {
            return "0";
        }
        int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(Math.abs(value))));
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
