package org.axlewright.api.sheet;

import java.time.Instant;
import java.time.ZoneOffset;

/**
 * Which revision of a saved setup a sheet shows.
 *
 * @param number id of the setup
 * @param revision 1 when created, one more with each change
 * @param at time of that revision
 */
public record Issue(String number, long revision, Instant at) {

    /** Day of the revision in UTC, ISO 8601. */
    String day() {
        return at.atZone(ZoneOffset.UTC).toLocalDate().toString();
    }
}
