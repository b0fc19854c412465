package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The retailer's way: elements on a page of another origin, under the strictest policy that they work with. */
class EmbedIT extends Browsing {

    /** What the script and everything it loads may weigh, compressed, bytes. */
    private static final int WEIGHT = 40 * 1024;

    /** No inline style, no inline script, no string that becomes code. */
    private static final String POLICY =
            "default-src 'none'; script-src %1$s; connect-src %1$s; style-src 'none'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'"
                    .formatted(ADDRESS);

    private static final String SHOP = """
            <!DOCTYPE html>
            <html lang="en">
            <head><meta charset="utf-8"><title>Orchard parts</title><script type="module" src="%s/embed/v1/axlewright.js"></script></head>
            <body>
            <h1>Charger, 18 A</h1>
            <axlewright-charge-time heading-level="2" pack-chemistry="lfp" pack-cells-in-series="16" pack-capacity="105 Ah" charger-current="18 A" charger-efficiency="0.92"
                supply-outlet="nema-5-15" charge-from="20 %%"><p>Fills the runabout's pack overnight.</p></axlewright-charge-time>
            <axlewright-conductor-size heading-level="2" units="us" fields="circuits-0-continuous-current circuits-0-length"
                setup='{"circuits": [{"length": {"value": 6, "unit": "ft"}, "continuousCurrent": {"value": 18, "unit": "A"}, "voltage": {"value": 51.2, "unit": "V"}}]}'><p>Lead to match.</p></axlewright-conductor-size>
            <axlewright-storage heading-level="2" lang="es-ES" pack-chemistry="lfp" pack-capacity="105 Ah" pack-state-of-charge="0,9" storage-from="2026-11-25"
                storage-duration="4 month" storage-temperature="6 degC"><p>Guarda bien.</p></axlewright-storage>
            </body>
            </html>
            """.formatted(ADDRESS);

    private final List<String> protests = new CopyOnWriteArrayList<>();
    private HttpServer shopServer;
    private BrowserContext other;

    @AfterEach
    void closeTheShop() {
        if (other != null) {
            other.close();
        }
        if (shopServer != null) {
            shopServer.stop(0);
        }
    }

