package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.axlewright.api.setup.Setups.Version;
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

/** {@code /v1/setups/deleted}: what can be had back for 30 days. */
@RestController
@Tag(name = "setup")
final class DeletedSetupResource {

    private static final String PATH = SetupResource.PATH + "/deleted";

    private final Setups setups;
    private final Once once;

    DeletedSetupResource(Setups setups, Once once) {
        this.setups = setups;
        this.once = once;
    }

    @GetMapping(path = PATH, produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "listDeletedSetups",
            summary = "List the deleted setups that can be restored, newest first",
            description = "A deleted setup is listed here for 30 days, and then removed with all its revisions.")
    @ApiResponse(
            responseCode = "200",
            description = "A page of deleted setups.",
            headers =
                    @Header(
                            name = "Link",
                            description = "`rel=\"next\"`: the next page, when there is one.",
                            schema = @Schema(type = "string")))
    ResponseEntity<DeletedPage> list(
            @PageLimit @RequestParam(defaultValue = Pages.DEFAULT) int limit,
            @PageCursor @RequestParam(required = false) @Nullable String cursor) {
        UUID before = cursor == null ? null : Cursor.of(cursor).last();
        return Pages.page(
                PATH,
                limit,
                setups.deleted(before, Pages.limit(limit) + 1),
                last -> new Cursor(last.id(), Search.EVERYTHING).toString(),
                DeletedPage::new);
    }

    @PostMapping(PATH + "/{id}/restore")
    @Operation(
            operationId = "restoreDeletedSetup",
            summary = "Have a deleted setup back",
            description =
                    "It comes back as it was, under its id and with its revisions. Needs its ETag as If-Match: the revision in the list, in quotes.")
    @ApiResponse(
            responseCode = "204",
            description = "It is there again.",
            headers = {
                @Header(name = "Location", description = "Where it is.", schema = @Schema(type = "string")),
                @Header(name = "ETag", description = "Its revision, as before.", schema = @Schema(type = "string"))
            },
            content = @Content)
    ResponseEntity<Void> restore(
            @Identifier @PathVariable String id,
            @IfMatch @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RepeatKey @RequestHeader(name = Once.KEY, required = false) @Nullable String key) {
        UUID known = Identifiers.of(id);
        Precondition precondition = Precondition.of(ifMatch);
        Once.Request request =
                Once.Request.of(key, 0, new byte[0], "restore-deleted", known.toString(), String.valueOf(ifMatch));
        return once.answer(request, () -> {
            Version version = setups.restoreDeleted(known, precondition)
                    .orElseThrow(() -> setups.findDeleted(known)
                            .map(deleted -> Precondition.failed(deleted.revision()))
                            .orElseGet(() -> Identifiers.notFound("There is no deleted setup of this id")));
            return ResponseEntity.noContent()
                    .location(SetupResource.at(known))
                    .eTag(version.entityTag())
                    .lastModified(version.updatedAt())
                    .build();
        });
    }
}
