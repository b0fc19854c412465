package org.axlewright.api.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.Running;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** Batches over HTTP: equal to single questions, in order, with the faults of a line in its place, whoever sends and how. */
class BatchIT extends Running {

    private static final String CART = """
            {"chassis": {"wheelbase": {"value": 1.68, "unit": "m"}}, "bare": {"mass": {"value": %d, "unit": "kg"}, "frontShare": 0.4}}""";

    @Autowired
    Calculations calculations;

    private Reply batch(String query, String lines) {
        return send(HttpRequest.newBuilder(uri("/v1/batches" + query))
                .header("Content-Type", "application/x-ndjson")
                .POST(HttpRequest.BodyPublishers.ofString(lines)));
    }

    private static String line(String id, String calculation, String input) {
        return "{\"id\": \"" + id + "\", \"calculation\": \"" + calculation + "\", \"input\": " + JSON.readTree(input)
                + "}\n";
    }

    private static List<JsonNode> read(Reply reply) {
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        assertThat(reply.contentType()).startsWith("application/x-ndjson");
        return reply.text().lines().map(JSON::readTree).toList();
    }

    @Test
    void everyLineEqualsAQuestionOfItsOwn() {
        StringBuilder lines = new StringBuilder();
        List<String> paths = new ArrayList<>();
        for (String vehicle : DemoSetups.texts()) {
            for (Calculation<?, ?, ?> calculation : calculations.all()) {
                lines.append(line("x", calculation.name(), vehicle));
                paths.add("/v1/" + calculation.name());
            }
            lines.append(line("x", "assessment", vehicle));
            paths.add("/v1/assessments");
        }
        for (String query : List.of("", "?units=us&working=false")) {
            List<JsonNode> answers = read(batch(query, lines.toString()));
            assertThat(answers).hasSameSizeAs(paths);
            for (int i = 0; i < paths.size(); i++) {
                JsonNode answer = answers.get(i);
                String vehicle = DemoSetups.texts()
                        .get(i / (paths.size() / DemoSetups.texts().size()));
                Reply single = post(paths.get(i) + query, vehicle);
                assertThat(answer.path("line").asInt()).isEqualTo(i + 1);
                assertThat(answer.path("id").asString()).isEqualTo("x");
                if (single.status() == 200) {
                    assertThat(answer.path("answer")).as(paths.get(i)).isEqualTo(single.json());
                } else {
                    assertThat(answer.at("/problem/status").asInt()).isEqualTo(single.status());
                    assertThat(answer.at("/problem/errors")
                                    .valueStream()
                                    .map(error -> error.path("pointer").asString()))
                            .containsExactlyElementsOf(single.json()
                                    .path("errors")
                                    .valueStream()
                                    .map(error ->
                                            "/input" + error.path("pointer").asString())
                                    .toList());
                }
            }
        }
    }

    @Test
    void aBadLineDoesNotStopTheOthers() {
        String good = line("a", "centre-of-gravity", CART.formatted(400));
        List<JsonNode> answers = read(batch(
                "?working=false",
                good + "\n  \r\n{\"calculation\":\n[]\nnull\n{\"calculation\": \"nothing\", \"input\": {}}\n{}\n"
                        + "{\"calculation\": \"centre-of-gravity\", \"input\": {\"bare\": {\"mass\": 5}}}\n"
                        + "{\"calculation\": \"centre-of-gravity\", \"input\": {\"notes\": \"" + "x".repeat(300_000)
                        + "\"}}\n"
                        + "{\"calculation\": \"centre-of-gravity\", \"input\": {}, \"extra\": 1}\n"
                        + good.strip()));
        assertThat(answers.stream().map(answer -> answer.path("line").asInt()))
                .containsExactly(1, 4, 5, 6, 7, 8, 9, 10, 11, 12);
        assertThat(answers.stream().map(answer -> answer.at("/problem/status").asInt(200)))
                .containsExactly(200, 400, 400, 400, 422, 422, 400, 413, 400, 200);
        assertThat(answers.get(6).at("/problem/errors/0/pointer").asString()).isEqualTo("/input/bare/mass");
        assertThat(answers.get(9).at("/answer/result/mass/value").asDouble()).isEqualTo(400);
    }

    @Test
    void nothingInIsNothingOut() {
        Reply reply = batch("", "");
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.text()).isEmpty();
        assertThat(post("/v1/batches", "{}").status()).isEqualTo(415);
    }

    /** All is sent before anything is read: more than sockets hold, on less memory than it takes. */
    @Test
    void aClientThatSendsEverythingFirstIsServed() {
        String one = line("a", "centre-of-gravity", DemoSetups.exampleText());
        int count = 3_000;
        List<JsonNode> answers = read(batch("?working=false", one.repeat(count)));
        assertThat(answers).hasSize(count);
        assertThat(answers.stream().map(answer -> answer.path("line").asInt()))
                .containsExactlyElementsOf(
                        java.util.stream.IntStream.rangeClosed(1, count).boxed().toList());
    }

    /** One line is sent, its answer awaited, then the next: nothing waits for the end of the body. */
    @Test
    void anAnswerComesWhileTheBodyIsStillOpen() throws IOException {
        URI place = uri("/v1/batches?working=false");
        try (Socket socket = new Socket(place.getHost(), place.getPort())) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            out.write(
                    ("POST /v1/batches?working=false HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\n"
                                    + "Transfer-Encoding: chunked\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            for (int mass = 400; mass < 404; mass++) {
                byte[] line = line("m" + mass, "centre-of-gravity", CART.formatted(mass))
                        .getBytes(StandardCharsets.UTF_8);
                out.write((Integer.toHexString(line.length) + "\r\n").getBytes(StandardCharsets.US_ASCII));
                out.write(line);
                out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
                out.flush();
                String answer = in.readLine();
                while (answer != null && !answer.startsWith("{")) {
                    answer = in.readLine();
                }
                assertThat(answer).contains("\"id\":\"m" + mass + "\"");
            }
        }
        // the client is gone; the place it took is free again for others
        assertThat(read(batch("?working=false", line("a", "centre-of-gravity", CART.formatted(1)))))
                .hasSize(1);
    }
}
