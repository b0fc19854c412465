package org.axlewright.api.setup;

import java.util.concurrent.TimeUnit;
import org.axlewright.api.database.Storage;
import org.axlewright.api.problem.Declined;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Removes for good what was deleted 30 days ago, and answers remembered for a day. */
@Component
@EnableScheduling
class Purge {

    private static final Logger LOG = LoggerFactory.getLogger(Purge.class);

    /** Few enough to be done long before the database ends a statement that takes too long. */
    private static final int AT_ONCE = 200;

    private final Storage storage;
    private final JdbcClient database;

    Purge(Storage storage, JdbcClient database) {
        this.storage = storage;
        this.database = database;
    }

    @Scheduled(initialDelay = 10, fixedDelay = 60, timeUnit = TimeUnit.MINUTES)
    void run() {
        try {
            while (storage.ask(() -> database.sql("select purge(:most)")
                            .param("most", AT_ONCE)
                            .query(Long.class)
                            .single())
                    > 0) {
                LOG.info("Removed setups deleted 30 days ago, or answers of yesterday");
            }
        } catch (Declined away) {
            LOG.warn("Nothing is purged now: the database is away");
        }
    }
}
