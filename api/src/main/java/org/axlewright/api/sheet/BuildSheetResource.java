package org.axlewright.api.sheet;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.section.Setup;
import org.axlewright.api.sheet.BuildSheets.Order;
import org.axlewright.domain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** {@code POST /v1/build-sheets}: a setup on paper without saving it. */
@RestController
@Tag(name = "sheet")
final class BuildSheetResource {

    private final BuildSheets sheets;

    BuildSheetResource(BuildSheets sheets) {
        this.sheets = sheets;
    }

    @PostMapping("/v1/build-sheets")
    @Operation(
            operationId = "printBuildSheet",
            summary = "The vehicle and what every question says about it, on paper",
            description =
                    "Drawing, findings, leading results, entries, what was not assessed, assumptions, cautions and"
                            + " sources of one setup. Creates nothing; the same body gives the same bytes. HTML unless"
                            + " Accept prefers PDF.")
    @ApiResponse(
            responseCode = "200",
            description = "The sheet.",
            content = {
                @Content(mediaType = "text/html", schema = @Schema(type = "string")),
                @Content(mediaType = "application/pdf", schema = @Schema(type = "string", format = "binary"))
            })
    @ApiResponse(
            responseCode = "406",
            description = "Accept names neither text/html nor application/pdf.",
            content =
                    @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
    @ApiResponse(
            responseCode = "503",
            description = "Too many sheets are printed at once; Retry-After tells when to ask again.",
            content =
                    @Content(mediaType = "application/problem+json", schema = @Schema(implementation = Problem.class)))
    ResponseEntity<byte[]> print(
            @RequestBody Setup setup,
            @Parameter(hidden = true) @RequestHeader(name = HttpHeaders.ACCEPT, required = false) @Nullable
                    String accept,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @Parameter(description = "Paper, upright.") @RequestParam(defaultValue = "a4") Paper paper) {
        return sheets.answer(setup, null, new Order(Medium.accepted(accept), units, paper));
    }
}
