package org.axlewright.api.database;

import java.nio.file.Path;
import java.util.Properties;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * The database as the owner of its tables sees it, for commands: no row-level security on workspaces and tokens. The service itself never
 * works with these rights.
 *
 * @param client asks it
 * @param server the embedded server, when it was started for this; nothing when it runs already or a database is given
 */
public record OwnerDatabase(JdbcClient client, @Nullable EmbeddedServer server) implements AutoCloseable {

    /**
     * The database that the service would use with these settings, its tables brought up to date, whether the service runs or not.
     *
     * @throws StartRefused when there is none, with what to do about it
     */
    public static OwnerDatabase open(Environment settings) {
        if (GivenDatabase.in(settings)) {
            String user =
                    settings.getProperty("spring.flyway.user", settings.getProperty("spring.datasource.username", ""));
            String password = settings.getProperty(
                    settings.containsProperty("spring.flyway.user")
                            ? "spring.flyway.password"
                            : "spring.datasource.password",
                    "");
            return upToDate(settings.getRequiredProperty("spring.datasource.url"), user, password, null);
        }
        Path data = Path.of(settings.getRequiredProperty("axlewright.data"));
        EmbeddedServer server;
        try {
            server = EmbeddedServer.start(data);
        } catch (DataDirectory.InUse running) {
            EmbeddedServer.Access access = EmbeddedServer.running(data).orElseThrow(() -> running);
            return new OwnerDatabase(
                    JdbcClient.create(connections(access.url(), EmbeddedServer.NAME, access.password())), null);
        }
        try {
            return upToDate(server.url(), EmbeddedServer.NAME, server.password(), server);
        } catch (StartRefused refused) {
            server.close();
            throw refused;
        }
    }

    @Override
    public void close() {
        if (server != null) {
            server.close();
        }
    }

    private static OwnerDatabase upToDate(String url, String user, String password, @Nullable EmbeddedServer server) {
        DriverManagerDataSource connections = connections(url, user, password);
        try {
            Flyway.configure().dataSource(connections).load().migrate();
        } catch (FlywayException e) {
            throw new StartRefused(
                    "The database can't be brought up to date: " + e.getMessage(),
                    "See that it runs, and that its address, user and password are right.",
                    e);
        }
        return new OwnerDatabase(JdbcClient.create(connections), server);
    }

    private static DriverManagerDataSource connections(String url, String user, String password) {
        DriverManagerDataSource connections = new DriverManagerDataSource(url, user, password);
        Properties limits = new Properties();
        limits.setProperty("connectTimeout", "5"); // s
        limits.setProperty("socketTimeout", "60");
        connections.setConnectionProperties(limits);
        return connections;
    }
}
