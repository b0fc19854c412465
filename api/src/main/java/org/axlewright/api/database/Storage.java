package org.axlewright.api.database;

import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.axlewright.api.problem.Declined;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.NestedRuntimeException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionOperations;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** The way to ask the database. When it can't be reached, every question ends in a {@link Declined} with status 503. */
@Component
public class Storage {

    private static final Logger LOG = LoggerFactory.getLogger(Storage.class);

    /**
     * Requests that may wait for the database at once. Half of the web server's threads (server.tomcat.threads.max): the other half
     * is left to the calculations, however long the database takes to answer.
     */
    private static final int PLACES = 32;

    private static final String RETRY_AFTER_SECONDS = "5";

    private final JdbcClient database;
    private final TransactionOperations transactions;
    private final Migration migration;
    private final Semaphore places = new Semaphore(PLACES);

    Storage(JdbcClient database, TransactionOperations transactions, Migration migration) {
        this.database = database;
        this.transactions = transactions;
        this.migration = migration;
    }

    /**
     * A question in one transaction that sees the rows of a workspace and no others, whatever it asks. A question within a question is part
     * of the same transaction.
     */
    public <T> T ask(UUID workspace, Supplier<T> question) {
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            return question.get();
        }
        return ask(() -> transactions.execute(transaction -> {
            database.sql("select set_config('axlewright.workspace', :workspace, true)") // until the transaction ends
                    .param("workspace", workspace.toString())
                    .query(String.class)
                    .single();
            return question.get();
        }));
    }

    /** A question of no workspace: it sees no row that belongs to one. */
    public <T> T ask(Supplier<T> question) {
        if (!migration.done()) {
            throw away("the database is away or not brought up to date");
        }
        if (!places.tryAcquire()) {
            throw away("too many requests wait for the database");
        }
        try {
            return question.get();
        } catch (DataAccessResourceFailureException
                | TransientDataAccessException
                | RecoverableDataAccessException
                | UncategorizedSQLException
                | TransactionException failure) {
            LOG.warn("The database did not answer: {}", rootMessage(failure));
            throw away("the database does not answer");
        } finally {
            places.release();
        }
    }

    private static Declined away(String why) {
        return new Declined(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "storage-away",
                        "Setups are not available",
                        "Saved setups are not available now: " + why + ". Calculations are.")
                .header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS);
    }

    private static String rootMessage(NestedRuntimeException failure) {
        return String.valueOf(failure.getMostSpecificCause().getMessage());
    }
}
