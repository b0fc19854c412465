package org.axlewright.api.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.axlewright.api.database.TestDatabase;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** No update is lost and nothing is done twice: merge patches, two writers, requests that are repeated. */
class SafeWritesIT extends Saving {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    @Autowired
    Purge purge;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    /** The cases of RFC 7396, appendix A, that a setup can hold, and its example in section 3. */
    @Test
    void mergesAsTheStandardSays() {
        String location = created("""
                {"name": "patched", "notes": "gone", "bare": {"frontShare": 0.41, "mass": {"value": 310.0, "unit": "kg"}},
                 "items": [{"name": "a", "mass": {"value": 1, "unit": "kg"}}, {"name": "b", "mass": {"value": 2, "unit": "kg"}}]}""");
        Reply patched = patch(location, "\"1\"", """
                {"notes": null, "bare": {"frontShare": 0.42}, "items": [{"name": "c", "mass": {"value": 3, "unit": "kg"}}],
                 "chassis": {"wheelbase": {"value": 66, "unit": "in"}, "frontTrack": null}}""");
        assertThat(patched.status()).as(patched.text()).isEqualTo(204);
        assertThat(patched.header("ETag")).isEqualTo("\"2\"");
        assertThat(get(location).json()).isEqualTo(JSON.readTree("""
                {"name": "patched", "bare": {"frontShare": 0.42, "mass": {"value": 310.0, "unit": "kg"}},
                 "items": [{"name": "c", "mass": {"value": 3, "unit": "kg"}}],
                 "chassis": {"wheelbase": {"value": 66, "unit": "in"}}}"""));
        assertThat(get(location + "/revisions/1").status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"bare\":{\"mass\":{\"value\":310.0,\"unit\":\"kg\"},\"frontShare\":0.123456789012345678901234567890123456}",
                "\"bare\":{\"frontShare\":1E-7}",
                "\"bare\":{\"frontShare\":0.500}",
                "\"notes\":\"Größe ⌀ 35 mm² 🛻 \\u0000 \\ud800 \\udefb\"",
                "\"pack\":{\"capacity\":{\"value\":12000e-2,\"unit\":\"Ah\"}}",
            })
    void leavesEveryDigitAloneThatThePatchDoesNotName(String section) {
        String location = created("{\"name\":\"before\"," + section + "}");
        assertThat(patch(location, "\"1\"", "{\"name\":\"after\"}").status()).isEqualTo(204);
        assertThat(exact(get(location).text())).isEqualTo(exact("{\"name\":\"after\"," + section + "}"));
    }

