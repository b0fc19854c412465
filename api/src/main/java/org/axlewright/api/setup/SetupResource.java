package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
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
import org.springframework.web.bind.annotation.PatchMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** {@code /v1/setups}: what is saved, and the questions that it can be asked. */
@RestController
@Tag(name = "setup")
@ApiResponse(
        responseCode = "503",
        description = "The database can't be reached. Calculations can.",
        headers = @Header(name = "Retry-After", description = "Seconds to wait.", schema = @Schema(type = "integer")),
        content = @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
final class SetupResource {

    static final String PATH = "/v1/setups";
    private static final String MERGE_PATCH = "application/merge-patch+json";

    /** How long a search assesses setups itself, and how many it takes at once. */
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private static final int MOST_STALE = 20;

    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final Calculations calculations;
    private final Assessor assessor;
    private final Findings findings;
    private final Once once;

    SetupResource(
            Setups setups,
            SetupDocument.Reader reader,
            Calculations calculations,
            Assessor assessor,
            Findings findings,
            Once once) {
        this.setups = setups;
        this.reader = reader;
        this.calculations = calculations;
        this.assessor = assessor;
        this.findings = findings;
        this.once = once;
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
    ResponseEntity<Void> create(
            @RepeatKey @RequestHeader(name = Once.KEY, required = false) @Nullable String key,
            @RequestBody byte[] body) {
        SetupDocument document = reader.read(body);
        return once.answer(Once.Request.of(key, 0, body, "create"), () -> created(setups.create(document)));
    }

    static ResponseEntity<Void> created(Version version) {
        return ResponseEntity.created(at(version.id()))
                .eTag(version.entityTag())
                .lastModified(version.updatedAt())
                .build();
    }

    static URI at(UUID id) {
        return URI.create(PATH + "/" + id);
    }

    /** The inverse. */
    static UUID id(URI location) {
        return UUID.fromString(location.toString().substring(PATH.length() + 1));
    }

    @GetMapping(path = PATH, produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "listSetups",
            summary = "List the saved setups, newest first",
            description =
                    "All of them, or those whose name or findings are searched for. Findings are those of the assessment of the setup as it is saved.")
    @ApiResponse(
            responseCode = "200",
            description = "A page of setups.",
            headers =
                    @Header(
                            name = "Link",
                            description = "`rel=\"next\"`: the next page, when there is one.",
                            schema = @Schema(type = "string")))
    ResponseEntity<SetupPage> list(
            @Parameter(description = "Part of the name, in upper or lower case.")
                    @RequestParam(required = false)
                    @Nullable
                    String name,
            @Parameter(description = "Code of a finding that the assessment of the setup has.")
                    @RequestParam(required = false)
                    @Nullable
                    String finding,
            @PageLimit @RequestParam(defaultValue = Pages.DEFAULT) int limit,
            @PageCursor @RequestParam(required = false) @Nullable String cursor) {
        Search asked = Search.of(name, finding);
        Cursor from = cursor == null ? null : Cursor.of(cursor);
        if (from != null && !asked.equals(Search.EVERYTHING) && !asked.equals(from.search())) {
            throw Declined.parameter("unknown-value", "Parameter cursor belongs to another search");
        }
        Search search = from == null ? asked : from.search();
        if (search.finding() != null) {
            assessAnew();
        }
        return Pages.page(
                PATH,
                limit,
                setups.list(search, from == null ? null : from.last(), Pages.limit(limit) + 1),
                last -> new Cursor(last.id(), search).toString(),
                SetupPage::new);
    }

    /** Findings of another version of the engine are not those that are searched for. */
    private void assessAnew() {
        long end = System.nanoTime() + PATIENCE.toNanos();
        for (List<Saved> stale = stale(); !stale.isEmpty(); stale = stale()) {
            for (Saved saved : stale) {
                if (System.nanoTime() - end > 0) {
                    throw new Declined(
                                    HttpStatus.SERVICE_UNAVAILABLE,
                                    "assessing-anew",
                                    "Setups are being assessed anew",
                                    "The findings of some setups are of another version of this service: ask again, and"
                                            + " more of them are assessed")
                            .header(HttpHeaders.RETRY_AFTER, "1");
                }
                setups.found(saved.version(), findings.of(reader.parse(saved.document())));
            }
        }
    }

    private List<Saved> stale() {
        return setups.foundByOthers(findings.engine(), MOST_STALE);
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
            description =
                    "Needs the ETag of the revision that it replaces as If-Match. The document replaced stays among the revisions.")
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
        return changed(setups.change(known, precondition, former -> document), known);
    }

    @PatchMapping(path = PATH + "/{id}", consumes = MERGE_PATCH)
    @Operation(
            operationId = "patchSetup",
            summary = "Change parts of a setup",
            description =
                    "A JSON merge patch (RFC 7396): what is sent replaces, null takes a field away, objects are merged, lists are replaced whole. The result is checked like a new setup. What the patch leaves alone keeps its value to the last digit. Needs the ETag of the revision that it changes as If-Match.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            description = "What changes: fields of a setup, or null to take one away.",
            content =
                    @Content(
                            mediaType = MERGE_PATCH,
                            schema = @Schema(type = "object"),
                            examples =
                                    @ExampleObject(
                                            name = "biggerPack",
                                            summary = "A bigger pack, and no notes",
                                            value =
                                                    "{\"pack\": {\"capacity\": {\"value\": 150, \"unit\": \"Ah\"}}, \"notes\": null}")))
    @ApiResponse(
            responseCode = "204",
            description = "Changed.",
            headers = @Header(name = "ETag", description = "The new revision.", schema = @Schema(type = "string")),
            content = @Content)
    ResponseEntity<Void> patch(
            @Identifier @PathVariable String id,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody byte[] body) {
        UUID known = Identifiers.of(id);
        Precondition precondition = Precondition.of(ifMatch);
        JsonNode patch = reader.readPatch(body);
        return changed(setups.change(known, precondition, former -> reader.patched(former.document(), patch)), known);
    }

    private ResponseEntity<Void> changed(Optional<Version> version, UUID id) {
        return version.map(SetupResource::changed).orElseThrow(() -> setups.unchanged(id));
    }

    static ResponseEntity<Void> changed(Version version) {
        return ResponseEntity.noContent()
                .eTag(version.entityTag())
                .lastModified(version.updatedAt())
                .build();
    }

    @DeleteMapping(PATH + "/{id}")
    @Operation(
            operationId = "deleteSetup",
            summary = "Delete a setup",
            description = "Needs the ETag of the revision that it deletes as If-Match. It can be restored for 30 days.")
    @ApiResponse(responseCode = "204", description = "Deleted.", content = @Content)
    ResponseEntity<Void> delete(
            @Identifier @PathVariable String id,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        UUID known = Identifiers.of(id);
        if (!setups.delete(known, Precondition.of(ifMatch))) {
            throw setups.unchanged(known);
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
}
