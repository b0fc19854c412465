package org.axlewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** How refusals read over HTTP (contract R7, R8, R15). */
class RefusalIT extends Running {

    private static final String PATH = "/v1/centre-of-gravity";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    {"bare":null}                                              | /bare             | wrong-type
                    {"items":[null]}                                           | /items/0          | wrong-type
                    {"items":{}}                                               | /items            | wrong-type
                    {"name":5}                                                 | /name             | wrong-type
                    {"bare":{"mass":{"value":"5","unit":"kg"}}}                | /bare/mass/value  | wrong-type
                    {"bare":{"mass":{"value":1e400,"unit":"kg"}}}              | /bare/mass/value  | wrong-type
                    {"bare":{"frontShare":true}}                               | /bare/frontShare  | wrong-type
                    {"pack":{"cellsInSeries":15.5}}                            | /pack/cellsInSeries | wrong-type
                    {"bare":{"mass":{"value":5,"unit":"stone"}}}               | /bare/mass/unit   | unknown-unit
                    {"chassis":{"wheelbase":{"value":5,"unit":"kg"}}}          | /chassis/wheelbase/unit | unknown-unit
                    {"chassis":{"driven":"both"}}                              | /chassis/driven   | unknown-value
                    {"chassis":{"driven":1}}                                   | /chassis/driven   | unknown-value
                    {"wheels":4}                                               | /wheels           | unknown-field
                    {"chassis":{"weelbase":4}}                                 | /chassis/weelbase | unknown-field
                    {"name":"a","name":"b"}                                    | /name             | duplicate-key
                    {"bare":{"mass":{"value":1,"value":2}}}                    | /bare/mass/value  | duplicate-key
                    {"bare":{"frontShare":NaN}}                                | /bare/frontShare  | bad-json
                    """)
    void whatCannotBeReadIsFourHundredWithThePlace(String body, String pointer, String code) {
        Reply reply = post(PATH, body);
        assertThat(reply.status()).as(reply.text()).isEqualTo(400);
        assertThat(reply.contentType()).isEqualTo("application/problem+json");
        assertThat(reply.json().at("/errors/0/pointer").asString()).isEqualTo(pointer);
        assertThat(reply.json().at("/errors/0/code").asString()).isEqualTo(code);
    }

    @Test
    void wholeNumbersMayBeWrittenWithAPoint() {
        assertThat(post(PATH, "{\"pack\":{\"cellsInSeries\":16.0}}").status()).isEqualTo(422);
    }

    @Test
    void rangesMissingPartsAndContradictionsComeTogether() {
        Reply reply = post(PATH, """
                {"chassis": {"wheelbase": {"value": 66, "unit": "ft"}},
                 "bare": {"scales": {"frontLeft": {"value": 200, "unit": "lb"}}, "frontShare": 0.5},
                 "items": [{"name": "rack", "mass": {"value": 20}}],
                 "tyres": {"front": {"size": "23/10-14"}},
                 "pack": {"cellsInSeries": 0}}
                """);
        assertThat(reply.status()).isEqualTo(422);
        List<String> found = IntStream.range(0, reply.json().path("errors").size())
                .mapToObj(i -> reply.json().at("/errors/" + i))
                .map(error -> error.path("pointer").asString() + " "
                        + error.path("code").asString())
                .toList();
        assertThat(found)
                .contains(
                        "/chassis/wheelbase/value out-of-range",
                        "/bare/scales/frontRight missing",
                        "/bare/frontShare contradiction",
                        "/items/0/mass/unit missing",
                        "/items/0/position/x missing",
                        "/tyres/front/size unreadable",
                        "/pack/cellsInSeries out-of-range");
    }

    @Test
    void aLimitIsToldInTheSendersUnit() {
        JsonNode error = post(PATH, "{\"chassis\":{\"wheelbase\":{\"value\":66,\"unit\":\"ft\"}}}")
                .json()
                .at("/errors/0");
        assertThat(error.path("actual").toString()).isEqualTo("{\"value\":66.0,\"unit\":\"ft\"}");
        assertThat(error.at("/limit/unit").asString()).isEqualTo("ft");
        assertThat(error.at("/limit/value").asDouble()).isBetween(32.80, 32.81);
        assertThat(error.path("message").asString()).contains("66 ft", "32.8084 ft");
    }

    @Test
    void bodiesAboveTheLimitAreRefusedWhetherTheirLengthIsToldOrNot() {
        String large = "{\"notes\":\"" + "x".repeat(300_000) + "\"}";
        assertThat(post(PATH, large).status()).isEqualTo(413);
        Reply chunked = send(HttpRequest.newBuilder(uri(PATH))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.fromPublisher(HttpRequest.BodyPublishers.ofString(large))));
        assertThat(chunked.status()).isEqualTo(413);
        assertThat(chunked.contentType()).isEqualTo("application/problem+json");
    }

    @Test
    void whatIsNotAskedRightIsAProblemDocumentToo() {
        assertThat(get(PATH).status()).isEqualTo(405);
        assertThat(get("/v1/nowhere").status()).isEqualTo(404);
        assertThat(post(PATH + "?units=imperial", "{}").status()).isEqualTo(400);
        assertThat(post(PATH + "?working=maybe", "{}").status()).isEqualTo(400);
        Reply text = send(HttpRequest.newBuilder(uri(PATH))
                .header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString("{}")));
        assertThat(text.status()).isEqualTo(415);
        for (Reply reply : List.of(get(PATH), get("/v1/nowhere"), post(PATH + "?units=imperial", "{}"), text)) {
            assertThat(reply.contentType()).isEqualTo("application/problem+json");
            assertThat(reply.json().path("type").asString()).startsWith("urn:axlewright:problem:");
        }
    }
}