    /** Equal in value, scale and digits. */
    private static Object exact(String document) {
        return JSON.rebuild()
                .enable(tools.jackson.databind.DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .build()
                .readValue(document, Map.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "400 ",
                "400 []",
                "400 \"text\"",
                "400 null",
                "400 {\"notes\":\"a\",\"notes\":\"b\"}",
                "400 {\"colour\":\"red\"}",
                "400 {\"notes\":1}",
                "400 {\"items\":[null]}",
                "400 {\"bare\":{\"frontShare\":1e400}}",
                "422 {\"name\":null}",
                "422 {\"bare\":{\"frontShare\":2},\"name\":null}",
            })
    void refusesAPatchThatLeavesNoSetup(String statusAndPatch) {
        String location = created("{\"name\":\"whole\",\"notes\":\"n\"}");
        Reply refused = patch(location, "\"1\"", statusAndPatch.substring(4));
        assertThat(refused.status()).as(refused.text()).isEqualTo(Integer.parseInt(statusAndPatch.substring(0, 3)));
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
        assertThat(get(location).header("ETag")).isEqualTo("\"1\"");
        assertThat(get(location).text()).isEqualTo("{\"name\":\"whole\",\"notes\":\"n\"}");
    }

    @Test
    void namesEverythingThatIsWrongWithAPatchedSetup() {
        String location = created("{\"name\":\"whole\"}");
        Reply refused = patch(
                location,
                "\"1\"",
                "{\"name\":null,\"bare\":{\"frontShare\":2},\"chassis\":{\"wheelbase\":{\"value\":0,\"unit\":\"in\"}}}");
        assertThat(refused.json().path("errors").findValuesAsString("pointer"))
                .containsExactly("/bare/frontShare", "/chassis/wheelbase/value", "/name");
    }

    @Test
    void patchesTheRevisionThatIsNamed() {
        String location = created("{\"name\":\"first\"}");
        assertThat(patch(location, null, "{}").status()).isEqualTo(428);
        assertThat(patch(location, "\"2\"", "{}").status()).isEqualTo(412);
        assertThat(patch(location, "W/\"1\"", "{}").status()).isEqualTo(412);
        assertThat(patch(location, "*", "{\"name\":\"second\"}").header("ETag")).isEqualTo("\"2\"");
        assertThat(patch(PATH + "/01900000-0000-7000-8000-000000000000", "*", "{}")
                        .status())
                .isEqualTo(404);
        Reply plain =
                send(request(location, "application/json", "*", null).method("PATCH", BodyPublishers.ofString("{}")));
        assertThat(plain.status()).isEqualTo(415);
        assertThat(plain.header("Accept-Patch")).isEqualTo(MERGE_PATCH);
    }

    @Test
    void growsNoSetupBeyondItsLimit() {
        String large = "{\"name\":\"large\",\"items\":[" + parts(360) + "]}"; // 360 of 656 bytes
        String location = created(large);
        Reply refused = patch(
                location, "\"1\"", "{\"notes\":\"" + "⌀".repeat(10_000) + "\",\"occupants\":[" + parts(50) + "]}");
        assertThat(refused.status()).as(refused.text()).isEqualTo(413);
        assertThat(get(location).text()).isEqualTo(large);
    }

    private static String parts(int count) {
        String part = "{\"name\":\"" + "⌀".repeat(200) + "\",\"mass\":{\"value\":1,\"unit\":\"kg\"}}";
        return String.join(",", Collections.nCopies(count, part));
    }

    @Test
    @Timeout(300)
    void losesNoUpdateOfTwoWritersInAThousandRounds() throws Exception {
        String location = created("{\"name\":\"contested\",\"notes\":\"0\"}");
        ExecutorService writers = Executors.newFixedThreadPool(2);
        List<String> acknowledged = new ArrayList<>();
        try {
            for (int round = 1; round <= 1000; round++) {
                String tag = "\"" + round + "\"";
                List<Callable<Integer>> both = new ArrayList<>();
                List<String> names = List.of("one, round " + round, "two, round " + round);
                both.add(() -> replace(location, tag, "{\"name\":\"" + names.get(0) + "\"}")
                        .status());
                both.add(() -> patch(location, tag, "{\"name\":\"" + names.get(1) + "\"}")
                        .status());
                List<Integer> statuses = new ArrayList<>();
                for (Future<Integer> writer : writers.invokeAll(both)) {
                    statuses.add(writer.get());
                }
                assertThat(statuses).as("round " + round).containsExactlyInAnyOrder(204, 412);
                acknowledged.add(names.get(statuses.indexOf(204)));
            }
        } finally {
            writers.shutdownNow();
        }
        assertThat(get(location).header("ETag")).isEqualTo("\"1001\"");
        List<String> kept = new ArrayList<>();
        for (String next = location + "/revisions?limit=100"; !next.isEmpty(); ) {
            Reply page = get(next);
            page.json().path("items").findValuesAsString("name").forEach(name -> kept.add(0, name));
            String link = page.header("Link");
            next = link.isEmpty() ? "" : link.substring(1, link.indexOf('>'));
        }
        assertThat(kept.subList(1, kept.size())).isEqualTo(acknowledged);
    }

    /** Each writer takes what is there, adds to it, and starts again when the other was faster. */
    @Test
    @Timeout(300)
    void countsRightWithTwoWritersThatReadBeforeTheyWrite() throws Exception {
        String location = created("{\"name\":\"counter\",\"notes\":\"0\"}");
        Callable<Integer> writer = () -> {
            int refused = 0;
            for (int done = 0; done < 100; ) {
                Reply read = get(location);
                int count = Integer.parseInt(read.json().path("notes").asString());
                String next = "{\"name\":\"counter\",\"notes\":\"" + (count + 1) + "\"}";
                int status = replace(location, read.header("ETag"), next).status();
                assertThat(status).isIn(204, 412);
                done += status == 204 ? 1 : 0;
                refused += status == 412 ? 1 : 0;
            }
            return refused;
        };
        ExecutorService writers = Executors.newFixedThreadPool(2);
        try {
            for (Future<Integer> one : writers.invokeAll(List.of(writer, writer))) {
                one.get();
            }
        } finally {
            writers.shutdownNow();
        }
        assertThat(get(location).json().path("notes").asString()).isEqualTo("200");
    }

    @Test
    void repeatsTheAnswerOfACreation() {
        Reply first = create("create-1", "{\"name\":\"once\"}");
        assertThat(first.status()).isEqualTo(201);
        assertThat(first.header("Idempotent-Replayed")).isEmpty();
        Reply again = create("create-1", "{\"name\":\"once\"}");
        assertThat(again.header("Idempotent-Replayed")).isEqualTo("true");
        assertSame(again, first);
        assertThat(named("once")).isEqualTo(1);
        assertSame(create("create-1", "{\"name\":\"once\"}"), first);
    }

    @Test
    void repeatsTheAnswerThoughTheSetupHasChangedSince() {
        Reply first = create("create-2", "{\"name\":\"changed since\"}");
        replace(first.header("Location"), "\"1\"", "{\"name\":\"changed\"}");
        assertSame(create("create-2", "{\"name\":\"changed since\"}"), first);
        delete(first.header("Location"), "*");
        assertSame(create("create-2", "{\"name\":\"changed since\"}"), first);
    }

    @Test
    void refusesAKeyThatCameWithAnotherRequest() {
        String location = create("reused", "{\"name\":\"reused\"}").header("Location");
        Reply other = create("reused", "{\"name\":\"reused \"}");
        assertThat(other.status()).isEqualTo(422);
        assertThat(other.json().path("type").asString()).isEqualTo("urn:axlewright:problem:idempotency-key-reused");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        assertThat(act(location + "/revisions/1/restore", "\"2\"", "reused").status())
                .isEqualTo(422);
        assertThat(named("reused ")).isZero();
    }

    @Test
    void repeatsRestoresToo() {
        String location = created("{\"name\":\"first\"}");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        Reply first = act(location + "/revisions/1/restore", "\"2\"", "restore-1");
        assertThat(first.status()).isEqualTo(204);
        assertSame(act(location + "/revisions/1/restore", "\"2\"", "restore-1"), first);
        assertThat(get(location).header("ETag")).isEqualTo("\"3\"");

        delete(location, "\"3\"");
        String restore = "/v1/setups/deleted/" + id(location) + "/restore";
        Reply back = act(restore, "\"3\"", "restore-2");
        assertThat(back.status()).isEqualTo(204);
        assertSame(act(restore, "\"3\"", "restore-2"), back);
    }

    @Test
    void remembersNoRefusal() {
        assertThat(create("refused", "{\"name\":\"\"}").status()).isEqualTo(422);
        assertThat(create("refused", "{\"name\":\"mended\"}").status()).isEqualTo(201);
        String location = created("{\"name\":\"first\"}");
        String restore = location + "/revisions/1/restore";
        assertThat(act(restore, "\"7\"", "refused-2").status()).isEqualTo(412);
        assertThat(act(restore, "\"1\"", "refused-2").status()).isEqualTo(204);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "two words"})
    void refusesAKeyThatCantBeOne(String key) {
        assertThat(create(key, "{\"name\":\"keyed\"}").status()).isEqualTo(400);
    }

