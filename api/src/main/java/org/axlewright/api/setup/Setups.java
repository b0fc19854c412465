package org.axlewright.api.setup;

import com.github.f4b6a3.uuid.UuidCreator;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.axlewright.api.database.Storage;
import org.axlewright.api.workspace.CurrentWorkspace;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The setups of the {@link CurrentWorkspace} in PostgreSQL. Every change is one transaction, so it is either done and durable or not
 * done. Each statement names the workspace, and row-level security holds it to that.
 *
 * <p>When the database can't be reached, every method throws a {@link org.axlewright.api.problem.Declined} with status 503.
 */
@Component
class Setups {

    private final JdbcClient database;
    private final Storage storage;

    Setups(JdbcClient database, Storage storage) {
        this.database = database;
        this.storage = storage;
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
        return ask(workspace -> database.sql("""
                        insert into setups (id, workspace_id, name, document)
                        values (:id, :workspace, :name, cast(:document as json))
                        returning id, revision, updated_at""")
                .param("workspace", workspace)
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
        return ask(workspace -> database.sql(
                        "select revision, updated_at, document from setups where workspace_id = :workspace and id = :id")
                .param("workspace", workspace)
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
        return ask(workspace -> database.sql(
                        "select id from setups where workspace_id = :workspace and name = :name order by id limit 1")
                .param("workspace", workspace)
                .param("name", name)
                .query(UUID.class)
                .optional());
    }

    /** Newest first: ids of version 7 begin with the time of creation. */
    List<SetupEntry> list(@Nullable UUID before, int limit) {
        return ask(workspace -> database.sql("""
                        select id, name, revision, created_at, updated_at from setups
                        where workspace_id = :workspace and (cast(:before as uuid) is null or id < :before)
                        order by id desc limit :limit""")
                .param("workspace", workspace)
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
        return ask(workspace -> database.sql("""
                        update setups
                        set name = :name, document = cast(:document as json), revision = revision + 1, updated_at = now()
                        where workspace_id = :workspace and id = :id and (:any or revision = any(:revisions))
                        returning revision, updated_at""")
                .param("workspace", workspace)
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
        return ask(workspace -> database.sql("""
                        delete from setups
                        where workspace_id = :workspace and id = :id and (:any or revision = any(:revisions))""")
                        .param("workspace", workspace)
                        .param("id", id)
                        .param("any", precondition.any())
                        .param("revisions", precondition.revisions().toArray(Long[]::new))
                        .update()
                == 1);
    }

    private <T> T ask(Function<UUID, T> question) {
        UUID workspace = CurrentWorkspace.id();
        return storage.ask(workspace, () -> question.apply(workspace));
    }
}
