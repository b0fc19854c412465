package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Plots are drawn from the service's numbers, have a table and can be taken home. */
class PlotsIT extends Browsing {

    private Locator plot(String name) {
        choose(PLANNED);
        Locator plot = page.locator("details[data-plot='" + name + "']");
        plot.locator("summary").first().click();
        plot.locator(".paper svg").waitFor();
        return plot;
    }

    @ParameterizedTest
    @ValueSource(strings = {"thrust", "climb", "range", "charge", "charger", "cable", "share", "drop", "cost"})
    void isDrawnAndToldAsATable(String name) {
        Locator plot = plot(name);
        assertThat(plot.locator(".plot-table tbody tr").count()).isGreaterThan(5);
        assertThat(plot.locator(".plot-table td").first().textContent()).isNotBlank();
        plot.screenshot(new Locator.ScreenshotOptions().setPath(Path.of("target/screenshots/plot-" + name + ".png")));
    }

    @Test
    void theShareInTheTableIsWhatTheServiceAnswersAtThatPlace() {
        Locator plot = plot("share");
        String part = plot.locator("select").inputValue();
        Locator row = plot.locator(".plot-table tbody tr").nth(30);
        plot.locator(".plot-table summary").click();
        var setup = (tools.jackson.databind.node.ObjectNode) demo(PLANNED).deepCopy();
        ((tools.jackson.databind.node.ObjectNode) setup.at("/items/" + part + "/position/x"))
                .put("value", Printed.read(row.locator("th").textContent()).number())
                .put("unit", "mm");
        JsonNode answer = asked("centre-of-gravity", "metric", setup);
        assertThat(Printed.read(row.locator("td").textContent()).number())
                .isCloseTo(100 * answer.at("/result/frontAxle/share").asDouble(), within(0.1));
    }

    @Test
    void isSavedAsDrawingPictureAndTable() throws IOException {
        Locator plot = plot("drop");
        assertThat(new String(saved(plot, "svg"), StandardCharsets.UTF_8))
                .startsWith("<svg")
                .contains("<path");
        assertThat(saved(plot, "png")).startsWith(0x89, 'P', 'N', 'G');
        List<String> lines =
                new String(saved(plot, "csv"), StandardCharsets.UTF_8).lines().toList();
        JsonNode candidates = asked("conductor-size", "metric", demo(PLANNED)).at("/result/circuits/0/candidates");
        assertThat(lines).hasSize(1 + candidates.size());
        String[] first = lines.get(1).split(",");
        assertThat(first[0]).isEqualTo(candidates.get(0).path("size").asString());
        assertThat(Double.parseDouble(first[1]))
                .isCloseTo(100 * candidates.get(0).path("dropShare").asDouble(), within(1e-9));
    }

    private byte[] saved(Locator plot, String kind) throws IOException {
        Download download = page.waitForDownload(
                () -> plot.locator("[data-save=" + kind + "]").click());
        return Files.readAllBytes(download.path());
    }
}
