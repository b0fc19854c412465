package org.axlewright.api.whatif;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.annotation.PreDestroy;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** {@code POST /v1/batches}. */
@RestController
@Tag(name = "whatif")
final class BatchResource {

    private static final int MOST_AT_ONCE = 8;

    private final Batch.Answers answers;
    private final ExecutorService workers;
    private final Semaphore places = new Semaphore(MOST_AT_ONCE);
    private final int width;

    BatchResource(Calculations calculations, Assessor assessor, JsonMapper json) {
        this.answers = new Batch.Answers(calculations, assessor, json);
        int processors = Runtime.getRuntime().availableProcessors();
        this.width = 4 * processors;
        this.workers = Executors.newFixedThreadPool(processors, work -> {
            Thread thread = new Thread(work, "batch");
            thread.setDaemon(true);
            return thread;
        });
    }

    @PreDestroy
    void end() {
        workers.shutdownNow();
    }

    /** One line in. */
    @Schema(name = "BatchLine", description = "One line of a batch: a question and its input.")
    record Sent(
            @Schema(description = "Opaque text of the sender, echoed in the answer; at most 200 characters.") @Nullable
            String id,

            @Schema(
                    description = "Name of a calculation, or `assessment` for all of them.",
                    example = "centre-of-gravity")
            String calculation,

            @Schema(description = "A setup, whole or in part: the body of the calculation's own POST.")
            Setup input) {}

    /** One line out. */
    @Schema(name = "BatchAnswer", description = "One line of the answer, in the order of the lines sent.")
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Answered(
            @Schema(description = "Number of the line that it answers, counted from 1, empty lines too.")
            int line,

            @Schema(description = "As sent.") @Nullable String id,

            @Schema(description = "What the calculation's own POST answers.") @Nullable
            Object answer,

            @Schema(
                    description =
                            "What its own POST refuses, in place of an answer; pointers into the line. The lines after it go on.")
            @Nullable
            Problem problem) {}

    @PostMapping(path = "/v1/batches", consumes = Progress.NDJSON, produces = Progress.NDJSON)
    @Operation(
            operationId = "batch",
            summary = "What does each of these say?",
            description =
                    "Lines of JSON in, lines of JSON out, in the same order, while they are read: any calculation, or the assessment, each with its own input. A line that is refused gets its problem, and the next line goes on. At most 100000 lines; the limits of a document hold for each line. A client that goes away stops the work. Creates nothing.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            description = "One question a line.",
            content = @Content(mediaType = Progress.NDJSON, schema = @Schema(implementation = Sent.class)))
    @ApiResponse(
            responseCode = "200",
            description = "One answer a line.",
            content = @Content(mediaType = Progress.NDJSON, schema = @Schema(implementation = Answered.class)))
    @ApiResponse(
            responseCode = "429",
            description = "Too many batches at once; `Retry-After` says when to come again.",
            content = @Content)
    void batch(
            HttpServletRequest request,
            HttpServletResponse response,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working)
            throws IOException {
        if (!places.tryAcquire()) {
            throw new Declined(
                            HttpStatus.TOO_MANY_REQUESTS,
                            "busy",
                            "Too many batches at once",
                            "At most " + MOST_AT_ONCE + " batches are worked on at a time")
                    .header("Retry-After", "10");
        }
        try (Backlog backlog = new Backlog()) {
            response.setContentType(Progress.NDJSON);
            new Batch(answers, new Asked(units, working), workers, width, backlog)
                    .run(new Lines(request.getInputStream()), response.getOutputStream());
        } finally {
            places.release();
        }
    }
}
