package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.axlewright.api.assessment.Assessment;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Answer;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.section.Setup;
import org.axlewright.api.setup.Setups.Saved;
import org.axlewright.api.setup.Setups.Version;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** {@code /v1/setups}: what is saved, and the questions that it can be asked. */
@RestController
@Tag(name = "setup")
@ApiResponse(
        responseCode = "503",
        description = "The database can't be reached. Calculations can.",
        headers = @Header(name = "Retry-After", description = "Seconds to wait.", schema = @Schema(type = "integer")),
        content = @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
final class SetupResource {

    private static final String PATH = "/v1/setups";
    private static final int LONGEST_PAGE = 100;

    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final Calculations calculations;
    private final Assessor assessor;

    SetupResource(Setups setups, SetupDocument.Reader reader, Calculations calculations, Assessor assessor) {
        this.setups = setups;
        this.reader = reader;
        this.calculations = calculations;
        this.assessor = assessor;
    }

    @PostMapping(path = PATH, consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "createSetup",
            summary = "Save a setup",
            description = "Checks form and range, never completeness. `name` is needed.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Setup.class)))
    @ApiResponse(
            responseCode = "201",
            description = "Saved.",
            headers = {
                @Header(name = "Location", description = "Where it is.", schema = @Schema(type = "string")),
                @Header(name = "ETag", description = "Its revision.", schema = @Schema(type = "string"))
            },
            content = @Content)
    ResponseEntity<Void> create(@RequestBody byte[] body) {
        SetupDocument document = reader.read(body);
        Version version = setups.create(document.name(), document.text());
        return ResponseEntity.created(URI.create(PATH + "/" + version.id()))
                .eTag(version.entityTag())
                .lastModified(version.updatedAt())
                .build();
    }

    @GetMapping(path = PATH, produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(operationId = "listSetups", summary = "List the saved setups, newest first")
    @ApiResponse(
            responseCode = "200",
            description = "A page of setups.",
            headers =
                    @Header(
                            name = "Link",
                            description = "`rel=\"next\"`: the next page, when there is one.",
                            schema = @Schema(type = "string")))
    ResponseEntity<SetupPage> list(
            @Parameter(
                            description = "Most entries a page.",
                            schema = @Schema(type = "integer", minimum = "1", maximum = "100", defaultValue = "50"))
                    @RequestParam(defaultValue = "50")
                    int limit,
            @Parameter(description = "The `next` of the page before.") @RequestParam(required = false) @Nullable
                    String cursor) {
        if (limit < 1 || limit > LONGEST_PAGE) {
            throw Declined.parameter("out-of-range", "Parameter limit must be 1 to " + LONGEST_PAGE + ", was " + limit);
        }
        List<SetupEntry> entries = setups.list(Cursor.read(cursor), limit + 1);
        if (entries.size() <= limit) {
            return ResponseEntity.ok(new SetupPage(entries, null));
        }
        List<SetupEntry> page = entries.subList(0, limit);
        String next = Cursor.after(page.get(limit - 1).id());
        return ResponseEntity.ok()
                .header(HttpHeaders.LINK, "<" + PATH + "?limit=" + limit + "&cursor=" + next + ">; rel=\"next\"")
                .body(new SetupPage(page, next));
    }

    @GetMapping(path = PATH + "/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(operationId = "getSetup", summary = "Get a setup as it was sent")
    @ApiResponse(
            responseCode = "200",
            description = "The setup as it was sent.",
            headers = {
                @Header(name = "ETag", description = "Its revision.", schema = @Schema(type = "string")),
                @Header(
                        name = "Last-Modified",
                        description = "Time of its revision.",
                        schema = @Schema(type = "string"))
            },
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Setup.class)))
    @ApiResponse(responseCode = "304", description = "If-None-Match names this revision.", content = @Content)
    ResponseEntity<byte[]> get(@Identifier @PathVariable String id) {
        Saved saved = saved(id);
        return ResponseEntity.ok()
                .eTag(saved.version().entityTag())
                .lastModified(saved.version().updatedAt())
                .body(saved.document().getBytes(StandardCharsets.UTF_8));
    }

    @PutMapping(path = PATH + "/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "replaceSetup",
            summary = "Replace a setup",
            description = "Needs the ETag of the revision that it replaces as If-Match.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Setup.class)))
    @ApiResponse(
            responseCode = "204",
            description = "Replaced.",
            headers = @Header(name = "ETag", description = "The new revision.", schema = @Schema(type = "string")),
            content = @Content)
    ResponseEntity<Void> replace(
            @Identifier @PathVariable String id,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody byte[] body) {
        UUID known = Identifiers.of(id);
        Precondition precondition = Precondition.of(ifMatch);
        SetupDocument document = reader.read(body);
        Version version = setups.replace(known, precondition, document.name(), document.text())
                .orElseThrow(() -> unchanged(known));
        return ResponseEntity.noContent()
                .eTag(version.entityTag())
                .lastModified(version.updatedAt())
                .build();
    }

    @DeleteMapping(PATH + "/{id}")
    @Operation(
            operationId = "deleteSetup",
            summary = "Delete a setup",
            description = "Needs the ETag of the revision that it deletes as If-Match.")
    @ApiResponse(responseCode = "204", description = "Deleted.", content = @Content)
    ResponseEntity<Void> delete(
            @Identifier @PathVariable String id,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        UUID known = Identifiers.of(id);
        if (!setups.delete(known, Precondition.of(ifMatch))) {
            throw unchanged(known);
        }
        return ResponseEntity.noContent().build();
    }

    @GetMapping(path = PATH + "/{id}/assessment", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "assessSetup",
            summary = "What does every question say about this saved vehicle?",
            description = "The answer is that of `POST /v1/assessments` with the setup as its body.")
    Assessment assess(
            @Identifier @PathVariable String id,
            @Parameter(description = "Output units.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @Parameter(description = "Whether the answer shows its working.") @RequestParam(defaultValue = "true")
                    boolean working) {
        return assessor.assess(reader.parse(saved(id).document()), new Asked(units, working));
    }

    @GetMapping(path = PATH + "/{id}/{calculation}", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "askSetup",
            summary = "Ask a saved setup one of the calculations",
            description = "The answer is that of the calculation's POST with the setup as its body.")
    Answer<?> ask(
            @Identifier @PathVariable String id,
            @Parameter(description = "Name of a calculation.") @PathVariable String calculation,
            @Parameter(description = "Output units.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @Parameter(description = "Whether the answer shows its working.") @RequestParam(defaultValue = "true")
                    boolean working) {
        Calculation<?, ?, ?> asked = calculations
                .named(calculation)
                .orElseThrow(() -> Identifiers.notFound("There is no calculation of this name"));
        Setup setup = reader.parse(saved(id).document());
        return calculations.ask(asked, setup, new Asked(units, working));
    }

    private Saved saved(String id) {
        return setups.find(Identifiers.of(id)).orElseThrow(Identifiers::noSuchSetup);
    }

    /** Why a change found nothing to change: gone, or somebody else was faster. */
    private Declined unchanged(UUID id) {
        return setups.find(id)
                .map(saved -> new Declined(
                                HttpStatus.PRECONDITION_FAILED,
                                "precondition-failed",
                                "The setup has changed",
                                "If-Match does not name the revision that is stored, "
                                        + saved.version().entityTag() + ": get it, and change that")
                        .header(HttpHeaders.ETAG, saved.version().entityTag()))
                .orElseGet(Identifiers::noSuchSetup);
    }
}
