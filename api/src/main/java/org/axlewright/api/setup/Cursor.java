package org.axlewright.api.setup;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.UUID;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;

/** Where a page ends, as a text that callers hand back and don't read. */
final class Cursor {

    private Cursor() {}

    static String after(UUID last) {
        byte[] bytes = ByteBuffer.allocate(16)
                .putLong(last.getMostSignificantBits())
                .putLong(last.getLeastSignificantBits())
                .array();
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** @throws Declined 400 when it is none of ours */
    static @Nullable UUID read(@Nullable String cursor) {
        if (cursor == null) {
            return null;
        }
        try {
            byte[] bytes = Base64.getUrlDecoder().decode(cursor);
            if (bytes.length == 16) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                return new UUID(buffer.getLong(), buffer.getLong());
            }
        } catch (IllegalArgumentException notBase64) {
            // as below
        }
        throw Declined.parameter("unknown-value", "Parameter cursor must be the `next` of an earlier page");
    }
}
