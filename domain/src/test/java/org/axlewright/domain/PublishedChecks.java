package org.axlewright.domain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.Assertions;

/**
 * Reads check cases from CSV: {@code id,area,topic,inputs,expected,tolerance,kind,source}. {@code inputs} and {@code expected} are
 * {@code key=value unit} separated by {@code ;}; a part in round brackets is for reading only. {@code tolerance} is one value for every
 * output ({@code 0.5 %}, {@code 0.1 A}, {@code exact}) or {@code key=value} pairs.
 */
public final class PublishedChecks {

    private PublishedChecks() {}

    /** One check case. Values are in the unit they are printed in. */
    public record Case(
            String id,
            String topic,
            Map<String, String> inputs,
            Map<String, String> expected,
            String tolerance,
            String kind,
            String source) {

        /** A number among the inputs, without its unit. */
        public double in(String key) {
            return number(text(inputs, key));
        }

        /** A text among the inputs. */
        public String inText(String key) {
            return text(inputs, key);
        }

        /** An expected number, without its unit. */
        public double out(String key) {
            return number(text(expected, key));
        }

        public String outText(String key) {
            return text(expected, key);
        }

        /** Holds a value, in the unit printed, against the expected one with the tolerance of the row. */
        public void check(String key, double actual) {
            double wanted = out(key);
            Assertions.assertThat(actual)
                    .as(id + " " + key + " (" + source + ")")
                    .isCloseTo(wanted, Assertions.within(allowance(key, wanted)));
        }

        private double allowance(String key, double wanted) {
            for (String part : tolerance.split(";")) {
                String rule = part.strip();
                if (rule.contains("=")) {
                    if (!rule.startsWith(key + "=")) {
                        continue;
                    }
                    rule = rule.substring(key.length() + 1).strip();
                }
                if (rule.equals("exact")) {
                    return Math.max(1e-9, Math.abs(wanted) * 1e-9);
                }
                return rule.endsWith("%") ? Math.abs(wanted) * number(rule) / 100 : number(rule);
            }
            throw new IllegalStateException(id + " states no tolerance for " + key);
        }

        private String text(Map<String, String> map, String key) {
            String value = map.get(key);
            if (value == null) {
                throw new IllegalStateException(id + " has no " + key);
            }
            return value;
        }

        @Override
        public String toString() {
            return id + " " + topic;
        }
    }

    /** The cases of a CSV on the test class path. */
    public static List<Case> read(String resource) {
        try (InputStream stream = PublishedChecks.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("No " + resource);
            }
            List<Case> cases = new ArrayList<>();
            for (String line : new String(stream.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (line.isBlank() || line.startsWith("#") || line.startsWith("id,")) {
                    continue;
                }
                List<String> cells = cells(line);
                cases.add(new Case(
                        cells.get(0),
                        cells.get(2),
                        pairs(cells.get(3)),
                        pairs(cells.get(4)),
                        cells.get(5),
                        cells.get(6),
                        cells.get(7)));
            }
            return cases;
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** The cases whose topic is one of these. */
    public static List<Case> read(String resource, String... topics) {
        List<Case> cases = read(resource).stream()
                .filter(one -> Arrays.asList(topics).contains(one.topic()))
                .toList();
        if (cases.isEmpty()) {
            throw new IllegalStateException(resource + " has no case of " + Arrays.toString(topics));
        }
        return cases;
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            int equals = part.indexOf('=');
            pairs.put(
                    part.substring(0, equals).strip(),
                    part.substring(equals + 1).replaceAll("\\(.*?\\)", "").strip());
        }
        return pairs;
    }

    private static double number(String text) {
        return Double.parseDouble(text.strip().split("[ %]", 2)[0]);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.strip().toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
