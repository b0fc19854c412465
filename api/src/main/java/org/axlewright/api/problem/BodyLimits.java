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
import java.time.Duration;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
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

    static final long MAXIMUM_BYTES = 256L * 1024;

    /** Where two setups may stand in one body: twice as much. */
    private static final Set<String> TWO_SETUPS = Set.of("/v1/comparisons", "/v1/candidates");

    /** Taken line by line, each within the limits: see the reader of batches. */
    private static final String IN_LINES = "/v1/batches";

    static final Duration DEADLINE = Duration.ofSeconds(10);

    private final JsonMapper json;

    BodyLimits(JsonMapper json) {
        this.json = json;
    }

    /** More bytes than the limit. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;
        private final long maximum;

        TooLarge(long maximum) {
            this.maximum = maximum;
        }

        long maximum() {
            return maximum;
        }
    }

    /** Not all bytes by the deadline. */
    static final class TooSlow extends IOException {
        private static final long serialVersionUID = 1L;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long maximum = TWO_SETUPS.contains(request.getRequestURI()) ? 2 * MAXIMUM_BYTES : MAXIMUM_BYTES;
        if (request.getContentLengthLong() > maximum) {
            refuse(response, tooLarge(maximum));
            return;
        }
        LimitedRequest limited = new LimitedRequest(request, maximum);
        if (request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null) {
            // Its length is not told: taken in whole, so that too much is 413 whatever the reader would trip over
            // first.
            try {
                limited.takeIn();
            } catch (TooLarge tooMuch) {
                refuse(response, tooLarge(maximum));
                return;
            } catch (TooSlow tooLate) {
                refuse(response, tooSlow());
                return;
            }
        }
        chain.doFilter(limited, response);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return IN_LINES.equals(request.getRequestURI());
    }

    private void refuse(HttpServletResponse response, Problem problem) throws IOException {
        response.setStatus(problem.status());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setHeader(HttpHeaders.CONNECTION, "close");
        json.writeValue(response.getOutputStream(), problem);
    }

    static Problem tooLarge(long maximum) {
        return Problem.of(
                HttpStatus.CONTENT_TOO_LARGE.value(),
                "too-large",
                "Body too large",
                "A body may have at most " + maximum + " bytes");
    }

    static Problem tooSlow() {
        return Problem.of(
                HttpStatus.REQUEST_TIMEOUT.value(),
                "too-slow",
                "Body sent too slowly",
                "A body must arrive within " + DEADLINE.toSeconds() + " seconds");
    }

    private static final class LimitedRequest extends HttpServletRequestWrapper {

        private final long maximum;
        private @Nullable ServletInputStream stream;

        LimitedRequest(HttpServletRequest request, long maximum) {
            super(request);
            this.maximum = maximum;
        }

        void takeIn() throws IOException {
            byte[] body = new LimitedStream(super.getInputStream(), maximum).readAllBytes();
            stream = new TakenIn(new ByteArrayInputStream(body));
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            if (stream == null) {
                stream = new LimitedStream(super.getInputStream(), maximum);
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
        private final long deadline = System.nanoTime() + DEADLINE.toNanos();
        private long read;

        LimitedStream(ServletInputStream body, long maximum) {
            this.body = body;
            this.maximum = maximum;
        }

        private int counted(int result, int bytes) throws IOException {
            if (result >= 0) {
                read += bytes;
            }
            if (read > maximum) {
                throw new TooLarge(maximum);
            }
            if (System.nanoTime() - deadline > 0) {
                throw new TooSlow();
            }
            return result;
        }

        @Override
        public int read() throws IOException {
            return counted(body.read(), 1);
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int bytes = body.read(buffer, offset, length);
            return counted(bytes, bytes);
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
