package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page for a phone, for a keyboard, and for those who do not see it. */
class AccessIT extends Browsing {

    @ParameterizedTest
    @CsvSource({"320, 640", "360, 740", "412, 900", "1280, 900"})
    void nothingIsWiderThanTheWindow(int width, int height) {
        page.setViewportSize(width, height);
        noOverflow();
        choose(PLANNED);
        noOverflow();
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(java.nio.file.Path.of("target/screenshots/whole-" + width + ".png"))
                .setFullPage(true));
        page.locator("details").evaluateAll("all => all.forEach(one => one.open = true)");
        noOverflow();
        page.evaluate("scrollTo(0, 0)");
        screenshot("window-" + width);
    }

    private void noOverflow() {
        assertThat(page.evaluate("""
                        document.documentElement.scrollWidth <= innerWidth ? '' :
                        [...document.querySelectorAll('body *')]
                            .filter((one) => one.scrollWidth > one.clientWidth && !one.closest('.scroller'))
                            .map((one) => one.cloneNode(false).outerHTML).join('\\n')""")).as("reaching beyond the window").isEqualTo("");
    }

    @Test
    void axeFindsNothing() {
        noViolations("empty");
        choose(PLANNED);
        noViolations("answered");
        page.locator("details").evaluateAll("all => all.forEach(one => one.open = true)");
        noViolations("all opened");
        enter("/chassis/wheelbase", "900", "in");
        button("Work it out").click();
        page.locator("#refusals h3").waitFor();
        noViolations("refused");
    }

    private void noViolations(String state) {
        AxeResults results = new AxeBuilder(page).analyze();
        assertThat(results.getViolations())
                .as(state)
                .extracting(rule -> rule.getId() + " " + rule.getNodes().get(0).getHtml())
                .isEmpty();
        assertThat(results.getPasses()).as(state).isNotEmpty();
    }

    @Test
    void theKeyboardAloneGoesAllTheWay() {
        tabTo("#own");
        page.keyboard().press("Enter");
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo("/name");
        page.keyboard().type("By keyboard");
        tabTo("details[data-section=chassis] > summary");
        page.keyboard().press("Enter");
        tabTo("[name='/chassis/wheelbase/value']");
        page.keyboard().type("66");
        page.keyboard().press("Tab");
        page.keyboard().type("in");
        tabTo("details[data-section=bare] > summary");
        page.keyboard().press("Enter");
        tabTo("[name='/bare/axles/front/value']");
        page.keyboard().type("200");
        tabTo("[name='/bare/axles/rear/value']");
        page.keyboard().type("300");
        page.keyboard().press("Enter");
        waitForAnswers();
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("sheet");
        assertThat(Printed.read(lead("centre-of-gravity", "/position/x")).number())
                .isCloseTo(66 * 0.0254 * 0.6, org.assertj.core.api.Assertions.within(5e-4));
    }

    /** Presses Tab until an element has the focus, as a person would. */
    private void tabTo(String selector) {
        Locator target = page.locator(selector);
        for (int presses = 0; presses < 150; presses++) {
            if ((Boolean) target.evaluate("element => element === document.activeElement")) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab does not reach " + selector);
    }
}
