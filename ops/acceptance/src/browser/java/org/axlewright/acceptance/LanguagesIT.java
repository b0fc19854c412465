package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** English and Spanish are complete, and what only the service says is marked as English. */
class LanguagesIT extends Browsing {

    private static final JsonNode DOCUMENT =
            Service.JSON.readTree(SERVICE.get("/v3/api-docs").body());

    @Override
    protected String locale() {
        return "es-ES";
    }

    @SuppressWarnings("unchecked")
    private Set<String> keys(String language, String part) {
        return new TreeSet<>((List<String>) page.evaluate(
                "([language, part]) => import('/page/catalogue/' + language + '.js').then((file) =>"
                        + " Object.keys(file.default[part]))",
                List.of(language, part)));
    }

    @Test
    void bothCataloguesSayTheSame() {
        // refusals are told in English by the service itself
        assertThat(keys("es", "texts").stream().filter(key -> !key.startsWith("refusal.")))
                .containsExactlyElementsOf(keys("en", "texts"));
    }

    @Test
    void everySectionFieldAndChoiceOfTheContractHasASpanishName() {
        Set<String> names = new TreeSet<>();
        gather(DOCUMENT.at("/components/schemas/Setup"), names, new ArrayList<>());
        assertThat(names).hasSizeGreaterThan(300);
        names.removeAll(keys("es", "names"));
        assertThat(names).as("fields without a Spanish name").isEmpty();
    }

    @Test
    @SuppressWarnings("unchecked")
    void everyHintOfAFieldIsInSpanish() {
        List<String> silent = (List<String>) page.evaluate("""
                async () => {
                    const { readContract } = await import('/page/contract.js');
                    const { fetchHints, hint } = await import('/page/words.js');
                    await fetchHints();
                    const contract = readContract(await (await fetch('/v3/api-docs/form')).json());
                    const described = (field, pointer) => [
                        ...(field.description.replace(/ ?From -?[\\d.]\\S*( \\S+)? to \\S+( \\S+)?\\.$/, '') === '' ? [] : [pointer]),
                        ...(field.fields ?? []).flatMap((one) => described(one, pointer + '/' + one.name)),
                        ...(field.item?.fields ?? []).flatMap((one) => described(one, pointer + '/*/' + one.name)),
                    ];
                    const all = contract.fields.flatMap((field) => described(field, '/' + field.name));
                    return all.length < 500 ? ['only ' + all.length + ' hints'] : all.filter((pointer) => hint(pointer) === undefined);
                }""");
        assertThat(silent).as("hints in English only").isEmpty();
    }

    @Test
    void everyQuestionIsAskedInSpanish() {
        assertThat(keys("es", "questions")).containsAll(SERVICE.calculations());
        assertThat(keys("es", "names")).containsAll(SERVICE.calculations());
    }

    /**
     * What the service says, in answer to every request of its own acceptance cases, has Spanish words that find the values they name.
     */
    @Test
    @SuppressWarnings("unchecked")
    void everyFindingCautionAndAssumptionIsToldInSpanish() throws IOException {
        Set<List<Object>> told = new HashSet<>();
        for (String line : batch(cases()).split("\n")) {
            JsonNode answer = Service.JSON.readTree(line).path("answer");
            for (JsonNode finding : answer.path("findings")) {
                told.add(List.of(
                        "finding",
                        finding.path("code").asString(),
                        finding.has("actual"),
                        finding.has("limit"),
                        finding.has("action")));
            }
            for (JsonNode caution : answer.path("cautions")) {
                told.add(List.of("caution", caution.path("code").asString(), false, false, false));
            }
            for (JsonNode assumption : answer.path("assumptions")) {
                told.add(List.of("assumption", assumption.path("code").asString(), false, false, false));
            }
        }
        assertThat(told).hasSizeGreaterThan(400);
        List<String> silent = (List<String>) page.evaluate("""
                async (told) => {
                    const { fetchSaid, finding, caution, reason } = await import('/page/words.js');
                    await fetchSaid();
                    return told.filter(([kind, code, actual, limit, action]) => {
                        if (kind !== 'finding') {
                            return (kind === 'caution' ? caution : reason)(code) === undefined;
                        }
                        const said = finding(code, { ...(actual ? { actual: '1' } : {}), ...(limit ? { limit: '2' } : {}) });
                        return said === null || (action && said.action === undefined);
                    }).map(([kind, code]) => kind + ' ' + code);
                }""", List.copyOf(told));
        assertThat(silent).as("told in English only").isEmpty();
    }

