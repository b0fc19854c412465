package org.axlewright.api.setup;

import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;

/**
 * What a list of setups is narrowed to.
 *
 * @param name part of the name, in upper or lower case; null for any
 * @param finding code of a finding of the assessment; null for any
 */
record Search(@Nullable String name, @Nullable String finding) {

    private static final int LONGEST = 200;

    static final Search EVERYTHING = new Search(null, null);

    /** @throws Declined 400 when no name and no code can be so */
    static Search of(@Nullable String name, @Nullable String finding) {
        return new Search(word("name", name), word("finding", finding));
    }

    private static @Nullable String word(String parameter, @Nullable String sent) {
        if (sent == null || sent.isEmpty()) {
            return null;
        }
        if (sent.length() > LONGEST) {
            throw Declined.parameter(
                    "out-of-range",
                    "Parameter " + parameter + " must have at most " + LONGEST + " characters, has " + sent.length());
        }
        if (sent.indexOf('\0') >= 0) {
            throw Declined.parameter("unknown-value", "Parameter " + parameter + " must not hold the character NUL");
        }
        return sent;
    }
}
