package org.axlewright.domain.trace;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One value of a table with the source it was read in.
 *
 * @param value in the unit that the head of the table names
 */
public record Datum(double value, Source source) {

    /**
     * Reads a table of rows {@code name,item,value,standing,source}; no text holds a comma. Lines with {@code #} are comments, the first
     * other line is the heading.
     *
     * @param resource path on the class path, such as {@code /pack/chemistries.csv}
     * @return by name, then by item, in the order of the file
     */
    public static Map<String, Map<String, Datum>> table(String resource) {
        Map<String, Map<String, Datum>> table = new LinkedHashMap<>();
        try (InputStream stream = Datum.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(resource + " is not on the class path");
            }
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .forEach(line -> {
                        String[] cells = line.split(",", -1);
                        if (cells.length != 5) {
                            throw new IllegalStateException(resource + ": five cells a line, got " + line);
                        }
                        Standing standing = Standing.valueOf(cells[3].toUpperCase(Locale.ROOT));
                        table.computeIfAbsent(cells[0], name -> new LinkedHashMap<>())
                                .put(cells[1], new Datum(Double.parseDouble(cells[2]), new Source(cells[4], standing)));
                    });
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return table;
    }

    /** The item of a row; its absence is a mistake in the table. */
    public static Datum in(Map<String, Datum> row, String item) {
        Datum datum = row.get(item);
        if (datum == null) {
            throw new IllegalStateException("the table lacks " + item);
        }
        return datum;
    }
}
