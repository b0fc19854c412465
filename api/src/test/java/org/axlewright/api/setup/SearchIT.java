package org.axlewright.api.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.axlewright.api.database.TestDatabase;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;

/** Setups are found by name and by finding, in pages that cost the same however many there are; and what a setup may hold at most. */
class SearchIT extends Saving {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    @BeforeEach
    void begin() {
        execute(DATABASE, "truncate setups, revisions, remembered_answers");
    }

    @ParameterizedTest
    @CsvSource({
        "tug,          Greenhouse tug",
        "HOUSE T,      Greenhouse tug",
        "grösse,       GRÖSSE 35 mm²",
        "GRÖSSE,       GRÖSSE 35 mm²",
        "%,            100 %",
        "_,            under_score",
        "\\,           back\\slash",
        "🛻,            🛻"
    })
    void findsByPartOfTheName(String part, String name) {
        List.of("Greenhouse tug", "GRÖSSE 35 mm²", "100 %", "under_score", "back\\slash", "🛻", "other")
                .forEach(each -> created(JSON.writeValueAsString(Collections.singletonMap("name", each))));
        assertThat(names(PATH + "?name=" + encoded(part))).containsExactly(name);
    }

    @Test
    void findsNothingOfANameThatIsNotThere() {
        created("{\"name\":\"there\"}");
        assertThat(names(PATH + "?name=elsewhere")).isEmpty();
        assertThat(names(PATH + "?name=")).containsExactly("there");
    }

    @ParameterizedTest
    @ValueSource(strings = {"name=%00", "finding=a%00b", "cursor=AAAAAAAAAAAAAAAAAAAAAA"})
    void refusesASearchThatCantBe(String query) {
        assertThat(get(PATH + "?" + query).status()).isEqualTo(400);
        assertThat(get(PATH + "?name=" + "n".repeat(201)).status()).isEqualTo(400);
    }

    @Test
    void findsByFindingAsAssessed() {
        for (String demo : DemoSetups.texts()) {
            created(demo);
        }
        created("{\"name\":\"nothing known\"}");
        List<String> codes = post("/v1/assessments?working=false", DemoSetups.exampleText())
                .json()
                .path("findings")
                .findValuesAsString("code");
        assertThat(codes).isNotEmpty();
        for (String code : codes) {
            List<String> having = new ArrayList<>();
            for (String demo : DemoSetups.texts()) {
                if (post("/v1/assessments?working=false", demo)
                        .json()
                        .path("findings")
                        .findValuesAsString("code")
                        .contains(code)) {
                    having.add(0, JSON.readTree(demo).path("name").asString());
                }
            }
            assertThat(names(PATH + "?finding=" + code)).as(code).isEqualTo(having);
        }
        assertThat(names(PATH + "?finding=no-such-code")).isEmpty();
        assertThat(names(PATH + "?finding=" + codes.get(0) + "&name=nothing")).isEmpty();
    }

    @Test
    void findsWhatTheLatestRevisionHas() {
        String code = post("/v1/assessments?working=false", DemoSetups.exampleText())
                .json()
                .at("/findings/0/code")
                .asString();
        String location = created(DemoSetups.exampleText());
        assertThat(names(PATH + "?finding=" + code)).hasSize(1);
        replace(location, "\"1\"", "{\"name\":\"empty\"}");
        assertThat(names(PATH + "?finding=" + code)).isEmpty();
        act(location + "/revisions/1/restore", "\"2\"", null);
        assertThat(names(PATH + "?finding=" + code)).hasSize(1);
        delete(location, "*");
        assertThat(names(PATH + "?finding=" + code)).isEmpty();
    }

    @Test
    void assessesAnewWhatAnotherVersionHasFound() {
        String code = post("/v1/assessments?working=false", DemoSetups.exampleText())
                .json()
                .at("/findings/0/code")
                .asString();
        String location = created(DemoSetups.exampleText());
        created("{\"name\":\"not touched\"}");
        execute(DATABASE, "update setups set findings = '{gone-since}', assessed_by = '0.0.1'");
        assertThat(names(PATH + "?finding=gone-since")).isEmpty();
        assertThat(names(PATH + "?finding=" + code)).hasSize(1);
        assertThat(get(location).header("ETag")).isEqualTo("\"1\"");
    }

    /** What takes longer than a request may is done by several. */
    @Test
    void saysThatItIsStillAssessingAnew() {
        execute(DATABASE, """
                insert into setups (id, workspace_id, name, document)
                select gen_random_uuid(), '%s', 'setup ' || n, cast('%s' as json) from generate_series(1, 8000) n""".formatted(
                        workspace(DATABASE), DemoSetups.exampleText().replace("'", "''")));
        Reply reply = get(PATH + "?finding=no-such-code");
        assertThat(reply.status()).as("8000 setups in two seconds").isEqualTo(503);
        assertThat(reply.header("Retry-After")).isEqualTo("1");
        assertThat(Integer.parseInt(ask(DATABASE, "select count(*) from setups where assessed_by is not null")))
                .isPositive();
        assertThat(get(PATH + "?name=setup").status()).isEqualTo(200);
    }

