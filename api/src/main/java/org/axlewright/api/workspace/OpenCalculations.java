package org.axlewright.api.workspace;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.http.HttpHeaders;
import org.springframework.web.cors.CorsConfiguration;
import org.springframework.web.cors.UrlBasedCorsConfigurationSource;
import org.springframework.web.filter.CorsFilter;

/**
 * Any page may ask the calculations and read the contract from a browser, without credentials. Nothing saved is among them: what is not
 * listed here gets no permission, neither before a request nor with its answer.
 */
@Configuration(proxyBeanMethods = false)
class OpenCalculations {

    @Bean
    FilterRegistrationBean<CorsFilter> openCalculationsFilter(Calculations calculations) {
        UrlBasedCorsConfigurationSource open = new UrlBasedCorsConfigurationSource();
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            open.registerCorsConfiguration("/v1/" + calculation.name(), to("POST"));
        }
        for (String several : List.of(
                "/v1/assessments",
                "/v1/batches",
                "/v1/build-sheets",
                "/v1/solutions",
                "/v1/sweeps",
                "/v1/tolerances")) {
            open.registerCorsConfiguration(several, to("POST"));
        }
        open.registerCorsConfiguration("/v3/api-docs", to("GET"));
        open.registerCorsConfiguration("/v3/api-docs.yaml", to("GET"));
        FilterRegistrationBean<CorsFilter> registration = new FilterRegistrationBean<>(new CorsFilter(open));
        registration.setOrder(Ordered.HIGHEST_PRECEDENCE);
        return registration;
    }

    private static CorsConfiguration to(String method) {
        CorsConfiguration configuration = new CorsConfiguration();
        configuration.addAllowedOrigin(CorsConfiguration.ALL);
        configuration.addAllowedMethod(method);
        configuration.addAllowedHeader(HttpHeaders.CONTENT_TYPE);
        configuration.setAllowCredentials(false);
        configuration.setExposedHeaders(List.of(RateLimits.LEFT, RateLimits.POLICY, HttpHeaders.RETRY_AFTER));
        configuration.setMaxAge(600L); // s
        return configuration;
    }
}
