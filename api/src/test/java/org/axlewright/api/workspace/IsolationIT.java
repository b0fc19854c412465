package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.axlewright.api.Running;
import org.axlewright.api.database.TestDatabase;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.context.TestPropertySource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What one workspace keeps, another sees nothing of: by no operation of the contract, whatever operations there are, and by no statement
 * under the service's own database role.
 */
@TestPropertySource(properties = {"springdoc.api-docs.enabled=true", "springdoc.api-docs.path=/v3/generated"})
class IsolationIT extends Running {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    /** Stands in everything that the owner saves, and nowhere else. */
    private static final String SECRET = "Quince hauler of the north yard";

    private static String owners = "";
    private static String others = "";

    private String id = "";
    private String kept = "";
    private String tag = "";

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    @BeforeAll
    static void tokens() {
        TestDatabase.bringUpToDate(DATABASE);
        owners = TestDatabase.token(DATABASE, "owner", "write");
        others = TestDatabase.token(DATABASE, "other", "write");
    }

    @BeforeEach
    void save() {
        ObjectNode setup = (ObjectNode) JSON.readTree(DemoSetups.exampleText());
        setup.put("name", SECRET).put("notes", SECRET);
        Reply created = as(owners, "POST", "/v1/setups", setup.toString());
        assertThat(created.status()).as(created.text()).isEqualTo(201);
        id = created.header("Location").substring("/v1/setups/".length());
        // A second revision, and a deleted setup beside it, so that whatever keeps former things has some.
        setup.put("notes", SECRET + ", weighed again");
        Reply replaced = sendAsIs(request(owners, "/v1/setups/" + id)
                .header("If-Match", created.header("ETag"))
                .PUT(BodyPublishers.ofString(setup.toString())));
        assertThat(replaced.status()).as(replaced.text()).isEqualTo(204);
        String gone = as(owners, "POST", "/v1/setups", setup.toString()).header("Location");
        assertThat(sendAsIs(request(owners, gone).header("If-Match", "*").DELETE())
                        .status())
                .isEqualTo(204);
        kept = as(owners, "GET", "/v1/setups/" + id, null).text();
        tag = as(owners, "GET", "/v1/setups/" + id, null).header("ETag");
        assertThat(kept).contains(SECRET);
    }

    @Test
    void noOperationOfTheContractShowsOrChangesWhatAnotherWorkspaceKeeps() {
        JsonNode contract = get("/v3/generated").json();
        List<String> walked = new ArrayList<>();
        for (String path : contract.path("paths").propertyNames()) {
            if (!path.startsWith("/v1/")) {
                continue;
            }
            JsonNode item = contract.path("paths").path(path);
            for (String method : List.of("get", "post", "put", "patch", "delete")) {
                if (!item.has(method)) {
                    continue;
                }
                boolean aboutOne = path.contains("{");
                for (String body : bodies(path, item.path(method))) {
                    Reply reply = ask(path, method, item.path(method), body);
                    String what = method + " " + path + ": " + reply.status() + " " + reply.text();
                    assertThat(reply.status()).as(what).isLessThan(500);
                    assertThat(reply.text() + reply.headers().map()).as(what).doesNotContain(SECRET, id);
                    if (aboutOne) {
                        assertThat(reply.status()).as(what).isEqualTo(404);
                    }
                }
                walked.add(method + " " + path);
            }
        }
        assertThat(walked)
                .contains(
                        "get /v1/setups",
                        "post /v1/setups",
                        "get /v1/setups/{id}",
                        "put /v1/setups/{id}",
                        "delete /v1/setups/{id}",
                        "get /v1/setups/{id}/assessment",
                        "get /v1/setups/{id}/centre-of-gravity",
                        "post /v1/comparisons",
                        "post /v1/candidates");
        Reply after = as(owners, "GET", "/v1/setups/" + id, null);
        assertThat(after.text()).isEqualTo(kept);
        assertThat(after.header("ETag")).isEqualTo(tag);
    }

