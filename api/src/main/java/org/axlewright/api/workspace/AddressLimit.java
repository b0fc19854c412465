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
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Counts every request to the API before its body is read. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 5)
final class AddressLimit extends OncePerRequestFilter {

    private final RateLimits limits;
    private final HandlerExceptionResolver problems;

    AddressLimit(RateLimits limits, @Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        this.limits = limits;
        this.problems = problems;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getRequestURI().startsWith("/v1/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            limits.countAddress(request.getRemoteAddr(), response);
        } catch (Declined tooMany) {
            response.setHeader("Connection", "close"); // its body is not read
            problems.resolveException(request, response, null, tooMany);
            return;
        }
        chain.doFilter(request, response);
    }
}
