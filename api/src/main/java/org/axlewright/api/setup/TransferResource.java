package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.headers.Header;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.axlewright.api.problem.BrokenOff;
import org.axlewright.api.problem.CutShort;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Setup;
import org.axlewright.api.setup.Setups.Saved;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** {@code /v1/setups/export} and {@code /v1/setups/import}: every setup of a workspace, one a line. */
@RestController
@Tag(name = "setup")
final class TransferResource {

    private static final String NDJSON = MediaType.APPLICATION_NDJSON_VALUE;
    private static final int AT_ONCE = 20;

    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final Once once;
    private final JsonMapper json;

    TransferResource(Setups setups, SetupDocument.Reader reader, Once once, JsonMapper json) {
        this.setups = setups;
        this.reader = reader;
        this.once = once;
        this.json = json;
    }

    @GetMapping(path = SetupResource.PATH + "/export", produces = NDJSON)
    @Operation(
            operationId = "exportSetups",
            summary = "Take every setup along, one a line",
            description =
                    "NDJSON, oldest first. A line is the document of a setup as `GET /v1/setups/{id}` gives it, with its line breaks turned into spaces: what an import takes. Ids, times, revisions and deleted setups are not in it. A setup that is changed meanwhile is there once, before or after the change. Should the database go away, the connection is cut.")
    @ApiResponse(
            responseCode = "200",
            description = "The setups.",
            content =
                    @Content(
                            mediaType = NDJSON,
                            schema = @Schema(implementation = Setup.class, description = "A setup for each line.")))
    void exportSetups(HttpServletResponse response) throws IOException {
        List<Saved> page = setups.documents(null, AT_ONCE);
        response.setContentType(NDJSON);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"setups.ndjson\"");
        response.flushBuffer();
        OutputStream out = response.getOutputStream();
        while (!page.isEmpty()) {
            for (Saved saved : page) {
                out.write(oneLine(saved.document()).getBytes(StandardCharsets.UTF_8));
                out.write('\n');
            }
            page = next(page.get(page.size() - 1).version().id());
        }
    }

    /** JSON has line breaks only where it may have spaces: within a text they are escapes. */
    private static String oneLine(String document) {
        return document.replace('\n', ' ').replace('\r', ' ');
    }

    private List<Saved> next(UUID last) {
        try {
            return setups.documents(last, AT_ONCE);
        } catch (RuntimeException failure) {
            throw new BrokenOff(failure);
        }
    }

    @PostMapping(path = SetupResource.PATH + "/import", consumes = NDJSON, produces = NDJSON)
    @Operation(
            operationId = "importSetups",
            summary = "Save many setups, one a line",
            description =
                    "NDJSON, as an export gives it. Every line is saved by itself as a new setup with an id of its own, in the order of the lines; empty lines are passed over. The answer tells of each line, in the same order, when all have been read: a line that is refused keeps none of the others. A line that is too large or too slow, or a database that goes away, ends the import there. Repeated with the same Idempotency-Key it goes on where it ended: lines that are saved are not saved again.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            description = "A setup for each line.",
            content =
                    @Content(
                            mediaType = NDJSON,
                            schema = @Schema(implementation = Setup.class),
                            examples =
                                    @ExampleObject(
                                            name = "twoSetups",
                                            summary = "Two setups",
                                            value =
                                                    "{\"name\": \"Greenhouse tug\"}\n{\"name\": \"Campground shuttle\"}\n")))
    @ApiResponse(
            responseCode = "200",
            description = "What became of each line.",
            headers =
                    @Header(
                            name = Once.REPLAYED,
                            description = "`true` when every setup had been saved before.",
                            schema = @Schema(type = "string")),
            content = @Content(mediaType = NDJSON, schema = @Schema(implementation = ImportedLine.class)))
    void importSetups(
            @RepeatKey @RequestHeader(name = Once.KEY, required = false) @Nullable String key,
            InputStream body,
            HttpServletResponse response)
            throws IOException {
        Once.Request.of(key, 0, new byte[0]); // a key that can't be one is refused before anything is read
        // Kept until all is read: a caller who sends everything before reading anything would wait for us, and we for
        // him.
        Path kept = Files.createTempFile("import", ".ndjson");
        try (FileChannel file = FileChannel.open(
                kept, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE)) {
            Import imported = new Import(key, new BufferedInputStream(body), Channels.newOutputStream(file));
            imported.run();
            response.setContentType(NDJSON);
            if (imported.replayed && !imported.anew) {
                response.setHeader(Once.REPLAYED, "true");
            }
            if (imported.ended) {
                response.setHeader(HttpHeaders.CONNECTION, "close");
            }
            Channels.newInputStream(file.position(0)).transferTo(response.getOutputStream());
        }
    }

    /** One import, line by line. */
    private final class Import {

        private final @Nullable String key;
        private final InputStream lines;
        private final OutputStream results;
        private long number;
        private boolean replayed;
        private boolean anew;
        private boolean ended;

        Import(@Nullable String key, InputStream lines, OutputStream results) {
            this.key = key;
            this.lines = lines;
            this.results = results;
        }

        void run() throws IOException {
            while (!ended) {
                number++;
                ImportedLine result;
                try {
                    byte[] line = line();
                    if (line == null) {
                        break;
                    }
                    if (isBlank(line)) {
                        continue;
                    }
                    result = save(line);
                } catch (CutShort cut) {
                    result = ImportedLine.refused(number, cut.problem());
                    ended = true;
                }
                results.write(json.writeValueAsBytes(result));
                results.write('\n');
            }
        }

        private ImportedLine save(byte[] line) {
            try {
                SetupDocument document = reader.read(line);
                ResponseEntity<Void> answer = once.answer(
                        Once.Request.of(key, number, line, "import"),
                        () -> SetupResource.created(setups.create(document)));
                boolean again = answer.getHeaders().containsHeader(Once.REPLAYED);
                replayed |= again;
                anew |= !again;
                URI location = Objects.requireNonNull(answer.getHeaders().getLocation());
                return ImportedLine.saved(number, SetupResource.id(location), document.name());
            } catch (Refused refused) {
                return ImportedLine.refused(number, Problem.of(refused));
            } catch (JacksonException unreadable) {
                return ImportedLine.refused(number, Problem.of(unreadable));
            } catch (Declined declined) {
                ended = declined.problem().status() == HttpStatus.SERVICE_UNAVAILABLE.value();
                return ImportedLine.refused(number, declined.problem());
            }
        }

        /** Without its end; null after the last. */
        private byte @Nullable [] line() throws IOException {
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            int read = lines.read();
            if (read < 0) {
                return null;
            }
            for (; read >= 0 && read != '\n'; read = lines.read()) {
                line.write(read);
            }
            return line.toByteArray();
        }

        private static boolean isBlank(byte[] line) {
            for (byte character : line) {
                if (character != ' ' && character != '\t' && character != '\r') {
                    return false;
                }
            }
            return true;
        }
    }
}
