package org.axlewright.domain.cable;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.axlewright.domain.check.Unreadable;

/**
 * A conductor size by its designation, in one of three series that are never mixed.
 *
 * @param series the series
 * @param designation the size within the series: {@code 2/0}, {@code 35}
 */
public record ConductorSize(SizeSeries series, String designation) {

    private static final Pattern DESIGNATION =
            Pattern.compile("(\\d/0|\\d{1,4}(?:[.,]\\d{1,2})?)\\s*(AWG|SAE|MM2|MM²)");

    /**
     * Reads a designation such as {@code 2/0 AWG}, {@code 35 mm2}, {@code 4 SAE}.
     *
     * @throws Unreadable when the series is not named, the form is unknown or the series has no such size
     */
    public static ConductorSize parse(String text) {
        Matcher matcher = DESIGNATION.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw new Unreadable("Conductor size \"" + text
                    + "\" is not read; write it with its series, as 2/0 AWG, 35 mm2 or 4 SAE"
                    + (text.contains("-") ? ", and the number of runs side by side apart from the size" : ""));
        }
        SizeSeries series = switch (matcher.group(2)) {
            case "AWG" -> SizeSeries.AWG;
            case "SAE" -> SizeSeries.SAE;
            default -> SizeSeries.MM2;
        };
        String designation = matcher.group(1).replace(',', '.').replaceFirst("\\.0+$", "");
        ConductorSize size = new ConductorSize(series, designation);
        if (!Conductor.isKnown(size)) {
            throw new Unreadable("There is no conductor " + size + " in the tables, which hold "
                    + String.join(
                            ", ",
                            Conductor.of(series).stream()
                                    .map(known -> known.size().designation())
                                    .toList())
                    + " " + series);
        }
        return size;
    }

    /** The designation as it is written in requests and answers. */
    @Override
    public String toString() {
        return designation + " " + (series == SizeSeries.MM2 ? "mm2" : series.name());
    }
}