    @Test
    void takesAKeyOfTwoHundredCharactersAndNoMore() {
        assertThat(create("k".repeat(200), "{\"name\":\"keyed\"}").status()).isEqualTo(201);
        assertThat(create("k".repeat(201), "{\"name\":\"keyed\"}").status()).isEqualTo(400);
    }

    @Test
    void createsOneSetupForManyWhoAskAtOnce() throws Exception {
        List<Callable<Reply>> callers = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            callers.add(() -> create("at-once", "{\"name\":\"at once\"}"));
        }
        ExecutorService pool = Executors.newFixedThreadPool(16);
        Set<String> locations = new HashSet<>();
        try {
            for (Future<Reply> caller : pool.invokeAll(callers)) {
                Reply reply = caller.get();
                assertThat(reply.status()).isIn(201, 409);
                if (reply.status() == 201) {
                    locations.add(reply.header("Location"));
                }
            }
        } finally {
            pool.shutdownNow();
        }
        assertThat(locations).hasSize(1);
        assertThat(named("at once")).isEqualTo(1);
        assertThat(create("at-once", "{\"name\":\"at once\"}").header("Location"))
                .isEqualTo(locations.iterator().next());
    }

    @Test
    void refusesWhatIsBeingDone() throws Exception {
        try (Connection atWork = DriverManager.getConnection(DATABASE.url(), DATABASE.user(), DATABASE.password());
                var statement = atWork.createStatement()) {
            atWork.setAutoCommit(false);
            statement.execute("select pg_advisory_xact_lock(hashtextextended('" + workspace(DATABASE) + " busy', 0))");
            Reply refused = create("busy", "{\"name\":\"busy\"}");
            assertThat(refused.status()).isEqualTo(409);
            assertThat(refused.header("Retry-After")).isEqualTo("1");
            assertThat(create("idle", "{\"name\":\"idle\"}").status()).isEqualTo(201);
            atWork.rollback();
        }
        assertThat(create("busy", "{\"name\":\"busy\"}").status()).isEqualTo(201);
    }

    @Test
    void forgetsAfterADay() {
        String first = create("yesterday", "{\"name\":\"yesterday\"}").header("Location");
        execute(
                DATABASE,
                "update remembered_answers set answered_at = now() - interval '23 hours' where key = 'yesterday'");
        purge.run();
        assertThat(create("yesterday", "{\"name\":\"yesterday\"}").header("Location"))
                .isEqualTo(first);
        execute(
                DATABASE,
                "update remembered_answers set answered_at = now() - interval '25 hours' where key = 'yesterday'");
        assertThat(create("yesterday", "{\"name\":\"today\"}").status()).isEqualTo(201);
        assertThat(create("yesterday", "{\"name\":\"today\"}").header("Idempotent-Replayed"))
                .isEqualTo("true");
        execute(
                DATABASE,
                "update remembered_answers set answered_at = now() - interval '25 hours' where key = 'yesterday'");
        purge.run();
        assertThat(ask(DATABASE, "select count(*) from remembered_answers where key = 'yesterday'"))
                .isEqualTo("0");
    }

    private Reply create(@Nullable String key, String document) {
        return send(request(PATH, "application/json", null, key).POST(BodyPublishers.ofString(document)));
    }

    private static void assertSame(Reply again, Reply first) {
        assertThat(again.status()).isEqualTo(first.status());
        assertThat(again.text()).isEqualTo(first.text());
        for (String header : List.of("Location", "ETag", "Last-Modified", "Content-Type")) {
            assertThat(again.header(header)).as(header).isEqualTo(first.header(header));
        }
    }

    private static int named(String name) {
        return Integer.parseInt(ask(DATABASE, "select count(*) from setups where name = '" + name + "'"));
    }
}
