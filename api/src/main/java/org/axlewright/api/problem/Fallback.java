package org.axlewright.api.problem;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What fails outside the controllers reads like everything else. */
@Hidden
@RestController
final class Fallback implements ErrorController {

    @RequestMapping("${server.error.path:/error}")
    ResponseEntity<Problem> failure(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer number ? HttpStatus.resolve(number) : HttpStatus.NOT_FOUND;
        HttpStatus known = status == null ? HttpStatus.INTERNAL_SERVER_ERROR : status;
        return Problems.answer(Problem.of(
                known.value(), known.is5xxServerError() ? "internal" : "refused", known.getReasonPhrase(), (String)
                        null));
    }
}
