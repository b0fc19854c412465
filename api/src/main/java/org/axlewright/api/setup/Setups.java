package org.axlewright.api.setup;

import com.github.f4b6a3.uuid.UuidCreator;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.axlewright.api.database.Storage;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.workspace.CurrentWorkspace;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The setups of a workspace in PostgreSQL. Every change is one transaction, so it is either done and durable or not done, and keeps the
 * document that it replaces.
 *
 * <p>When the database can't be reached, every method throws a {@link Declined} with status 503.
 */
@Component
class Setups {

    /** After every id there is: all bits set, as PostgreSQL sorts them. */
    private static final UUID END = new UUID(-1, -1);

    private static final UUID BEGINNING = new UUID(0, 0);

    /** As long as a deleted setup can be restored; the function purge in the database removes it then. */
    private static final String RECOVERABLE = " deleted_at > now() - interval '30 days' ";

    private static final String ENTRIES = """
            select id, name, revision, created_at, updated_at, deleted_at from setups
            where workspace_id = :workspace and id < :before and""";

    private static final String ALL_REVISIONS = """
            with there as (
                select * from setups where workspace_id = :workspace and id = :id and deleted_at is null),
            all_revisions as (
                select revision, name, document, updated_at as saved_at from there
                union all
                select revisions.revision, revisions.name, revisions.document, revisions.saved_at
                from revisions join there on revisions.workspace_id = there.workspace_id and revisions.setup_id = there.id)
            """;

    private final Storage storage;
    private final JdbcClient database;

    Setups(Storage storage, JdbcClient database) {
        this.storage = storage;
        this.database = database;
    }

    /**
     * A version of a setup.
     *
     * @param revision 1 when created, one more with each change
     */
    record Version(UUID id, long revision, Instant updatedAt) {

        /** Strong: the document comes back byte for byte. */
        String entityTag() {
            return "\"" + revision + "\"";
        }
    }

    /** A version with its document, the text as it was sent. */
    record Saved(Version version, String document) {}

    Version create(SetupDocument document) {
        return ask(workspace -> database.sql("""
                        insert into setups (id, workspace_id, name, document, findings, assessed_by)
                        values (:id, :workspace, :name, cast(:document as json), :findings, :engine)
                        returning id, revision, updated_at""")
                .param("workspace", workspace)
                .param("id", UuidCreator.getTimeOrderedEpoch()) // version 7, RFC 9562
                .param("name", document.name())
                .param("document", document.text())
                .param("findings", document.found().codes().toArray(String[]::new))
                .param("engine", document.found().engine())
                .query(Setups::version)
                .single());
    }

    Optional<Saved> find(UUID id) {
        return find(id, "");
    }

    private Optional<Saved> find(UUID id, String lock) {
        return ask(workspace -> database.sql("""
                        select id, revision, updated_at, document from setups
                        where workspace_id = :workspace and id = :id and deleted_at is null""" + lock)
                .param("workspace", workspace)
                .param("id", id)
                .query(Setups::saved)
                .optional());
    }

    /** The oldest setup of a name. */
    Optional<UUID> named(String name) {
        return ask(workspace -> database.sql("""
                        select id from setups where workspace_id = :workspace and name = :name and deleted_at is null
                        order by id limit 1""")
                .param("workspace", workspace)
                .param("name", name)
                .query(UUID.class)
                .optional());
    }

    /** Newest first: ids of version 7 begin with the time of creation. */
    List<SetupEntry> list(Search search, @Nullable UUID before, int limit) {
        return ask(workspace -> entries(workspace, listing(search), before, limit)
                .param("name", search.name())
                .param("finding", search.finding())
                .query((row, number) -> new SetupEntry(
                        row.getObject("id", UUID.class),
                        row.getString("name"),
                        row.getLong("revision"),
                        instant(row, "created_at"),
                        instant(row, "updated_at")))
                .list());
    }

    /** Without the conditions that don't apply, so that the database plans for those that do. */
    static String listing(Search search) {
        return ENTRIES + " deleted_at is null"
                + (search.name() == null ? "" : " and position(lower(:name) in lower(name)) > 0")
                + (search.finding() == null ? "" : " and :finding = any(findings)")
                + " order by id desc limit :limit";
    }

    private JdbcClient.StatementSpec entries(UUID workspace, String sql, @Nullable UUID before, int limit) {
        return database.sql(sql)
                .param("workspace", workspace)
                .param("before", before == null ? END : before)
                .param("limit", limit);
    }

    /** Oldest first. */
    List<Saved> documents(@Nullable UUID after, int limit) {
        return ask(workspace -> database.sql("""
                        select id, revision, updated_at, document from setups
                        where workspace_id = :workspace and id > :after and deleted_at is null
                        order by id limit :limit""")
                .param("workspace", workspace)
                .param("after", after == null ? BEGINNING : after)
                .param("limit", limit)
                .query(Setups::saved)
                .list());
    }

    /**
     * The new version, or nothing when the setup isn't there or is at another revision than those accepted.
     *
     * @param change gives the new document for the present one, which nobody else changes meanwhile
     */
    Optional<Version> change(UUID id, Precondition precondition, Function<Saved, SetupDocument> change) {
        return ask(workspace -> find(id, " for update")
                .filter(former -> precondition.accepts(former.version().revision()))
                .map(former -> replace(workspace, former.version(), change.apply(former))));
    }

