package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type: their own units, their own spelling of a number, and their mistakes. */
class EntriesIT extends Browsing {

    private void weighed(String front, String rear) {
        button("Own numbers").click();
        open("chassis");
        enter("/chassis/wheelbase", "66", "in");
        open("bare");
        enter("/bare/axles/front", front, "lb");
        enter("/bare/axles/rear", rear, "lb");
        workItOut();
    }

    @Test
    void ownNumbersInInchesAndPounds() {
        page.locator("input[name=units][value=us]").check();
        weighed("400", "600");
        Printed mass = Printed.read(lead("centre-of-gravity", "/mass"));
        assertThat(mass.number()).isCloseTo(1000, within(0.5));
        assertThat(mass.unit()).isEqualTo("lb");
        // moments about the front axle: 66 in x 600 / 1000
        Printed x = Printed.read(lead("centre-of-gravity", "/position/x"));
        assertThat(x.number()).isCloseTo(39.6, within(0.005));
        assertThat(x.unit()).isEqualTo("in");
    }

    @Test
    void aDecimalCommaIsADecimalPointAndTheReadingIsShown() {
        weighed("400,5", "599,5");
        assertThat(page.locator("[id='echo:/bare/axles/front/value']").textContent())
                .isEqualTo("read as 400.5 lb");
        assertThat(Printed.read(lead("centre-of-gravity", "/frontAxle/share")).number())
                .isCloseTo(40.05, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"14:60, 4.2857", "12.3:1, 12.3", "'12,3', 12.3"})
    void aReductionMayBeTypedAsTeeth(String typed, String read) {
        button("Own numbers").click();
        open("drive");
        input("/drive/ratio").fill(typed);
        assertThat(page.locator("[id='echo:/drive/ratio']").textContent()).startsWith("read as " + read);
    }

    @Test
    void everyRefusalStandsAtItsFieldAtOnceAndWhatWasTypedStays() {
        choose(PLANNED);
        open("chassis");
        open("tyres");
        enter("/chassis/wheelbase", "900", "in");
        enter("/chassis/groundClearance", "ten", "in");
        input("/tyres/front/size").fill("round");
        button("Work it out").click();
        page.locator("#refusals h3").waitFor();
        assertThat(page.locator("[id='fault:/chassis/wheelbase']").textContent())
                .contains("900 in");
        assertThat(page.locator("[id='fault:/chassis/groundClearance']").textContent())
                .contains("ten");
        assertThat(page.locator("[id='fault:/tyres/front/size']").textContent()).contains("round");
        for (String name : List.of("/chassis/wheelbase/value", "/chassis/groundClearance/value", "/tyres/front/size")) {
            assertThat(input(name).getAttribute("aria-invalid")).as(name).isEqualTo("true");
        }
        assertThat(input("/chassis/wheelbase/value").inputValue()).isEqualTo("900");
        assertThat(input("/chassis/groundClearance/value").inputValue()).isEqualTo("ten");
        assertThat(input("/tyres/front/size").inputValue()).isEqualTo("round");
        assertThat(input("/pack/capacity/value").inputValue()).isNotBlank();
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("refusals");
        screenshot("refusals");
    }

    @Test
    void anEntryThatCannotBeReadGivesNoAnswerThatLeavesItOut() {
        choose(PLANNED);
        open("chassis");
        input("/chassis/groundClearance/value").fill("ten");
        button("Work it out").click();
        page.locator("#refusals h3").waitFor();
        assertThat(page.locator("axlewright-answer").count()).isZero();
    }

    @Test
    void whatWasTypedOutlivesAReload() {
        button("Own numbers").click();
        open("chassis");
        enter("/chassis/wheelbase", "66,5", "in");
        page.reload();
        page.waitForSelector("body[data-ready]");
        assertThat(input("/chassis/wheelbase/value").inputValue()).isEqualTo("66,5");
        assertThat(input("/chassis/wheelbase/unit").inputValue()).isEqualTo("in");
    }

    @Test
    void anotherVehicleCanBeTakenBack() {
        button("Own numbers").click();
        input("/name").fill("Mine");
        choose(PLANNED);
        button("Undo").click();
        assertThat(input("/name").inputValue()).isEqualTo("Mine");
    }

    @Test
    void listsGrowAndShrink() {
        choose(PLANNED);
        open("items");
        Locator entries = page.locator("[data-list='/items'] > details");
        int before = entries.count();
        button("Add to items").click();
        assertThat(entries.count()).isEqualTo(before + 1);
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo("/items/" + before + "/name");
        page.keyboard().type("toolbox");
        page.locator("[data-remove='/items/" + before + "']").click();
        assertThat(entries.count()).isEqualTo(before);
        workItOut();
        assertThat(page.locator("#refusals").isVisible()).isFalse();
    }
}
