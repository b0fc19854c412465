package org.axlewright.domain.tyre;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;

/** The load index of a tyre: what one tyre may carry at its rated pressure. */
public final class LoadIndex {

    public static final Source SOURCE = Source.regulation("ISO 4000-1 and UN R30, table of load-capacity indices");

    /** Highest index of the table. */
    public static final int HIGHEST = 119;

    private static final double[] MASS_KG = read();

    private LoadIndex() {}

    /**
     * Mass that one tyre may carry, kg.
     *
     * @param index 0 to {@link #HIGHEST}
     */
    public static double massKg(int index) {
        if (index < 0 || index > HIGHEST) {
            throw new InvalidInput("load index must be from 0 to " + HIGHEST + ", was " + index);
        }
        return MASS_KG[index];
    }

    private static double[] read() {
        double[] masses = new double[HIGHEST + 1];
        InputStream table = Objects.requireNonNull(LoadIndex.class.getResourceAsStream("/tyre/load-index.csv"));
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(table, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && Character.isDigit(line.charAt(0)))
                    .map(line -> line.split(",", -1))
                    .forEach(row -> masses[Integer.parseInt(row[0])] = Double.parseDouble(row[1]));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return masses;
    }
}
