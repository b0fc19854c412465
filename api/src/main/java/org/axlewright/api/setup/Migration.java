package org.axlewright.api.setup;

import java.time.Duration;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Brings the tables up to date: once during the start, and when the database is away then, in the background until it is there.
 * Calculations don't wait for it; setups are refused until it is done.
 */
@Component
class Migration implements SmartLifecycle, HealthIndicator {

    private static final Logger LOG = LoggerFactory.getLogger(Migration.class);

    private final Flyway flyway;
    private volatile boolean done;
    private volatile @Nullable Thread background;

    Migration(Flyway flyway) {
        this.flyway = flyway;
    }

    /** Whether the tables are there. */
    boolean done() {
        return done;
    }

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
        }
    }

    private boolean migrate() {
        try {
            flyway.migrate();
            done = true;
        } catch (FlywayException e) {
            LOG.warn("Setups are not available yet, the database can't be brought up to date: {}", e.getMessage());
        }
        return done;
    }
}
