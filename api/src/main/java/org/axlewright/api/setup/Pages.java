package org.axlewright.api.setup;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;

/** Pages of a list: every list is cut in the same way. */
final class Pages {

    static final String DEFAULT = "50";
    private static final int LONGEST = 100;

    private Pages() {}

    /** @throws Declined 400 when no page can be so long */
    static int limit(int sent) {
        if (sent < 1 || sent > LONGEST) {
            throw Declined.parameter("out-of-range", "Parameter limit must be 1 to " + LONGEST + ", was " + sent);
        }
        return sent;
    }

    /**
     * A page and the way to the next.
     *
     * @param found one entry more than the limit when there is a next page
     * @param cursor of the last entry of a page
     */
    static <E, P> ResponseEntity<P> page(
            String path,
            int limit,
            List<E> found,
            Function<E, String> cursor,
            BiFunction<List<E>, @Nullable String, P> page) {
        if (found.size() <= limit) {
            return ResponseEntity.ok(page.apply(found, null));
        }
        List<E> entries = found.subList(0, limit);
        String next = cursor.apply(entries.get(limit - 1));
        return ResponseEntity.ok()
                .header(HttpHeaders.LINK, "<" + path + "?limit=" + limit + "&cursor=" + next + ">; rel=\"next\"")
                .body(page.apply(entries, next));
    }
}
