package org.axlewright.api.workspace;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.axlewright.api.database.Storage;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The tokens as the service sees them: one at a time, and only one that somebody shows. Each use asks the database, so a revoked token ends
 * at once; whoever shows one is about to ask the database anyway.
 */
@Component
class Tokens {

    private final JdbcClient database;
    private final Storage storage;

    Tokens(JdbcClient database, Storage storage) {
        this.database = database;
        this.storage = storage;
    }

    /** What a token grants, and whether it still does. */
    record Grant(UUID token, UUID workspace, Scope scope, Instant expiresAt, boolean revoked) {}

    /** Looks a token up and notes its use, at most once a minute. */
    Optional<Grant> use(Token token) {
        return storage.ask(() -> database.sql(
                        "select id, workspace_id, scope, expires_at, revoked_at from use_token(:hash)")
                .param("hash", token.hash())
                .query((row, number) -> new Grant(
                        row.getObject("id", UUID.class),
                        row.getObject("workspace_id", UUID.class),
                        Scope.valueOf(row.getString("scope").toUpperCase(Locale.ROOT)),
                        instant(row.getObject("expires_at", OffsetDateTime.class)),
                        row.getObject("revoked_at") != null))
                .optional());
    }

    private static Instant instant(@Nullable OffsetDateTime time) {
        return time == null ? Instant.MIN : time.toInstant();
    }
}
