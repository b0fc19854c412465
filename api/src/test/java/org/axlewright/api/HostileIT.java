package org.axlewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Hostile and broken bodies at every calculation: never a 5xx, never a number that is none, never a class name. The cases follow from a
 * fixed seed, so a failure repeats.
 */
class HostileIT extends Running {

    private static final long SEED = 20_261_125;
    private static final int ROUNDS = 400;

    @Autowired
    Calculations calculations;

    @TestFactory
    Stream<DynamicTest> brokenBodiesAreRefusedInPlainWords() {
        return calculations.all().stream()
                .map(calculation -> DynamicTest.dynamicTest(calculation.name(), () -> broken(calculation)));
    }

    private void broken(Calculation<?, ?, ?> calculation) {
        SplittableRandom random = new SplittableRandom(SEED);
        List<JsonNode> vehicles =
                DemoSetups.texts().stream().map(JSON::readTree).toList();
        for (int round = 0; round < ROUNDS; round++) {
            JsonNode body = vehicles.get(round % vehicles.size()).deepCopy();
            int wounds = 1 + random.nextInt(3);
            for (int i = 0; i < wounds; i++) {
                wound(body, random);
            }
            String text = body.toString();
            if (random.nextInt(10) == 0) {
                text = text.substring(0, random.nextInt(text.length()));
            }
            holds(post("/v1/" + calculation.name(), text), text);
        }
    }

    /** Changes one place somewhere in the tree. */
    private static void wound(JsonNode root, SplittableRandom random) {
        List<ObjectNode> objects = new ArrayList<>();
        collect(root, objects);
        ObjectNode place = objects.get(random.nextInt(objects.size()));
        List<String> names = place.properties().stream().map(Map.Entry::getKey).toList();
        if (names.isEmpty()) {
            place.put("stray", 1);
            return;
        }
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(14)) {
            case 0 -> place.remove(name);
            case 1 -> place.putNull(name);
            case 2 -> place.put(name, "text");
            case 3 -> place.put(name, -1);
            case 4 -> place.put(name, 0);
            case 5 -> place.put(name, 1e308);
            case 6 -> place.put(name, 1e-308);
            case 7 -> place.put(name, true);
            case 8 -> place.putObject(name);
            case 9 -> place.putArray(name).addNull();
            case 10 -> place.put("stray" + random.nextInt(9), 1);
            case 11 -> place.put(name, "\u0000\ud83d\ude00<script>");
            case 12 -> scale(place, random);
            default -> place.putArray(name).add(place.deepCopy());
        }
    }

    private static void scale(ObjectNode place, SplittableRandom random) {
        if (place.path("value").isNumber()) {
            place.put("value", place.path("value").asDouble() * Math.pow(10, random.nextInt(-6, 7)));
        }
    }

    private static void collect(JsonNode node, List<ObjectNode> objects) {
        if (node instanceof ObjectNode object) {
            objects.add(object);
            object.properties().forEach(entry -> collect(entry.getValue(), objects));
        } else if (node instanceof ArrayNode array) {
            array.forEach(entry -> collect(entry, objects));
        }
    }

    @Test
    void everyCornerOfEveryRangeIsAnsweredOrRefused() {
        SplittableRandom random = new SplittableRandom(SEED);
        JsonNode ranges = JSON.readTree(get("/v3/api-docs").text()).at("/components/schemas");
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            for (int round = 0; round < ROUNDS; round++) {
                JsonNode body = JSON.readTree(
                        DemoSetups.texts().get(round % DemoSetups.texts().size()));
                corner(body, ranges.path("Setup"), ranges, random);
                String text = body.toString();
                holds(post("/v1/" + calculation.name(), text), text);
            }
        }
    }

    /** Sets some quantities and numbers of the tree to an end of their range. */
    private static void corner(JsonNode node, JsonNode schema, JsonNode schemas, SplittableRandom random) {
        if (!(node instanceof ObjectNode object)) {
            return;
        }
        for (Map.Entry<String, JsonNode> entry : List.copyOf(object.properties())) {
            JsonNode property = schema.path("properties").path(entry.getKey());
            JsonNode range = property.path("x-range");
            if (!range.isMissingNode()) {
                if (random.nextInt(8) == 0) {
                    ObjectNode end = JSON.createObjectNode();
                    end.set("value", range.path(random.nextBoolean() ? "minimum" : "maximum"));
                    end.set("unit", range.path("unit"));
                    object.set(entry.getKey(), end);
                }
            } else if (property.has("minimum") && property.has("maximum")) {
                if (random.nextInt(8) == 0) {
                    object.set(entry.getKey(), property.path(random.nextBoolean() ? "minimum" : "maximum"));
                }
            } else if (entry.getValue().isArray()) {
                JsonNode items = named(property.path("items"), schemas);
                entry.getValue().forEach(element -> corner(element, items, schemas, random));
            } else {
                corner(entry.getValue(), named(property, schemas), schemas, random);
            }
        }
    }

    private static JsonNode named(JsonNode schema, JsonNode schemas) {
        String reference = schema.path("$ref").asString("");
        return schemas.path(reference.substring(reference.lastIndexOf('/') + 1));
    }

    @Test
    void documentsBeyondTheLimitsAreRefused() {
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            String path = "/v1/" + calculation.name();
            assertThat(post(path, "{\"notes\":\"" + "x".repeat(300_000) + "\"}").status())
                    .isEqualTo(413);
            assertThat(post(path, "[".repeat(200_000)).status()).isEqualTo(400);
            assertThat(post(path, "{\"a\":".repeat(40_000)).status()).isEqualTo(400);
            assertThat(post(path, "{\"items\":[" + "{},".repeat(80_000) + "{}]}")
                            .status())
                    .isEqualTo(400);
            assertThat(post(path, "{\"bare\":{\"frontShare\":" + "9".repeat(300) + "}}")
                            .status())
                    .isEqualTo(400);
            assertThat(post(path, "{\"bare\":{\"frontShare\":NaN}}").status()).isEqualTo(400);
            assertThat(post(path, "{\"bare\":{\"frontShare\":1e400}}").status()).isEqualTo(400);
        }
    }

    private static void holds(Reply reply, String body) {
        String seen = reply.status() + " " + reply.text() + " for " + body;
        assertThat(reply.status()).as(seen).isIn(200, 400, 422);
        assertThat(reply.text())
                .as(seen)
                .doesNotContain("NaN", "Infinity", "java.", "org.axlewright", "tools.jackson", "Exception");
        if (reply.status() != 200) {
            assertThat(reply.contentType()).isEqualTo("application/problem+json");
            assertThat(reply.json().path("errors")).as(seen).isNotEmpty();
        }
    }
}
