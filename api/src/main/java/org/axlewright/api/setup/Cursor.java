package org.axlewright.api.setup;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.UUID;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;

/**
 * Where a page ends and what was searched for, as a text that callers hand back and don't read.
 *
 * @param last setup of the page
 * @param search that the list answers
 */
record Cursor(UUID last, Search search) {

    private static final Base64.Encoder ENCODER = Base64.getUrlEncoder().withoutPadding();

    /** @throws Declined 400 when it is none of ours */
    static Cursor of(String text) {
        ByteBuffer bytes = bytes(text);
        if (bytes.remaining() < 2 * Long.BYTES) {
            throw unknown();
        }
        UUID last = new UUID(bytes.getLong(), bytes.getLong());
        String[] search = StandardCharsets.UTF_8.decode(bytes).toString().split("\0", -1);
        if (search.length != 2) {
            throw unknown();
        }
        return new Cursor(last, Search.of(search[0], search[1]));
    }

    @Override
    public String toString() {
        byte[] words = (text(search.name()) + "\0" + text(search.finding())).getBytes(StandardCharsets.UTF_8);
        return ENCODER.encodeToString(ByteBuffer.allocate(2 * Long.BYTES + words.length)
                .putLong(last.getMostSignificantBits())
                .putLong(last.getLeastSignificantBits())
                .put(words)
                .array());
    }

    private static String text(@Nullable String word) {
        return word == null ? "" : word;
    }

    /** The same for a list of revisions. */
    static String ofRevision(long last) {
        return ENCODER.encodeToString(
                ByteBuffer.allocate(Long.BYTES).putLong(last).array());
    }

    /** @throws Declined 400 when it is none of ours */
    static long revision(String text) {
        ByteBuffer bytes = bytes(text);
        if (bytes.remaining() != Long.BYTES) {
            throw unknown();
        }
        return bytes.getLong();
    }

    private static ByteBuffer bytes(String text) {
        try {
            return ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
        } catch (IllegalArgumentException notBase64) {
            throw unknown();
        }
    }

    private static Declined unknown() {
        return Declined.parameter("unknown-value", "Parameter cursor must be the `next` of an earlier page");
    }
}
