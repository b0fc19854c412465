package org.axlewright.api.setup;

import java.util.List;
import java.util.regex.Pattern;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ETag;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/**
 * What {@code If-Match} accepts (RFC 9110, section 13.1.1): any revision, or one of a few.
 *
 * @param any whether the header was {@code *}
 * @param revisions the revisions named; weak and foreign tags match nothing
 */
record Precondition(boolean any, List<Long> revisions) {

    private static final Pattern REVISION = Pattern.compile("[1-9]\\d{0,17}");

    /** @throws Declined 428 when the header is absent: a change must say what it changes */
    static Precondition of(@Nullable String ifMatch) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw new Declined(
                    HttpStatus.PRECONDITION_REQUIRED,
                    "precondition-required",
                    "If-Match is needed",
                    "Send the setup's ETag as If-Match, so that nobody's change is overwritten unseen");
        }
        if (ifMatch.strip().equals("*")) {
            return new Precondition(true, List.of());
        }
        return new Precondition(
                false,
                ETag.parse(ifMatch).stream()
                        .filter(tag ->
                                !tag.weak() && REVISION.matcher(tag.tag()).matches())
                        .map(tag -> Long.valueOf(tag.tag()))
                        .toList());
    }

    boolean accepts(long revision) {
        return any || revisions.contains(revision);
    }

    /** The answer to a change of another revision than the one that is stored. */
    static Declined failed(long revision) {
        String stored = "\"" + revision + "\"";
        return new Declined(
                        HttpStatus.PRECONDITION_FAILED,
                        "precondition-failed",
                        "The setup has changed",
                        "If-Match does not name the revision that is stored, " + stored + ": get it, and change that")
                .header(HttpHeaders.ETAG, stored);
    }
}