    private Version replace(UUID workspace, Version former, SetupDocument document) {
        database.sql("""
                        insert into revisions (workspace_id, setup_id, revision, name, document, saved_at)
                        select workspace_id, id, revision, name, document, updated_at from setups
                        where workspace_id = :workspace and id = :id""").param("workspace", workspace).param("id", former.id()).update();
        return database.sql("""
                        update setups
                        set name = :name, document = cast(:document as json), findings = :findings, assessed_by = :engine,
                            revision = revision + 1, updated_at = clock_timestamp() -- a transaction may have waited
                        where workspace_id = :workspace and id = :id
                        returning id, revision, updated_at""")
                .param("workspace", workspace)
                .param("id", former.id())
                .param("name", document.name())
                .param("document", document.text())
                .param("findings", document.found().codes().toArray(String[]::new))
                .param("engine", document.found().engine())
                .query(Setups::version)
                .single();
    }

    /** Every revision below one, newest first; nothing when the setup isn't there. */
    Optional<List<RevisionEntry>> revisions(UUID id, long before, int limit) {
        return ask(workspace -> find(id).map(there -> database.sql(ALL_REVISIONS + """
                                select revision, name, saved_at from all_revisions where revision < :before
                                order by revision desc limit :limit""")
                .param("workspace", workspace)
                .param("id", id)
                .param("before", before)
                .param("limit", limit)
                .query((row, number) ->
                        new RevisionEntry(row.getLong("revision"), row.getString("name"), instant(row, "saved_at")))
                .list()));
    }

    Optional<Saved> revision(UUID id, long revision) {
        return ask(workspace -> database.sql(
                        ALL_REVISIONS + "select saved_at, document from all_revisions where revision = :revision")
                .param("workspace", workspace)
                .param("id", id)
                .param("revision", revision)
                .query((row, number) ->
                        new Saved(new Version(id, revision, instant(row, "saved_at")), row.getString("document")))
                .optional());
    }

    /** Whether it was there at an accepted revision, and is deleted now. */
    boolean delete(UUID id, Precondition precondition) {
        return ask(workspace -> database.sql("""
                                update setups set deleted_at = clock_timestamp()
                                where workspace_id = :workspace and id = :id and deleted_at is null
                                    and (:any or revision = any(:revisions))""")
                        .param("workspace", workspace)
                        .param("id", id)
                        .param("any", precondition.any())
                        .param("revisions", precondition.revisions().toArray(Long[]::new))
                        .update()
                == 1);
    }

    /** Those that can be restored, newest first. */
    List<DeletedEntry> deleted(@Nullable UUID before, int limit) {
        return ask(
                workspace -> entries(workspace, ENTRIES + RECOVERABLE + "order by id desc limit :limit", before, limit)
                        .query(Setups::deletedEntry)
                        .list());
    }

    Optional<DeletedEntry> findDeleted(UUID id) {
        return ask(workspace -> database.sql("""
                        select id, name, revision, deleted_at from setups where workspace_id = :workspace and id = :id and""" + RECOVERABLE)
                .param("workspace", workspace)
                .param("id", id)
                .query(Setups::deletedEntry)
                .optional());
    }

    /** The version that is there again, or nothing when it can't be restored or is at another revision than those accepted. */
    Optional<Version> restoreDeleted(UUID id, Precondition precondition) {
        return ask(workspace -> database.sql("""
                        update setups set deleted_at = null
                        where workspace_id = :workspace and id = :id and (:any or revision = any(:revisions)) and""" + RECOVERABLE + "returning id, revision, updated_at")
                .param("workspace", workspace)
                .param("id", id)
                .param("any", precondition.any())
                .param("revisions", precondition.revisions().toArray(Long[]::new))
                .query(Setups::version)
                .optional());
    }

    /** Setups whose findings another version of the engine has found. */
    List<Saved> foundByOthers(String engine, int limit) {
        return ask(workspace -> database.sql("""
                        select id, revision, updated_at, document from setups
                        where workspace_id = :workspace and deleted_at is null and assessed_by is distinct from :engine
                        limit :limit""")
                .param("workspace", workspace)
                .param("engine", engine)
                .param("limit", limit)
                .query(Setups::saved)
                .list());
    }

    /** What is found about a version, unless it has been replaced meanwhile. */
    void found(Version version, Findings.Found found) {
        ask(workspace -> database.sql("""
                        update setups set findings = :findings, assessed_by = :engine
                        where workspace_id = :workspace and id = :id and revision = :revision""")
                .param("workspace", workspace)
                .param("id", version.id())
                .param("revision", version.revision())
                .param("findings", found.codes().toArray(String[]::new))
                .param("engine", found.engine())
                .update());
    }

    /** Why a change found nothing to change: gone, or somebody else was faster. */
    Declined unchanged(UUID id) {
        return find(id).map(saved -> Precondition.failed(saved.version().revision()))
                .orElseGet(Identifiers::noSuchSetup);
    }

    private <T> T ask(Function<UUID, T> question) {
        UUID workspace = CurrentWorkspace.id();
        return storage.ask(workspace, () -> question.apply(workspace));
    }

    private static Version version(ResultSet row, int number) throws SQLException {
        return new Version(row.getObject("id", UUID.class), row.getLong("revision"), instant(row, "updated_at"));
    }

    private static Saved saved(ResultSet row, int number) throws SQLException {
        return new Saved(version(row, number), row.getString("document"));
    }

    private static DeletedEntry deletedEntry(ResultSet row, int number) throws SQLException {
        return new DeletedEntry(
                row.getObject("id", UUID.class),
                row.getString("name"),
                row.getLong("revision"),
                instant(row, "deleted_at"));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
