package org.axlewright.api.database;

import java.time.Duration;

/** The pause between two tries to reach something that is away: doubled each time, up to a bound. */
final class Pause {

    static final Duration FIRST = Duration.ofMillis(250);
    private static final Duration LONGEST = Duration.ofSeconds(5);

    private Pause() {}

    static Duration next(Duration pause) {
        Duration doubled = pause.multipliedBy(2);
        return doubled.compareTo(LONGEST) < 0 ? doubled : LONGEST;
    }
}
