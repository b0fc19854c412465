package org.axlewright.api.sheet;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Build sheets as HTML and PDF. */
@Component
public final class BuildSheets {

    /** What a browser may do with a sheet, Content Security Policy Level 3: show it. */
    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors"
                    + " 'self'";

    /** Sheets that are set at once: typesetting takes a processor for a while, and calculations need theirs. */
    private static final int PRESSES = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);

    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Draughtsman draughtsman;
    private final String engine;
    private final TemplateEngine templates = new TemplateEngine();
    private final Typeface typeface = Typeface.load();
    private final Press press = new Press();
    private final Semaphore presses = new Semaphore(PRESSES, true);

    BuildSheets(Draughtsman draughtsman, Calculations calculations) {
        this.draughtsman = draughtsman;
        this.engine = calculations.engine().version();
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
        resolver.setPrefix("sheet/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding(StandardCharsets.UTF_8.name());
        templates.setTemplateResolver(resolver);
    }

    /** What a sheet is asked as. */
    public record Order(Medium medium, UnitSystem units, Paper paper) {}

    /** Strong: the same revision, order and version give the same bytes. */
    public String entityTag(Issue issue, Order order) {
        return "\"%d-%s-%s-%s-%s\"".formatted(issue.revision(), order.medium, order.units, order.paper, engine);
    }

    /**
     * The sheet of a setup as an answer.
     *
     * @param issue null for a setup that is not saved
     * @throws org.axlewright.api.problem.Refused when the form of the setup is not in order
     * @throws Declined 503 when too many sheets are being set
     */
    public ResponseEntity<byte[]> answer(Setup setup, @Nullable Issue issue, Order order) {
        ResponseEntity.BodyBuilder answer = ResponseEntity.ok()
                .contentType(order.medium.type())
                .cacheControl(CacheControl.noCache().cachePrivate())
                .varyBy(HttpHeaders.ACCEPT)
                .header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"build-sheet." + order.medium + "\"");
        if (issue != null) {
            answer.eTag(entityTag(issue, order)).lastModified(issue.at());
        }
        return answer.body(write(setup, issue, order));
    }

    /** The bytes of the sheet. */
    byte[] write(Setup setup, @Nullable Issue issue, Order order) {
        UnaryOperator<String> letters = order.medium == Medium.PDF ? typeface::onPaper : Typeface::onScreen;
        BuildSheet sheet = draughtsman.sheet(setup, issue, order.units, order.paper, letters);
        Context context = new Context(
                Locale.ROOT,
                Map.of(
                        "sheet",
                        sheet,
                        "pdf",
                        order.medium == Medium.PDF,
                        "paper",
                        order.paper,
                        "family",
                        Typeface.FAMILY));
        String html = letters.apply(templates.process("build-sheet", context));
        return order.medium == Medium.PDF
                ? printed(html, sheet.drawings(), issue)
                : html.getBytes(StandardCharsets.UTF_8);
    }

    private byte[] printed(String html, List<Drawing> drawings, @Nullable Issue issue) {
        boolean free = false;
        try {
            free = presses.tryAcquire(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
            if (!free) {
                throw new Declined(
                                HttpStatus.SERVICE_UNAVAILABLE,
                                "busy",
                                "Too many sheets at once",
                                "Other sheets are being printed; ask again, or take text/html")
                        .header(HttpHeaders.RETRY_AFTER, String.valueOf(PATIENCE.toSeconds()));
            }
            return press.print(html, drawings, issue == null ? null : issue.at());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        } finally {
            if (free) {
                presses.release();
            }
        }
    }
}
