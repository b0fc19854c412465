package org.axlewright.api.workspace;

import com.github.f4b6a3.uuid.UuidCreator;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** All workspaces and tokens, as the owner of the tables sees them. Only commands work with it; the service can't. */
final class Register {

    private final JdbcClient owner;

    Register(JdbcClient owner) {
        this.owner = owner;
    }

    /** A workspace and how many tokens open it. */
    record Workspace(String name, Instant createdAt, long openTokens) {}

    /** What is known of a token: everything but itself. */
    record Entry(
            UUID id,
            String workspace,
            String scope,
            Instant createdAt,
            Instant expiresAt,
            @Nullable Instant revokedAt,
            @Nullable Instant lastUsedAt) {

        String state() {
            if (revokedAt != null) {
                return "revoked";
            }
            return expiresAt.isAfter(Instant.now()) ? "open" : "expired";
        }
    }

    /** A token that nobody will see again. */
    record Issued(UUID id, Token token, Instant expiresAt) {}

    /** Whether it is new. Its id is random: knowing one workspace tells nothing about another. */
    boolean createWorkspace(String name) {
        try {
            owner.sql("insert into workspaces (id, name) values (:id, :name)")
                    .param("id", UUID.randomUUID())
                    .param("name", name)
                    .update();
            return true;
        } catch (DuplicateKeyException there) {
            return false;
        }
    }

    List<Workspace> workspaces() {
        return owner.sql("""
                        select name, created_at, (select count(*) from tokens
                            where workspace_id = workspaces.id and revoked_at is null and expires_at > now()) as open
                        from workspaces order by name""")
                .query((row, number) -> new Workspace(
                        row.getString("name"),
                        row.getObject("created_at", OffsetDateTime.class).toInstant(),
                        row.getLong("open")))
                .list();
    }

    /** The token, unless there is no workspace of this name. */
    Optional<Issued> issue(String workspace, Scope scope, Instant expiresAt) {
        Token token = Token.fresh();
        UUID id = UuidCreator.getTimeOrderedEpoch();
        int made = owner.sql("""
                        insert into tokens (id, workspace_id, hash, scope, expires_at)
                        select :id, id, :hash, :scope, :expiresAt from workspaces where name = :workspace""")
                .param("id", id)
                .param("hash", token.hash())
                .param("scope", scope.toString())
                .param("expiresAt", expiresAt.atOffset(ZoneOffset.UTC))
                .param("workspace", workspace)
                .update();
        return made == 1 ? Optional.of(new Issued(id, token, expiresAt)) : Optional.empty();
    }

    /** All, or those of one workspace, newest first. */
    List<Entry> tokens(@Nullable String workspace) {
        return owner.sql("""
                        select tokens.id, name, scope, tokens.created_at, expires_at, revoked_at, last_used_at
                        from tokens join workspaces on workspaces.id = workspace_id
                        where cast(:workspace as text) is null or name = :workspace order by tokens.id desc""")
                .param("workspace", workspace)
                .query((row, number) -> new Entry(
                        row.getObject("id", UUID.class),
                        row.getString("name"),
                        row.getString("scope"),
                        row.getObject("created_at", OffsetDateTime.class).toInstant(),
                        row.getObject("expires_at", OffsetDateTime.class).toInstant(),
                        instant(row.getObject("revoked_at", OffsetDateTime.class)),
                        instant(row.getObject("last_used_at", OffsetDateTime.class))))
                .list();
    }

    /** Whether there is such a token; revoking it twice changes nothing. */
    boolean revoke(UUID id) {
        return owner.sql("update tokens set revoked_at = coalesce(revoked_at, now()) where id = :id")
                        .param("id", id)
                        .update()
                == 1;
    }

    private static @Nullable Instant instant(@Nullable OffsetDateTime time) {
        return time == null ? null : time.toInstant();
    }
}
