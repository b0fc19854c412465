package org.axlewright.api.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.Validation;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.problem.StrictJson;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The registry and what it publishes. */
class CalculationsTest {

    private static final JsonMapper JSON = strictMapper();
    private static final Calculations CALCULATIONS =
            new Calculations(new Form(Validation.buildDefaultValidatorFactory().getValidator()), "test");

    private static JsonMapper strictMapper() {
        JsonMapper.Builder builder = JsonMapper.builder();
        StrictJson.strict(builder);
        return builder.build();
    }

    @Test
    void everyQuestionIsRegisteredOnce() {
        assertThat(CALCULATIONS.all().stream().map(Calculation::name))
                .containsExactly(
                        "centre-of-gravity",
                        "lift-geometry",
                        "ride-height",
                        "stability",
                        "braking",
                        "descent",
                        "towing",
                        "gearing",
                        "drive-performance",
                        "pack-range",
                        "pack-fit",
                        "pack-check",
                        "storage",
                        "charge-time",
                        "conductor-size",
                        "precharge",
                        "joint",
                        "frame-overhang",
                        "seat-reach",
                        "vehicle-class",
                        "ownership-cost",
                        "pack-weight-change");
    }

    @Test
    void anEmptySetupIsToldTheUsualWayToAnAnswer() {
        Setup nothing = JSON.readValue("{}", Setup.class);
        for (Calculation<?, ?, ?> calculation : CALCULATIONS.all()) {
            assertThat(calculation.needs().alternatives())
                    .as(calculation.name())
                    .contains(faults(calculation, nothing));
        }
    }

    @Test
    void everyPublishedWayToAnAnswerSuffices() {
        List<JsonNode> vehicles = vehicles();
        for (Calculation<?, ?, ?> calculation : CALCULATIONS.all()) {
            for (List<String> alternative : calculation.needs().alternatives()) {
                ObjectNode least = JSON.createObjectNode();
                List<JsonNode> nearest = vehicles.stream()
                        .sorted(Comparator.comparingLong(vehicle -> alternative.stream()
                                .filter(pointer -> vehicle.at(pointer).isMissingNode())
                                .count()))
                        .toList();
                alternative.forEach(pointer -> put(least, pointer, sample(pointer, nearest)));
                Setup setup = JSON.treeToValue(least, Setup.class);
                assertThat(faults(calculation, setup))
                        .as(calculation.name() + " with " + least)
                        .isEmpty();
            }
        }
    }

    @Test
    void theSameSetupGetsTheSameAnswer() {
        Setup setup = JSON.readValue(DemoSetups.exampleText(), Setup.class);
        for (Calculation<?, ?, ?> calculation : CALCULATIONS.all()) {
            Asked asked = new Asked(UnitSystem.METRIC, true);
            assertThat(CALCULATIONS.ask(calculation, setup, asked))
                    .isEqualTo(CALCULATIONS.ask(calculation, setup, asked));
        }
    }

    private static List<String> faults(Calculation<?, ?, ?> calculation, Setup setup) {
        try {
            CALCULATIONS.ask(calculation, setup, new Asked(UnitSystem.US, false));
            return List.of();
        } catch (Refused refused) {
            return refused.faults().stream().map(Fault::pointer).toList();
        }
    }