    /** Serves a page from an origin of its own and opens it. */
    private Page shop(String html, Browser.NewContextOptions options) {
        try {
            shopServer = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        shopServer.createContext("/", exchange -> {
            byte[] body = html.getBytes(StandardCharsets.UTF_8);
            boolean found = exchange.getRequestURI().getPath().equals("/");
            exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
            exchange.getResponseHeaders().set("Content-Security-Policy", POLICY);
            exchange.sendResponseHeaders(found ? 200 : 404, found ? body.length : -1);
            if (found) {
                exchange.getResponseBody().write(body);
            }
            exchange.close();
        });
        shopServer.start();
        other = page.context().browser().newContext(options.setLocale("en-US"));
        other.setDefaultTimeout(90_000);
        Page shop = other.newPage();
        shop.onPageError(protests::add);
        shop.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("status of 4")) {
                protests.add(message.text());
            }
        });
        shop.navigate("http://127.0.0.1:" + shopServer.getAddress().getPort() + "/");
        return shop;
    }

    private Page shop() {
        return shop(SHOP, new Browser.NewContextOptions());
    }

    private static Locator lead(Page shop, String element, String pointer) {
        return shop.locator(element + " [data-result='" + pointer + "']");
    }

    private static double number(Locator lead) {
        return Printed.read(lead.textContent()).number();
    }

    /** The same numbers, 18.0 written as 18. */
    private static JsonNode asScriptsSpellIt(Page shop, JsonNode answer) {
        return Service.JSON.readTree(
                (String) shop.evaluate("(text) => JSON.stringify(JSON.parse(text))", answer.toString()));
    }

    private static JsonNode json(String text) {
        return Service.JSON.readTree(text.replace('\'', '"'));
    }

    /** Text of the element's answer, as the service gives it, comes out of the same numbers. */
    @Test
    void threeElementsAnswerOnAPageOfAnotherOriginUnderAStrictPolicy() {
        Page shop = shop();
        JsonNode charged = asked("charge-time", "metric", json("""
                        {'pack': {'chemistry': 'lfp', 'cellsInSeries': 16, 'capacity': {'value': 105, 'unit': 'Ah'}},
                         'charger': {'current': {'value': 18, 'unit': 'A'}, 'efficiency': 0.92}, 'supply': {'outlet': 'nema-5-15'}, 'charge': {'from': 0.2}}"""));
        assertThat(number(lead(shop, "axlewright-charge-time", "/time")))
                .isCloseTo(charged.at("/result/time/value").asDouble(), within(1e-3));
        assertThat(shop.locator("axlewright-charge-time [name='pack-capacity']").inputValue())
                .isEqualTo("105");
        JsonNode sized = asked("conductor-size", "us", json("""
                        {'circuits': [{'length': {'value': 6, 'unit': 'ft'}, 'continuousCurrent': {'value': 18, 'unit': 'A'}, 'voltage': {'value': 51.2, 'unit': 'V'}}]}"""));
        assertThat(lead(shop, "axlewright-conductor-size", "/circuits/0/size").textContent())
                .isEqualTo(sized.at("/result/circuits/0/size").asString());
        assertThat(shop.locator("axlewright-conductor-size input").count()).isEqualTo(2);
        Locator stored = shop.locator("axlewright-storage");
        assertThat(stored.locator("[part=title]").textContent()).isEqualTo("Almacenamiento");
        assertThat(lead(shop, "axlewright-storage", "/stateOfCharge").textContent())
                .matches("\\d+,\\d+ %");
        assertThat(stored.locator("[name='pack-state-of-charge']").inputValue()).isEqualTo("0,9");
        assertThat(shop.locator("axlewright-charge-time > p").isVisible()).isFalse();
        assertThat(protests).isEmpty();
    }

    @Test
    void typingChangesTheAnswerToThatOfTheService() {
        Page shop = shop();
        Locator time = lead(shop, "axlewright-charge-time", "/time");
        String before = time.textContent();
        shop.locator("axlewright-charge-time [name='pack-capacity']").fill("160 Ah");
        shop.locator("axlewright-charge-time [name='supply-cord-size']").fill("#14");
        shop.locator("axlewright-charge-time [name='supply-cord-length']").fill("50'");
        shop.waitForCondition(
                () -> lead(shop, "axlewright-charge-time", "/time").count() == 1
                        && !time.textContent().equals(before)
                        && shop.evaluate("document.querySelector('axlewright-charge-time').answer?.result.cordDrop")
                                != null);
        JsonNode expected = asked("charge-time", "metric", json("""
                        {'pack': {'chemistry': 'lfp', 'cellsInSeries': 16, 'capacity': {'value': 160, 'unit': 'Ah'}},
                         'charger': {'current': {'value': 18, 'unit': 'A'}, 'efficiency': 0.92}, 'charge': {'from': 0.2},
                         'supply': {'outlet': 'nema-5-15', 'cord': {'size': '14 AWG', 'length': {'value': 50, 'unit': 'ft'}}}}"""));
        JsonNode answer = Service.JSON.readTree(
                (String) shop.evaluate("JSON.stringify(document.querySelector('axlewright-charge-time').answer)"));
        assertThat(answer).isEqualTo(asScriptsSpellIt(shop, expected));
        assertThat(number(time)).isCloseTo(expected.at("/result/time/value").asDouble(), within(1e-3));
        assertThat(shop.locator("axlewright-charge-time [id='supply-cord-length-unit']")
                        .inputValue())
                .isEqualTo("ft");
        assertThat(protests).isEmpty();
    }

    @Test
    void eventsCarryTheRequestAndTheAnswerOfTheContract() {
        Page shop = shop();
        lead(shop, "axlewright-charge-time", "/time").waitFor();
        lead(shop, "axlewright-conductor-size", "/circuits/0/size").waitFor();
        lead(shop, "axlewright-storage", "/stateOfCharge").waitFor();
        shop.evaluate("""
                () => {
                    window.heard = [];
                    for (const type of ['change', 'result', 'refusal']) {
                        document.body.addEventListener(type, (event) => window.heard.push({ type, target: event.target.localName, detail: event.detail }));
                    }
                }""");
        Locator capacity = shop.locator("axlewright-charge-time [name='pack-capacity']");
        capacity.fill("120");
        shop.waitForCondition(() -> (Boolean) shop.evaluate("heard.some((one) => one.type === 'result')"));
        capacity.fill("-5");
        shop.waitForCondition(() -> (Boolean) shop.evaluate("heard.some((one) => one.type === 'refusal')"));
        JsonNode heard = Service.JSON.readTree((String) shop.evaluate("JSON.stringify(heard)"));
        List<String> types = new ArrayList<>();
        heard.forEach(one ->
                types.add(one.path("type").asString() + " " + one.path("target").asString()));
        assertThat(types)
                .containsExactly(
                        "change axlewright-charge-time",
                        "result axlewright-charge-time",
                        "change axlewright-charge-time",
                        "refusal axlewright-charge-time");
        assertThat(heard.at("/0/detail/request/setup/pack/capacity/value").asDouble())
                .isEqualTo(120);
        assertThat(heard.at("/1/detail/request")).isEqualTo(heard.at("/0/detail/request"));
        assertThat(heard.at("/1/detail/answer"))
                .isEqualTo(asScriptsSpellIt(shop, asked("charge-time", "metric", heard.at("/1/detail/request/setup"))));
        assertThat(heard.at("/3/detail/problem/errors/0/pointer").asString()).isEqualTo("/pack/capacity/value");
    }

    @Test
    void aRefusalStandsAtItsFieldAndNoAnswerStandsBesideIt() {
        Page shop = shop();
        lead(shop, "axlewright-charge-time", "/time").waitFor();
        Locator capacity = shop.locator("axlewright-charge-time [name='pack-capacity']");
        Locator fault = shop.locator("axlewright-charge-time [id='fault-pack-capacity']");
        capacity.fill("-5");
        fault.waitFor();
        assertThat(fault.textContent()).contains("at least", "-5".replace('-', '−'), "Ah");
        assertThat(capacity.getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(lead(shop, "axlewright-charge-time", "/time").count()).isZero();
        capacity.fill("a lot");
        shop.waitForCondition(() -> fault.textContent().contains("a lot"));
        capacity.fill("");
        shop.waitForCondition(() -> fault.textContent().equals("Needed."));
        assertThat(capacity.getAttribute("aria-invalid")).isNull();
        capacity.fill("105");
        lead(shop, "axlewright-charge-time", "/time").waitFor();
        assertThat(fault.isVisible()).isFalse();
    }

    @Test
    void whatServiceAwayMeansIsSaidAndNothingTypedIsLost() {
        Page shop = shop();
        Locator time = lead(shop, "axlewright-charge-time", "/time");
        String before = time.textContent();
        shop.evaluate("""
                () => {
                    window.failures = [];
                    document.querySelector('axlewright-charge-time').addEventListener('error', (event) => window.failures.push(event.detail.status));
                }""");
        other.route("**/v1/charge-time*", route -> route.abort());
        Locator capacity = shop.locator("axlewright-charge-time [name='pack-capacity']");
        capacity.fill("120");
        Locator status = shop.locator("axlewright-charge-time [role=status]");
        status.getByText("does not answer").waitFor();
        assertThat(capacity.inputValue()).isEqualTo("120");
        assertThat(shop.locator("axlewright-charge-time .stale").count()).isOne();
        assertThat(shop.evaluate("failures[0]")).isEqualTo(0);
        other.unroute("**/v1/charge-time*");
        status.locator("button").click();
        shop.waitForCondition(() -> !time.textContent().equals(before));
        assertThat(shop.locator("axlewright-charge-time .stale").count()).isZero();
    }

    @Test
    void theNewestAnswerWins() {
        Page shop = shop();
        lead(shop, "axlewright-charge-time", "/time").waitFor();
        boolean[] first = {true};
        other.route("**/v1/charge-time*", route -> {
            if (first[0] && route.request().method().equals("POST")) {
                first[0] = false;
                shop.locator("axlewright-charge-time [name='pack-capacity']").fill("200");
            }
            route.resume();
        });
        shop.locator("axlewright-charge-time [name='pack-capacity']").fill("50");
        shop.waitForCondition(() -> (Boolean) shop.evaluate(
                "document.querySelector('axlewright-charge-time').request.setup.pack.capacity.value === 200"));
        double newest = asked("charge-time", "metric", Service.JSON.readTree((String) shop.evaluate(
                        "JSON.stringify(document.querySelector('axlewright-charge-time').request.setup)")))
                .at("/result/time/value")
                .asDouble();
        shop.waitForCondition(() -> (Boolean) shop.evaluate(
                "(expected) => Math.abs(document.querySelector('axlewright-charge-time').answer?.result.time.value - expected) < 1e-9",
                newest));
    }

    @Test
    void theShopDecidesTheLook() {
        Page shop = shop();
        Locator section = shop.locator("axlewright-charge-time [part=element]");
        section.waitFor();
        shop.evaluate("""
                () => {
                    const { style } = document.querySelector('axlewright-charge-time');
                    style.setProperty('--axlewright-ink', 'rgb(1, 2, 3)');
                    style.setProperty('--axlewright-radius', '7px');
                    style.setProperty('--axlewright-font', 'monospace');
                    const sheet = new CSSStyleSheet();
                    sheet.replaceSync('axlewright-charge-time::part(title) { letter-spacing: 9px }');
                    document.adoptedStyleSheets = [sheet];
                }""");
        assertThat(style(section, "color")).isEqualTo("rgb(1, 2, 3)");
        assertThat(style(section, "borderTopLeftRadius")).isEqualTo("7px");
        assertThat(style(section, "fontFamily")).isEqualTo("monospace");
        assertThat(style(shop.locator("axlewright-charge-time [part=title]"), "letterSpacing"))
                .isEqualTo("9px");
        assertThat(style(shop.locator("axlewright-storage [part=element]"), "color"))
                .isNotEqualTo("rgb(1, 2, 3)");
    }

    private static Object style(Locator of, String property) {
        return of.evaluate("(node, property) => getComputedStyle(node)[property]", property);
    }

    @Test
    void textOfTheShopIsReadWhenScriptsAreOff() {
        Page shop = shop(SHOP, new Browser.NewContextOptions().setJavaScriptEnabled(false));
        for (String text : List.of("Fills the runabout's pack overnight.", "Lead to match.", "Guarda bien.")) {
            assertThat(shop.getByText(text).isVisible()).as(text).isTrue();
        }
    }

    @Test
    void anotherPartChosenByThePageIsAnswered() {
        Page shop = shop();
        Locator time = lead(shop, "axlewright-charge-time", "/time");
        String before = time.textContent();
        shop.evaluate("document.querySelector('axlewright-charge-time').setAttribute('charger-current', '30 A')");
        shop.waitForCondition(() -> !time.textContent().equals(before));
        assertThat(shop.locator("axlewright-charge-time [name='charger-current']")
                        .inputValue())
                .isEqualTo("30");
        shop.evaluate("document.querySelector('axlewright-charge-time').setAttribute('charger-curent', '30 A')");
        shop.locator("axlewright-charge-time [part=faults] li").waitFor();
        assertThat(shop.locator("axlewright-charge-time [part=faults]").textContent())
                .contains("charger-curent");
    }

    @ParameterizedTest
    @CsvSource({"en", "es"})
    void theScriptAndAllItLoadsAreLight(String language) {
        Set<String> loaded = new LinkedHashSet<>();
        Page shop = page.context().newPage();
        shop.onResponse(response -> {
            if (response.url().endsWith(".js")) {
                loaded.add(response.url());
            }
        });
        shop.navigate(ADDRESS + "/page/icon.svg");
        shop.evaluate("""
                async ([address, language]) => {
                    const { words } = await import(address + '/embed/v1/words.js');
                    await import(address + '/embed/v1/axlewright.js');
                    await words(language);
                }""", List.of(ADDRESS, language));
        assertThat(loaded).contains(ADDRESS + "/embed/v1/axlewright.js", ADDRESS + "/embed/v1/" + language + ".js");
        int weight = loaded.stream()
                .mapToInt(url ->
                        compressed(SERVICE.get(url.substring(ADDRESS.length())).body()))
                .sum();
        assertThat(weight).as("bytes of " + loaded).isPositive().isLessThan(WEIGHT);
        shop.close();
    }

    private static int compressed(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.size();
    }

    @Test
    void everyCalculationHasItsElementAndItsPlaceInTheGalleryAndInTheContractOfAttributes() throws IOException {
        gallery();
        String docs = Files.readString(Path.of(System.getProperty("axlewright.checkout"), "docs/embed.md"));
        List<String> calculations = SERVICE.calculations();
        assertThat(calculations).hasSizeGreaterThan(20);
        for (String name : calculations) {
            String tag = "axlewright-" + name;
            assertThat(page.evaluate("(tag) => customElements.get(tag)?.calculation", tag))
                    .isEqualTo(name);
            assertThat(page.locator(tag).count()).as(tag + " in the gallery").isOne();
            Set<String> documented = attributes(section(docs, "### `<" + tag + ">`"));
            List<String> shown = strings("(name) => import('/embed/v1/shows.js').then((it) => it.SHOWS[name])", name);
            assertThat(documented).as(tag + " in docs/embed.md").isEqualTo(new LinkedHashSet<>(shown));
            assertThat(strings(
                            "(tag) => [...document.querySelector(tag).shadowRoot.querySelectorAll('[name]')].map((one) => one.name)",
                            tag))
                    .as(tag + " shows")
                    .containsExactlyInAnyOrderElementsOf(shown); // sections stand together
        }
        Set<String> own = attributes(section(docs, "## Attributes"));
        assertThat(own)
                .isEqualTo(new LinkedHashSet<>(
                        strings("() => import('/embed/v1/element.js').then((it) => it.ATTRIBUTES)", null)));
        assertThat(new TreeSet<>(first(section(docs, "## Theme"), "--axlewright-[a-z]+")))
                .isEqualTo(new TreeSet<>(first(SERVICE.get("/embed/v1/style.js").body(), "--axlewright-[a-z]+")));
        Set<String> parts = new TreeSet<>(strings(
                "() => [...document.querySelectorAll('main [id] > *')].flatMap((one) => [...(one.shadowRoot?.querySelectorAll('[part]') ?? [])]).flatMap((one) => [...one.part])",
                null));
        assertThat(new TreeSet<>(attributes(section(docs, "## Parts")))).containsAll(parts);
    }

    /** A customer who goes on to the page finds the same words. */
    @Test
    void theSpanishOfTheElementsIsThatOfThePage() {
        gallery();
        List<String> other = strings("""
                () => Promise.all([import('/embed/v1/es.js'), import('/page/catalogue/es-names.js')]).then(([elements, { names }]) =>
                    Object.entries(elements.default.names).filter(([name, text]) => names[name] !== text).map(([name, text]) => name + ': ' + text))""", null);
        assertThat(other).isEmpty();
        assertThat(strings("""
                () => Promise.all([import('/embed/v1/es.js'), import('/embed/v1/en.js')]).then(([spanish, english]) =>
                    Object.keys(english.default.texts).filter((key) => !(key in spanish.default.texts)))""", null)).isEmpty();
    }

    /** Every attribute says a field that the contract has: each of its names leads to a schema. */
    @Test
    void theFieldsAreThoseOfTheContract() {
        gallery();
        JsonNode contract = Service.JSON.readTree(SERVICE.get("/v3/api-docs").body());
        List<String> pointers = strings("""
                () => Promise.all([import('/embed/v1/shows.js'), import('/embed/v1/form.js')]).then(([{ SHOWS }, { field }]) =>
                    [...new Set(Object.values(SHOWS).flat())].map((name) => field(name).pointer))""", null);
        assertThat(pointers).hasSizeGreaterThan(100);
        for (String pointer : pointers) {
            JsonNode at = contract.at("/components/schemas/Setup");
            for (String name : pointer.substring(1).split("/")) {
                at = name.matches("\\d+")
                        ? at.path("items")
                        : at.path("properties").path(name);
                while (at.has("$ref")) {
                    at = contract.at(at.path("$ref").asString().substring(1));
                }
                assertThat(at.isMissingNode()).as(pointer).isFalse();
            }
        }
    }

    @Test
    void everyElementOfTheGalleryAnswersAndCanBeCopied() {
        gallery();
        for (String name : SERVICE.calculations()) {
            Locator element = page.locator("axlewright-" + name);
            assertThat(element.locator("[part=lead-value]").count()).as(name).isPositive();
            assertThat(element.locator("[part=claim]").isVisible()).as(name).isTrue();
        }
        page.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        page.locator("#charge-time button", new Page.LocatorOptions().setHasText("Copy"))
                .click();
        page.locator("#charge-time .snippet [role=status]", new Page.LocatorOptions().setHasText("Copied"))
                .waitFor();
        String copied = (String) page.evaluate("navigator.clipboard.readText()");
        assertThat(copied)
                .startsWith("<axlewright-charge-time")
                .contains("pack-capacity=\"105 Ah\"")
                .endsWith("</axlewright-charge-time>");
    }

    @ParameterizedTest
    @CsvSource({"320, 640, LIGHT, en-GB", "320, 640, DARK, es", "1280, 900, LIGHT, es", "1280, 900, DARK, en-GB"})
    void theGalleryFitsItsWindowAndAxeFindsNothing(int width, int height, ColorScheme scheme, String language) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.setViewportSize(width, height);
        gallery();
        page.locator("[name=lang]").selectOption(language);
        page.waitForCondition(() -> page.locator("axlewright-charge-time [part=element]")
                .getAttribute("lang")
                .equals(language.substring(0, 2)));
        settled();
        page.evaluate("document.querySelectorAll('details').forEach((one) => one.open = true)");
        page.evaluate(
                "document.querySelectorAll('main > section > *').forEach((one) => one.shadowRoot?.querySelectorAll('details').forEach((inner) => inner.open = true))");
        assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isTrue();
        screenshot("gallery-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT));
        AxeResults results = new AxeBuilder(page).analyze();
        assertThat(results.getViolations())
                .extracting(rule -> rule.getId() + " " + rule.getNodes().get(0).getHtml())
                .isEmpty();
        assertThat(results.getPasses()).isNotEmpty();
    }

    @Test
    void theKeyboardReachesFieldAnswerAndLink() {
        gallery();
        page.locator("axlewright-charge-time [name='pack-chemistry']").focus();
        Set<String> reached = new LinkedHashSet<>();
        for (int presses = 0; presses < 60; presses++) {
            page.keyboard().press("Tab");
            reached.add((String) page.evaluate("""
                    () => {
                        const inner = document.activeElement.shadowRoot?.activeElement;
                        return inner ? inner.localName + ' ' + (inner.getAttribute('name') ?? inner.getAttribute('part') ?? inner.parentElement.getAttribute('part')) : document.activeElement.localName;
                    }"""));
        }
        assertThat(reached)
                .contains(
                        "input pack-capacity",
                        "select supply-outlet",
                        "summary assumptions",
                        "summary working",
                        "a link");
        page.locator("axlewright-charge-time [name='pack-capacity']").fill("200");
        page.keyboard().press("Enter");
        page.waitForCondition(() -> (Boolean)
                page.evaluate("(document.querySelector('axlewright-charge-time').answer?.result.time.value ?? 0) > 9"));
    }

    @Test
    void thePageOfTheServiceTakesTheNumbersOver() {
        gallery();
        String link = page.locator("axlewright-charge-time [part=link]").getAttribute("href");
        Page whole = page.context().newPage();
        whole.navigate(link);
        whole.waitForSelector("body[data-ready]");
        whole.locator("axlewright-answer[data-question='charge-time'] [data-result='/time']")
                .waitFor();
        assertThat(whole.locator("axlewright-answer[data-question='charge-time'] [data-result='/time']")
                        .textContent())
                .isEqualTo(page.locator("axlewright-charge-time [data-result='/time']")
                        .textContent());
        whole.close();
    }

    private void gallery() {
        page.navigate(ADDRESS + "/embed/");
        page.waitForSelector("body[data-ready]");
        settled();
    }

    /** Until every element has its answer; asked from outside, since the policy of the page lets no string become code. */
    private void settled() {
        page.waitForCondition(() -> (Boolean) page.evaluate("""
                [...document.querySelectorAll('main > section > *')].filter((one) => one.localName.startsWith('axlewright-'))
                    .every((one) => one.answer !== null && one.answer !== undefined)"""));
    }

    @SuppressWarnings("unchecked")
    private List<String> strings(String script, Object argument) {
        return (List<String>) page.evaluate(script, argument);
    }

    /** From a heading to the next of its level or above. */
    private static String section(String docs, String heading) {
        int start = docs.indexOf("\n" + heading + "\n");
        assertThat(start).as(heading + " in docs/embed.md").isNotNegative();
        String rest = docs.substring(start + heading.length() + 1);
        String level = heading.substring(0, heading.indexOf(' '));
        String[] parts = rest.split("\n#{1," + level.length() + "} ", 2);
        return parts[0];
    }

    /** The names in the first column of its table. */
    private static Set<String> attributes(String section) {
        return new LinkedHashSet<>(first(section, "(?m)(?<=^\\| `)[a-z0-9-]+(?=`)"));
    }

    private static List<String> first(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(match -> match.group())
                .toList();
    }
}
