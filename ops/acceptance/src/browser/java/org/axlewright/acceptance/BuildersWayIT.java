package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the tape measure to the printed sheet, as a builder goes. */
class BuildersWayIT extends Browsing {

    @Test
    void entersReadsMovesComparesSavesAndFindsItAgain() {
        button("Own numbers").click();
        input("/name").fill("Runabout of the west orchard");
        open("chassis");
        input("/chassis/wheelbase/value").fill("5' 6\"");
        assertThat(page.locator("[id='echo:/chassis/wheelbase/value']").textContent())
                .isEqualTo("read as 66 in");
        assertThat(input("/chassis/wheelbase/unit").inputValue()).isEqualTo("in");
        open("bare");
        input("/bare/axles/front/value").fill("182 kg");
        input("/bare/axles/rear/value").fill("268 kg");
        input("/bare/height/value").fill("22 in");
        open("items");
        button("Add to items").click();
        input("/items/0/name").fill("pack behind the axle");
        input("/items/0/mass/value").fill("60 kg");
        input("/items/0/position/x/value").fill("2 m");
        input("/items/0/position/z/value").fill("600 mm");
        button("Keep these entries as found").click();
        workItOut();

        // moments about the front axle: 66 in = 1.6764 m
        double rear = 268 + 60 * 2 / 1.6764;
        assertThat(Printed.read(lead("centre-of-gravity", "/rearAxle/load")).number())
                .isCloseTo(rear, within(0.05));
        assertThat(page.locator("axlewright-findings .tallies").textContent()).isNotBlank();

        page.locator("[data-view=elevation] [data-part='/items/0']").focus();
        for (int press = 0; press < 50; press++) {
            page.keyboard().press("ArrowLeft"); // 1 cm each
        }
        page.waitForCondition(() -> Math.abs(Printed.read(lead("centre-of-gravity", "/rearAxle/load"))
                                .number()
                        - (268 + 60 * 1.5 / 1.6764))
                < 0.05);
        assertThat(input("/items/0/position/x/value").inputValue()).isEqualTo("1.5");

        button("Compare").click();
        page.locator(".compared table").first().waitFor();
        assertThat(page.locator(".compared").textContent()).contains("Front axle › share");

        button("Save").click();
        page.locator("axlewright-setups .message", new Page.LocatorOptions().setHasText("Saved"))
                .waitFor();
        page.reload();
        page.waitForSelector("body[data-ready]");
        waitForAnswers();
        assertThat(input("/items/0/position/x/value").inputValue()).isEqualTo("1.5");
        assertThat(input("/chassis/wheelbase/value").inputValue()).isEqualTo("5' 6\"");
        assertThat(operations())
                .contains(
                        "POST /v1/assessments",
                        "POST /v1/centre-of-gravity",
                        "POST /v1/comparisons",
                        "POST /v1/setups");
    }