    /** A line of a batch for each acceptance case; the name of its directory is that of the question. */
    private static String cases() throws IOException {
        Path root = Path.of(System.getProperty("axlewright.checkout"), "api/src/test/resources/acceptance");
        StringBuilder lines = new StringBuilder();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList()) {
                ObjectNode line = Service.JSON.createObjectNode();
                line.put("calculation", file.getParent().getFileName().toString());
                line.set("input", Service.JSON.readTree(Files.readString(file)).path("request"));
                lines.append(line).append('\n');
            }
        }
        return lines.toString();
    }

    private static String batch(String lines) {
        return SERVICE.send(SERVICE.request("/v1/batches?working=false")
                        .setHeader("Content-Type", "application/x-ndjson")
                        .timeout(Duration.ofMinutes(3))
                        .POST(HttpRequest.BodyPublishers.ofString(lines)))
                .body();
    }

    /** Names of properties and values of enums, quantities and money apart: their units are signs. */
    private static void gather(JsonNode schema, Set<String> names, List<String> within) {
        if (schema.has("$ref")) {
            String name = schema.path("$ref").asString().replaceFirst(".*/", "");
            if (!within.contains(name)) {
                List<String> deeper = new ArrayList<>(within);
                deeper.add(name);
                gather(DOCUMENT.at("/components/schemas/" + name), names, deeper);
            }
        }
        JsonNode properties = schema.path("properties");
        if (properties.has("unit") || properties.has("currency")) {
            return;
        }
        for (String name : properties.propertyNames()) {
            names.add(name);
            gather(properties.path(name), names, within);
        }
        gatherInside(schema.path("items"), names, within);
        schema.path("oneOf").forEach(one -> gatherInside(one, names, within));
        schema.path("anyOf").forEach(one -> gatherInside(one, names, within));
        schema.path("enum").forEach(one -> names.add(one.asString()));
    }

    private static void gatherInside(JsonNode schema, Set<String> names, List<String> within) {
        if (schema.isObject()) {
            gather(schema, names, within);
        }
    }

    @Test
    void thePageIsInSpanishWithCommasAndMarksWhatIsEnglish() {
        assertThat(page.locator("html").getAttribute("lang")).isEqualTo("es-ES");
        page.locator("#start-choices button", new Page.LocatorOptions().setHasText(PLANNED))
                .click();
        page.locator("#status", new Page.LocatorOptions().setHasText(Pattern.compile("preguntas respondidas")))
                .waitFor();
        assertThat(lead("centre-of-gravity", "/frontAxle/share")).matches("\\d+,\\d+ %");
        Locator message = page.locator("axlewright-findings .message").first();
        JsonNode first = Service.JSON
                .readTree(SERVICE.post(
                                "/v1/assessments?units=metric&working=false",
                                demo(PLANNED).toString())
                        .body())
                .at("/findings/0");
        if (message.textContent().equals(first.path("message").asString())) {
            assertThat(message.locator("[lang=en]").count()).isEqualTo(1);
        }
        assertThat(page.locator("axlewright-findings .signal").first().textContent())
                .isIn("peligro", "advertencia");
        screenshot("spanish");
    }

    @Test
    void theReaderMayChooseAnotherLanguageAndKeepsWhatWasTyped() {
        page.locator("#own").click();
        input("/name").fill("Tractor del huerto");
        page.locator("#language").selectOption("en");
        page.waitForSelector("body[data-ready]");
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Work it out").setExact(true))
                .waitFor();
        assertThat(input("/name").inputValue()).isEqualTo("Tractor del huerto");
    }
}