    @Test
    void noQuestionReachesAnythingSavedWithoutAToken() {
        JsonNode contract = get("/v3/generated").json();
        for (String path : contract.path("paths").propertyNames()) {
            for (String method : List.of("get", "post", "put", "patch", "delete")) {
                JsonNode operation = contract.path("paths").path(path).path(method);
                if (path.startsWith("/v1/setups") && !operation.isMissingNode()) {
                    Reply reply = sendAsIs(HttpRequest.newBuilder(uri(filled(path)))
                            .header("Content-Type", "application/json")
                            .method(method.toUpperCase(java.util.Locale.ROOT), BodyPublishers.ofString("{")));
                    assertThat(reply.status()).as(method + " " + path).isEqualTo(401);
                    assertThat(reply.header("WWW-Authenticate")).startsWith("Bearer");
                }
            }
        }
        for (String spelling : List.of("/v1/setups", "/v1//setups", "/v1/%73etups", "/v1/setups;a=b", "/v1/setups/")) {
            Reply reply = sendAsIs(HttpRequest.newBuilder(uri(spelling)));
            assertThat(reply.status()).as(spelling + reply.text()).isIn(400, 401, 404);
        }
        for (String path : List.of("/v1/comparisons", "/v1/candidates")) {
            assertThat(sendAsIs(HttpRequest.newBuilder(uri(path))
                                    .header("Content-Type", "application/json")
                                    .POST(BodyPublishers.ofString(naming(path))))
                            .status())
                    .as(path)
                    .isEqualTo(401);
        }
    }

    /** Every table that the role may read, whatever tables there are. */
    @Test
    void noStatementUnderTheServicesRoleCrossesWorkspaces() throws SQLException {
        UUID owner = workspace("owner");
        UUID other = workspace("other");
        try (Connection connection = asService();
                Statement statement = connection.createStatement()) {
            Set<String> tables = tables(statement);
            assertThat(tables).contains("setups").doesNotContain("tokens", "workspaces", "flyway_schema_history");
            for (String table : tables) {
                for (String setting :
                        List.of("", other.toString(), UUID.randomUUID().toString())) {
                    statement.execute("begin");
                    statement.execute("select set_config('axlewright.workspace', '" + setting + "', true)");
                    assertThat(one(
                                    statement,
                                    "select count(*) from " + table + " where workspace_id = '" + owner + "'"))
                            .as(table + " seen")
                            .isEqualTo("0");
                    assertThat(one(
                                    statement,
                                    "select count(*) from " + table + " where " + table + "::text like '%Quince%'"))
                            .as(table + " searched")
                            .isEqualTo("0");
                    assertThat(statement.executeUpdate("update " + table
                                    + " set workspace_id = workspace_id where workspace_id = '" + owner + "'"))
                            .as(table + " changed")
                            .isZero();
                    assertThat(statement.executeUpdate(
                                    "delete from " + table + " where workspace_id = '" + owner + "'"))
                            .as(table + " deleted")
                            .isZero();
                    statement.execute("rollback");
                }
                statement.execute("begin");
                statement.execute("select set_config('axlewright.workspace', '" + owner + "', true)");
                long own = Long.parseLong(one(statement, "select count(*) from " + table));
                if (table.equals("setups")) {
                    assertThat(own).isPositive();
                }
                if (own > 0) { // one's own can't be given away either
                    assertThatThrownBy(() ->
                                    statement.executeUpdate("update " + table + " set workspace_id = '" + other + "'"))
                            .isInstanceOf(SQLException.class)
                            .hasMessageContaining("row-level security");
                }
                statement.execute("rollback");
            }
        }
    }

