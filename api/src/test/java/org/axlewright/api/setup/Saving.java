package org.axlewright.api.setup;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.axlewright.api.Running;
import org.axlewright.api.database.TestDatabase;
import org.jspecify.annotations.Nullable;

/** The service on a real PostgreSQL, and the requests that tests of saved setups have in common. */
abstract class Saving extends Running {

    static final String PATH = "/v1/setups";
    static final String MERGE_PATCH = "application/merge-patch+json";
    static final String NDJSON = "application/x-ndjson";

    Reply create(String document) {
        return post(PATH, document);
    }

    /** Path of a new setup. */
    String created(String document) {
        Reply created = create(document);
        if (created.status() != 201) {
            throw new AssertionError(created.status() + ": " + created.text());
        }
        return created.header("Location");
    }

    Reply replace(String location, String ifMatch, String document) {
        return send(request(location, "application/json", ifMatch, null).PUT(BodyPublishers.ofString(document)));
    }

    Reply patch(String location, @Nullable String ifMatch, String patch) {
        return send(request(location, MERGE_PATCH, ifMatch, null).method("PATCH", BodyPublishers.ofString(patch)));
    }

    Reply delete(String location, String ifMatch) {
        return send(request(location, null, ifMatch, null).DELETE());
    }

    /** A POST without a body. */
    Reply act(String path, @Nullable String ifMatch, @Nullable String key) {
        return send(request(path, null, ifMatch, key).POST(BodyPublishers.noBody()));
    }

    HttpRequest.Builder request(
            String path, @Nullable String contentType, @Nullable String ifMatch, @Nullable String key) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(path));
        if (contentType != null) {
            request.header("Content-Type", contentType);
        }
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        if (key != null) {
            request.header("Idempotency-Key", key);
        }
        return request;
    }

    static String id(String location) {
        return location.substring(PATH.length() + 1);
    }

    /** Past the service, as a user that row-level security does not hold. */
    static void execute(TestDatabase.Access database, String sql) {
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                var statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same for a question with one answer. */
    static String ask(TestDatabase.Access database, String sql) {
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                var statement = connection.createStatement();
                var rows = statement.executeQuery(sql)) {
            rows.next();
            return String.valueOf(rows.getString(1));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Id of the workspace of the tests. */
    static String workspace(TestDatabase.Access database) {
        return ask(database, "select id from workspaces where name = 'tests'");
    }
}
