package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Elevation and plan are to scale and say what the service says; what is moved on them is entered. */
class DrawingIT extends Browsing {

    private static final double INCH = 0.0254;

    private double attribute(String selector, String name) {
        return Double.parseDouble(page.locator("axlewright-drawing [data-view=elevation] " + selector)
                .getAttribute(name));
    }

    private void draw(String json) {
        page.evaluate(
                "draft => localStorage.setItem('axlewright.draft', JSON.stringify({draft, units: 'metric', opened:"
                        + " null}))",
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
        assertThat(page.locator("axlewright-drawing .of-wheelbase").textContent())
                .isEqualTo("1676 mm");
        assertThat(page.locator("axlewright-drawing .of-centre").textContent()).isEqualTo("1006 mm");
        assertThat(page.locator("axlewright-drawing .of-height").textContent()).isEqualTo("600 mm");
        assertThat(page.locator("axlewright-drawing text.load").allTextContents())
                .containsExactly("200 kg", "40 %", "300 kg", "60 %");
    }

    @Test
    void theTableSaysWhatTheDrawingShows() {
        choose(PLANNED);
        JsonNode setup = demo(PLANNED);
        String table = page.locator("axlewright-drawing table").textContent();
        for (String list : new String[] {"items", "occupants"}) {
            for (JsonNode part : setup.path(list)) {
                assertThat(table).contains(part.path("name").asString());
            }
        }
        int parts = setup.path("items").size() + setup.path("occupants").size();
        Locator balloons = page.locator("axlewright-drawing circle.balloon");
        assertThat(balloons.count()).as("in both views").isEqualTo(2 * parts);
        JsonNode result = asked("centre-of-gravity", "metric", setup).path("result");
        assertThat(table)
                .contains(String.format(
                        "%.1f kg", result.at("/frontAxle/load/value").asDouble()));
        page.locator("axlewright-drawing")
                .screenshot(new Locator.ScreenshotOptions()
                        .setPath(java.nio.file.Path.of("target/screenshots/drawing.png")));
    }

    @Test
    void aWheelOfUnknownSizeIsDashedAndSaidSo() {
        draw("{\"chassis\": {\"wheelbase\": {\"value\": \"66\", \"unit\": \"in\"}}}");
        assertThat(page.locator("axlewright-drawing [data-view=elevation] .tyre.unknown")
                        .count())
                .isEqualTo(2);
        assertThat(page.locator("axlewright-drawing table").textContent()).contains("not given");
    }

    @Test
    void theTracksAreToTheScaleOfTheWheelbase() {
        choose(PLANNED);
        String tyres = "axlewright-drawing [data-view=plan] rect.tyre";
        double perMetre = Double.parseDouble(
                page.locator("axlewright-drawing [data-view=plan]").getAttribute("data-per-metre"));
        JsonNode chassis = demo(PLANNED).path("chassis");
        int at = 0;
        for (String track : new String[] {"frontTrack", "rearTrack"}) {
            double right = Double.parseDouble(page.locator(tyres).nth(at++).getAttribute("y"));
            double left = Double.parseDouble(page.locator(tyres).nth(at++).getAttribute("y"));
            assertThat((left - right) / perMetre)
                    .as(track)
                    .isCloseTo(chassis.path(track).path("value").asDouble() / 1000, within(1e-9));
        }
        assertThat(page.locator("axlewright-drawing .of-front-track").textContent())
                .isEqualTo("870 mm");
        assertThat(page.locator("axlewright-drawing .of-rear-track").textContent())
                .isEqualTo("980 mm");
    }

    /** The pack goes a quarter of a metre rearward by pointer: its entry and the axle loads follow. */
    @Test
    void whatIsDraggedIsEnteredAndTheLoadsFollow() {
        choose(PLANNED);
        Locator view = page.locator("axlewright-drawing [data-view=elevation]");
        Locator pack = view.locator("[data-part='/items/1']");
        String before =
                page.locator("axlewright-drawing text.load.value").last().textContent();
        var box = pack.locator(".grip").boundingBox();
        double pixels = 0.25 * Double.parseDouble(view.getAttribute("data-per-metre"));
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 + pixels / 2, box.y + box.height / 2);
        page.mouse().move(box.x + box.width / 2 + pixels, box.y + box.height / 2);
        page.evaluate("document.querySelector('#status').textContent = ''");
        page.mouse().up();
        waitForAnswers();
        double x = Double.parseDouble(input("/items/1/position/x/value").inputValue());
        double entered = demo(PLANNED).at("/items/1/position/x/value").asDouble(); // mm
        assertThat(x - entered).isCloseTo(250, within(10.0));
        assertThat(page.locator("axlewright-drawing text.load.value").last().textContent())
                .isNotEqualTo(before);
        // moments about the front axle: a mass m moved by d puts m d / wheelbase more on the rear axle
        double mass = demo(PLANNED).at("/items/1/mass/value").asDouble();
        double wheelbase = demo(PLANNED).at("/chassis/wheelbase/value").asDouble();
        assertThat(Printed.read(lead("centre-of-gravity", "/rearAxle/load")).number()
                        - Printed.read(before).number())
                .isCloseTo(mass * (x - entered) / wheelbase, within(0.11));
    }

    @Test
    void arrowKeysMoveAPartByACentimetreAndUndoTakesItBack() {
        choose(PLANNED);
        String typed = input("/items/1/position/x/value").inputValue();
        page.locator("[data-view=plan] [data-part='/items/1']").focus();
        page.evaluate("document.querySelector('#status').textContent = ''");
        page.keyboard().press("ArrowRight");
        assertThat(input("/items/1/position/x/value").inputValue())
                .isEqualTo(String.valueOf(Integer.parseInt(typed) + 10));
        waitForAnswers();
        assertThat(page.evaluate("document.activeElement.dataset.part"))
                .as("the focus stays on the part")
                .isEqualTo("/items/1");
        page.keyboard().press("ArrowUp");
        assertThat(input("/items/1/position/y/value").inputValue()).isEqualTo("10");
        button("Undo").click();
        button("Undo").click();
        assertThat(input("/items/1/position/x/value").inputValue()).isEqualTo(typed);
        button("Redo").click();
        assertThat(input("/items/1/position/x/value").inputValue()).isNotEqualTo(typed);
    }
}
