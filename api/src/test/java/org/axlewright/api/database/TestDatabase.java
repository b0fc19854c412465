package org.axlewright.api.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.CRC32;
import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * The one place that chooses the PostgreSQL of the tests: a container where a Docker engine answers, the embedded binaries where not.
 * One server for all tests of a run, one database for each class.
 */
public final class TestDatabase {

    private static final Logger LOG = LoggerFactory.getLogger(TestDatabase.class);
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final Access SERVER = start();

    private TestDatabase() {}

    /** @param name of the database */
    public record Access(String host, int port, String name, String user, String password) {

        public String url() {
            return "jdbc:postgresql://" + host + ":" + port + "/" + name;
        }
    }

    /** An empty database of its own. */
    public static Access fresh() {
        String name = "test" + COUNT.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(SERVER.url(), SERVER.user(), SERVER.password());
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return new Access(SERVER.host(), SERVER.port(), name, SERVER.user(), SERVER.password());
    }

    /** The service works on it, and {@link org.axlewright.api.Running} with a token of its workspace "tests". */
    public static void use(DynamicPropertyRegistry properties, Access database) {
        bringUpToDate(database);
        properties.add("test.token", () -> token(database, "tests", "write"));
        properties.add("spring.datasource.url", database::url);
        properties.add("spring.datasource.username", database::user);
        properties.add("spring.datasource.password", database::password);
    }

    /** The tables, as the service makes them. */
    public static void bringUpToDate(Access database) {
        Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .load()
                .migrate();
    }

    /** A token, written down as its documentation says: prefix, 256 random bits, CRC-32 of both; kept as SHA-256. */
    public static String token(Access database, String workspace, String scope) {
        return token(database, workspace, scope, "1 day");
    }

    /** @param expires from now, as PostgreSQL writes an interval */
    public static String token(Access database, String workspace, String scope, String expires) {
        byte[] secret = new byte[32];
        new SecureRandom().nextBytes(secret);
        String text = "axw_" + HexFormat.of().formatHex(secret);
        CRC32 crc = new CRC32();
        crc.update(text.getBytes(StandardCharsets.US_ASCII));
        String token = text + String.format("%08x", crc.getValue());
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                var statement = connection.prepareStatement("""
                        with made as (insert into workspaces (id, name) values (gen_random_uuid(), ?)
                            on conflict (name) do update set name = excluded.name returning id)
                        insert into tokens (id, workspace_id, hash, scope, expires_at)
                        select gen_random_uuid(), id, sha256(cast(? as bytea)), ?, now() + cast(? as interval) from made""")) {
            statement.setString(1, workspace);
            statement.setString(2, token);
            statement.setString(3, scope);
            statement.setString(4, expires);
            statement.executeUpdate();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return token;
    }

    @SuppressWarnings("resource") // both live as long as the run
    private static Access start() {
        if (DockerClientFactory.instance().isDockerAvailable()) {
            LOG.info("Tests use PostgreSQL in a container");
            PostgreSQLContainer container = new PostgreSQLContainer("postgres:18");
            container.start();
            return new Access(
                    container.getHost(),
                    container.getMappedPort(PostgreSQLContainer.POSTGRESQL_PORT),
                    container.getDatabaseName(),
                    container.getUsername(),
                    container.getPassword());
        }
        LOG.info("Tests use the embedded PostgreSQL binaries: no Docker engine answers");
        try {
            return new Access("127.0.0.1", EmbeddedPostgres.start().getPort(), "postgres", "postgres", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
