package org.axlewright.api.database;

import java.sql.SQLException;
import java.time.Duration;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.context.SmartLifecycle;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Brings the tables up to date: once during the start, and when the database is away then, in the background until it is there.
 * Calculations don't wait for it; setups are refused until it is done, and for good when the service would work with more rights than
 * row-level security can hold.
 */
@Component
class Migration implements SmartLifecycle, HealthIndicator {

    private static final Logger LOG = LoggerFactory.getLogger(Migration.class);

    private static final String INSUFFICIENT_PRIVILEGE = "42501"; // PostgreSQL, appendix A

    private final Flyway flyway;
    private final JdbcClient database;
    private volatile boolean done;
    private volatile @Nullable Thread background;

    Migration(Flyway flyway, JdbcClient database) {
        this.flyway = flyway;
        this.database = database;
    }

    /** Whether the tables are there. */
    boolean done() {
        return done;
    }

    /** @throws StartRefused when the database answers, and gives the service too few rights or too many */
    @Override
    public void start() {
        if (!migrate()) {
            Thread thread = new Thread(this::keepTrying, "migration");
            thread.setDaemon(true);
            background = thread;
            thread.start();
        }
    }

    @Override
    public void stop() {
        Thread thread = background;
        if (thread != null) {
            thread.interrupt();
            background = null;
        }
    }

    @Override
    public boolean isRunning() {
        return done || background != null;
    }

    /** Before the web server opens its port, so that the first request finds the tables when the database is there. */
    @Override
    public int getPhase() {
        return 0;
    }

    @Override
    public Health health() {
        return done ? Health.up().build() : Health.outOfService().build();
    }

    private void keepTrying() {
        try {
            for (Duration pause = Pause.FIRST; !done; pause = Pause.next(pause)) {
                Thread.sleep(pause.toMillis());
                migrate();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (StartRefused refused) {
            LOG.error("Setups stay away. {} {}", refused.getMessage(), refused.action());
        }
    }

    private boolean migrate() {
        try {
            flyway.migrate();
            requireHeld();
            done = true;
        } catch (FlywayException | DataAccessException e) {
            if (INSUFFICIENT_PRIVILEGE.equals(sqlState(e))) {
                throw new StartRefused(
                        "The database gives the service too few rights: " + e.getMessage(),
                        "As its administrator: \"create role axlewright_service nologin\", unless it exists, and \"grant"
                                + " axlewright_service to\" the login of the service. The login that brings the tables up to"
                                + " date must own their schema.",
                        e);
            }
            LOG.warn("Setups are not available yet, the database can't be brought up to date: {}", e.getMessage());
        }
        return done;
    }

    /** Superusers, owners of the tables, and roles that bypass row-level security see everything, or can let themselves. */
    private void requireHeld() {
        String loose = database.sql("""
                        select current_user from pg_roles
                        where rolname = current_user and (rolbypassrls or pg_has_role(current_user,
                            (select relowner from pg_class where oid = cast('setups' as regclass)), 'member'))""").query(String.class).optional().orElse(null);
        if (loose != null) {
            throw new StartRefused(
                    "The service works under the database role " + loose
                            + ", which row-level security does not hold: a superuser, an owner of the tables, or one that"
                            + " bypasses it.",
                    "Leave spring.datasource.hikari.connection-init-sql as it is, and give the role axlewright_service"
                            + " nothing but what the service gives it.");
        }
    }

    private static @Nullable String sqlState(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException database && database.getSQLState() != null) {
                return database.getSQLState();
            }
        }
        return null;
    }
}
