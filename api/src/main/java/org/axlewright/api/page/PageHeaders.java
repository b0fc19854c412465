package org.axlewright.api.page;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.filter.ShallowEtagHeaderFilter;

/**
 * Headers of the page and its modules. The browser may load nothing from elsewhere and ask nothing elsewhere; it asks each time whether a
 * module has changed, by its content and not by its date: the files of a reproducible build all carry the same.
 */
@Configuration(proxyBeanMethods = false)
class PageHeaders {

    /** What the page may do, Content Security Policy Level 3. */
    static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:;"
                    + " base-uri 'none'; form-action 'self'; frame-ancestors 'self'";

    private static final String MODULES = "/page/*";

    @Bean
    FilterRegistrationBean<Guard> pageGuard() {
        FilterRegistrationBean<Guard> registration = new FilterRegistrationBean<>(new Guard());
        registration.addUrlPatterns("/", "/index.html", MODULES);
        return registration;
    }

    @Bean
    FilterRegistrationBean<ShallowEtagHeaderFilter> pageEntityTags() {
        ShallowEtagHeaderFilter tags = new ShallowEtagHeaderFilter();
        tags.setWriteWeakETag(true); // what has a strong one is sent uncompressed, since compressing changes its bytes
        FilterRegistrationBean<ShallowEtagHeaderFilter> registration = new FilterRegistrationBean<>(tags);
        registration.addUrlPatterns(MODULES); // a document that is forwarded to can't be copied
        return registration;
    }

    /** Sets the headers. */
    static final class Guard extends OncePerRequestFilter {
        @Override
        protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                throws ServletException, IOException {
            response.setHeader("Content-Security-Policy", POLICY);
            response.setHeader("X-Content-Type-Options", "nosniff");
            response.setHeader("Referrer-Policy", "no-referrer");
            response.setHeader(
                    HttpHeaders.CACHE_CONTROL, request.getRequestURI().startsWith("/page/") ? "no-cache" : "no-store");
            chain.doFilter(request, response);
        }
    }
}
