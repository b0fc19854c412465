package org.axlewright.domain.tyre;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.axlewright.domain.check.Unreadable;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/**
 * A tyre size as moulded on the sidewall, of one of two families: width in millimetres / aspect ratio and rim ({@code 205/50-10},
 * {@code 185/70R14}), or overall diameter x width - rim in inches ({@code 18x8.50-8}, {@code 31x10.5R15}). A size that gives no
 * diameter ({@code 4.80-8}) or reads as a tyre that can't be meant is refused with a question, never guessed.
 *
 * @param diameterM free outer diameter, m
 * @param sectionWidthM section width, m
 * @param rimDiameterM nominal rim diameter, m
 * @param radial whether the marking says radial construction
 * @param loadIndex load index behind the size, when it is there and in the table
 * @param offRoadOnly whether the marking says NHS, not for highway service
 */
public record TyreSize(
        double diameterM,
        double sectionWidthM,
        double rimDiameterM,
        boolean radial,
        @Nullable Integer loadIndex,
        boolean offRoadOnly) {

    /** D = d + 2 · W · aspect / 100; the rim code counts 25.4 mm. */
    public static final Source METRIC_SOURCE =
            Source.memory("UN R30 par. 6.1.2, outer diameter; rim code x 25.4 mm, UN R30");

    /** The first figure is the overall diameter in inches. */
    public static final Source INCH_SOURCE =
            Source.published("tyre marking in the owner's manual of a maker of utility vehicles");

    /** Smallest diameter that a marking is taken at its word for, m: 12 in. */
    public static final double SMALLEST_M = 0.3048;

    /** Largest diameter that a marking is taken at its word for, m: 32 in. */
    public static final double LARGEST_M = 0.8128;

    private static final double INCH = 0.0254;

    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d{1,2})?)";
    private static final String CONSTRUCTION = "\\s*([SHVZ]?R|B|D|-)\\s*";

    /** Service marks ahead of the size: passenger, light truck, special trailer, temporary, all-terrain. */
    private static final String PREFIX = "(?:(?:P|LT|ST|T|AT)\\s*)?";

    /**
     * What may stand behind the size: light truck mark, load index with speed symbol (also for twin tyres), ply rating, tubeless or
     * tubed, reinforced, winter, not for highway service.
     */
    private static final String SUFFIX = "\\s*(?:LT|C)?((?:(?:\\s+|\\s*[\\[(])"
            + "(?:\\d{1,3}(?:/\\d{1,3})?\\s?[A-Y]\\d?|\\d{1,2}\\s*(?:PR|P\\.R\\.|PLY)|TL|TT|XL|REINF|M\\+S|NHS)[\\])]?)*)";

    private static final Pattern METRIC =
            Pattern.compile(PREFIX + NUMBER + "\\s*/\\s*" + NUMBER + CONSTRUCTION + NUMBER + SUFFIX);

    private static final Pattern DIAMETER_FIRST =
            Pattern.compile(PREFIX + NUMBER + "\\s*[X*]\\s*" + NUMBER + CONSTRUCTION + NUMBER + SUFFIX);

    /** Width and rim only, {@code 4.80-8}. */
    private static final Pattern NUMERIC = Pattern.compile(NUMBER + CONSTRUCTION + NUMBER + SUFFIX);

    /** One length, {@code 23 in}. */
    private static final Pattern BARE_DIAMETER =
            Pattern.compile("\\d{1,4}(?:\\.\\d{1,2})?\\s*(?:IN|INCH|INCHES|\"|''|MM|CM)?");

    private static final Pattern LOAD_INDEX =
            Pattern.compile("[\\s\\[(](\\d{1,3})(?:/\\d{1,3})?\\s?[A-Y]\\d?(?![A-Z.])");

    /**
     * Reads a marking.
     *
     * @throws Unreadable when it belongs to no known family or reads as a tyre that can't be meant; the message says what to send
     */
    public static TyreSize parse(String marking) {
        String text = marking.strip()
                .toUpperCase(Locale.ROOT)
                .replace('×', 'X')
                .replace(',', '.')
                .replace('–', '-');
        Matcher metric = METRIC.matcher(text);
        if (metric.matches()) {
            return metric(marking, metric);
        }
        Matcher inch = DIAMETER_FIRST.matcher(text);
        if (inch.matches()) {
            return diameterFirst(marking, inch);
        }
        if (NUMERIC.matcher(text).matches()) {
            throw new Unreadable(
                    "Tyre size \"" + marking
                            + "\" gives width and rim only; its diameter stands in the maker's table. Send the measured diameter in place of the size");
        }
        if (BARE_DIAMETER.matcher(text).matches()) {
            throw new Unreadable("Tyre size \"" + marking
                    + "\" is a length, not a size; send it as the diameter in place of the size");
        }
        throw new Unreadable("Tyre size \"" + marking + "\" is not read; write it as 205/50-10 or as 22x11-10");
    }

    private static TyreSize metric(String marking, Matcher size) {
        double width = number(size, 1);
        double aspect = number(size, 2);
        double rim = number(size, 4);
        if (width < 100) {
            String inches = size.group(1) + "x" + size.group(2) + size.group(3).replace(" ", "") + size.group(4);
            throw new Unreadable("Tyre size \"" + marking + "\" with a slash reads as a section only " + size.group(1)
                    + " mm wide, a tyre of " + Math.round(rim * 25.4 + 2 * width * aspect / 100)
                    + " mm; if the first figure is the height in inches write " + inches);
        }
        double rimM = rim * INCH;
        return sized(marking, size, rimM + 2 * width * aspect / 100_000, width / 1000, rimM);
    }

    private static TyreSize diameterFirst(String marking, Matcher size) {
        double diameter = number(size, 1);
        double rim = number(size, 4);
        if (diameter >= 100) {
            throw new Unreadable("Tyre size \"" + marking
                    + "\" begins with a figure of 100 or more, which is a width in millimetres; write it with a slash, as "
                    + size.group(1) + "/" + size.group(2) + size.group(3) + size.group(4));
        }
        if (rim >= diameter) {
            throw new Unreadable("Tyre size \"" + marking + "\" has a rim of " + size.group(4) + " in on a tyre of "
                    + size.group(1) + " in; write diameter x width - rim, as 22x11-10");
        }
        return sized(marking, size, diameter * INCH, number(size, 2) * INCH, rim * INCH);
    }

    private static TyreSize sized(String marking, Matcher size, double diameterM, double widthM, double rimM) {
        if (!(diameterM >= SMALLEST_M && diameterM <= LARGEST_M)) {
            throw new Unreadable(
                    "Tyre size \"" + marking + "\" reads as a tyre of " + Math.round(diameterM * 1000)
                            + " mm; sizes from 305 mm (12 in) to 813 mm (32 in) are taken at their word. Check the size, or send the measured diameter in its place");
        }
        if (!(widthM > 0 && rimM > 0 && rimM < diameterM)) {
            throw new Unreadable(
                    "Tyre size \"" + marking + "\" makes no possible tyre; write it as 205/50-10 or as 22x11-10");
        }
        String marks = size.group(5);
        Matcher index = LOAD_INDEX.matcher(marks);
        Integer loadIndex = index.find() ? Integer.valueOf(index.group(1)) : null;
        return new TyreSize(
                diameterM,
                widthM,
                rimM,
                size.group(3).endsWith("R"),
                loadIndex != null && loadIndex <= LoadIndex.HIGHEST ? loadIndex : null,
                marks.contains("NHS"));
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }
}
