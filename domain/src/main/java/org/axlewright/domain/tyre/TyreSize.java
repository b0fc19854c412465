package org.axlewright.domain.tyre;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.axlewright.domain.check.Unreadable;

/**
 * A tyre size as moulded on the sidewall.
 *
 * @param diameterM free outer diameter, m
 * @param sectionWidthM section width, m
 * @param rimDiameterM nominal rim diameter, m
 * @param radial whether the marking says radial construction
 */
public record TyreSize(double diameterM, double sectionWidthM, double rimDiameterM, boolean radial) {

    private static final double INCH = 0.0254;

    /** Width in mm / aspect ratio, construction, rim in inch: {@code 205/50-10}, {@code 185/70R14}. Source: UN R30 par. 6.1.2 (formula from memory). */
    private static final Pattern METRIC =
            Pattern.compile("(\\d{2,3})\\s*/\\s*(\\d{2,3})\\s*(ZR|R|B|D|-)\\s*(\\d{1,2}(?:\\.\\d)?)");

    /** Overall diameter x section width, construction, rim, all inch: {@code 22x10-10}, {@code 31x10.5R15}. */
    private static final Pattern DIAMETER_FIRST = Pattern.compile(
            "(\\d{1,2}(?:\\.\\d{1,2})?)\\s*[X*]\\s*(\\d{1,2}(?:\\.\\d{1,2})?)\\s*(R|B|D|-)\\s*(\\d{1,2}(?:\\.\\d)?)");

    /**
     * Reads a marking.
     *
     * @throws Unreadable when it belongs to no known family or makes no possible tyre
     */
    public static TyreSize parse(String marking) {
        String text = marking.strip().toUpperCase(Locale.ROOT).replace('×', 'X');
        Matcher metric = METRIC.matcher(text);
        if (metric.matches()) {
            double width = Double.parseDouble(metric.group(1)) / 1000;
            double height = width * Double.parseDouble(metric.group(2)) / 100;
            double rim = Double.parseDouble(metric.group(4)) * INCH;
            return new TyreSize(rim + 2 * height, width, rim, metric.group(3).endsWith("R"));
        }
        Matcher inch = DIAMETER_FIRST.matcher(text);
        if (inch.matches()) {
            return new TyreSize(
                    Double.parseDouble(inch.group(1)) * INCH,
                    Double.parseDouble(inch.group(2)) * INCH,
                    Double.parseDouble(inch.group(4)) * INCH,
                    "R".equals(inch.group(3)));
        }
        throw new Unreadable("Tyre size \"" + marking + "\" is not read; write it as 205/50-10 or as 22x11-10");
    }
}
