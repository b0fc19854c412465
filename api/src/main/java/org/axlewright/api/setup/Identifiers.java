package org.axlewright.api.setup;

import java.util.UUID;
import java.util.regex.Pattern;
import org.axlewright.api.problem.Declined;
import org.springframework.http.HttpStatus;

/** Ids and revisions of setups as they are sent. */
final class Identifiers {

    private static final Pattern FORM =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");

    private static final Pattern REVISION = Pattern.compile("[1-9]\\d{0,17}");

    private Identifiers() {}

    /** An id that can't be one names nothing. */
    static UUID of(String id) {
        if (!FORM.matcher(id).matches()) {
            throw noSuchSetup();
        }
        return UUID.fromString(id);
    }

    static Declined noSuchSetup() {
        return notFound("There is no setup of this id");
    }

    static Declined noSuchRevision() {
        return notFound("There is no such revision of a setup of this id");
    }

    /** A revision that can't be one names nothing. */
    static long revision(String number) {
        if (!REVISION.matcher(number).matches()) {
            throw noSuchRevision();
        }
        return Long.parseLong(number);
    }

    static Declined notFound(String detail) {
        return new Declined(HttpStatus.NOT_FOUND, "not-found", "Not Found", detail);
    }
}
