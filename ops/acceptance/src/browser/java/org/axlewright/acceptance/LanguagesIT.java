package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

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
    void everyQuestionIsAskedInSpanish() {
        assertThat(keys("es", "questions")).containsAll(SERVICE.calculations());
        assertThat(keys("es", "names")).containsAll(SERVICE.calculations());
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
