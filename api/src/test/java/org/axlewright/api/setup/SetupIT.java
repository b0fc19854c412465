package org.axlewright.api.setup;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.axlewright.api.Running;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.database.TestDatabase;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;

/** The rules of saved setups, through HTTP, on a real PostgreSQL. */
class SetupIT extends Running {

    private static final String PATH = "/v1/setups";

    @Autowired
    Calculations calculations;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, TestDatabase.fresh());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"name\":\"plain\"}",
                "  {\n\t\"name\" : \"white space stays\" }\r\n",
                "{\"name\":\"numbers\",\"bare\":{\"mass\":{\"value\":310.0,\"unit\":\"kg\"},\"frontShare\":1.0}}",
                "{\"name\":\"small\",\"bare\":{\"frontShare\":1e-7}}",
                "{\"name\":\"long\",\"bare\":{\"frontShare\":0.123456789012345678901234567890123456}}",
                "{\"name\":\"minus nothing\",\"ground\":{\"grade\":{\"value\":-0.0,\"unit\":\"%\"}}}",
                "{\"name\":\"Größe ⌀ 35 mm² 🛻\",\"notes\":\"\\u00e4\\ud83d\\udefb \\/ \\t\"}",
                "{\"name\":\"nothing\",\"notes\":\"a\\u0000b\"}",
                "{\"name\":\"half a pair\",\"notes\":\"\\ud800\"}",
                "{\"notes\":\"name last\",\"items\":[],\"name\":\"order stays\"}",
            })
    void comesBackAsItWasSent(String document) {
        Reply created = create(document);
        assertThat(created.status()).as(created.text()).isEqualTo(201);
        Reply got = get(created.header("Location"));
        assertThat(got.status()).isEqualTo(200);
        assertThat(got.contentType()).isEqualTo("application/json");
        assertThat(got.text()).isEqualTo(document);
        assertThat(got.header("ETag")).isEqualTo(created.header("ETag"));
        assertThat(got.header("Last-Modified"))
                .isEqualTo(created.header("Last-Modified"))
                .isNotEmpty();
    }

    @Test
    void takesEveryDemoSetup() {
        for (JsonNode setup : get("/v1/demo-setups").json().path("items")) {
            Reply created = create(setup.toString());
            assertThat(created.status()).as(created.text()).isEqualTo(201);
            assertThat(get(created.header("Location")).json()).isEqualTo(setup);
        }
    }

    @Test
    void createsWithLocationAndEntityTag() {
        Reply created = create("{\"name\":\"new\"}");
        assertThat(created.header("Location")).startsWith("/v1/setups/");
        assertThat(UUID.fromString(created.header("Location").substring("/v1/setups/".length()))
                        .version())
                .isEqualTo(7);
        assertThat(created.header("ETag")).isEqualTo("\"1\"");
        assertThat(created.text()).isEmpty();
    }

    @Test
    void leavesOutTheByteOrderMark() {
        Reply created = create("\uFEFF{\"name\":\"marked\"}");
        assertThat(created.status()).isEqualTo(201);
        assertThat(get(created.header("Location")).text()).isEqualTo("{\"name\":\"marked\"}");
    }

    @Test
    void namesEverythingThatIsWrongTogether() {
        Reply refused = create("""
                {"chassis": {"wheelbase": {"value": 0, "unit": "in"}}, "bare": {"frontShare": 2},
                 "items": [{"mass": {"value": 1, "unit": "kg"}}, {"mass": {"value": -1, "unit": "lb"}}]}""");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.json().path("errors").findValuesAsString("pointer"))
                .containsExactly("/bare/frontShare", "/chassis/wheelbase/value", "/items/1/mass/value", "/name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\\u0000", "a\\nb", "\\ud800", "a\\u2028b", "\\u007f"})
    void refusesANameThatCantStandInAList(String name) {
        Reply refused = create("{\"name\":\"" + name + "\"}");
        assertThat(refused.status()).as(refused.text()).isEqualTo(422);
        assertThat(refused.json().path("errors").findValuesAsString("pointer")).containsOnly("/name");
    }

    @Test
    void takesANameOfTwoHundredCharactersAndNoMore() {
        assertThat(create("{\"name\":\"" + "n".repeat(200) + "\"}").status()).isEqualTo(201);
        assertThat(create("{\"name\":\"" + "n".repeat(201) + "\"}").status()).isEqualTo(422);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "\"name\"",
                "1",
                "{",
                "{\"name\":\"a\",\"name\":\"b\"}",
                "{\"name\":1}",
                "{\"name\":null}",
                "{\"name\":\"a\"} {}",
                "{\"name\":\"a\",\"colour\":\"red\"}",
                "{\"name\":\"a\",\"chassis\":{\"wheelbase\":{\"value\":65,\"unit\":\"inch\"}}}",
                "{\"name\":\"a\",\"bare\":{\"frontShare\":NaN}}",
            })
    void refusesWhatCantBeRead(String body) {
        Reply refused = create(body);
        assertThat(refused.status()).as(refused.text()).isEqualTo(400);
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
        assertThat(refused.text()).doesNotContain("org.axlewright").doesNotContain("jackson");
    }

    @Test
    void refusesBytesThatAreNoUtf8() {
        Reply refused = send(json(PATH)
                .POST(BodyPublishers.ofByteArray(
                        "{\"name\":\"Gr\u00f6\u00dfe\"}".getBytes(StandardCharsets.ISO_8859_1))));
        assertThat(refused.status()).isEqualTo(400);
    }

    @Test
    void refusesABodyBeyondTheLimit() {
        assertThat(create("{\"name\":\"a\",\"notes\":\"" + "x".repeat(300_000) + "\"}")
                        .status())
                .isEqualTo(413);
    }

    @Test
    void answersNotModifiedToWhoHasIt() {
        Reply created = create("{\"name\":\"cached\"}");
        String location = created.header("Location");
        Reply same = send(HttpRequest.newBuilder(uri(location)).header("If-None-Match", created.header("ETag")));
        assertThat(same.status()).isEqualTo(304);
        assertThat(same.header("ETag")).isEqualTo(created.header("ETag"));
        assertThat(same.text()).isEmpty();
        Reply other = send(HttpRequest.newBuilder(uri(location)).header("If-None-Match", "\"7\""));
        assertThat(other.status()).isEqualTo(200);
    }

    @Test
    void replacesTheRevisionThatIsNamed() {
        String location = create("{\"name\":\"first\"}").header("Location");
        Reply replaced = replace(location, "\"1\"", "{\"name\":\"second\"}");
        assertThat(replaced.status()).isEqualTo(204);
        assertThat(replaced.header("ETag")).isEqualTo("\"2\"");
        assertThat(get(location).text()).isEqualTo("{\"name\":\"second\"}");
        assertThat(get(location).header("ETag")).isEqualTo("\"2\"");
    }

    @Test
    void refusesAChangeOfAnotherRevision() {
        String location = create("{\"name\":\"first\"}").header("Location");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        Reply stale = replace(location, "\"1\"", "{\"name\":\"lost\"}");
        assertThat(stale.status()).isEqualTo(412);
        assertThat(stale.header("ETag")).isEqualTo("\"2\"");
        assertThat(delete(location, "\"1\"").status()).isEqualTo(412);
        assertThat(get(location).text()).isEqualTo("{\"name\":\"second\"}");
    }

    @Test
    void refusesAChangeThatNamesNoRevision() {
        String location = create("{\"name\":\"first\"}").header("Location");
        assertThat(send(json(location).PUT(BodyPublishers.ofString("{\"name\":\"b\"}")))
                        .status())
                .isEqualTo(428);
        assertThat(send(HttpRequest.newBuilder(uri(location)).DELETE()).status())
                .isEqualTo(428);
        assertThat(get(location).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"W/\"1\"", "1", "\"0\"", "\"01\"", "\"a\"", "\"99999999999999999999\"", ",", "\"1", "\"*\""})
    void matchesStrongTagsOfItsOwnOnly(String ifMatch) {
        String location = create("{\"name\":\"first\"}").header("Location");
        assertThat(replace(location, ifMatch, "{\"name\":\"b\"}").status()).isEqualTo(412);
    }

    @ParameterizedTest
    @ValueSource(strings = {"*", "\"7\", \"1\"", "W/\"1\",\"1\""})
    void takesAnyOfTheTagsNamed(String ifMatch) {
        String location = create("{\"name\":\"first\"}").header("Location");
        assertThat(replace(location, ifMatch, "{\"name\":\"b\"}").status()).isEqualTo(204);
    }

    @Test
    void checksAReplacementLikeANewOne() {
        String location = create("{\"name\":\"first\"}").header("Location");
        assertThat(replace(location, "\"1\"", "{}").status()).isEqualTo(422);
        assertThat(replace(location, "\"1\"", "[").status()).isEqualTo(400);
        assertThat(get(location).header("ETag")).isEqualTo("\"1\"");
    }

    @Test
    void letsOneOfManyWritersWin() throws Exception {
        String location = create("{\"name\":\"contested\"}").header("Location");
        List<Callable<Integer>> writers = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            String body = "{\"name\":\"writer " + i + "\"}";
            writers.add(() -> replace(location, "\"1\"", body).status());
        }
        ExecutorService pool = Executors.newFixedThreadPool(16);
        try {
            List<Integer> statuses = new ArrayList<>();
            for (Future<Integer> writer : pool.invokeAll(writers)) {
                statuses.add(writer.get());
            }
            assertThat(statuses).containsOnlyOnce(204);
            assertThat(statuses.stream().filter(status -> status == 412)).hasSize(15);
        } finally {
            pool.shutdownNow();
        }
        assertThat(get(location).header("ETag")).isEqualTo("\"2\"");
    }

    @Test
    void deletesOnce() {
        String location = create("{\"name\":\"first\"}").header("Location");
        assertThat(delete(location, "\"1\"").status()).isEqualTo(204);
        assertThat(get(location).status()).isEqualTo(404);
        assertThat(delete(location, "\"1\"").status()).isEqualTo(404);
        assertThat(replace(location, "\"1\"", "{\"name\":\"b\"}").status()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"x", "1-1-1-1-1", "01900000-0000-7000-8000-00000000000", "01900000-0000-7000-8000-000000000000"})
    void knowsNothingOfAnIdThatNamesNothing(String id) {
        String location = PATH + "/" + id;
        assertThat(get(location).status()).isEqualTo(404);
        assertThat(get(location + "/centre-of-gravity").status()).isEqualTo(404);
        assertThat(replace(location, "*", "{\"name\":\"b\"}").status()).isEqualTo(404);
        assertThat(delete(location, "*").status()).isEqualTo(404);
    }

    @Test
    void listsEverySetupOnceNewestFirst() {
        List<String> created = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            created.add(
                    create("{\"name\":\"listed " + i + "\"}").header("Location").substring(PATH.length() + 1));
        }
        List<String> listed = new ArrayList<>();
        String next = PATH + "?limit=3";
        while (!next.isEmpty()) {
            Reply page = get(next);
            assertThat(page.status()).isEqualTo(200);
            JsonNode items = page.json().path("items");
            assertThat(items.size()).isBetween(1, 3);
            items.forEach(item -> listed.add(item.path("id").asString()));
            String link = page.header("Link");
            assertThat(link.isEmpty()).isEqualTo(page.json().path("next").isMissingNode());
            next = link.isEmpty() ? "" : link.substring(1, link.indexOf('>'));
            if (!link.isEmpty()) {
                assertThat(link)
                        .endsWith("; rel=\"next\"")
                        .contains(page.json().path("next").asString());
            }
        }
        Set<String> distinct = new HashSet<>(listed);
        assertThat(distinct).hasSameSizeAs(listed).containsAll(created);
        assertThat(listed.indexOf(created.get(6))).isLessThan(listed.indexOf(created.get(0)));
    }

    @Test
    void tellsOfEachSetupWhatAListNeeds() {
        Reply created = create("{\"name\":\"entry\",\"notes\":\"not listed\"}");
        replace(created.header("Location"), "\"1\"", "{\"name\":\"entry, renamed\"}");
        JsonNode entry = get(PATH + "?limit=1").json().path("items").get(0);
        assertThat(entry.propertyNames()).containsExactlyInAnyOrder("id", "name", "revision", "createdAt", "updatedAt");
        assertThat(entry.path("name").asString()).isEqualTo("entry, renamed");
        assertThat(entry.path("revision").asLong()).isEqualTo(2);
        assertThat(entry.path("updatedAt").asString())
                .isGreaterThan(entry.path("createdAt").asString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "limit=0",
                "limit=101",
                "limit=x",
                "limit=-1",
                "limit=99999999999",
                "cursor=x",
                "cursor=AAAA",
                "cursor=*"
            })
    void refusesAPageThatCantBe(String query) {
        Reply refused = get(PATH + "?" + query);
        assertThat(refused.status()).isEqualTo(400);
        assertThat(refused.json().path("errors").get(0).path("message").asString())
                .contains(query.substring(0, query.indexOf('=')));
    }

    @Test
    void answersEveryCalculationLikeItsPost() {
        String demo = DemoSetups.exampleText();
        String location = create(demo).header("Location");
        assertThat(calculations.all()).isNotEmpty();
        calculations.all().forEach(calculation -> {
            String query = "/" + calculation.name() + "?units=us&working=false";
            Reply asked = get(location + query);
            assertThat(asked.status()).as(asked.text()).isEqualTo(200);
            assertThat(asked.json())
                    .isEqualTo(requireNonNull(post("/v1" + query, demo)).json());
        });
    }

    @Test
    void saysWhatASetupLacksForACalculation() {
        String location = create("{\"name\":\"incomplete\"}").header("Location");
        calculations.all().forEach(calculation -> {
            Reply asked = get(location + "/" + calculation.name());
            assertThat(asked.status()).as(asked.text()).isEqualTo(422);
            assertThat(asked.json().path("errors").findValuesAsString("code")).containsOnly("missing");
        });
    }

    @Test
    void knowsNoCalculationOfAnotherName() {
        String location = create("{\"name\":\"asked\"}").header("Location");
        assertThat(get(location + "/horoscope").status()).isEqualTo(404);
    }

    private Reply create(String document) {
        return post(PATH, document);
    }

    private Reply replace(String location, String ifMatch, String document) {
        return send(json(location).header("If-Match", ifMatch).PUT(BodyPublishers.ofString(document)));
    }

    private Reply delete(String location, String ifMatch) {
        return send(HttpRequest.newBuilder(uri(location))
                .header("If-Match", ifMatch)
                .DELETE());
    }

    private HttpRequest.Builder json(String path) {
        return HttpRequest.newBuilder(uri(path)).header("Content-Type", "application/json");
    }
}
