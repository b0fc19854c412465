package org.axlewright.api.problem;

import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/** A request that gets another answer than the one it asks for: carries the problem document and its headers. */
public final class Declined extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;
    private final transient HttpHeaders headers = new HttpHeaders();

    public Declined(HttpStatus status, String kind, String title, String detail) {
        this(Problem.of(status.value(), kind, title, detail));
    }

    public Declined(Problem problem) {
        super(problem.title());
        this.problem = problem;
    }

    /** A body that can't be read for a reason that the JSON parser doesn't see. */
    public static Declined unreadable(String message) {
        return unreadable(new Fault("", "bad-json", message, null, null));
    }

    /** The same, with its place in the body. */
    public static Declined unreadable(Fault fault) {
        return new Declined(
                Problem.of(HttpStatus.BAD_REQUEST.value(), "not-readable", "Body can't be read", List.of(fault)));
    }

    /** A parameter of the query that can't be used; it has no pointer into the body, so the message names it. */
    public static Declined parameter(String code, String message) {
        return new Declined(Problem.of(
                HttpStatus.BAD_REQUEST.value(),
                "not-readable",
                "Parameter can't be read",
                List.of(new Fault("", code, message, null, null))));
    }

    public Declined header(String name, String value) {
        headers.add(name, value);
        return this;
    }

    public Problem problem() {
        return problem;
    }

    HttpHeaders headers() {
        return headers;
    }
}