    /** Papers are of different size; the sheet is whole on both and has black on white, whatever the screen shows. */
    @ParameterizedTest
    @CsvSource({"A4, 595, 842", "Letter, 612, 792"})
    void printsOnPaper(String format, int width, int height) {
        page.locator("#look").selectOption("dark");
        choose(PLANNED);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
        assertThat(page.evaluate("getComputedStyle(document.documentElement).getPropertyValue('--ink').trim()"))
                .isEqualTo("#000");
        assertThat(page.locator("#bar").isVisible()).isFalse();
        byte[] pdf = page.pdf(new Page.PdfOptions()
                .setFormat(format)
                .setPath(java.nio.file.Path.of("target/screenshots/sheet-" + format + ".pdf")));
        String raw = new String(pdf, StandardCharsets.ISO_8859_1);
        assertThat(raw).startsWith("%PDF");
        java.util.regex.Matcher box = java.util.regex.Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)]")
                .matcher(raw);
        assertThat(box.find()).isTrue();
        assertThat(Double.parseDouble(box.group(1))).isCloseTo(width, within(1.0));
        assertThat(Double.parseDouble(box.group(2))).isCloseTo(height, within(1.0));
    }

    @Test
    void aLostConnectionInMidEntryLosesNothing() {
        choose(PLANNED);
        open("chassis");
        cut();
        input("/chassis/wheelbase/value").fill("1,7 m");
        button("Work it out").click();
        page.locator("#status", new Page.LocatorOptions().setHasText("kept on this device"))
                .waitFor();
        assertThat(input("/chassis/wheelbase/value").inputValue()).isEqualTo("1,7 m");
        mend();
        workItOut();
        assertThat(page.locator("axlewright-drawing .of-wheelbase").textContent())
                .isEqualTo("1700 mm");
        page.reload();
        page.waitForSelector("body[data-ready]");
        assertThat(input("/chassis/wheelbase/value").inputValue()).isEqualTo("1,7 m");
    }

    /** What answers are shown with is fetched with the first entry: it may be that which is not reached. */
    @Test
    void aConnectionLostBeforeTheFirstAnswerLosesNothing() {
        button("Own numbers").click();
        open("chassis");
        open("bare");
        cut();
        enter("/chassis/wheelbase", "66", "in");
        enter("/bare/axles/front", "200", "kg");
        enter("/bare/axles/rear", "300", "kg");
        button("Work it out").click();
        page.locator("#status", new Page.LocatorOptions().setHasText("kept on this device"))
                .waitFor();
        mend();
        workItOut();
        assertThat(Printed.read(lead("centre-of-gravity", "/position/x")).number())
                .isCloseTo(66 * 0.0254 * 0.6, within(5e-4));
    }

    /** One refusal of each kind of field, by the page or by the service, at the field that caused it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        chassis   | /chassis/wheelbase/value      | 900 in   | /chassis/wheelbase       | 900 in
        chassis   | /chassis/wheelbase/value      | 12 kg    | /chassis/wheelbase       | 12 kg
        chassis   | /chassis/wheelbase/value      | 1,670    | /chassis/wheelbase       | 1670
        chassis   | /chassis/seats                | many     | /chassis/seats           | many
        pack      | /pack/usableShare             | 180 %    | /pack/usableShare        | 1
        pack      | /pack/cellsInSeries           | 900S     | /pack/cellsInSeries      | 900
        drive     | /drive/ratio                  | 0:14     | /drive/ratio             | 0:14
        tyres     | /tyres/front/size             | round    | /tyres/front/size        | round
        supply    | /supply/cord/size             | thick    | /supply/cord/size        | thick
        energyPrice | /energyPrice/amount         | dear     | /energyPrice             | dear
        energyPrice | /energyPrice/currency       | bottle caps | /energyPrice          | BOTTLE CAPS
        storage   | /storage/from                 | yesterday | /storage/from           | yesterday
        """)
    void aRefusalStandsAtItsField(String section, String name, String typed, String pointer, String said) {
        choose(PLANNED);
        open(section);
        input(name).fill(typed);
        button("Work it out").click();
        page.locator("#refusals h3").waitFor();
        assertThat(page.locator("[id='fault:" + pointer + "']").textContent()).containsIgnoringCase(said);
        assertThat(input(name).inputValue()).isEqualTo(typed);
        assertThat(page.locator("#refusals a[data-field]").first().textContent())
                .isNotBlank();
    }

    @Test
    void anAssumptionBecomesAnEntryWithOneTap() {
        choose(PLANNED);
        var assumed = answer("stability").locator("details.assumed");
        assumed.locator("summary").first().click();
        var enter = assumed.locator("button[data-enter]").first();
        String pointer = enter.getAttribute("data-enter");
        enter.click();
        assertThat((String) page.evaluate("document.activeElement.name")).startsWith(pointer);
        assertThat((String) page.evaluate("document.activeElement.value")).isNotBlank();
        workItOut();
        assertThat(page.locator("button[data-enter='" + pointer + "']").count()).isZero();
    }

    @Test
    void theUnitOfAFieldIsRemembered() {
        button("Own numbers").click();
        open("chassis");
        input("/chassis/groundClearance/value").fill("5\"");
        button("Own numbers").click();
        open("chassis");
        assertThat(input("/chassis/groundClearance/value").inputValue()).isEmpty();
        assertThat(input("/chassis/groundClearance/unit").inputValue()).isEqualTo("in");
    }
}
