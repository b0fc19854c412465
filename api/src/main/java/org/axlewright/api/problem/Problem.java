package org.axlewright.api.problem;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** A problem document, RFC 9457. */
@Schema(description = "A problem document (RFC 9457).")
public record Problem(
        @Schema(description = "Kind of problem, a URN that never changes.")
        String type,

        @Schema(description = "The kind in words.") String title,

        @Schema(description = "HTTP status code.") int status,

        @Schema(description = "This occurrence in words.") @Nullable
        String detail,

        @Schema(description = "Everything found wrong; for an unreadable body the first fault only.") @Nullable
        List<Fault> errors) {

    public static Problem of(int status, String kind, String title, @Nullable String detail) {
        return new Problem("urn:axlewright:problem:" + kind, title, status, detail, null);
    }

    public static Problem of(int status, String kind, String title, List<Fault> errors) {
        String detail = errors.size() == 1 ? errors.get(0).message() : errors.size() + " faults found";
        return new Problem("urn:axlewright:problem:" + kind, title, status, detail, List.copyOf(errors));
    }

    /** A body that was read and is not valid. */
    public static Problem of(Refused refused) {
        return of(422, "not-valid", "Read, and not valid", refused.faults());
    }

    /** A body that can't be read. */
    public static Problem of(JacksonException failure) {
        return of(400, "not-readable", "Body can't be read", List.of(UnreadableBody.fault(failure)));
    }
}
