package org.axlewright.api.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The running server that {@code postmaster.pid} of a data directory names. */
final class Postmaster {

    private static final Logger LOG = LoggerFactory.getLogger(Postmaster.class);

    private Postmaster() {}

    /** The process, if it still runs and really is a server of this directory: process numbers are used again. */
    static Optional<ProcessHandle> of(Path directory) throws IOException {
        try {
            String first = Files.readString(directory.resolve("postmaster.pid"))
                    .lines()
                    .findFirst()
                    .orElse("")
                    .strip();
            return first.matches("\\d{1,18}")
                    ? ProcessHandle.of(Long.parseLong(first))
                            .filter(ProcessHandle::isAlive)
                            .filter(process -> serves(process, directory))
                    : Optional.empty();
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** The port that the running server listens on: the fourth line. */
    static int port(Path directory) throws IOException {
        try {
            return Integer.parseInt(Files.readAllLines(directory.resolve("postmaster.pid"))
                    .get(3)
                    .strip());
        } catch (IndexOutOfBoundsException | NumberFormatException stillStarting) {
            throw new IOException("The server of " + directory + " is still starting", stillStarting);
        }
    }

    /**
     * Stops the server of a directory, if one runs: a fast shutdown, which ends sessions and loses nothing that was acknowledged.
     *
     * @throws StartRefused when it doesn't end in time
     */
    static void stop(Path directory, Duration wait) throws IOException {
        Optional<ProcessHandle> running = of(directory);
        if (running.isEmpty()) {
            return;
        }
        ProcessHandle postmaster = running.get();
        LOG.info("Stopping the database server (process {}) of {}", postmaster.pid(), directory);
        try {
            // Java can send SIGTERM and SIGKILL only; a fast shutdown is SIGINT.
            new ProcessBuilder("sh", "-c", "kill -INT " + postmaster.pid()).start();
            postmaster.onExit().get(wait.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | ExecutionException e) {
            throw refusal(directory, postmaster, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw refusal(directory, postmaster, e);
        }
    }

    private static StartRefused refusal(Path directory, ProcessHandle postmaster, Exception cause) {
        return new StartRefused(
                "A database server (process " + postmaster.pid() + ") still serves " + directory
                        + " and does not stop.",
                "Wait for it or stop it (kill -INT " + postmaster.pid() + ", then kill -QUIT), then start again.",
                cause);
    }

    /** A server works in its data directory. */
    private static boolean serves(ProcessHandle process, Path directory) {
        try {
            return process.info()
                            .command()
                            .map(Path::of)
                            .map(Path::getFileName)
                            .filter(name -> name.toString().equals("postgres"))
                            .isPresent()
                    && Files.isSameFile(Path.of("/proc", Long.toString(process.pid()), "cwd"), directory);
        } catch (IOException notReadable) {
            return false;
        }
    }
}
