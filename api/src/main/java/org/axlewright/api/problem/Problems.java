package org.axlewright.api.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import tools.jackson.core.JacksonException;

/** The one place where a failure becomes an answer. */
@RestControllerAdvice
final class Problems extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    @ExceptionHandler
    ResponseEntity<Problem> refused(Refused refused) {
        return answer(Problem.of(refused));
    }

    @ExceptionHandler
    ResponseEntity<Problem> declined(Declined declined) {
        return ResponseEntity.status(declined.problem().status())
                .headers(declined.headers())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(declined.problem());
    }

    @ExceptionHandler
    ResponseEntity<Problem> unreadable(JacksonException failure) {
        return answer(Problem.of(failure));
    }

    @ExceptionHandler
    ResponseEntity<Problem> anythingElse(Exception failure) {
        if (failure instanceof BrokenOff cut) {
            throw cut; // to the container, which cuts the connection, so that nobody takes what came for the whole
        }
        LOG.error("Unexpected failure", failure);
        return answer(Problem.of(
                500, "internal", "Internal failure", "The service failed on this request; its log has the cause"));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException failure, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof CutShort cut) {
                return closing(cut.problem());
            }
        }
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof JacksonException unreadable) {
                return untyped(unreadable(unreadable));
            }
        }
        Fault fault = new Fault("", "bad-json", "The body must be a JSON object", null, null);
        return untyped(answer(Problem.of(400, "not-readable", "Body can't be read", List.of(fault))));
    }

    /** Parameters of the query have no pointer into the body: the message names them. */
    @ExceptionHandler
    ResponseEntity<Problem> wrongParameter(MethodArgumentTypeMismatchException failure) {
        return answer(Problem.of(
                400,
                "not-readable",
                "Parameter can't be read",
                List.of(new Fault(
                        "",
                        "unknown-value",
                        "Parameter " + failure.getName() + " can't take \"" + failure.getValue() + "\"",
                        String.valueOf(failure.getValue()),
                        null))));
    }

    /** Everything that the framework itself refuses: not found, method, media type. Its own words name classes; ours don't. */
    @Override
    protected ResponseEntity<Object> handleExceptionInternal(
            Exception failure, @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        if (status.is5xxServerError()) {
            LOG.error("Unexpected failure", failure);
        }
        HttpStatus known = HttpStatus.resolve(status.value());
        String title = known == null ? "Refused" : known.getReasonPhrase();
        String kind = known == null
                ? "refused"
                : title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
        return untyped(ResponseEntity.status(status)
                .headers(headers)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(Problem.of(status.value(), kind, title, (String) null)));
    }

    private static ResponseEntity<Object> closing(Problem problem) {
        return ResponseEntity.status(problem.status())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .header(HttpHeaders.CONNECTION, "close")
                .body(problem);
    }

    static ResponseEntity<Problem> answer(Problem problem) {
        return ResponseEntity.status(problem.status())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    private static ResponseEntity<Object> untyped(ResponseEntity<Problem> answer) {
        return new ResponseEntity<>(answer.getBody(), answer.getHeaders(), answer.getStatusCode());
    }
}
