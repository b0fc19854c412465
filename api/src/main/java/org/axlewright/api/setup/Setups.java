package org.axlewright.api.setup;

import com.github.f4b6a3.uuid.UuidCreator;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The setups in PostgreSQL. Every change is one statement, so it is either done and durable or not done.
 *
 * <p>When the database can't be reached, every method throws a {@link Declined} with status 503.
 */
@Component
class Setups {

    private static final Logger LOG = LoggerFactory.getLogger(Setups.class);

    /**
     * Requests that may wait for the database at once. Half of the web server's threads (server.tomcat.threads.max): the other half
     * is left to the calculations, however long the database takes to answer.
     */
    private static final int PLACES = 32;

    private static final String RETRY_AFTER_SECONDS = "5";

    private final JdbcClient database;
    private final Migration migration;
    private final Semaphore places = new Semaphore(PLACES);

    Setups(JdbcClient database, Migration migration) {
        this.database = database;
        this.migration = migration;
    }

    /**
     * A version of a setup.
     *
     * @param revision 1 when created, one more with each replacement
     */
    record Version(UUID id, long revision, Instant updatedAt) {

        /** Strong: the document comes back byte for byte. */
        String entityTag() {
            return "\"" + revision + "\"";
        }
    }

    /** A version with its document, the text as it was sent. */
    record Saved(Version version, String document) {}

    Version create(String name, String document) {
        return ask(() -> database.sql("""
                        insert into setups (id, name, document) values (:id, :name, cast(:document as json))
                        returning id, revision, updated_at""")
                .param("id", UuidCreator.getTimeOrderedEpoch()) // version 7, RFC 9562
                .param("name", name)
                .param("document", document)
                .query((row, number) -> new Version(
                        row.getObject("id", UUID.class),
                        row.getLong("revision"),
                        row.getObject("updated_at", OffsetDateTime.class).toInstant()))
                .single());
    }

    Optional<Saved> find(UUID id) {
        return ask(() -> database.sql("select revision, updated_at, document from setups where id = :id")
                .param("id", id)
                .query((row, number) -> new Saved(
                        new Version(
                                id,
                                row.getLong("revision"),
                                row.getObject("updated_at", OffsetDateTime.class)
                                        .toInstant()),
                        row.getString("document")))
                .optional());
    }

    /** The oldest setup of a name. */
    Optional<UUID> named(String name) {
        return ask(() -> database.sql("select id from setups where name = :name order by id limit 1")
                .param("name", name)
                .query(UUID.class)
                .optional());
    }

    /** Newest first: ids of version 7 begin with the time of creation. */
    List<SetupEntry> list(@Nullable UUID before, int limit) {
        return ask(() -> database.sql("""
                        select id, name, revision, created_at, updated_at from setups
                        where cast(:before as uuid) is null or id < :before
                        order by id desc limit :limit""")
                .param("before", before)
                .param("limit", limit)
                .query((row, number) -> new SetupEntry(
                        row.getObject("id", UUID.class),
                        row.getString("name"),
                        row.getLong("revision"),
                        row.getObject("created_at", OffsetDateTime.class).toInstant(),
                        row.getObject("updated_at", OffsetDateTime.class).toInstant()))
                .list());
    }

    /** The new version, or nothing when the setup isn't there or is at another revision than those accepted. */
    Optional<Version> replace(UUID id, Precondition precondition, String name, String document) {
        return ask(() -> database.sql("""
                        update setups
                        set name = :name, document = cast(:document as json), revision = revision + 1, updated_at = now()
                        where id = :id and (:any or revision = any(:revisions))
                        returning revision, updated_at""")
                .param("id", id)
                .param("any", precondition.any())
                .param("revisions", precondition.revisions().toArray(Long[]::new))
                .param("name", name)
                .param("document", document)
                .query((row, number) -> new Version(
                        id,
                        row.getLong("revision"),
                        row.getObject("updated_at", OffsetDateTime.class).toInstant()))
                .optional());
    }

    /** Whether it was there at an accepted revision, and is gone now. */
    boolean delete(UUID id, Precondition precondition) {
        return ask(() -> database.sql("delete from setups where id = :id and (:any or revision = any(:revisions))")
                        .param("id", id)
                        .param("any", precondition.any())
                        .param("revisions", precondition.revisions().toArray(Long[]::new))
                        .update()
                == 1);
    }

    private <T> T ask(Supplier<T> question) {
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
                | UncategorizedSQLException failure) {
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

    private static String rootMessage(DataAccessException failure) {
        return String.valueOf(failure.getMostSpecificCause().getMessage());
    }
}
