package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.axlewright.api.Running;
import org.axlewright.api.database.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A token from its making to its end, and what it lets its holder do. */
class TokensIT extends Running {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    private Register register = new Register(
            JdbcClient.create(new DriverManagerDataSource(DATABASE.url(), DATABASE.user(), DATABASE.password())));

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    @BeforeAll
    static void tables() {
        TestDatabase.bringUpToDate(DATABASE);
    }

    @BeforeEach
    void workspace() {
        register.createWorkspace("shop");
    }

    private Register.Issued issue(Scope scope) {
        return register.issue("shop", scope, Instant.now().plusSeconds(600)).orElseThrow();
    }

    private Reply list(String authorization) {
        return sendAsIs(HttpRequest.newBuilder(uri("/v1/setups")).header("Authorization", authorization));
    }

    private Reply list(Token token) {
        return list("Bearer " + token.text());
    }

    private Reply create(Token token) {
        return sendAsIs(HttpRequest.newBuilder(uri("/v1/setups"))
                .header("Content-Type", "application/json")
                .header("Authorization", "Bearer " + token.text())
                .POST(BodyPublishers.ofString("{\"name\":\"hers\"}")));
    }

    @Test
    void opensItsWorkspaceUntilItIsRevoked() {
        Register.Issued issued = issue(Scope.WRITE);
        assertThat(create(issued.token()).status()).isEqualTo(201);
        assertThat(list(issued.token()).json().path("items").findValuesAsString("name"))
                .contains("hers");
        assertThat(register.revoke(issued.id())).isTrue();
        Reply refused = list(issued.token());
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.json().path("detail").asString()).contains("revoked");
        assertThat(refused.header("WWW-Authenticate")).contains("error=\"invalid_token\"");
        assertThat(register.revoke(issued.id())).isTrue();
        assertThat(register.revoke(UUID.randomUUID())).isFalse();
    }

    @Test
    void endsWhenItSaid() {
        Register.Issued past = register.issue("shop", Scope.WRITE, Instant.now().minusSeconds(1))
                .orElseThrow();
        Reply refused = list(past.token());
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.json().path("type").asString()).isEqualTo("urn:axlewright:problem:token-invalid");
        assertThat(refused.json().path("detail").asString()).contains("expired at");
        assertThat(entry(past).lastUsedAt()).isNull();
    }

    @Test
    void mayOnlyReadWithTheScopeRead() {
        Register.Issued reader = issue(Scope.READ);
        assertThat(list(reader.token()).status()).isEqualTo(200);
        Reply refused = create(reader.token());
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
        assertThat(refused.json().path("type").asString()).isEqualTo("urn:axlewright:problem:insufficient-scope");
        assertThat(refused.header("WWW-Authenticate"))
                .contains("insufficient_scope")
                .contains("scope=\"write\"");
        String saved = create(issue(Scope.WRITE).token()).header("Location");
        for (String method : List.of("PUT", "PATCH", "DELETE")) {
            assertThat(sendAsIs(HttpRequest.newBuilder(uri(saved))
                                    .header("Content-Type", "application/json")
                                    .header(
                                            "Authorization",
                                            "Bearer " + reader.token().text())
                                    .header("If-Match", "*")
                                    .method(method, BodyPublishers.ofString("{\"name\":\"changed\"}")))
                            .status())
                    .as(method)
                    .isEqualTo(403);
        }
        Reply compared = sendAsIs(HttpRequest.newBuilder(uri("/v1/comparisons"))
                .header("Content-Type", "application/json")
                .header("Authorization", "Bearer " + reader.token().text())
                .POST(BodyPublishers.ofString(
                        "{\"before\":\"" + saved.substring("/v1/setups/".length()) + "\",\"after\":{}}")));
        assertThat(compared.status()).as(compared.text()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Bearer",
                "Bearer ",
                "Basic dXNlcjpwYXNz",
                "axw_",
                "Bearer axw_00",
                "Bearer axw_000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f00000000",
                "Bearer ' or 1=1 --",
            })
    void admitsNothingThatIsNoToken(String authorization) {
        Reply refused = list(authorization);
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
        assertThat(refused.header("WWW-Authenticate")).startsWith("Bearer realm=\"axlewright\"");
    }

    @Test
    void admitsNoTokenThatNobodyMade() {
        Reply refused = list(Token.fresh());
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.json().path("detail").asString()).contains("not known");
    }

    @Test
    void namesNoErrorToWhoSendsNothing() {
        Reply refused = sendAsIs(HttpRequest.newBuilder(uri("/v1/setups")));
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.header("WWW-Authenticate")).isEqualTo("Bearer realm=\"axlewright\"");
        assertThat(refused.json().path("type").asString()).isEqualTo("urn:axlewright:problem:token-needed");
    }

    @Test
    void takesTheSchemeInAnyCase() {
        assertThat(list("bearer " + issue(Scope.READ).token().text()).status()).isEqualTo(200);
    }

    @Test
    void notesItsLastUseAtMostOnceAMinute() {
        Register.Issued issued = issue(Scope.READ);
        assertThat(entry(issued).lastUsedAt()).isNull();
        list(issued.token());
        Instant first = entry(issued).lastUsedAt();
        assertThat(first)
                .isBetween(Instant.now().minusSeconds(60), Instant.now().plusSeconds(5));
        list(issued.token());
        assertThat(entry(issued).lastUsedAt()).isEqualTo(first);
    }

    @Test
    void isKeptAsItsHashAndNothingElse() throws SQLException {
        Register.Issued issued = issue(Scope.WRITE);
        String secret = issued.token().text().substring("axw_".length());
        try (Connection connection = DriverManager.getConnection(DATABASE.url(), DATABASE.user(), DATABASE.password());
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "select tokens::text, encode(hash, 'hex') from tokens where id = '" + issued.id() + "'")) {
            assertThat(row.next()).isTrue();
            assertThat(row.getString(1)).doesNotContain(secret.substring(0, 16)).doesNotContain("axw_");
            assertThat(row.getString(2))
                    .isEqualTo(java.util.HexFormat.of().formatHex(issued.token().hash()));
        }
    }

    @Test
    void leavesCalculationsToEverybody() {
        Reply answer =
                sendAsIs(HttpRequest.newBuilder(uri("/v1/demo-setups")).header("Authorization", "Bearer axw_00"));
        assertThat(answer.status()).isEqualTo(200);
        String demo = answer.json().path("items").get(0).toString();
        assertThat(sendAsIs(HttpRequest.newBuilder(uri("/v1/centre-of-gravity"))
                                .header("Content-Type", "application/json")
                                .POST(BodyPublishers.ofString(demo)))
                        .status())
                .isEqualTo(200);
        assertThat(sendAsIs(HttpRequest.newBuilder(uri("/v1/comparisons"))
                                .header("Content-Type", "application/json")
                                .POST(BodyPublishers.ofString("{\"before\":" + demo + ",\"after\":" + demo + "}")))
                        .status())
                .isEqualTo(200);
    }

    @Test
    void letsNobodyKeepWhatItOpens() {
        Reply list = list(issue(Scope.READ).token());
        assertThat(list.vary()).contains("authorization");
        assertThat(list.header("Cache-Control")).contains("private");
    }

    @Test
    void opensNoWorkspaceThatIsNotThere() {
        assertThat(register.issue("nowhere", Scope.READ, Instant.now().plusSeconds(60)))
                .isEmpty();
        assertThat(register.createWorkspace("shop")).isFalse();
        assertThat(register.workspaces()).extracting(Register.Workspace::name).contains("local", "shop");
    }

    private Register.Entry entry(Register.Issued issued) {
        return register.tokens("shop").stream()
                .filter(entry -> entry.id().equals(issued.id()))
                .findFirst()
                .orElseThrow();
    }
}
