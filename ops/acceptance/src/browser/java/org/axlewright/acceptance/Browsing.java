package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import tools.jackson.databind.JsonNode;

/**
 * One browser and one service for all tests, a fresh profile for each. A test fails when the page complains on the console, when a
 * request fails, when it asks anybody but the service, or asks the service what {@code docs/openapi.yaml} does not hold.
 */
abstract class Browsing {

    static final Service SERVICE = startService();
    static final String ADDRESS = "http://127.0.0.1:" + SERVICE.port;
    static final String PLANNED = "Orchard runabout, as planned";

    private static final Browser BROWSER = launch();
    private static final double PATIENCE_MS = 90_000;

    private static final Contract CONTRACT = Contract.read();

    private final List<String> complaints = new ArrayList<>();
    private final Set<String> operations = new TreeSet<>();
    private boolean cut;
    private BrowserContext context;
    protected Page page;

    /** Stopped when the tests end. */
    private static Service startService() {
        try {
            Service service = Service.start(Files.createTempDirectory("axlewright-page"));
            Runtime.getRuntime().addShutdownHook(new Thread(service.process::destroy));
            return service;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Browser launch() {
        Map<String, String> environment = new HashMap<>();
        environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--disable-quic")));
    }

    /** Width and height of the window, px. */
    protected int[] window() {
        return new int[] {1280, 900};
    }

    /** The reader's language. */
    protected String locale() {
        return "en-GB";
    }

    @BeforeEach
    void open() {
        int[] window = window();
        context = BROWSER.newContext(new Browser.NewContextOptions()
                .setViewportSize(window[0], window[1])
                .setLocale(locale()));
        context.setDefaultTimeout(PATIENCE_MS);
        page = newPage();
    }

    protected Page newPage() {
        Page fresh = context.newPage();
        fresh.onConsoleMessage(message -> {
            boolean refusal =
                    message.text().contains("the server responded with a status of 4"); // refusals are part of the game
            if (message.type().equals("error") && !refusal && !cut) {
                complaints.add(message.text());
            }
        });
        fresh.onPageError(complaints::add);
        fresh.onRequest(request -> {
            if (!request.url().startsWith(ADDRESS + "/") && !request.url().matches("(data|blob):.*")) {
                complaints.add("asked " + request.url());
                return;
            }
            String path = URI.create(request.url().replaceFirst("^(data|blob):.*", "/"))
                    .getPath();
            if (path.startsWith("/v1/")) {
                String operation = CONTRACT.operation(request.method(), path);
                if (operation == null) {
                    complaints.add("asked what the contract does not hold: " + request.method() + " " + path);
                } else {
                    operations.add(operation);
                }
            } else if (!path.matches("/|/index\\.html|/page/.*|/embed/.*|/v3/api-docs(/form)?")) {
                complaints.add("asked " + request.method() + " " + path);
            }
        });
        fresh.onRequestFailed(request -> {
            boolean givenUp =
                    String.valueOf(request.failure()).contains("ERR_ABORTED"); // a newer drag or plot asks anew
            if (!cut && !givenUp) {
                complaints.add("failed " + request.url() + " " + request.failure());
            }
        });
        fresh.navigate(ADDRESS + "/");
        fresh.waitForSelector("body[data-ready]");
        fresh.locator("#start-choices button", new Page.LocatorOptions().setHasText(PLANNED))
                .waitFor();
        return fresh;
    }

    @AfterEach
    void nothingWentWrongUnseen() {
        context.close();
        assertThat(complaints).isEmpty();
    }

    /** Operations of the contract that the page has asked, such as {@code POST /v1/assessments}. */
    protected Set<String> operations() {
        return operations;
    }

    /** Cuts the connection; what fails meanwhile is part of the game. */
    protected void cut() {
        cut = true;
        context.setOffline(true);
    }

    protected void mend() {
        context.setOffline(false);
    }

    protected void choose(String vehicle) {
        button(vehicle).click();
        waitForAnswers();
    }

    protected Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    protected void workItOut() {
        page.evaluate("document.querySelector('#status').textContent = ''");
        button("Work it out").click();
        waitForAnswers();
    }

    protected void waitForAnswers() {
        page.locator("#status", new Page.LocatorOptions().setHasText(Pattern.compile("questions answered")))
                .waitFor();
    }

    /** The input of a pointer. */
    protected Locator input(String name) {
        return page.locator("[name='" + name + "']");
    }

    /** Opens a section of the entries. */
    protected void open(String section) {
        Locator details = page.locator("details[data-section='" + section + "']");
        if (details.getAttribute("open") == null) {
            details.locator("summary").first().click();
        }
    }

    protected void enter(String pointer, String value, String unit) {
        input(pointer + "/unit").selectOption(unit);
        input(pointer + "/value").fill(value);
    }

    protected Locator answer(String question) {
        return page.locator("axlewright-answer[data-question='" + question + "']");
    }

    /** Text of a leading result. */
    protected String lead(String question, String pointer) {
        return answer(question).locator("[data-result='" + pointer + "']").textContent();
    }

    /** A demo vehicle as the service gives it. */
    protected static JsonNode demo(String name) {
        for (JsonNode setup :
                Service.JSON.readTree(SERVICE.get("/v1/demo-setups").body()).path("items")) {
            if (setup.path("name").asString().equals(name)) {
                return setup;
            }
        }
        throw new AssertionError("No demo vehicle " + name);
    }

    /** What the service answers when it is asked without the page. */
    protected static JsonNode asked(String question, String units, JsonNode setup) {
        return Service.JSON.readTree(SERVICE.post("/v1/" + question + "?units=" + units, setup.toString())
                .body());
    }

    protected void screenshot(String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target/screenshots", name + ".png")));
    }
}
