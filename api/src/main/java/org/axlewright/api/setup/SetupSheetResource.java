package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.setup.Setups.Saved;
import org.axlewright.api.sheet.BuildSheets;
import org.axlewright.api.sheet.BuildSheets.Order;
import org.axlewright.api.sheet.Issue;
import org.axlewright.api.sheet.Medium;
import org.axlewright.api.sheet.Paper;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;

/** {@code GET /v1/setups/{id}/build-sheet}: a saved setup on paper. */
@RestController
@Tag(name = "sheet")
final class SetupSheetResource {

    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final BuildSheets sheets;

    SetupSheetResource(Setups setups, SetupDocument.Reader reader, BuildSheets sheets) {
        this.setups = setups;
        this.reader = reader;
        this.sheets = sheets;
    }

    @GetMapping("/v1/setups/{id}/build-sheet")
    @Operation(
            operationId = "printSetup",
            summary = "The saved vehicle and what every question says about it, on paper",
            description =
                    "Drawing, findings, leading results, entries, what was not assessed, assumptions, cautions and"
                            + " sources, under a title block with revision and date. The same revision gives the same"
                            + " bytes. HTML unless Accept prefers PDF.")
    @ApiResponse(
            responseCode = "200",
            description = "The sheet.",
            headers = {
                @Header(
                        name = "ETag",
                        description = "Revision, medium, units, paper and version of the service.",
                        schema = @Schema(type = "string")),
                @Header(
                        name = "Last-Modified",
                        description = "Time of the revision.",
                        schema = @Schema(type = "string"))
            },
            content = {
                @Content(mediaType = "text/html", schema = @Schema(type = "string")),
                @Content(mediaType = "application/pdf", schema = @Schema(type = "string", format = "binary"))
            })
    @ApiResponse(responseCode = "304", description = "If-None-Match names this sheet.", content = @Content)
    @ApiResponse(
            responseCode = "406",
            description = "Accept names neither text/html nor application/pdf.",
            content =
                    @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
    @ApiResponse(
            responseCode = "503",
            description = "The database can't be reached, or too many sheets are printed at once.",
            headers =
                    @Header(name = "Retry-After", description = "Seconds to wait.", schema = @Schema(type = "integer")),
            content =
                    @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
    @Nullable
    ResponseEntity<byte[]> print(
            @Identifier @PathVariable String id,
            @Parameter(hidden = true) @RequestHeader(name = HttpHeaders.ACCEPT, required = false) @Nullable
                    String accept,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @Parameter(description = "Paper, upright.") @RequestParam(defaultValue = "a4") Paper paper,
            WebRequest request) {
        Order order = new Order(Medium.accepted(accept), units, paper);
        Saved saved = setups.find(Identifiers.of(id)).orElseThrow(Identifiers::noSuchSetup);
        Issue issue = new Issue(
                saved.version().id().toString(),
                saved.version().revision(),
                saved.version().updatedAt());
        if (request.checkNotModified(sheets.entityTag(issue, order), issue.at().toEpochMilli())) {
            return null; // 304 is on its way: nothing is printed
        }
        return sheets.answer(reader.parse(saved.document()), issue, order);
    }
}
