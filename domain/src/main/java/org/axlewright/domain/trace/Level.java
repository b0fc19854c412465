package org.axlewright.domain.trace;

import java.util.Locale;

/** Signal words in the sense of ANSI Z535.6 and ISO 3864, least first. */
public enum Level {
    NOTICE,
    CAUTION,
    WARNING,
    DANGER;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