    @Test
    void pagesKeepTheSearch() {
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            String name = (i % 2 == 0 ? "even & " : "odd ") + i;
            created("{\"name\":\"" + name + "\"}");
            if (i % 2 == 0) {
                expected.add(0, name);
            }
        }
        List<String> listed = new ArrayList<>();
        String next = PATH + "?limit=2&name=" + encoded("Even &");
        while (!next.isEmpty()) {
            Reply page = get(next);
            assertThat(page.status()).as(page.text()).isEqualTo(200);
            listed.addAll(page.json().path("items").findValuesAsString("name"));
            String link = page.header("Link");
            next = link.isEmpty() ? "" : link.substring(1, link.indexOf('>'));
        }
        assertThat(listed).isEqualTo(expected);

        String cursor = get(PATH + "?limit=2&name=even").json().path("next").asString();
        assertThat(get(PATH + "?name=even&cursor=" + cursor).status()).isEqualTo(200);
        assertThat(get(PATH + "?name=odd&cursor=" + cursor).status()).isEqualTo(400);
    }

    /** Reads as many rows of the index as the page has, wherever it is in ten thousand, and sorts nothing. */
    @Test
    void aPageIsReadFromTheIndex() {
        execute(DATABASE, """
                insert into setups (id, workspace_id, name, document)
                select gen_random_uuid(), '%s', 'setup ' || n, '{}' from generate_series(1, 10000) n""".formatted(workspace(DATABASE)));
        execute(DATABASE, "analyze setups");
        for (String before : List.of("ffffffff-ffff-ffff-ffff-ffffffffffff", "80000000-0000-0000-0000-000000000000")) {
            String sql = Setups.listing(Search.EVERYTHING)
                    .replace(":workspace", "'" + workspace(DATABASE) + "'")
                    .replace(":before", "'" + before + "'")
                    .replace(":limit", "101");
            String plan = ask(asTheService(), "explain (analyze, format json) " + sql);
            assertThat(plan).contains("\"Index Scan\"", "\"Backward\"").doesNotContain("Seq Scan", "Sort");
            JsonNode scan = JSON.readTree(plan).findParent("Index Cond");
            assertThat(scan.path("Index Cond").asString()).contains("id < '" + before);
            assertThat(scan.path("Actual Rows").asDouble()).isEqualTo(101);
            assertThat(scan.path("Rows Removed by Filter").asDouble(0)).isZero();
        }
    }

    /** Held by row-level security, which keeps some conditions from using an index. */
    private static TestDatabase.Access asTheService() {
        String options = "?options=-c%20role=axlewright_service%20-c%20axlewright.workspace=" + workspace(DATABASE);
        return new TestDatabase.Access(
                DATABASE.host(), DATABASE.port(), DATABASE.name() + options, DATABASE.user(), DATABASE.password());
    }

    @Test
    void takesASetupOfTheLimitAndNoMore() {
        String limit = "{\"name\":\"limit\"" + " ".repeat(256 * 1024 - 16) + "}";
        assertThat(limit.getBytes(StandardCharsets.UTF_8)).hasSize(256 * 1024);
        String location = created(limit);
        assertThat(get(location).text()).isEqualTo(limit);
        assertThat(create(limit + " ").status()).isEqualTo(413);
        assertThat(replace(location, "*", limit + " ").status()).isEqualTo(413);
        assertThat(replace(location, "*", limit).status()).isEqualTo(204);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "items    | 500 | {\"mass\":{\"value\":1,\"unit\":\"kg\"}}",
                "circuits | 100 | {\"continuousCurrent\":{\"value\":1,\"unit\":\"A\"}}",
                "route    | 200 | {\"distance\":{\"value\":1,\"unit\":\"km\"}}"
            })
    void takesAsManyEntriesAsTheLimitAndNoMore(String section, int limit, String entry) {
        String location = created(listing(section, limit, entry));
        assertThat(get(location).json().path(section)).hasSize(limit);
        Reply refused = create(listing(section, limit + 1, entry));
        assertThat(refused.status()).as(refused.text()).isEqualTo(422);
        assertThat(refused.json().at("/errors/0/pointer").asString()).isEqualTo("/" + section);
        assertThat(refused.json().at("/errors/0/limit").asInt()).isEqualTo(limit);
        assertThat(refused.json().at("/errors/0/actual").asInt()).isEqualTo(limit + 1);
    }

    private static String listing(String section, int count, String entry) {
        return IntStream.range(0, count)
                .mapToObj(i -> entry)
                .collect(Collectors.joining(",", "{\"name\":\"many\",\"" + section + "\":[", "]}"));
    }

    private List<String> names(String path) {
        Reply page = get(path);
        assertThat(page.status()).as(page.text()).isEqualTo(200);
        return page.json().path("items").findValuesAsString("name");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
