package org.axlewright.api.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.database.TestDatabase;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;

/** A workspace goes out and comes in again, line by line, to the last digit. */
class TransferIT extends Saving {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();
    private static final String EXPORT = PATH + "/export";

    private static final List<String> DOCUMENTS = List.of(
            "{\"name\":\"numbers\",\"bare\":{\"mass\":{\"value\":310.0,\"unit\":\"kg\"},\"frontShare\":1.0}}",
            "{\"name\":\"long\",\"bare\":{\"frontShare\":0.123456789012345678901234567890123456}}",
            "{\"name\":\"small\",\"bare\":{\"frontShare\":1e-7}}",
            "{\"name\":\"minus nothing\",\"ground\":{\"grade\":{\"value\":-0.0,\"unit\":\"%\"}}}",
            "{\"name\":\"Größe ⌀ 35 mm² 🛻\",\"notes\":\"\\u00e4\\ud83d\\udefb \\/ \\t \\n \u2028 \\u0000 \\ud800\"}",
            "{\"notes\":\"name last\",\"items\":[],  \"name\":\"spaces and order stay\"}",
            "{\"name\":\"numbers\"}");

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    @BeforeEach
    void begin() {
        execute(DATABASE, "truncate setups, revisions, remembered_answers");
    }

    @Test
    void comesInAsItWentOut() {
        DOCUMENTS.forEach(this::created);
        get("/v1/demo-setups").json().path("items").forEach(demo -> created(demo.toPrettyString()));
        Reply exported = get(EXPORT);
        assertThat(exported.status()).isEqualTo(200);
        assertThat(exported.contentType()).isEqualTo(NDJSON);
        assertThat(exported.header("Content-Disposition")).contains("setups.ndjson");
        List<String> lines = exported.text().lines().toList();
        assertThat(lines.subList(0, DOCUMENTS.size())).isEqualTo(DOCUMENTS);
        assertThat(exported.text()).endsWith("}\n");

        begin();
        Reply imported = send(exported.text(), null);
        assertThat(imported.status()).as(imported.text()).isEqualTo(200);
        assertThat(imported.contentType()).isEqualTo(NDJSON);
        List<JsonNode> results = results(imported);
        assertThat(results).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            JsonNode result = results.get(i);
            assertThat(result.path("line").asInt()).isEqualTo(i + 1);
            assertThat(result.path("status").asInt()).isEqualTo(201);
            Reply saved = get(PATH + "/" + result.path("id").asString());
            assertThat(saved.text()).isEqualTo(lines.get(i));
            assertThat(saved.header("ETag")).isEqualTo("\"1\"");
            assertThat(saved.json().path("name")).isEqualTo(result.path("name"));
        }
        assertThat(get(EXPORT).text()).isEqualTo(exported.text());
    }

    @Test
    void keepsTheOrderOfManyPages() {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < 250; i++) {
            lines.append("{\"name\":\"").append(i).append("\"}\n");
        }
        assertThat(results(send(lines.toString(), null))).hasSize(250);
        assertThat(get(EXPORT).text()).isEqualTo(lines.toString());
    }

    @Test
    void exportsNothingOfNothing() {
        assertThat(get(EXPORT).status()).isEqualTo(200);
        assertThat(get(EXPORT).text()).isEmpty();
        assertThat(send("", null).text()).isEmpty();
        assertThat(send("\n \r\n\t\n", null).text()).isEmpty();
    }

    @Test
    void leavesOutWhatIsDeleted() {
        created("{\"name\":\"there\"}");
        delete(created("{\"name\":\"deleted\"}"), "*");
        assertThat(get(EXPORT).text()).isEqualTo("{\"name\":\"there\"}\n");
    }

    @Test
    void tellsOfEveryLineByItself() {
        Reply imported = send(
                "{\"name\":\"first\"}\r\n\n[1]\n{\"name\":\"a\",\"name\":\"b\"}\n{\"bare\":{\"frontShare\":2}}\n{\"name\":\"last\"}",
                null);
        assertThat(imported.status()).isEqualTo(200);
        List<JsonNode> results = results(imported);
        assertThat(results.stream().map(result -> result.path("line").asInt())).containsExactly(1, 3, 4, 5, 6);
        assertThat(results.stream().map(result -> result.path("status").asInt()))
                .containsExactly(201, 400, 400, 422, 201);
        assertThat(results.get(2).at("/problem/errors/0/code").asString()).isEqualTo("duplicate-key");
        assertThat(results.get(3).at("/problem/errors").findValuesAsString("pointer"))
                .containsExactly("/bare/frontShare", "/name");
        assertThat(imported.text()).doesNotContain("org.axlewright").doesNotContain("jackson");
        assertThat(get(EXPORT).text()).isEqualTo("{\"name\":\"first\"} \n{\"name\":\"last\"}\n");
    }

    @Test
    void takesALineOfTheLimitAndEndsAtALargerOne() {
        String limit = "{\"name\":\"limit\"" + " ".repeat(256 * 1024 - 17) + "}";
        assertThat(limit.getBytes(StandardCharsets.UTF_8)).hasSize(256 * 1024 - 1);
        Reply imported = send("{\"name\":\"first\"}\n" + limit + " \n" + limit + "  \n{\"name\":\"after\"}\n", null);
        List<JsonNode> results = results(imported);
        assertThat(results.stream().map(result -> result.path("status").asInt()))
                .containsExactly(201, 201, 413);
        assertThat(get(PATH).json().path("items").findValuesAsString("name")).containsExactly("limit", "first");
    }

    @Test
    void takesMoreThanOneBodyMayHold() {
        String line = "{\"name\":\"large\"" + " ".repeat(200_000) + "}\n";
        for (boolean lengthTold : List.of(true, false)) {
            byte[] body = line.repeat(20).getBytes(StandardCharsets.UTF_8);
            var publisher = lengthTold
                    ? BodyPublishers.ofByteArray(body)
                    : BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body));
            Reply imported = send(request(PATH + "/import", NDJSON, null, null).POST(publisher));
            assertThat(results(imported)).hasSize(20);
        }
    }

    @Test
    @Timeout(60)
    void endsAtALineThatTrickles() throws Exception {
        try (Socket socket = new Socket("127.0.0.1", uri(PATH).getPort())) {
            OutputStream out = socket.getOutputStream();
            write(
                    out,
                    "POST " + PATH + "/import HTTP/1.1\r\nHost: 127.0.0.1\r\nAuthorization: Bearer " + token
                            + "\r\nContent-Type: " + NDJSON
                            + "\r\nContent-Length: 1000\r\nConnection: close\r\n\r\n{\"name\":\"in time\"}\n{");
            for (int i = 0; i < 12; i++) { // a byte a second: no single read is late
                write(out, " ");
                Thread.sleep(1000);
            }
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer)
                    .startsWith("HTTP/1.1 200")
                    .contains("\"status\":201")
                    .contains("\"status\":408");
        } catch (IOException cut) {
            throw new AssertionError("no answer before the connection was cut", cut);
        }
        assertThat(get(EXPORT).text()).isEqualTo("{\"name\":\"in time\"}\n");
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    @Test
    void goesOnWhereItEnded() {
        String begun = "{\"name\":\"1\"}\n{\"name\":\"\"}\n{\"name\":\"3\"}\n";
        Reply first = send(begun, "import-1");
        assertThat(first.header("Idempotent-Replayed")).isEmpty();
        Reply again = send(begun, "import-1");
        assertThat(again.text()).isEqualTo(first.text());
        assertThat(again.header("Idempotent-Replayed")).isEqualTo("true");
        Reply further = send(begun + "{\"name\":\"4\"}\n", "import-1");
        assertThat(further.text()).startsWith(first.text());
        assertThat(further.header("Idempotent-Replayed")).isEmpty();
        assertThat(get(EXPORT).text()).isEqualTo("{\"name\":\"1\"}\n{\"name\":\"3\"}\n{\"name\":\"4\"}\n");

        List<JsonNode> other = results(send("{\"name\":\"one\"}\n", "import-1"));
        assertThat(other.get(0).path("status").asInt()).isEqualTo(422);
        assertThat(other.get(0).at("/problem/type").asString()).endsWith("idempotency-key-reused");
        assertThat(send(begun, "no key").status()).isEqualTo(400);
    }

    @Test
    void takesNothingButLines() {
        assertThat(post(PATH + "/import", "{\"name\":\"json\"}").status()).isEqualTo(415);
    }

    /** A table that is gone is as good as a database that is: what is sent is sent, the rest can't be. */
    @Test
    void cutsTheConnectionWhenItCantGoOn() throws Exception {
        String line = "{\"name\":\"large\"" + " ".repeat(200_000) + "}\n";
        send(line.repeat(100), null);
        HttpResponse<InputStream> response = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(uri(EXPORT))
                                .header("Authorization", "Bearer " + token)
                                .build(),
                        HttpResponse.BodyHandlers.ofInputStream());
        try (InputStream body = response.body()) {
            assertThat(response.statusCode()).isEqualTo(200);
            assertThat(body.readNBytes(1000)).hasSize(1000);
            execute(DATABASE, "alter table setups rename to setups_away");
            assertThatThrownBy(body::readAllBytes).isInstanceOf(IOException.class);
        } finally {
            execute(DATABASE, "alter table if exists setups_away rename to setups");
        }
    }

    private Reply send(String lines, @Nullable String key) {
        return send(request(PATH + "/import", NDJSON, null, key).POST(BodyPublishers.ofString(lines)));
    }

    private static List<JsonNode> results(Reply imported) {
        assertThat(imported.status()).as(imported.text()).isEqualTo(200);
        List<JsonNode> results = new ArrayList<>();
        imported.text().lines().forEach(line -> results.add(JSON.readTree(line)));
        return results;
    }
}
