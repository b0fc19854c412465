package org.axlewright.api.database;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;

/**
 * The directory of the embedded server, held by one service at a time. The operating system lets go of the lock when the process ends,
 * however it ends.
 *
 * @param path real path
 */
record DataDirectory(Path path, FileChannel lock) implements AutoCloseable {

    /** Another service holds it. */
    static final class InUse extends StartRefused {

        private static final long serialVersionUID = 1L;

        InUse(String reason, String action) {
            super(reason, action);
        }
    }

    /** @throws StartRefused when another service holds it or it can't be written */
    static DataDirectory take(Path wanted) {
        try {
            createPrivate(wanted);
            Path path = wanted.toRealPath();
            Path file = path.resolve("lock");
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                throw new InUse(
                        "The data directory " + path + " is in use by another Axlewright service (process "
                                + Files.readString(file).strip() + ").",
                        "Stop that service, or give this one a directory of its own with AXLEWRIGHT_DATA.");
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap((ProcessHandle.current().pid() + "\n").getBytes(StandardCharsets.US_ASCII)));
            DataDirectory taken = new DataDirectory(path, channel);
            createPrivate(path.resolve("binaries"));
            Files.deleteIfExists(taken.startLog().toPath());
            return taken;
        } catch (IOException e) {
            throw new StartRefused(
                    "The data directory " + wanted.toAbsolutePath() + " can't be used: " + e,
                    "Give a directory that this user can write with AXLEWRIGHT_DATA.",
                    e);
        }
    }

    /** The data of the server. */
    Path postgres() {
        return path.resolve("postgres");
    }

    /** The data of the server while it is being made. */
    Path prepared() {
        return path.resolve("postgres.new");
    }

    /** Where the server's programs are unpacked. The library lets everybody write there; the directory above doesn't. */
    Path binaries() {
        return path.resolve("binaries").resolve("unpacked");
    }

    /** What the server's programs said during the last start. */
    File startLog() {
        return path.resolve("start.log").toFile();
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void createPrivate(Path directory) throws IOException {
        if (!Files.exists(directory)) {
            Files.createDirectories(
                    directory, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }
}
