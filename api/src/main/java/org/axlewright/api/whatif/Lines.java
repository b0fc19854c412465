package org.axlewright.api.whatif;

import java.io.IOException;
import java.io.InputStream;
import java.net.SocketTimeoutException;
import java.time.Duration;
import java.util.Arrays;
import org.axlewright.api.whatif.Backlog.Line;
import org.jspecify.annotations.Nullable;

/** A body taken line by line; the limits of a document hold for each (contract R15). Empty lines are passed over. */
final class Lines {

    static final int LONGEST = 256 * 1024;

    private static final Duration DEADLINE = Duration.ofSeconds(10);

    private final InputStream body;
    private final byte[] buffer = new byte[64 * 1024];
    private int start;
    private int end;
    private int number;

    Lines(InputStream body) {
        this.body = body;
    }

    /** The next line that is not empty, without its end; null after the last. */
    @Nullable
    Line next() throws IOException {
        byte[] line = new byte[1024];
        int length = 0;
        boolean tooLong = false;
        long deadline = System.nanoTime() + DEADLINE.toNanos();
        while (true) {
            if (start == end) {
                start = 0;
                end = body.read(buffer);
                if (end < 0) {
                    end = 0;
                    return length == 0 && !tooLong ? null : line(line, length, tooLong);
                }
                if (length > 0 && System.nanoTime() > deadline) {
                    throw new SocketTimeoutException("A line must arrive within " + DEADLINE.toSeconds() + " seconds");
                }
            }
            int stop = start;
            while (stop < end && buffer[stop] != '\n') {
                stop++;
            }
            int part = stop - start;
            tooLong |= length + part > LONGEST;
            if (!tooLong) {
                if (length + part > line.length) {
                    line = Arrays.copyOf(line, Math.min(LONGEST, Math.max(2 * line.length, length + part)));
                }
                System.arraycopy(buffer, start, line, length, part);
                length += part;
            }
            start = stop;
            if (stop < end) {
                start++;
                Line whole = line(line, length, tooLong);
                byte[] text = whole.text();
                if (text == null || !isBlank(text)) {
                    return whole;
                }
                length = 0;
                deadline = System.nanoTime() + DEADLINE.toNanos();
            }
        }
    }

    /** Number of the last line. */
    int number() {
        return number;
    }

    private Line line(byte[] line, int length, boolean tooLong) {
        number++;
        return new Line(number, tooLong ? null : Arrays.copyOf(line, length));
    }

    private static boolean isBlank(byte[] text) {
        for (byte one : text) {
            if (one != ' ' && one != '\t' && one != '\r') {
                return false;
            }
        }
        return true;
    }
}
