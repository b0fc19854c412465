package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The side elevation is to scale and says what the service says. */
class DrawingIT extends Browsing {

    private static final double INCH = 0.0254;

    private double attribute(String selector, String name) {
        return Double.parseDouble(
                page.locator("axlewright-elevation " + selector).getAttribute(name));
    }

    private void draw(String json) {
        page.evaluate(
                "draft => localStorage.setItem('axlewright.draft', JSON.stringify({draft, units: 'metric', opened: null}))",
                Service.JSON.readValue(json, Object.class));
        page.reload();
        page.waitForSelector("body[data-ready]");
        waitForAnswers();
    }

    /** 66 in between the axles; 22 in tyres in front, 205/50-10 (10 x 25.4 + 2 x 205 x 0.5 = 459 mm) behind. */
    private static final String MEASURED = """
            {"chassis": {"wheelbase": {"value": "66", "unit": "in"}},
             "tyres": {"front": {"diameter": {"value": "22", "unit": "in"}}, "rear": {"size": "205/50-10"}},
             "bare": {"axles": {"front": {"value": "200", "unit": "kg"}, "rear": {"value": "300", "unit": "kg"}},
                      "height": {"value": "600", "unit": "mm"}}}
            """;

    @Test
    void wheelbaseAndTyresAreToOneScale() {
        draw(MEASURED);
        double wheelbase = attribute("[data-wheel=rear]", "cx") - attribute("[data-wheel=front]", "cx");
        double front = 2 * attribute("[data-wheel=front]", "r");
        double rear = 2 * attribute("[data-wheel=rear]", "r");
        assertThat(wheelbase / front).isCloseTo(66.0 / 22.0, within(1e-9));
        assertThat(wheelbase / rear).isCloseTo(66 * INCH / 0.459, within(1e-9));
    }

    @Test
    void theCentreOfGravityIsWhereTheLoadsPutIt() {
        draw(MEASURED);
        double front = attribute("[data-wheel=front]", "cx");
        double wheelbase = attribute("[data-wheel=rear]", "cx") - front;
        double ground = attribute("line.ground", "y1");
        assertThat((attribute("[data-centre=driven]", "cx") - front) / wheelbase)
                .isCloseTo(0.6, within(1e-9));
        assertThat((ground - attribute("[data-centre=driven]", "cy")) / wheelbase)
                .isCloseTo(0.6 / (66 * INCH), within(1e-9));
        assertThat(page.locator("axlewright-elevation .of-wheelbase").textContent())
                .isEqualTo("1676 mm");
        assertThat(page.locator("axlewright-elevation .of-centre").textContent())
                .isEqualTo("1006 mm");
        assertThat(page.locator("axlewright-elevation .of-height").textContent())
                .isEqualTo("600 mm");
        assertThat(page.locator("axlewright-elevation text.load").allTextContents())
                .containsExactly("200 kg", "40 %", "300 kg", "60 %");
    }

    @Test
    void theTableSaysWhatTheDrawingShows() {
        choose(PLANNED);
        JsonNode setup = demo(PLANNED);
        String table = page.locator("axlewright-elevation table").textContent();
        for (String list : new String[] {"items", "occupants"}) {
            for (JsonNode part : setup.path(list)) {
                assertThat(table).contains(part.path("name").asString());
            }
        }
        int parts = setup.path("items").size() + setup.path("occupants").size();
        Locator balloons = page.locator("axlewright-elevation circle.balloon");
        assertThat(balloons.count()).isEqualTo(parts);
        JsonNode result = asked("centre-of-gravity", "metric", setup).path("result");
        assertThat(table)
                .contains(String.format(
                        "%.1f kg", result.at("/frontAxle/load/value").asDouble()));
        page.locator("axlewright-elevation")
                .screenshot(new Locator.ScreenshotOptions()
                        .setPath(java.nio.file.Path.of("target/screenshots/drawing.png")));
    }

    @Test
    void aWheelOfUnknownSizeIsDashedAndSaidSo() {
        draw("{\"chassis\": {\"wheelbase\": {\"value\": \"66\", \"unit\": \"in\"}}}");
        assertThat(page.locator("axlewright-elevation .tyre.unknown").count()).isEqualTo(2);
        assertThat(page.locator("axlewright-elevation table").textContent()).contains("not given");
    }
}
