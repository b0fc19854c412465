package org.axlewright.api.sheet;

import java.util.Arrays;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.Converter;
import org.springframework.format.FormatterRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Reads the query parameter that only sheets have. */
@Configuration(proxyBeanMethods = false)
class SheetParameters implements WebMvcConfigurer {

    @Override
    public void addFormatters(FormatterRegistry registry) {
        registry.addConverter(new PaperReader());
    }

    /** {@code a4} and {@code letter}. */
    private static final class PaperReader implements Converter<String, Paper> {
        @Override
        public Paper convert(String text) {
            return Arrays.stream(Paper.values())
                    .filter(paper -> paper.toString().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(text));
        }
    }
}
