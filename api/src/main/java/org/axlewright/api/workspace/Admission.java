package org.axlewright.api.workspace;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets every request into the workspace that it may work in. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 20)
final class Admission extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        CurrentWorkspace.enter(CurrentWorkspace.LOCAL);
        try {
            chain.doFilter(request, response);
        } finally {
            CurrentWorkspace.leave();
        }
    }
}
