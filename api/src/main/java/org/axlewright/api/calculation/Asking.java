package org.axlewright.api.calculation;

import java.util.Arrays;
import org.axlewright.api.section.Form;
import org.axlewright.domain.quantity.UnitSystem;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.Converter;
import org.springframework.format.FormatterRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Wires the registry and reads the two query parameters of every question. */
@Configuration(proxyBeanMethods = false)
class Asking implements WebMvcConfigurer {

    @Bean
    Calculations calculations(Form form, ObjectProvider<BuildProperties> build) {
        BuildProperties properties = build.getIfAvailable();
        String version = properties == null ? null : properties.getVersion();
        return new Calculations(form, version == null ? "development" : version);
    }

    @Override
    public void addFormatters(FormatterRegistry registry) {
        registry.addConverter(new UnitSystemReader());
    }

    /** {@code metric} and {@code us}, and nothing that only looks like them. */
    private static final class UnitSystemReader implements Converter<String, UnitSystem> {
        @Override
        public UnitSystem convert(String text) {
            return Arrays.stream(UnitSystem.values())
                    .filter(system -> system.toString().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(text));
        }
    }
}
