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
import org.springframework.web.servlet.config.annotation.ViewControllerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Headers of the page, of the gallery of elements, and of their modules. The browser may load nothing from elsewhere and ask nothing
 * elsewhere; it asks each time whether a module has changed, by its content and not by its date: the files of a reproducible build all
 * carry the same. Modules may be loaded by pages of any origin, since the elements are made for them.
 */
@Configuration(proxyBeanMethods = false)
class PageHeaders implements WebMvcConfigurer {

    /** What the page may do, Content Security Policy Level 3. */
    static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:;"
                    + " base-uri 'none'; form-action 'self'; frame-ancestors 'self'";

    /** A shop's visitors don't ask again on every page of it; a release reaches them within minutes. */
    private static final String ELEMENTS_KEEP = "public, max-age=600";

    private static final String MODULES = "/page/*";
    private static final String EMBED = "/embed/*";

    /** Where the modules of the elements stand for good: a later contract gets an address of its own. */
    private static final String EMBED_MODULES = "/embed/v1/*";

    /** The address of the gallery is a directory, as people write it. */
    @Override
    public void addViewControllers(ViewControllerRegistry registry) {
        registry.addViewController("/embed/").setViewName("forward:/embed/index.html");
        registry.addRedirectViewController("/embed", "/embed/");
    }

    @Bean
    FilterRegistrationBean<Guard> pageGuard() {
        FilterRegistrationBean<Guard> registration = new FilterRegistrationBean<>(new Guard());
        registration.addUrlPatterns("/", "/index.html", MODULES, EMBED);
        return registration;
    }

    @Bean
    FilterRegistrationBean<ShallowEtagHeaderFilter> pageEntityTags() {
        ShallowEtagHeaderFilter tags = new ShallowEtagHeaderFilter();
        tags.setWriteWeakETag(true); // what has a strong one is sent uncompressed, since compressing changes its bytes
        FilterRegistrationBean<ShallowEtagHeaderFilter> registration = new FilterRegistrationBean<>(tags);
        registration.addUrlPatterns(MODULES, EMBED_MODULES); // a document that is forwarded to can't be copied
        return registration;
    }

    /** Sets the headers. */
    static final class Guard extends OncePerRequestFilter {
        @Override
        protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                throws ServletException, IOException {
            String path = request.getRequestURI();
            boolean element = path.startsWith("/embed/v1/");
            boolean module = element || path.startsWith("/page/");
            response.setHeader("Content-Security-Policy", POLICY);
            response.setHeader("X-Content-Type-Options", "nosniff");
            response.setHeader("Referrer-Policy", "no-referrer");
            response.setHeader(HttpHeaders.CACHE_CONTROL, element ? ELEMENTS_KEEP : module ? "no-cache" : "no-store");
            if (module) {
                response.setHeader(HttpHeaders.ACCESS_CONTROL_ALLOW_ORIGIN, "*");
                response.setHeader("Cross-Origin-Resource-Policy", "cross-origin");
            }
            chain.doFilter(request, response);
        }
    }
}
