package org.axlewright.api.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.axlewright.api.section.Setup;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The demo vehicles: invented, and checked like anything that is sent. */
@Component
public final class DemoSetups {

    /** The first is the one that examples use. */
    private static final List<String> FILES = List.of(
            "orchard-runabout-as-planned",
            "orchard-runabout-as-found",
            "campground-shuttle-as-planned",
            "campground-shuttle-as-found",
            "greenhouse-tug-as-planned",
            "greenhouse-tug-as-found");

    private final List<Setup> setups;

    DemoSetups(JsonMapper json) {
        setups = FILES.stream()
                .map(file -> json.readValue(text(file), Setup.class))
                .toList();
    }

    public List<Setup> all() {
        return setups;
    }

    /** The setup that examples and the console show: its JSON text. */
    public static String exampleText() {
        return text(FILES.get(0));
    }

    /** The JSON texts of all, in order. */
    public static List<String> texts() {
        return FILES.stream().map(DemoSetups::text).toList();
    }

    private static String text(String file) {
        try (InputStream stream = new ClassPathResource("demo/" + file + ".json").getInputStream()) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
