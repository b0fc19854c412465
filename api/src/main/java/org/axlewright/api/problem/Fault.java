package org.axlewright.api.problem;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer where, RFC 6901 into the body
 * @param code stable name of the kind of fault
 * @param message for people, with limit and value in the sender's unit
 * @param actual the value sent, in the sender's unit
 * @param limit the limit it passes, in the sender's unit
 */
@Schema(description = "One thing that is wrong with the request.")
public record Fault(
        @Schema(
                description =
                        "Where in the body: an RFC 6901 pointer, `/a` when missing, `/a/value` out of range, `/a/unit` wrong unit; empty for the whole body.")
        String pointer,

        @Schema(
                description =
                        "Stable name of the kind of fault, such as `missing`, `out-of-range`, `contradiction`, `unknown-field`, `unknown-unit`, `wrong-type`. New codes may be added.")
        String code,

        @Schema(description = "For people: what is wrong, with limit and value in the sender's unit.")
        String message,

        @Schema(description = "The value sent: a quantity in the sender's unit, a number or a text.") @Nullable
        Object actual,

        @Schema(description = "The limit it passes, in the sender's unit.") @Nullable
        Object limit) {

    public static Fault missing(String pointer) {
        return new Fault(pointer, "missing", pointer + " is needed and missing", null, null);
    }

    public static Fault contradiction(String pointer, String message) {
        return new Fault(pointer, "contradiction", message, null, null);
    }
}
