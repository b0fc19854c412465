package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What the page says is what the service says. */
class AnswersIT extends Browsing {

    private static final List<String> QUESTIONS = SERVICE.calculations();

    @Test
    void aDemoVehicleGivesEveryAnswer() {
        choose(PLANNED);
        for (String question : QUESTIONS) {
            assertThat(answer(question).locator(".leads dd").count())
                    .as(question)
                    .isPositive();
        }
        assertThat(page.locator("#status").textContent()).startsWith(QUESTIONS.size() + " of " + QUESTIONS.size());
        screenshot("orchard-runabout");
    }

    @ParameterizedTest
    @ValueSource(strings = {"metric", "us"})
    void everyNumberShownIsTheServicesToFourDigits(String units) {
        choose(PLANNED);
        page.locator("input[name=units][value=" + units + "]").check();
        waitForUnits(units);
        int compared = 0;
        page.locator("details.all").evaluateAll("all => all.forEach(one => one.open = true)");
        for (String question : QUESTIONS) {
            answer(question).locator("details.all td").first().waitFor();
            JsonNode result = asked(question, units, demo(PLANNED)).path("result");
            for (Locator shown :
                    answer(question).locator("[data-result], [data-value]").all()) {
                String leading = shown.getAttribute("data-result");
                String pointer = leading == null ? shown.getAttribute("data-value") : leading;
                compared += compare(question + pointer, result.at(pointer), shown.textContent());
            }
        }
        assertThat(compared).isGreaterThan(10 * QUESTIONS.size());
    }

    private void waitForUnits(String units) {
        String mass = units.equals("us") ? "lb" : "kg";
        answer("centre-of-gravity")
                .locator("[data-result='/mass']", new Locator.LocatorOptions().setHasText(mass))
                .waitFor();
    }

    /** How many numbers were compared: one or none. */
    private static int compare(String where, JsonNode sent, String shown) {
        assertThat(sent.isMissingNode()).as(where).isFalse();
        boolean quantity = sent.has("value") && sent.has("unit");
        if (!quantity && !sent.isNumber()) {
            return 0;
        }
        boolean share = where.endsWith("Share") || where.endsWith("share");
        double value = quantity ? sent.path("value").asDouble() : sent.asDouble() * (share ? 100 : 1);
        Printed printed = Printed.read(shown);
        assertThat(printed.number()).as(where).isCloseTo(value, within(Math.abs(value) * 5.01e-4 + 1e-12));
        assertThat(printed.unit())
                .as(where)
                .isEqualTo(quantity ? Printed.sign(sent.path("unit").asString()) : share ? "%" : "");
        return 1;
    }

    @Test
    void findingsAssumptionsAndWorkingAreThere() {
        choose(PLANNED);
        for (String question : QUESTIONS) {
            JsonNode answer = asked(question, "metric", demo(PLANNED));
            Locator shown = answer(question);
            assertThat(shown.locator(".finding").count())
                    .as(question)
                    .isEqualTo(answer.path("findings").size());
            for (JsonNode finding : answer.path("findings")) {
                Locator item = shown.locator(
                                ".finding[data-code='" + finding.path("code").asString() + "']")
                        .first();
                assertThat(item.locator(".signal").textContent())
                        .isEqualTo(finding.path("level").asString());
                assertThat(shown.textContent())
                        .contains(
                                finding.path("message").asString(),
                                finding.path("action").asString(""),
                                finding.path("source").asString());
            }
            assertThat(shown.locator(".assumed li").count())
                    .as(question)
                    .isEqualTo(answer.path("assumptions").size());
            assertThat(shown.locator("details.working").getAttribute("open")).isNull();
            shown.locator("details.working > summary").click();
            shown.locator(".working li").first().waitFor();
            assertThat(shown.locator(".working li").count())
                    .as(question)
                    .isEqualTo(answer.path("working").size());
        }
    }

    @Test
    void whatIsNotAnsweredLinksToTheFieldThatWouldAnswerIt() {
        button("Own numbers").click();
        open("chassis");
        enter("/chassis/wheelbase", "66", "in");
        open("bare");
        enter("/bare/axles/front", "420", "lb");
        enter("/bare/axles/rear", "580", "lb");
        workItOut();
        Locator missing = answer("centre-of-gravity").locator("ul.missing a[data-field]");
        assertThat(missing.count()).isPositive();
        missing.first().click();
        String focused = (String) page.evaluate("document.activeElement.name");
        assertThat(focused).startsWith(missing.first().getAttribute("data-field"));
        assertThat(input(focused).isVisible()).isTrue();
    }

    @Test
    void aFieldOfAListThatIsEmptyIsMadeOnTheWayToIt() {
        button("Own numbers").click();
        page.evaluate("document.querySelector('axlewright-entries').focusField('/circuits/0/length')");
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo("/circuits/0/length/value");
        assertThat(input("/circuits/0/length/value").isVisible()).isTrue();
    }
}
