package org.axlewright.api.whatif;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Function;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.problem.Refused;
import tools.jackson.databind.json.JsonMapper;

/** Long work in lines of JSON: how far it has come, then the answer, or the problem. */
final class Progress {

    /** Lines of JSON. */
    static final String NDJSON = "application/x-ndjson";

    private Progress() {}

    /**
     * Does the work while the answer is written, in the request's own thread.
     *
     * @param cheaper what to do when it is too much, for people
     * @throws IOException when there is no stream to write to
     */
    static void lines(HttpServletResponse response, JsonMapper json, String cheaper, Function<Effort, Object> work)
            throws IOException {
        response.setContentType(NDJSON);
        OutputStream out = response.getOutputStream();
        Effort effort = new Effort(cheaper, (done, of) -> line(json, out, "progress", Map.of("done", done, "of", of)));
        try {
            line(json, out, "answer", work.apply(effort));
        } catch (Refused refused) {
            line(json, out, "problem", Problem.of(422, "not-valid", "Read, and not valid", refused.faults()));
        } catch (UncheckedIOException gone) {
            // the client has gone: nobody is left to tell
            return;
        }
    }

    /** One line, sent at once: a client that has gone ends the work here. */
    private static void line(JsonMapper json, OutputStream out, String name, Object value) {
        try {
            out.write(json.writeValueAsBytes(Map.of(name, value)));
            out.write('\n');
            out.flush();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