    /** Values for pointers that no demo vehicle carries. */
    private static final Map<String, String> SAMPLES = new TreeMap<>(Map.ofEntries(
            Map.entry("/laden/mass", "{\"value\": 500, \"unit\": \"kg\"}"),
            Map.entry("/laden/position/x", "{\"value\": 0.9, \"unit\": \"m\"}"),
            // the runabout's weight in other words, to go with its reading of one raised axle
            Map.entry("/bare/axles/front", "{\"value\": 189, \"unit\": \"kg\"}"),
            Map.entry("/bare/axles/rear", "{\"value\": 261, \"unit\": \"kg\"}"),
            Map.entry("/bare/mass", "{\"value\": 450, \"unit\": \"kg\"}"),
            Map.entry("/bare/frontShare", "0.42"),
            Map.entry("/laden/position/z", "{\"value\": 0.6, \"unit\": \"m\"}"),
            Map.entry("/bare/position/z", "{\"value\": 0.5, \"unit\": \"m\"}"),
            Map.entry("/bare/position/x", "{\"value\": 0.9, \"unit\": \"m\"}"),
            Map.entry("/drive/measured/speed", "{\"value\": 20, \"unit\": \"km/h\"}"),
            Map.entry("/drive/measured/motorSpeed", "{\"value\": 2800, \"unit\": \"rpm\"}"),
            Map.entry("/drive/speedSensor/shown", "{\"value\": 15, \"unit\": \"mph\"}"),
            Map.entry("/drive/speedSensor/trueSpeed", "{\"value\": 30, \"unit\": \"mph\"}"),
            Map.entry("/drive/speedSensor/pulsesExpected", "4"),
            Map.entry("/drive/speedSensor/pulsesGiven", "8"),
            Map.entry("/drive/motor/maximumTorque", "{\"value\": 60, \"unit\": \"Nm\"}"),
            Map.entry("/drive/motor/ratedTorque", "{\"value\": 12, \"unit\": \"Nm\"}"),
            Map.entry(
                    "/drive/motor/curve",
                    "[{\"speed\": {\"value\": 0, \"unit\": \"rpm\"}, \"torque\": {\"value\": 60, \"unit\": \"Nm\"}},"
                            + "{\"speed\": {\"value\": 4000, \"unit\": \"rpm\"}, \"torque\": {\"value\": 5, \"unit\": \"Nm\"}}]"),
            Map.entry("/tyres/rear/rollout", "{\"value\": 1400, \"unit\": \"mm\"}"),
            Map.entry("/tyres/front/rollout", "{\"value\": 1400, \"unit\": \"mm\"}"),
            Map.entry("/pack/blocks/cellsInSeries", "3"),
            Map.entry("/suspension/front/measured/mass", "{\"value\": 100, \"unit\": \"kg\"}"),
            Map.entry("/suspension/front/measured/drop", "{\"value\": 30, \"unit\": \"mm\"}"),
            Map.entry("/load/current", "{\"value\": 75, \"unit\": \"A\"}"),
            Map.entry("/hill/drop", "{\"value\": 0.72, \"unit\": \"m\"}"),
            Map.entry("/load/power", "{\"value\": 2, \"unit\": \"kW\"}"),
            Map.entry("/circuits/0/voltage", "{\"value\": 48, \"unit\": \"V\"}"),
            Map.entry("/circuits/0/continuousCurrent", "{\"value\": 50, \"unit\": \"A\"}"),
            Map.entry("/pack/capacityRows/0/current", "{\"value\": 25, \"unit\": \"A\"}"),
            Map.entry("/drive/controller/capacitance", "{\"value\": 2, \"unit\": \"mF\"}"),
            Map.entry("/joints/0/resistance", "{\"value\": 0.3, \"unit\": \"mohm\"}"),
            Map.entry("/precharge/measured/resistance", "{\"value\": 25, \"unit\": \"ohm\"}"),
            Map.entry("/precharge/measured/time", "{\"value\": 3, \"unit\": \"ms\"}"),
            Map.entry("/precharge/coil/current", "{\"value\": 0.5, \"unit\": \"A\"}"),
            Map.entry("/frame/rails/0/section/shape", "\"square\""),
            Map.entry("/pack/capacityRows/0/time", "{\"value\": 447, \"unit\": \"min\"}")));

    private static JsonNode sample(String pointer, List<JsonNode> vehicles) {
        String own = SAMPLES.get(pointer);
        if (own != null) {
            return JSON.readTree(own);
        }
        return vehicles.stream()
                .map(vehicle -> vehicle.at(pointer))
                .filter(node -> !node.isMissingNode())
                .findFirst()
                .orElseThrow(() -> new AssertionError("No sample for " + pointer));
    }

    private static List<JsonNode> vehicles() {
        return DemoSetups.texts().stream().map(JSON::readTree).toList();
    }

    private static void put(ObjectNode root, String pointer, JsonNode value) {
        JsonNode node = root;
        String[] names = pointer.substring(1).split("/");
        for (int i = 0; i < names.length; i++) {
            boolean last = i == names.length - 1;
            boolean listNext = !last && names[i + 1].matches("\\d+");
            if (node.isArray()) {
                if (node.isEmpty()) {
                    ((tools.jackson.databind.node.ArrayNode) node).addObject();
                }
                node = node.get(0);
            } else if (last) {
                ((ObjectNode) node).set(names[i], value);
            } else {
                ObjectNode owner = (ObjectNode) node;
                if (!owner.has(names[i])) {
                    owner.set(names[i], listNext ? JSON.createArrayNode() : JSON.createObjectNode());
                }
                node = owner.get(names[i]);
            }
        }
    }
}
