package org.axlewright.api.setup;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.axlewright.api.database.Storage;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.workspace.CurrentWorkspace;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * Does a request once, however often it comes with the same key (draft-ietf-httpapi-idempotency-key-header): the answer is remembered in
 * the transaction of the write. A refusal writes nothing and is not remembered.
 */
@Component
final class Once {

    static final String KEY = "Idempotency-Key";
    static final String REPLAYED = "Idempotent-Replayed";

    private static final Pattern FORM = Pattern.compile("[!-~]{1,200}");

    private final Storage storage;
    private final JdbcClient database;
    private final JsonMapper json;

    Once(Storage storage, JdbcClient database, JsonMapper json) {
        this.storage = storage;
        this.database = database;
        this.json = json;
    }

    /**
     * A request that names itself.
     *
     * @param key chosen by the caller
     * @param line of an import, from 1; 0 for a request that is one write
     * @param fingerprint SHA-256 of what is asked
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared as a whole
    record Request(String key, long line, byte[] fingerprint) {

        /**
         * Null without a key.
         *
         * @param parts of the request that a repetition has in common with it
         * @throws Declined 400 when the key can't be one
         */
        static @Nullable Request of(@Nullable String key, long line, byte[] body, String... parts) {
            if (key == null) {
                return null;
            }
            if (!FORM.matcher(key).matches()) {
                throw Declined.parameter(
                        "unknown-value", "Header " + KEY + " must be 1 to 200 visible ASCII characters");
            }
            MessageDigest digest = sha256();
            digest.update(String.join("\n", parts).getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            return new Request(key, line, digest.digest(body));
        }

        private static MessageDigest sha256() {
            try {
                return MessageDigest.getInstance("SHA-256");
            } catch (NoSuchAlgorithmException impossible) { // every Java has it
                throw new IllegalStateException(impossible);
            }
        }
    }

    /**
     * The answer of the write, or the one that was given before, marked so.
     *
     * @param request null to write in any case
     * @param write gives an answer without a body
     * @throws Declined 409 while the same request is at work, 422 when the key came with another one
     */
    ResponseEntity<Void> answer(@Nullable Request request, Supplier<ResponseEntity<Void>> write) {
        if (request == null) {
            return write.get();
        }
        UUID workspace = CurrentWorkspace.id();
        return storage.ask(workspace, () -> {
            take(workspace, request);
            return remembered(workspace, request).orElseGet(() -> {
                ResponseEntity<Void> answer = write.get();
                remember(workspace, request, answer);
                return answer;
            });
        });
    }

    /** Held until the transaction ends, by whichever way. */
    private void take(UUID workspace, Request request) {
        boolean free = database.sql("select pg_try_advisory_xact_lock(hashtextextended(:key, :line))")
                .param("key", workspace + " " + request.key())
                .param("line", request.line())
                .query(Boolean.class)
                .single();
        if (!free) {
            throw new Declined(
                            HttpStatus.CONFLICT,
                            "idempotency-key-in-use",
                            "The same request is at work",
                            "A request with this " + KEY + " is being worked on: repeat it when that has been answered")
                    .header(HttpHeaders.RETRY_AFTER, "1");
        }
    }

    private Optional<ResponseEntity<Void>> remembered(UUID workspace, Request request) {
        return database.sql("""
                        select fingerprint, status, headers from remembered_answers
                        where workspace_id = :workspace and key = :key and line = :line
                            and answered_at > now() - interval '24 hours'""")
                .param("workspace", workspace)
                .param("key", request.key())
                .param("line", request.line())
                .query((row, number) -> {
                    if (!Arrays.equals(row.getBytes("fingerprint"), request.fingerprint())) {
                        throw new Declined(
                                HttpStatus.UNPROCESSABLE_CONTENT,
                                "idempotency-key-reused",
                                "The key belongs to another request",
                                "This " + KEY + " came with another request within the last 24 hours: take a new one");
                    }
                    HttpHeaders headers = new HttpHeaders();
                    headers.setAll(
                            json.readValue(row.getString("headers"), new TypeReference<Map<String, String>>() {}));
                    headers.set(REPLAYED, "true");
                    return ResponseEntity.status(row.getInt("status"))
                            .headers(headers)
                            .<Void>build();
                })
                .optional();
    }

    private void remember(UUID workspace, Request request, ResponseEntity<Void> answer) {
        database.sql("""
                        insert into remembered_answers (workspace_id, key, line, fingerprint, status, headers)
                        values (:workspace, :key, :line, :fingerprint, :status, cast(:headers as json))
                        on conflict (workspace_id, key, line) do update
                        set fingerprint = excluded.fingerprint, status = excluded.status, headers = excluded.headers,
                            answered_at = now()""")
                .param("workspace", workspace)
                .param("key", request.key())
                .param("line", request.line())
                .param("fingerprint", request.fingerprint())
                .param("status", answer.getStatusCode().value())
                .param("headers", json.writeValueAsString(answer.getHeaders().toSingleValueMap()))
                .update();
    }
}
