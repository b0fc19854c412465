package org.axlewright.domain.drive;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.axlewright.domain.check.Unreadable;
import org.axlewright.domain.trace.Source;

/**
 * A reduction told by two numbers, teeth of two sprockets or {@code 12.44:1}. Written either way round it is the larger over the
 * smaller: a drive of this kind turns the motor faster than the wheel.
 *
 * @param first as written, above 0
 * @param second as written, above 0
 */
public record Teeth(double first, double second) {

    /** Why the larger number goes over the smaller. */
    public static final Source SOURCE = Source.COMMON_PRACTICE;

    private static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,4})?)";
    private static final Pattern FORM = Pattern.compile("\\s*" + NUMBER + "\\s*[:/]\\s*" + NUMBER + "\\s*");

    /**
     * Reads {@code 14:60}, {@code 60/14} or {@code 12.44:1}.
     *
     * @throws Unreadable when it is not two numbers above 0 with {@code :} or {@code /} between them
     */
    public static Teeth parse(String text) {
        Matcher matcher = FORM.matcher(text);
        if (matcher.matches()) {
            Teeth teeth = new Teeth(Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2)));
            if (teeth.first > 0 && teeth.second > 0) {
                return teeth;
            }
        }
        throw new Unreadable("\"" + text + "\" is not two tooth counts such as 14:60");
    }

    /** Turns of the motor for one turn of the wheel: 1 or more. */
    public double reduction() {
        return Math.max(first, second) / Math.min(first, second);
    }
}
