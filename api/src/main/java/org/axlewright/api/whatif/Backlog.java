package org.axlewright.api.whatif;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Lines that have been read and not yet worked on. A little of it stays in memory, the rest goes to a file: a client that sends
 * everything before it reads anything is served with as little memory as one that does both at once. When the file is full the reader
 * waits, and so does the client.
 */
final class Backlog implements Closeable {

    private static final long MOST_IN_MEMORY = 1L << 20;
    private static final long MOST_ON_DISK = 1L << 30;

    /** One line of the body. */
    static final class Line {

        private final int number;
        private final byte @Nullable [] text;

        Line(int number, byte @Nullable [] text) {
            this.number = number;
            this.text = text;
        }

        /** Counted from 1. */
        int number() {
            return number;
        }

        /** Null when it is longer than a document may be. */
        byte @Nullable [] text() {
            return text;
        }

        int length() {
            return text == null ? 0 : text.length;
        }
    }

    private final Deque<Line> memory = new ArrayDeque<>();
    private long inMemory;
    private @Nullable FileChannel file;
    private long written;
    private long read;
    private boolean complete;
    private @Nullable IOException broken;

    /** Takes a line; waits while there is no room. False when nobody wants more. */
    synchronized boolean put(Line line) throws IOException {
        try {
            while (broken == null && written - read > MOST_ON_DISK) {
                wait();
            }
        } catch (InterruptedException interrupted) {
            throw ended(interrupted);
        }
        if (broken != null) {
            return false;
        }
        int length = line.length();
        if (written == read && inMemory + length <= MOST_IN_MEMORY) {
            memory.add(line);
            inMemory += length;
        } else {
            store(line);
        }
        notifyAll();
        return true;
    }

    private void store(Line line) throws IOException {
        if (file == null) {
            Path path = Files.createTempFile("batch", ".ndjson");
            file = FileChannel.open(
                    path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
        }
        byte[] text = line.text();
        ByteBuffer record = ByteBuffer.allocate(8 + line.length());
        record.putInt(line.number()).putInt(text == null ? -1 : text.length);
        if (text != null) {
            record.put(text);
        }
        record.flip();
        while (record.hasRemaining()) {
            written += file.write(record, written);
        }
    }

    /**
     * The next line.
     *
     * @param patient whether to wait for one
     * @return null when there is none: for now, or for good
     * @throws IOException when the body broke off
     */
    synchronized @Nullable Line take(boolean patient) throws IOException {
        try {
            while (patient && broken == null && !complete && memory.isEmpty() && written == read) {
                wait();
            }
        } catch (InterruptedException interrupted) {
            throw ended(interrupted);
        }
        if (broken != null) {
            throw broken;
        }
        Line next = memory.poll();
        if (next != null) {
            inMemory -= next.length();
        } else if (written > read && file != null) {
            next = load(file);
        }
        notifyAll();
        return next;
    }

    private Line load(FileChannel from) throws IOException {
        ByteBuffer head = fill(from, ByteBuffer.allocate(8));
        int number = head.getInt();
        int length = head.getInt();
        byte[] text =
                length < 0 ? null : fill(from, ByteBuffer.allocate(length)).array();
        if (read == written) {
            from.truncate(0);
            read = 0;
            written = 0;
        }
        return new Line(number, text);
    }

    private ByteBuffer fill(FileChannel from, ByteBuffer buffer) throws IOException {
        while (buffer.hasRemaining()) {
            int bytes = from.read(buffer, read);
            if (bytes < 0) {
                throw new IOException("The file of the backlog is shorter than what was written to it");
            }
            read += bytes;
        }
        return buffer.flip();
    }

    /** No more lines will come. */
    synchronized void complete() {
        complete = true;
        notifyAll();
    }

    /** Ends it on both sides. */
    synchronized void breakOff(IOException why) {
        if (broken == null) {
            broken = why;
        }
        notifyAll();
    }

    synchronized boolean isBroken() {
        return broken != null;
    }

    private static IOException ended(InterruptedException interrupted) {
        Thread.currentThread().interrupt();
        return new IOException("interrupted", interrupted);
    }

    @Override
    public synchronized void close() throws IOException {
        if (file != null) {
            file.close();
        }
    }
}