    @Test
    void nothingIsThereBeforeAWorkspaceIsSetNorAfterItsTransaction() throws SQLException {
        try (Connection connection = asService();
                Statement statement = connection.createStatement()) {
            assertThat(one(statement, "select count(*) from setups")).isEqualTo("0");
            statement.execute("begin");
            statement.execute("select set_config('axlewright.workspace', '" + workspace("owner") + "', true)");
            assertThat(one(statement, "select count(*) from setups")).isNotEqualTo("0");
            statement.execute("commit");
            assertThat(one(statement, "select count(*) from setups")).isEqualTo("0");
            assertThat(statement.executeUpdate("delete from setups")).isZero();
            assertThatThrownBy(() -> statement.execute(
                            "insert into setups (id, name, document) values (gen_random_uuid(), 'nobody''s', '{}')"))
                    .isInstanceOf(SQLException.class);
            assertThatThrownBy(() -> statement.execute(
                            "insert into setups (id, workspace_id, name, document) values (gen_random_uuid(), '"
                                    + workspace("owner") + "', 'forged', '{}')"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("row-level security");
        }
    }

    @Test
    void theServicesRoleCantReadTokensOrLetItselfIn() throws SQLException {
        try (Connection connection = asService();
                Statement statement = connection.createStatement()) {
            for (String forbidden : List.of(
                    "select * from tokens",
                    "select * from workspaces",
                    "update tokens set scope = 'write'",
                    "alter table setups no force row level security",
                    "alter table setups disable row level security",
                    "drop policy workspace on setups",
                    "truncate setups",
                    "create or replace function use_token(sent bytea) returns int language sql as 'select 1'",
                    "set session authorization postgres")) {
                assertThatThrownBy(() -> statement.execute(forbidden))
                        .as(forbidden)
                        .isInstanceOf(SQLException.class);
            }
            assertThat(one(statement, "select count(*) from use_token(sha256('guessed'))"))
                    .isEqualTo("0");
        }
    }

    /** With the path filled in, every header that a change may need, and a body that would do. */
    private Reply ask(String path, String method, JsonNode operation, String body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(filled(path)))
                .header("Authorization", "Bearer " + others)
                .header("If-Match", "*")
                .header("Idempotency-Key", UUID.randomUUID().toString());
        String type = operation.path("requestBody").path("content").propertyNames().stream()
                .findFirst()
                .orElse("application/json");
        return sendAsIs(request.header("Content-Type", type)
                .method(
                        method.toUpperCase(java.util.Locale.ROOT),
                        body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body)));
    }

    private List<String> bodies(String path, JsonNode operation) {
        if (!operation.has("requestBody")) {
            return List.of("");
        }
        if (path.equals("/v1/comparisons") || path.equals("/v1/candidates")) {
            return List.of(naming(path));
        }
        return List.of("{\"name\":\"taken over\"}");
    }

    private String naming(String path) {
        return path.equals("/v1/comparisons")
                ? "{\"before\":\"" + id + "\",\"after\":{\"name\":\"mine\"}}"
                : "{\"setup\":\"" + id + "\",\"candidates\":[{\"patch\":{\"name\":\"mine\"}}]}";
    }

    private String filled(String path) {
        return path.replace("{id}", id).replaceAll("\\{[^}]*}", "1");
    }

    private Reply as(String token, String method, String path, String body) {
        return sendAsIs(request(token, path)
                .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofString(body)));
    }

    private HttpRequest.Builder request(String token, String path) {
        return HttpRequest.newBuilder(uri(path))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json");
    }

    /** A login with the rights of the service's role and no others. */
    private static Connection asService() throws SQLException {
        try (Connection admin = DriverManager.getConnection(DATABASE.url(), DATABASE.user(), DATABASE.password());
                Statement statement = admin.createStatement()) {
            if (one(statement, "select count(*) from pg_roles where rolname = 'visitor'")
                    .equals("0")) {
                statement.execute("create role visitor login password 'visitor' noinherit");
                statement.execute("grant axlewright_service to visitor");
            }
        }
        Connection connection = DriverManager.getConnection(DATABASE.url(), "visitor", "visitor");
        try (Statement statement = connection.createStatement()) {
            statement.execute("set role axlewright_service");
        }
        return connection;
    }

    private static Set<String> tables(Statement statement) throws SQLException {
        Set<String> tables = new TreeSet<>();
        try (ResultSet rows = statement.executeQuery("""
                select relname from pg_class where relnamespace = cast('public' as regnamespace)
                    and relkind in ('r', 'p', 'v', 'm', 'f') and has_table_privilege(oid, 'select')""")) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        return tables;
    }

    private static UUID workspace(String name) throws SQLException {
        try (Connection admin = DriverManager.getConnection(DATABASE.url(), DATABASE.user(), DATABASE.password());
                Statement statement = admin.createStatement()) {
            return UUID.fromString(one(statement, "select id from workspaces where name = '" + name + "'"));
        }
    }

    private static String one(Statement statement, String sql) throws SQLException {
        try (ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            return rows.getString(1);
        }
    }
}
