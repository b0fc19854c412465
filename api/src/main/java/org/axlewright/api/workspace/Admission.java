package org.axlewright.api.workspace;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.axlewright.api.problem.Declined;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;

/**
 * Puts a {@link Door} before every request. Under {@code /v1/setups} it is tried at once, so that nobody learns anything before; elsewhere
 * when something saved is asked for. No question reaches the database past it: {@link CurrentWorkspace#id()} is the only way in.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 20)
final class Admission extends OncePerRequestFilter {

    private static final String SETUPS = "/v1/setups";

    private final Access access;
    private final Tokens tokens;
    private final RateLimits limits;
    private final HandlerExceptionResolver problems;

    Admission(
            Access access,
            Tokens tokens,
            RateLimits limits,
            @Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        this.access = access;
        this.tokens = tokens;
        this.limits = limits;
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Door door = new Door(request, response, access, tokens, limits);
        CurrentWorkspace.enter(door);
        try {
            if (request.getRequestURI().startsWith(SETUPS)) {
                response.setHeader(HttpHeaders.CACHE_CONTROL, "private, no-cache");
                response.addHeader(HttpHeaders.VARY, HttpHeaders.AUTHORIZATION);
                door.get();
            }
            chain.doFilter(request, response);
        } catch (Declined declined) {
            problems.resolveException(request, response, null, declined);
        } finally {
            CurrentWorkspace.leave();
        }
    }
}
