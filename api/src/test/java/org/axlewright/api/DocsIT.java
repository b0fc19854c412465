package org.axlewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Worked examples of the pages in {@code docs} are asked of the running service. A fenced block {@code json request <calculation>?<query>}
 * holds a request; the block {@code json answer} after it holds any part of the answer: objects may leave members out, lists are
 * complete, numbers hold to their last printed digit.
 */
class DocsIT extends Running {

    private static final Path DOCS = Path.of("../docs");

    private static final Pattern EXAMPLE = Pattern.compile(
            "^```json request (?<question>\\S+)\\s*$(?<request>.*?)^```\\s*$"
                    + "(?:(?!^```).)*?^```json answer\\s*$(?<answer>.*?)^```\\s*$",
            Pattern.MULTILINE | Pattern.DOTALL);

    private static final Pattern REQUEST = Pattern.compile("^```json request", Pattern.MULTILINE);

    /** Numbers as printed: 1.10 has two decimals. */
    private static final JsonMapper AS_PRINTED = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    @Autowired
    Calculations calculations;

    private record Example(String name, String question, String request, String answer) {}

    @TestFactory
    Stream<DynamicTest> everyWorkedExampleIsAnsweredAsPrinted() {
        List<Example> examples = pages().stream().flatMap(this::examples).toList();
        assertThat(examples).isNotEmpty();
        return examples.stream().map(example -> DynamicTest.dynamicTest(example.name(), () -> check(example)));
    }

    @Test
    void everyRoomHasAPageWithAWorkedExampleOfEachOfItsQuestions() {
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            String room = room(calculation);
            Path page = DOCS.resolve(room + ".md");
            assertThat(page).as("page of the room " + room).exists();
            assertThat(examples(page).map(example -> example.question().replaceAll("\\?.*", "")))
                    .as("worked examples of " + page.getFileName())
                    .contains(calculation.name());
        }
    }

    @TestFactory
    Stream<DynamicTest> everyRequestOfAPageHasAnAnswer() {
        return pages().stream()
                .map(page -> DynamicTest.dynamicTest(page.getFileName() + " is complete", () -> {
                    long requests = REQUEST.matcher(text(page)).results().count();
                    assertThat(examples(page).count())
                            .as("requests that are followed by an answer")
                            .isEqualTo(requests);
                }));
    }

    private void check(Example example) {
        Reply reply = post("/v1/" + example.question(), example.request());
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        List<String> differences = new ArrayList<>();
        compare("", AS_PRINTED.readTree(example.answer()), reply.json(), differences);
        assertThat(differences).as("differences between page and service").isEmpty();
    }

    private static void compare(String pointer, JsonNode printed, JsonNode answered, List<String> differences) {
        if (printed.isObject() && answered.isObject()) {
            printed.properties()
                    .forEach(member -> compare(
                            pointer + "/" + member.getKey(),
                            member.getValue(),
                            answered.path(member.getKey()),
                            differences));
        } else if (printed.isArray() && answered.isArray()) {
            if (printed.size() != answered.size()) {
                differences.add(pointer + " has " + answered.size() + " entries: " + answered);
            }
            for (int i = 0; i < printed.size(); i++) {
                compare(pointer + "/" + i, printed.get(i), answered.path(i), differences);
            }
        } else if (printed.isNumber() && answered.isNumber()) {
            BigDecimal value = printed.decimalValue();
            double half = 0.5000001 * Math.pow(10, -value.scale());
            if (Math.abs(value.doubleValue() - answered.asDouble()) > half) {
                differences.add(pointer + " is " + answered + ", printed " + value.toPlainString());
            }
        } else if (!printed.equals(answered)) {
            differences.add(pointer + " is " + answered + ", printed " + printed);
        }
    }

    private Stream<Example> examples(Path page) {
        List<Example> found = new ArrayList<>();
        Matcher example = EXAMPLE.matcher(text(page));
        while (example.find()) {
            found.add(new Example(
                    page.getFileName() + ", example " + (found.size() + 1),
                    example.group("question"),
                    example.group("request"),
                    example.group("answer")));
        }
        return found.stream();
    }

    /** The room of a calculation is its package. */
    private static String room(Calculation<?, ?, ?> calculation) {
        String owner = calculation.getClass().getPackageName();
        return owner.substring(owner.lastIndexOf('.') + 1);
    }

    private static List<Path> pages() {
        try (Stream<Path> files = Files.list(DOCS)) {
            return List.copyOf(new TreeSet<>(
                    files.filter(file -> file.toString().endsWith(".md")).toList()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String text(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
