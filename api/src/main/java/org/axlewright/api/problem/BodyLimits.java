package org.axlewright.api.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import tools.jackson.databind.json.JsonMapper;

/**
 * Refuses a body that is too large before it is read to the end, and one that trickles (contract R15). The servlet container limits
 * forms only, and its own timeout starts anew with every byte.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 10)
final class BodyLimits extends OncePerRequestFilter {

    /** Where two setups may stand in one body: twice as much. */
    private static final Set<String> TWO_SETUPS = Set.of("/v1/comparisons", "/v1/candidates");

    /** Taken line by line, each within the limits: see the reader of batches. */
    private static final String IN_LINES = "/v1/batches";

    private final JsonMapper json;

    BodyLimits(JsonMapper json) {
        this.json = json;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long maximum =
                TWO_SETUPS.contains(request.getRequestURI()) ? 2 * CutShort.MAXIMUM_BYTES : CutShort.MAXIMUM_BYTES;
        boolean lines = isStream(request.getContentType());
        if (request.getContentLengthLong() > maximum && !lines) {
            refuse(response, CutShort.tooLarge(maximum).problem());
            return;
        }
        LimitedRequest limited = new LimitedRequest(request, maximum, lines);
        if (request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null && !lines) {
            // Its length is not told: taken in whole, so that too much is 413 whatever the reader would trip over
            // first.
            try {
                limited.takeIn();
            } catch (CutShort cut) {
                refuse(response, cut.problem());
                return;
            }
        }
        chain.doFilter(limited, response);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return IN_LINES.equals(request.getRequestURI());
    }

    /** NDJSON: each line is a document, and is held to the limits by itself. */
    private static boolean isStream(@Nullable String contentType) {
        return contentType != null
                && contentType.toLowerCase(Locale.ROOT).startsWith(MediaType.APPLICATION_NDJSON_VALUE);
    }

    private void refuse(HttpServletResponse response, Problem problem) throws IOException {
        response.setStatus(problem.status());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setHeader(HttpHeaders.CONNECTION, "close");
        json.writeValue(response.getOutputStream(), problem);
    }

    private static final class LimitedRequest extends HttpServletRequestWrapper {

        private final long maximum;
        private final boolean lines;
        private @Nullable ServletInputStream stream;

        LimitedRequest(HttpServletRequest request, long maximum, boolean lines) {
            super(request);
            this.maximum = maximum;
            this.lines = lines;
        }

        void takeIn() throws IOException {
            byte[] body = new LimitedStream(super.getInputStream(), maximum, lines).readAllBytes();
            stream = new TakenIn(new ByteArrayInputStream(body));
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            if (stream == null) {
                stream = new LimitedStream(super.getInputStream(), maximum, lines);
            }
            return stream;
        }
    }

    /** A body that has been read already. */
    private static final class TakenIn extends ServletInputStream {

        private final ByteArrayInputStream body;

        TakenIn(ByteArrayInputStream body) {
            this.body = body;
        }

        @Override
        public int read() {
            return body.read();
        }

        @Override
        public int read(byte[] buffer, int offset, int length) {
            return body.read(buffer, offset, length);
        }

        @Override
        public boolean isFinished() {
            return body.available() == 0;
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public void setReadListener(ReadListener listener) {
            throw new UnsupportedOperationException("Bodies are read in the request's own thread");
        }
    }

    private static final class LimitedStream extends ServletInputStream {

        private final ServletInputStream body;
        private final long maximum;
        private final boolean lines;
        private long deadline = System.nanoTime() + CutShort.DEADLINE.toNanos();
        private long read;

        LimitedStream(ServletInputStream body, long maximum, boolean lines) {
            this.body = body;
            this.maximum = maximum;
            this.lines = lines;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : Byte.toUnsignedInt(one[0]);
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int bytes = body.read(buffer, offset, length);
            for (int i = offset; i < offset + bytes; i++) {
                if (lines && buffer[i] == '\n') {
                    read = 0;
                    deadline = System.nanoTime() + CutShort.DEADLINE.toNanos();
                } else if (++read > maximum) {
                    throw CutShort.tooLarge(maximum);
                }
            }
            if (System.nanoTime() - deadline > 0) {
                throw CutShort.tooSlow();
            }
            return bytes;
        }

        @Override
        public boolean isFinished() {
            return body.isFinished();
        }

        @Override
        public boolean isReady() {
            return body.isReady();
        }

        @Override
        public void setReadListener(ReadListener listener) {
            body.setReadListener(listener);
        }
    }
}
