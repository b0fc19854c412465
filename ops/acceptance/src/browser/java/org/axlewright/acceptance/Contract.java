package org.axlewright.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which operations {@code docs/openapi.yaml} holds. The committed file is read line by line: its paths stand two blanks in, their methods
 * four.
 *
 * @param operations by a pattern of method and path, such as {@code GET /v1/setups/[^/]+}
 */
record Contract(Map<Pattern, String> operations) {

    private static final Pattern PATH = Pattern.compile("  \"?(/[^\"]*?)\"?:");
    private static final Pattern METHOD = Pattern.compile("    (get|put|post|delete|patch):");

    static Contract read() {
        Map<Pattern, String> operations = new LinkedHashMap<>();
        String path = "";
        try {
            for (String line :
                    Files.readAllLines(Path.of(System.getProperty("axlewright.checkout"), "docs/openapi.yaml"))) {
                Matcher where = PATH.matcher(line);
                Matcher how = METHOD.matcher(line);
                if (where.matches()) {
                    path = where.group(1);
                } else if (how.matches() && !path.isEmpty()) {
                    String operation = how.group(1).toUpperCase() + " " + path;
                    operations.put(Pattern.compile(operation.replaceAll("\\{[^}]+}", "[^/]+")), operation);
                } else if (line.startsWith("components:")) {
                    path = "";
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        if (operations.size() < 20) {
            throw new IllegalStateException("The contract can't be read: " + operations.values());
        }
        return new Contract(operations);
    }

    /** The operation that a request is one of, or null. */
    String operation(String method, String path) {
        String asked = method + " " + path;
        return operations.entrySet().stream()
                .filter(one -> one.getKey().matcher(asked).matches())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }
}
