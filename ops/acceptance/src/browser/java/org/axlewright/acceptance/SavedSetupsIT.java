package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Setups are saved, listed, opened and replaced, and nobody overwrites anybody. */
class SavedSetupsIT extends Browsing {

    private void save(String name) {
        choose(PLANNED);
        input("/name").fill(name);
        button("Save").click();
        said("Saved “" + name + "”.");
    }

    private void said(String message) {
        page.locator(
                        "axlewright-setups .message",
                        new com.microsoft.playwright.Page.LocatorOptions().setHasText(message))
                .waitFor();
    }

    private String openedId() {
        return (String) page.evaluate("document.querySelector('axlewright-setups').opened.id");
    }

    /** Numbers are equal when their values are: 1.0 comes back as 1. */
    private static int byValue(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return Double.compare(one.asDouble(), other.asDouble());
        }
        return one.equals(other) ? 0 : 1;
    }

    private JsonNode stored(String id) {
        return Service.JSON.readTree(SERVICE.get("/v1/setups/" + id).body());
    }

    @Test
    void savesReloadsAndOpensAgainWithEqualValues() {
        save("Runabout of the north orchard");
        String id = openedId();
        ObjectNode expected = (ObjectNode) demo(PLANNED).deepCopy();
        expected.put("name", "Runabout of the north orchard");
        assertThat(stored(id).equals(SavedSetupsIT::byValue, expected))
                .as(stored(id) + " says the same as " + expected)
                .isTrue();

        page.evaluate("localStorage.clear()");
        page.reload();
        page.waitForSelector("body[data-ready]");
        assertThat(input("/name").inputValue()).isEmpty();
        page.locator("axlewright-setups [data-do=open][data-id='" + id + "']").click();
        said("Opened “Runabout of the north orchard”.");
        waitForAnswers();
        assertThat(input("/name").inputValue()).isEqualTo("Runabout of the north orchard");
        assertThat(answer("centre-of-gravity").locator(".leads dd").count()).isPositive();
    }

    @Test
    void replacesWhatWasOpened() {
        save("Runabout with notes");
        String id = openedId();
        input("/notes").fill("cradle welded");
        button("Save").click();
        page.waitForCondition(() -> stored(id).path("notes").asString("").equals("cradle welded"));
        input("/notes").fill("cradle painted");
        button("Save").click();
        page.waitForCondition(() -> stored(id).path("notes").asString("").equals("cradle painted"));
        assertThat(openedId()).isEqualTo(id);
    }

    @Test
    void somebodyElsesChangeIsToldAndNothingTypedIsLost() {
        save("Runabout of two shops");
        String id = openedId();
        HttpResponse<String> current = SERVICE.get("/v1/setups/" + id);
        ObjectNode theirs = (ObjectNode) Service.JSON.readTree(current.body());
        theirs.put("notes", "theirs");
        assertThat(SERVICE.send(SERVICE.request("/v1/setups/" + id)
                                .header(
                                        "If-Match",
                                        current.headers().firstValue("ETag").orElseThrow())
                                .PUT(BodyPublishers.ofString(theirs.toString())))
                        .statusCode())
                .isEqualTo(204);

        input("/notes").fill("mine");
        button("Save").click();
        said("Somebody else has changed this setup");
        assertThat(input("/notes").inputValue()).isEqualTo("mine");
        assertThat(stored(id).path("notes").asString()).isEqualTo("theirs");

        button("Save mine as new").click();
        said("Saved “Runabout of two shops”.");
        assertThat(openedId()).isNotEqualTo(id);
        assertThat(stored(openedId()).path("notes").asString()).isEqualTo("mine");
        assertThat(stored(id).path("notes").asString()).isEqualTo("theirs");
    }

    @Test
    void aSetupWithoutANameIsRefusedAtTheName() {
        choose(PLANNED);
        input("/name").fill("");
        button("Save").click();
        said("Not saved.");
        assertThat(page.locator("[id='fault:/name']").textContent()).isEqualTo("Needed to save.");
    }

    @Test
    void deletesWhenAsked() {
        save("Runabout for the scrapyard");
        String id = openedId();
        page.onDialog(dialog -> dialog.accept());
        Locator entry = page.locator("axlewright-setups [data-do=remove][data-id='" + id + "']");
        entry.click();
        said("Deleted “Runabout for the scrapyard”.");
        assertThat(SERVICE.get("/v1/setups/" + id).statusCode()).isEqualTo(404);
    }
}
