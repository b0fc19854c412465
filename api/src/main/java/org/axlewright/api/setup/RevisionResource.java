package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.axlewright.api.section.Setup;
import org.axlewright.api.setup.Setups.Saved;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** {@code /v1/setups/{id}/revisions}: what a setup was, and the way back to it. */
@RestController
@Tag(name = "setup")
final class RevisionResource {

    private static final String PATH = SetupResource.PATH + "/{id}/revisions";

    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final Once once;

    RevisionResource(Setups setups, SetupDocument.Reader reader, Once once) {
        this.setups = setups;
        this.reader = reader;
        this.once = once;
    }

    @GetMapping(path = PATH, produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "listRevisions",
            summary = "List the revisions of a setup, newest first",
            description =
                    "Every change keeps the document that it replaces. Two revisions are compared by `POST /v1/comparisons` with `{id, revision}` on either side.")
    @ApiResponse(
            responseCode = "200",
            description = "A page of revisions.",
            headers =
                    @Header(
                            name = "Link",
                            description = "`rel=\"next\"`: the next page, when there is one.",
                            schema = @Schema(type = "string")))
    ResponseEntity<RevisionPage> list(
            @Identifier @PathVariable String id,
            @PageLimit @RequestParam(defaultValue = Pages.DEFAULT) int limit,
            @PageCursor @RequestParam(required = false) @Nullable String cursor) {
        UUID known = Identifiers.of(id);
        long before = cursor == null ? Long.MAX_VALUE : Cursor.revision(cursor);
        List<RevisionEntry> found =
                setups.revisions(known, before, Pages.limit(limit) + 1).orElseThrow(Identifiers::noSuchSetup);
        return Pages.page(
                SetupResource.at(known) + "/revisions",
                limit,
                found,
                last -> Cursor.ofRevision(last.revision()),
                RevisionPage::new);
    }

    @GetMapping(path = PATH + "/{revision}", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(operationId = "getRevision", summary = "Get a revision of a setup as it was sent")
    @ApiResponse(
            responseCode = "200",
            description = "The setup as it was sent then.",
            headers = {
                @Header(name = "ETag", description = "The revision.", schema = @Schema(type = "string")),
                @Header(name = "Last-Modified", description = "When it was saved.", schema = @Schema(type = "string"))
            },
            content = @Content(mediaType = "application/json", schema = @Schema(implementation = Setup.class)))
    @ApiResponse(responseCode = "304", description = "If-None-Match names this revision.", content = @Content)
    ResponseEntity<byte[]> get(@Identifier @PathVariable String id, @Revision @PathVariable String revision) {
        Saved saved = setups.revision(Identifiers.of(id), Identifiers.revision(revision))
                .orElseThrow(Identifiers::noSuchRevision);
        return ResponseEntity.ok()
                .eTag(saved.version().entityTag())
                .lastModified(saved.version().updatedAt())
                .body(saved.document().getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping(PATH + "/{revision}/restore")
    @Operation(
            operationId = "restoreRevision",
            summary = "Go back to a revision of a setup",
            description =
                    "Makes a new revision with the document of an earlier one, checked like any other; nothing is lost. Needs the ETag of the revision that it replaces as If-Match.")
    @ApiResponse(
            responseCode = "204",
            description = "Restored.",
            headers = @Header(name = "ETag", description = "The new revision.", schema = @Schema(type = "string")),
            content = @Content)
    ResponseEntity<Void> restore(
            @Identifier @PathVariable String id,
            @Revision @PathVariable String revision,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RepeatKey @RequestHeader(name = Once.KEY, required = false) @Nullable String key) {
        UUID known = Identifiers.of(id);
        long wanted = Identifiers.revision(revision);
        Precondition precondition = Precondition.of(ifMatch);
        Once.Request request =
                Once.Request.of(key, 0, new byte[0], "restore", known.toString(), revision, String.valueOf(ifMatch));
        return once.answer(
                request,
                () -> setups.change(known, precondition, present -> restored(known, wanted))
                        .map(SetupResource::changed)
                        .orElseThrow(() -> setups.unchanged(known)));
    }

    private SetupDocument restored(UUID id, long revision) {
        Saved wanted = setups.revision(id, revision).orElseThrow(Identifiers::noSuchRevision);
        return reader.read(wanted.document().getBytes(StandardCharsets.UTF_8));
    }
}
