package org.axlewright.api.problem;

import java.io.IOException;
import java.time.Duration;
import org.springframework.http.HttpStatus;

/** A body that is not read to its end, because it is too large or comes too slowly (contract R15). */
public final class CutShort extends IOException {

    private static final long serialVersionUID = 1L;

    /** Most bytes of a JSON document: of a body, or of a line of a stream. */
    public static final long MAXIMUM_BYTES = 256L * 1024;

    static final Duration DEADLINE = Duration.ofSeconds(10);

    private final transient Problem problem;

    private CutShort(Problem problem) {
        super(problem.title());
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }

    public static CutShort tooLarge(long maximum) {
        return new CutShort(Problem.of(
                HttpStatus.CONTENT_TOO_LARGE.value(),
                "too-large",
                "Body too large",
                "A body, or a line of a stream, may have at most " + maximum + " bytes"));
    }

    static CutShort tooSlow() {
        return new CutShort(Problem.of(
                HttpStatus.REQUEST_TIMEOUT.value(),
                "too-slow",
                "Body sent too slowly",
                "A body, or a line of a stream, must arrive within " + DEADLINE.toSeconds() + " seconds"));
    }
}
