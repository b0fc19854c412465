package org.axlewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/**
 * Full requests kept as files: {@code acceptance/<path under /v1>/<case>.json} with {@code title}, {@code standing} (published, regulation,
 * formula, derived, weak), {@code source}, optional {@code query}, {@code request}, {@code status} and {@code expect}: a list of
 * {@code pointer} into the answer with {@code value} and {@code tolerance} (a number, or a text like {@code "10 %"}), or with
 * {@code equals}, or with {@code absent: true}; {@code findings} lists codes that must be there, {@code noFindings} codes that must not.
 */
class AcceptanceIT extends Running {

    private static final Path CASES = Path.of("src/test/resources/acceptance");

    @TestFactory
    Stream<DynamicTest> everyCaseIsMet() throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(CASES)) {
            files = walk.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        assertThat(files).isNotEmpty();
        return files.stream()
                .map(file -> DynamicTest.dynamicTest(CASES.relativize(file).toString(), () -> check(file)));
    }

    private void check(Path file) throws IOException {
        JsonNode one = JSON.readTree(Files.readString(file));
        assertThat(one.path("standing").asString()).isIn("published", "regulation", "formula", "derived", "weak");
        assertThat(one.path("source").asString()).isNotBlank();
        String query = one.path("query").asString("");
        Reply reply = post(
                "/v1/" + file.getParent().getFileName() + query,
                one.path("request").toString());
        assertThat(reply.status()).as(reply.text()).isEqualTo(one.path("status").asInt(200));
        JsonNode answer = reply.json();
        for (JsonNode expected : one.path("expect")) {
            expect(answer, expected);
        }
        for (JsonNode code : one.path("findings")) {
            assertThat(answer.path("findings").findValuesAsString("code")).contains(code.asString());
        }
        for (JsonNode code : one.path("noFindings")) {
            assertThat(answer.path("findings").findValuesAsString("code")).doesNotContain(code.asString());
        }
    }

    private static void expect(JsonNode answer, JsonNode expected) {
        String pointer = expected.path("pointer").asString();
        JsonNode actual = answer.at(pointer);
        if (expected.path("absent").asBoolean(false)) {
            assertThat(actual.isMissingNode()).as(pointer + " is absent").isTrue();
        } else if (expected.has("equals")) {
            assertThat(actual).as(pointer).isEqualTo(expected.path("equals"));
        } else {
            double value = expected.path("value").asDouble();
            JsonNode tolerance = expected.path("tolerance");
            double allowance = tolerance.isString()
                    ? Math.abs(value)
                            * Double.parseDouble(
                                    tolerance.asString().replace("%", "").strip())
                            / 100
                    : tolerance.asDouble();
            assertThat(actual.isNumber())
                    .as(pointer + " is a number in " + answer)
                    .isTrue();
            assertThat(actual.asDouble()).as(pointer).isCloseTo(value, within(allowance));
        }
    }
}
