package org.axlewright.api.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.util.FileSystemUtils;

/**
 * PostgreSQL as a child of this service, for everybody who brings no database of their own. What it acknowledges survives {@code kill
 * -9} and power cuts: {@code fsync} and {@code synchronous_commit} are on. It listens on the loopback interface, on a port of its own, and asks for a
 * password that only the owner of the data directory can read.
 *
 * <p>The data directory holds {@code lock} (one service at a time), {@code binaries} (unpacked, replaceable), {@code start.log}
 * and {@code postgres} (the data, with its own {@code log}).
 */
final class EmbeddedServer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedServer.class);

    /** Major version of the binaries on the class path; a data directory of another one needs dump and restore. */
    private static final String MAJOR = "18";

    /** Owner of the data and name of the database. Not the superuser. */
    static final String NAME = "axlewright";

    /** What the service works under: owns nothing, and is held by row-level security. */
    static final String SERVICE = "axlewright_service";

    private static final String PASSWORD_FILE = "axlewright.password";

    /** Also the longest replay of the write-ahead log after a crash that a start waits for. */
    private static final Duration START_WAIT = Duration.ofSeconds(60);

    private static final Duration STOP_WAIT = Duration.ofSeconds(20);

    private final DataDirectory directory;
    private final String password;
    private final int port;
    private final Thread watch;
    private volatile EmbeddedPostgres server;
    private volatile boolean closed;

    private EmbeddedServer(DataDirectory directory, EmbeddedPostgres server, String password) {
        this.directory = directory;
        this.server = server;
        this.password = password;
        this.port = server.getPort();
        this.watch = new Thread(this::keepRunning, "postgres-watch");
        watch.setDaemon(true);
    }

    /**
     * Takes the directory, stops a server that a killed service left behind, and starts one.
     *
     * @throws StartRefused when another service holds the directory, or no server can be started in it
     */
    static EmbeddedServer start(Path path) {
        DataDirectory directory = DataDirectory.take(path);
        try {
            Postmaster.stop(directory.prepared(), STOP_WAIT);
            Postmaster.stop(directory.postgres(), STOP_WAIT);
            if (!Files.exists(directory.postgres())) {
                prepare(directory);
            }
            requireMajor(directory);
            String password = Files.readString(directory.postgres().resolve(PASSWORD_FILE));
            EmbeddedServer started =
                    new EmbeddedServer(directory, launch(directory, directory.postgres(), password, 0), password);
            started.makeServiceRole();
            started.watch.start();
            return started;
        } catch (IOException | SQLException | IllegalStateException e) {
            directory.close();
            throw new StartRefused(
                    "PostgreSQL did not start in " + directory.postgres() + ": " + e.getMessage(),
                    "Look into " + directory.startLog() + " and "
                            + directory.postgres().resolve("log")
                            + ". The directory must be writable, on a disk with space left. In a container that forbids user"
                            + " namespaces, run the service as a user other than root, or set SPRING_DATASOURCE_URL to a database"
                            + " of your own.",
                    e);
        } catch (StartRefused e) {
            directory.close();
            throw e;
        }
    }

    /** How its owner reaches a server. */
    record Access(String url, String password) {}

    /** The server that another service runs in a directory, if it runs. */
    static Optional<Access> running(Path path) {
        Path data = path.resolve("postgres");
        try {
            if (Postmaster.of(data).isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(new Access(url(Postmaster.port(data)), Files.readString(data.resolve(PASSWORD_FILE))));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    String url() {
        return url(port);
    }

    private static String url(int port) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + NAME;
    }

    String password() {
        return password;
    }

    @Override
    public void close() {
        closed = true;
        watch.interrupt();
        try {
            watch.join(STOP_WAIT.toMillis());
            server.close();
            Postmaster.stop(directory.postgres(), STOP_WAIT);
        } catch (IOException | StartRefused e) {
            LOG.error("The database server did not stop", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            directory.close();
        }
    }

    /**
     * Makes the data under another name and renames it when it is complete, so that a start that is cut short leaves nothing half made
     * under the real name.
     */
    private static void prepare(DataDirectory directory) throws IOException, SQLException {
        FileSystemUtils.deleteRecursively(directory.prepared());
        byte[] secret = new byte[24];
        new SecureRandom().nextBytes(secret);
        String password = HexFormat.of().formatHex(secret);
        try (EmbeddedPostgres server = launch(directory, directory.prepared(), password, 0);
                Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("alter role postgres password '" + password + "'");
            statement.execute("create role " + NAME + " login password '" + password + "'");
            statement.execute("create database " + NAME + " owner " + NAME);
        }
        Path file = directory.prepared().resolve(PASSWORD_FILE);
        Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        Files.writeString(file, password);
        Files.writeString(
                directory.prepared().resolve("pg_hba.conf"),
                "# type database user address method\nhost all all 127.0.0.1/32 scram-sha-256\n");
        Files.move(directory.prepared(), directory.postgres(), StandardCopyOption.ATOMIC_MOVE);
    }

    /** At every start: directories of earlier releases have no such role. */
    private void makeServiceRole() throws SQLException {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            boolean there;
            try (ResultSet found = statement.executeQuery("select from pg_roles where rolname = '" + SERVICE + "'")) {
                there = found.next();
            }
            if (!there) {
                statement.execute("create role " + SERVICE + " login password '" + password + "'");
            }
        }
    }

    private static EmbeddedPostgres launch(DataDirectory directory, Path data, String password, int port)
            throws IOException {
        return EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(directory.binaries().toFile())
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false) // closed in order: first the requests, then the pool, then the server
                .setPGStartupWait(START_WAIT)
                .setPort(port)
                .setOutputRedirector(ProcessBuilder.Redirect.appendTo(directory.startLog()))
                .setErrorRedirector(ProcessBuilder.Redirect.appendTo(directory.startLog()))
                .setConnectConfig("password", password)
                .setLocaleConfig("locale-provider", "builtin") // sorts alike on every machine
                .setLocaleConfig("locale", "C.UTF-8")
                .setServerConfig("fsync", "on") // the library switches both off, for tests
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("logging_collector", "on")
                .setServerConfig("log_filename", "postgresql-%a.log") // one file a weekday, overwritten after a week
                .setServerConfig("log_truncate_on_rotation", "on")
                .start();
    }

    private static void requireMajor(DataDirectory directory) throws IOException {
        String found =
                Files.readString(directory.postgres().resolve("PG_VERSION")).strip();
        if (!found.equals(MAJOR)) {
            throw new StartRefused(
                    "The data in " + directory.postgres() + " was written by PostgreSQL " + found
                            + "; this service carries PostgreSQL " + MAJOR + ".",
                    "Dump it with the release that wrote it and load it into a fresh AXLEWRIGHT_DATA.");
        }
    }

    /** Starts the server again when it ends without being asked to. The port stays, so the pool finds it by itself. */
    private void keepRunning() {
        try {
            while (!closed) {
                Optional<ProcessHandle> postmaster = Postmaster.of(directory.postgres());
                if (postmaster.isPresent()) {
                    postmaster.get().onExit().get();
                }
                if (!closed) {
                    LOG.warn("The database server ended without being asked to; starting it again");
                    startAgain();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | IOException e) {
            LOG.error("The database server is no longer watched: it stays down when it ends", e);
        }
    }

    private void startAgain() throws IOException, InterruptedException {
        server.close();
        for (Duration pause = Pause.FIRST; ; pause = Pause.next(pause)) {
            try {
                server = launch(directory, directory.postgres(), password, port);
                return;
            } catch (IOException | IllegalStateException e) {
                LOG.warn("The database server does not start: {}", e.getMessage());
                Thread.sleep(pause.toMillis());
            }
        }
    }
}
