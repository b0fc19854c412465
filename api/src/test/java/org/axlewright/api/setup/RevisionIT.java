package org.axlewright.api.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.database.TestDatabase;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;

/** Nothing that was saved is lost: revisions, and 30 days of what is deleted. */
class RevisionIT extends Saving {

    private static final String DELETED = "/v1/setups/deleted";
    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    @Autowired
    Purge purge;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, owned());
    }

    /** Tables of an owner that row-level security holds: what goes through all workspaces has to do so in order. */
    private static TestDatabase.Access owned() {
        execute(DATABASE, """
                do $$ begin
                    if not exists (select from pg_roles where rolname = 'axlewright_service') then
                        create role axlewright_service nologin;
                    end if;
                end $$""");
        execute(DATABASE, "create role revision_owner login password 'owner' in role axlewright_service");
        execute(DATABASE, "alter database " + DATABASE.name() + " owner to revision_owner");
        return new TestDatabase.Access(DATABASE.host(), DATABASE.port(), DATABASE.name(), "revision_owner", "owner");
    }

    @Test
    void keepsEveryDocumentAsItWasSent() {
        String location = created("{\"name\":\"first\",  \"bare\":{\"frontShare\":0.410}}");
        replace(location, "\"1\"", "{\"name\":\"second\"}\n");
        patch(location, "\"2\"", "{\"notes\":\"third\"}");
        assertThat(get(location + "/revisions/1").text())
                .isEqualTo("{\"name\":\"first\",  \"bare\":{\"frontShare\":0.410}}");
        assertThat(get(location + "/revisions/2").text()).isEqualTo("{\"name\":\"second\"}\n");
        Reply third = get(location + "/revisions/3");
        assertThat(third.text()).isEqualTo(get(location).text());
        assertThat(third.header("ETag"))
                .isEqualTo("\"3\"")
                .isEqualTo(get(location).header("ETag"));
        assertThat(third.header("Last-Modified")).isEqualTo(get(location).header("Last-Modified"));
        assertThat(get(location + "/revisions/4").status()).isEqualTo(404);
    }

    @Test
    void listsThemNewestFirstPageByPage() {
        String location = created("{\"name\":\"revision 1\"}");
        for (int revision = 1; revision < 7; revision++) {
            replace(location, "\"" + revision + "\"", "{\"name\":\"revision " + (revision + 1) + "\"}");
        }
        List<Long> listed = new ArrayList<>();
        String next = location + "/revisions?limit=3";
        while (!next.isEmpty()) {
            Reply page = get(next);
            assertThat(page.status()).as(page.text()).isEqualTo(200);
            for (JsonNode entry : page.json().path("items")) {
                listed.add(entry.path("revision").asLong());
                assertThat(entry.propertyNames()).containsExactly("revision", "name", "savedAt");
                assertThat(entry.path("name").asString())
                        .isEqualTo("revision " + entry.path("revision").asLong());
            }
            String link = page.header("Link");
            next = link.isEmpty() ? "" : link.substring(1, link.indexOf('>'));
        }
        assertThat(listed).containsExactly(7L, 6L, 5L, 4L, 3L, 2L, 1L);
    }

    @Test
    void goesBackByANewRevision() {
        String location = created("{\"name\":\"first\", \"notes\":\"1.50\"}");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        Reply restored = act(location + "/revisions/1/restore", "\"2\"", null);
        assertThat(restored.status()).as(restored.text()).isEqualTo(204);
        assertThat(restored.header("ETag")).isEqualTo("\"3\"");
        assertThat(get(location).text()).isEqualTo("{\"name\":\"first\", \"notes\":\"1.50\"}");
        assertThat(get(location + "/revisions/2").text()).isEqualTo("{\"name\":\"second\"}");
    }

    @Test
    void goesBackOnlyFromTheRevisionThatIsNamed() {
        String location = created("{\"name\":\"first\"}");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        assertThat(act(location + "/revisions/1/restore", null, null).status()).isEqualTo(428);
        Reply stale = act(location + "/revisions/1/restore", "\"1\"", null);
        assertThat(stale.status()).isEqualTo(412);
        assertThat(stale.header("ETag")).isEqualTo("\"2\"");
        assertThat(act(location + "/revisions/9/restore", "\"2\"", null).status())
                .isEqualTo(404);
        assertThat(get(location).header("ETag")).isEqualTo("\"2\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "01", "x", "1.0", "99999999999999999999"})
    void knowsNothingOfARevisionThatCantBe(String revision) {
        String location = created("{\"name\":\"first\"}");
        assertThat(get(location + "/revisions/" + revision).status()).isEqualTo(404);
        assertThat(act(location + "/revisions/" + revision + "/restore", "*", null)
                        .status())
                .isEqualTo(404);
    }

    @Test
    void knowsNoRevisionsOfWhatIsNotThere() {
        String nothing = PATH + "/01900000-0000-7000-8000-000000000000";
        assertThat(get(nothing + "/revisions").status()).isEqualTo(404);
        assertThat(get(nothing + "/revisions/1").status()).isEqualTo(404);
        assertThat(act(nothing + "/revisions/1/restore", "*", null).status()).isEqualTo(404);
        assertThat(get(PATH + "/x/revisions").status()).isEqualTo(404);
        assertThat(get(created("{\"name\":\"a\"}") + "/revisions?cursor=AAAA").status())
                .isEqualTo(400);
    }

    @Test
    void comparesTwoRevisions() {
        String found = DemoSetups.texts().get(1);
        String planned = DemoSetups.exampleText();
        String location = created(found);
        replace(location, "\"1\"", planned);
        String sides = "{\"before\": {\"id\": \"%s\", \"revision\": 1}, \"after\": {\"id\": \"%s\", \"revision\": 2}}"
                .formatted(id(location), id(location));
        Reply compared = post("/v1/comparisons", sides);
        assertThat(compared.status()).as(compared.text()).isEqualTo(200);
        assertThat(compared.json())
                .isEqualTo(post("/v1/comparisons", "{\"before\": " + found + ", \"after\": " + planned + "}")
                        .json());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "404 {\"id\": \"%s\", \"revision\": 2}",
                "422 {\"id\": \"%s\"}",
                "400 {\"id\": \"%s\", \"revision\": \"1\"}",
                "400 {\"id\": \"%s\", \"revision\": 1.5}",
                "400 {\"id\": \"%s\", \"revision\": 1, \"name\": \"x\"}",
                "400 {\"id\": 1, \"revision\": 1}",
                "404 {\"id\": \"x\", \"revision\": 1}",
            })
    void refusesARevisionThatCantBeCompared(String statusAndSide) {
        String side = statusAndSide.substring(4).replace("%s", id(created("{\"name\":\"compared\"}")));
        Reply refused = post("/v1/comparisons", "{\"before\": " + side + ", \"after\": {}}");
        assertThat(refused.status()).as(refused.text()).isEqualTo(Integer.parseInt(statusAndSide.substring(0, 3)));
    }

    @Test
    void hasADeletedSetupBackWithItsRevisions() {
        String location = created("{\"name\":\"first\"}");
        replace(location, "\"1\"", "{\"name\":\"second\"}");
        assertThat(delete(location, "\"2\"").status()).isEqualTo(204);
        for (String gone :
                List.of(location, location + "/revisions", location + "/revisions/1", location + "/assessment")) {
            assertThat(get(gone).status()).as(gone).isEqualTo(404);
        }
        assertThat(patch(location, "*", "{}").status()).isEqualTo(404);
        assertThat(listed(PATH)).doesNotContain(id(location));
        JsonNode entry = entry(id(location));
        assertThat(entry.path("name").asString()).isEqualTo("second");
        assertThat(entry.path("revision").asLong()).isEqualTo(2);
        assertThat(entry.propertyNames()).containsExactly("id", "name", "revision", "deletedAt");

        String restore = DELETED + "/" + id(location) + "/restore";
        assertThat(act(restore, null, null).status()).isEqualTo(428);
        Reply stale = act(restore, "\"1\"", null);
        assertThat(stale.status()).isEqualTo(412);
        assertThat(stale.header("ETag")).isEqualTo("\"2\"");
        Reply back = act(restore, "\"2\"", null);
        assertThat(back.status()).as(back.text()).isEqualTo(204);
        assertThat(back.header("Location")).isEqualTo(location);
        assertThat(back.header("ETag")).isEqualTo("\"2\"");
        assertThat(get(location).text()).isEqualTo("{\"name\":\"second\"}");
        assertThat(get(location + "/revisions/1").text()).isEqualTo("{\"name\":\"first\"}");
        assertThat(listed(PATH)).contains(id(location));
        assertThat(listed(DELETED)).doesNotContain(id(location));
        assertThat(act(restore, "\"2\"", null).status()).isEqualTo(404);
    }

    @Test
    void removesForGoodAfterThirtyDays() {
        String kept = created("{\"name\":\"deleted 29 days ago\"}");
        String gone = created("{\"name\":\"deleted 31 days ago\"}");
        replace(gone, "\"1\"", "{\"name\":\"deleted 31 days ago, twice saved\"}");
        delete(kept, "*");
        delete(gone, "*");
        deletedDaysAgo(kept, 29);
        deletedDaysAgo(gone, 31);
        assertThat(listed(DELETED)).contains(id(kept)).doesNotContain(id(gone));
        assertThat(act(DELETED + "/" + id(gone) + "/restore", "*", null).status())
                .as("past its time, though not yet removed")
                .isEqualTo(404);

        purge.run();

        assertThat(rows("setups where id", kept)).isEqualTo("1");
        assertThat(rows("setups where id", gone)).isEqualTo("0");
        assertThat(rows("revisions where setup_id", gone)).isEqualTo("0");
        assertThat(act(DELETED + "/" + id(kept) + "/restore", "*", null).status())
                .isEqualTo(204);
    }

    @Test
    void purgesNothingThatIsThere() {
        String location = created("{\"name\":\"old and there\"}");
        execute(
                DATABASE,
                "update setups set created_at = now() - interval '99 days', updated_at = now() - interval '99 days' where id = '"
                        + id(location) + "'");
        purge.run();
        assertThat(get(location).status()).isEqualTo(200);
    }

    private static void deletedDaysAgo(String location, int days) {
        execute(
                DATABASE,
                "update setups set deleted_at = now() - interval '" + days + " days' where id = '" + id(location)
                        + "'");
    }

    private static String rows(String ofWhere, String location) {
        return ask(DATABASE, "select count(*) from " + ofWhere + " = '" + id(location) + "'");
    }

    private List<String> listed(String path) {
        return get(path + "?limit=100").json().path("items").findValuesAsString("id");
    }

    private JsonNode entry(String id) {
        for (JsonNode entry : get(DELETED + "?limit=100").json().path("items")) {
            if (entry.path("id").asString().equals(id)) {
                return entry;
            }
        }
        throw new AssertionError("not among the deleted setups: " + id);
    }
}
