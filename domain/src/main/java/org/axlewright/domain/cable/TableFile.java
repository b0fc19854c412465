package org.axlewright.domain.cable;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Published tables kept as CSV: lines with {@code #} name the source, the first other line names the columns, no cell holds a comma. */
public final class TableFile {

    private final List<String> columns;
    private final List<String[]> rows;

    private TableFile(List<String[]> lines) {
        columns = List.of(lines.get(0));
        rows = lines.subList(1, lines.size());
    }

    /** Reads a table of the class path; a missing or ragged table is a mistake that shows at start. */
    public static TableFile read(String resource) {
        try (InputStream stream = TableFile.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("No table " + resource);
            }
            List<String[]> lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
            if (lines.stream().anyMatch(line -> line.length != lines.get(0).length)) {
                throw new IllegalStateException("Table " + resource + " is ragged");
            }
            return new TableFile(lines);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public List<String> columns() {
        return columns;
    }

    public List<String[]> rows() {
        return rows;
    }
}
