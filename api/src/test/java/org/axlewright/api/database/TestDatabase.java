package org.axlewright.api.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
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

    public static void use(DynamicPropertyRegistry properties, Access database) {
        properties.add("spring.datasource.url", database::url);
        properties.add("spring.datasource.username", database::user);
        properties.add("spring.datasource.password", database::password);
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
