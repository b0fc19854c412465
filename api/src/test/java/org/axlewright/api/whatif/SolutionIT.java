package org.axlewright.api.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.util.List;
import java.util.SplittableRandom;
import org.axlewright.api.Running;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Inverse questions over HTTP: closed forms, owners' questions with known answers, and solutions put back. */
class SolutionIT extends Running {

    private static final String CART = """
            {"chassis": {"wheelbase": {"value": 1.68, "unit": "m"}},
             "bare": {"axles": {"front": {"value": 190, "unit": "kg"}, "rear": {"value": 260, "unit": "kg"}},
                      "height": {"value": 0.55, "unit": "m"}},
             "items": [{"name": "pack", "mass": {"value": 60, "unit": "kg"},
                        "position": {"x": {"value": 1, "unit": "m"}, "z": {"value": 0.7, "unit": "m"}}}]}
            """;

    private static final String BACK = """
            {"pointer": "/items/0/position/x", "between": [{"value": 0, "unit": "m"}, {"value": 6, "unit": "m"}]}""";

    private static String body(String calculation, String input, String vary, String target) {
        return "{\"calculation\": \"" + calculation + "\", \"input\": " + input + ", \"vary\": " + vary
                + ", \"target\": " + target + "}";
    }

    private JsonNode solve(String calculation, String input, String vary, String target) {
        Reply reply = post("/v1/solutions", body(calculation, input, vary, target));
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        return reply.json();
    }

    private JsonNode ask(String calculation, String input) {
        Reply reply = post("/v1/" + calculation + "?working=false", input);
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        return reply.json().path("result");
    }

    private static String with(String input, String pointer, JsonNode value) {
        JsonNode tree = JSON.readTree(input);
        int last = pointer.lastIndexOf('/');
        ((ObjectNode) tree.at(pointer.substring(0, last))).set(pointer.substring(last + 1), value);
        return tree.toString();
    }

    /** (250 − 60·x/1.68)/510 = 0.2 at x = (250 − 102)·1.68/60 = 4.144 m. */
    @Test
    void howFarBackThePackMayGo() {
        JsonNode solution =
                solve("centre-of-gravity", CART, BACK, "{\"pointer\": \"/frontAxle/share\", \"atLeast\": 0.2}");
        assertThat(solution.path("solved").asBoolean()).isTrue();
        assertThat(solution.path("monotonic").asBoolean()).isTrue();
        assertThat(solution.path("course").asString()).isEqualTo("falling");
        assertThat(solution.path("met")).hasSize(1);
        assertThat(solution.at("/met/0/from/value").asDouble()).isZero();
        assertThat(solution.at("/met/0/to/value").asDouble()).isCloseTo(4.144, within(1e-8));
        assertThat(solution.path("crossings")).hasSize(1);
        JsonNode crossing = solution.at("/crossings/0");
        assertThat(crossing.at("/at/value/value").asDouble()).isCloseTo(4.144, within(1e-10));
        assertThat(crossing.at("/at/meets").asBoolean()).isTrue();
        assertThat(crossing.at("/below/meets").asBoolean()).isTrue();
        assertThat(crossing.at("/above/meets").asBoolean()).isFalse();
        assertThat(crossing.at("/above/result").asDouble()).isLessThan(0.2);
        assertThat(ask("centre-of-gravity", with(CART, "/items/0/position/x", crossing.at("/at/value")))
                        .at("/frontAxle/share")
                        .asDouble())
                .isGreaterThanOrEqualTo(0.2);
    }

    @Test
    void noSolutionTellsWhatIsReached() {
        JsonNode solution =
                solve("centre-of-gravity", CART, BACK, "{\"pointer\": \"/frontAxle/share\", \"equals\": 0.6}");
        assertThat(solution.path("solved").asBoolean()).isFalse();
        assertThat(solution.has("first")).isFalse();
        assertThat(solution.path("crossings")).isEmpty();
        assertThat(solution.at("/reached/greatest/result").asDouble()).isCloseTo(250 / 510.0, within(1e-12));
        assertThat(solution.at("/reached/greatest/value/value").asDouble()).isZero();
        assertThat(solution.at("/reached/least/result").asDouble())
                .isCloseTo((250 - 60 * 6 / 1.68) / 510, within(1e-12));
    }

    @Test
    void aTargetInPoundsAndARangeInInchesMeanTheSame() {
        JsonNode solution = solve(
                "centre-of-gravity",
                CART,
                """
                {"pointer": "/items/0/position/x", "between": [{"value": 0, "unit": "in"}, {"value": 2, "unit": "m"}]}""",
                "{\"pointer\": \"/frontAxle/load\", \"equals\": {\"value\": 450, \"unit\": \"lb\"}}");
        double kilograms = 450 * 0.45359237;
        assertThat(solution.at("/first/unit").asString()).isEqualTo("in");
        assertThat(solution.at("/first/value").asDouble() * 0.0254)
                .isCloseTo((250 - kilograms) * 1.68 / 60, within(1e-8));
    }

    /** Owners' questions with a known answer; sources stand with the cases that answer them straight. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            kart of 134 km/h pulls away at 63.8 km/h with 9:1 | gearing | {"tyres": {"rear": {"diameter": {"value": 20, "unit": "in"}}}, "drive": {"ratio": "14:60", "motor": {"speed": {"value": 6000, "unit": "rpm"}}}} | {"pointer": "/drive/ratio", "between": [3, 20]} | {"pointer": "/idealSpeed", "equals": {"value": 63.8, "unit": "km/h"}} | 9 | 0.01
            11 mph on 18 in become 14 mph on 22.9 in            | gearing | {"tyres": {"rear": {"diameter": {"value": 18, "unit": "in"}}}, "drive": {"ratio": 12.44, "motor": {"speed": {"value": 2556.4, "unit": "rpm"}}}} | {"pointer": "/tyres/rear/diameter", "between": [{"value": 16, "unit": "in"}, {"value": 26, "unit": "in"}]} | {"pointer": "/idealSpeed", "equals": {"value": 14, "unit": "mph"}} | 22.9 | 0.05
            nine blocks of 8 V make 72 V                      | pack-range | {"pack": {"chemistry": "flooded", "blocks": {"count": 6, "voltage": {"value": 8, "unit": "V"}}, "capacity": {"value": 170, "unit": "Ah"}, "ratedHours": 20}, "load": {"current": {"value": 56, "unit": "A"}}} | {"pointer": "/pack/blocks/count", "between": [1, 20]} | {"pointer": "/nominalVoltage", "atLeast": {"value": 72, "unit": "V"}} | 9 | 0
            25 ohm and 3 ms are 120 uF                        | precharge | {"pack": {"chemistry": "nmc", "cellsInSeries": 44}, "precharge": {"capacitance": {"value": 1, "unit": "mF"}, "resistor": {"resistance": {"value": 25, "unit": "ohm"}}}} | {"pointer": "/precharge/capacitance", "between": [{"value": 10, "unit": "uF"}, {"value": 1000, "unit": "uF"}]} | {"pointer": "/timeConstant", "equals": {"value": 3, "unit": "ms"}} | 120 | 0.01
            58.4 V on 10 W takes 470 ohm of those in the list | precharge | {"pack": {"chemistry": "lfp", "cellsInSeries": 16}, "precharge": {"resistor": {"resistance": {"value": 250, "unit": "ohm"}, "powerRating": {"value": 10, "unit": "W"}}}} | {"pointer": "/precharge/resistor/resistance/value", "values": [220, 250, 470, 1000]} | {"pointer": "/holdPower", "atMost": {"value": 10, "unit": "W"}} | 470 | 0
            one resistor of 25 W left in line bears 1.29 A    | precharge | {"pack": {"chemistry": "lfp", "cellsInSeries": 16}, "precharge": {"resistor": {"resistance": {"value": 50, "unit": "ohm"}, "powerRating": {"value": 25, "unit": "W"}}}} | {"pointer": "/precharge/resistor/resistance", "between": [{"value": 5, "unit": "ohm"}, {"value": 50, "unit": "ohm"}]} | {"pointer": "/lastingCurrent", "equals": {"value": 1.2909944, "unit": "A"}} | 15 | 0.001
            4.56 m of turn at 30 degrees is 2.28 m of wheelbase | frame-overhang | {"chassis": {"wheelbase": {"value": 1.67, "unit": "m"}, "groundClearance": {"value": 0.15, "unit": "m"}}, "frame": {"stretch": {"lengthAdded": {"value": 0.1, "unit": "m"}, "steeringAngle": {"value": 30, "unit": "deg"}}}} | {"pointer": "/frame/stretch/lengthAdded", "between": [{"value": 10, "unit": "mm"}, {"value": 1000, "unit": "mm"}]} | {"pointer": "/stretch/turningRadius/after", "equals": {"value": 4.56, "unit": "m"}} | 610 | 0.01
            0.7 g on 50 ft is 22.9 mph                        | stability | {"chassis": {"wheelbase": {"value": 66, "unit": "in"}, "frontTrack": {"value": 860, "unit": "mm"}, "rearTrack": {"value": 37.4, "unit": "in"}}, "bare": {"mass": {"value": 900, "unit": "lb"}, "position": {"x": {"value": 36, "unit": "in"}, "y": {"value": 0, "unit": "in"}, "z": {"value": 18, "unit": "in"}}}, "ground": {"friction": 0.8}, "manoeuvre": {"radius": {"value": 50, "unit": "ft"}, "speed": {"value": 10, "unit": "mph"}}} | {"pointer": "/manoeuvre/speed", "between": [{"value": 1, "unit": "mph"}, {"value": 40, "unit": "mph"}]} | {"pointer": "/turn/lateralAcceleration", "equals": {"value": 0.7, "unit": "g"}} | 22.9 | 0.05
            0.65 g at full lock on 12.5 ft is 11 mph          | stability | {"chassis": {"wheelbase": {"value": 4, "unit": "m"}, "frontTrack": {"value": 0.9, "unit": "m"}, "rearTrack": {"value": 0.9, "unit": "m"}, "turningRadius": {"value": 12.5, "unit": "ft"}}, "bare": {"mass": {"value": 500, "unit": "kg"}, "position": {"x": {"value": 2, "unit": "m"}, "y": {"value": 0, "unit": "m"}, "z": {"value": 0.55, "unit": "m"}}}, "manoeuvre": {"speed": {"value": 5, "unit": "mph"}}} | {"pointer": "/manoeuvre/speed", "between": [{"value": 1, "unit": "mph"}, {"value": 20, "unit": "mph"}]} | {"pointer": "/fullLock/lateralAcceleration", "equals": {"value": 0.65, "unit": "g"}} | 11 | 0.05
            """)
    void ownersQuestionsAreAnswered(
            String question,
            String calculation,
            String input,
            String vary,
            String target,
            double expected,
            double within) {
        JsonNode solution = solve(calculation, input, vary, target);
        assertThat(solution.path("solved").asBoolean()).as(solution.toString()).isTrue();
        JsonNode first = solution.path("first");
        assertThat(first.isNumber() ? first.asDouble() : first.path("value").asDouble())
                .as(question)
                .isCloseTo(expected, within(Math.max(within, 1e-12)));
    }

    /** Capacitors of 63 V with a margin of 1.2: twelve cells pass (60.5 V), thirteen don't (65.5 V). */
    @Test
    void howManyCellsTheCapacitorsBear() {
        JsonNode solution = solve(
                "pack-range",
                """
                {"pack": {"chemistry": "nmc", "cellsInSeries": 10, "capacity": {"value": 40, "unit": "Ah"}}, "load": {"current": {"value": 20, "unit": "A"}}}""",
                "{\"pointer\": \"/pack/cellsInSeries\", \"between\": [8, 16]}",
                "{\"pointer\": \"/fullVoltage\", \"atMost\": {\"value\": 52.5, \"unit\": \"V\"}}");
        assertThat(solution.at("/met/0/to").asInt()).isEqualTo(12);
        assertThat(solution.at("/crossings/0/at/value").asInt()).isEqualTo(12);
        assertThat(solution.at("/crossings/0/above/value").asInt()).isEqualTo(13);
        assertThat(solution.at("/crossings/0/above/meets").asBoolean()).isFalse();
    }

    @Test
    void theSmallestCordThatHoldsThreePerCent() {
        String input = """
                {"pack": {"chemistry": "lfp", "cellsInSeries": 16, "capacity": {"value": 105, "unit": "Ah"}}, "charger": {"current": {"value": 18, "unit": "A"}},
                 "supply": {"outlet": "nema-5-15", "cord": {"size": "18 AWG", "length": {"value": 50, "unit": "ft"}}}}""";
        String vary =
                "{\"pointer\": \"/supply/cord/size\", \"values\": [\"18 AWG\", \"16 AWG\", \"14 AWG\", \"12 AWG\", \"10 AWG\"]}";
        JsonNode solution = solve("charge-time", input, vary, "{\"pointer\": \"/cordDropShare\", \"atMost\": 0.03}");
        assertThat(solution.path("solved").asBoolean()).as(solution.toString()).isTrue();
        String first = solution.path("first").asString();
        assertThat(ask("charge-time", with(input, "/supply/cord/size", solution.path("first")))
                        .path("cordDropShare")
                        .asDouble())
                .isLessThanOrEqualTo(0.03);
        assertThat(solution.at("/crossings/0/at/value").asString()).isEqualTo(first);
        assertThat(solution.at("/crossings/0/below/result").asDouble()).isGreaterThan(0.03);
    }

    /** A hundred solutions of several questions, each put back. */
    @Test
    void aSolutionPutBackMeetsItsTarget() {
        SplittableRandom random = new SplittableRandom(20_261_125);
        List<String[]> questions = List.of(
                new String[] {
                    "centre-of-gravity",
                    "/items/1/position/x",
                    "mm",
                    "200",
                    "2500",
                    "/frontAxle/share",
                    "0.2",
                    "0.35",
                    ""
                },
                new String[] {"pack-range", "/pack/capacity", "Ah", "40", "400", "/range", "20", "60", "km"},
                new String[] {
                    "lift-geometry", "/tyres/rear/diameter", "in", "16", "26", "/speedFactor", "0.95", "1.3", ""
                },
                new String[] {"charge-time", "/pack/capacity", "Ah", "20", "400", "/time", "1", "9", "h"});
        for (String[] one : questions) {
            ObjectNode vehicle = JSON.readTree(DemoSetups.exampleText()).asObject();
            if (one[1].equals("/tyres/rear/diameter")) {
                ((ObjectNode) vehicle.at("/tyres/rear")).remove("size");
            }
            String input = vehicle.toString();
            for (int i = 0; i < 8; i++) {
                double level = random.nextDouble(Double.parseDouble(one[6]), Double.parseDouble(one[7]));
                String aim = one[8].isEmpty() ? "" + level : "{\"value\": " + level + ", \"unit\": \"" + one[8] + "\"}";
                String side = List.of("equals", "atMost", "atLeast").get(i % 3);
                JsonNode solution = solve(
                        one[0],
                        input,
                        "{\"pointer\": \"" + one[1] + "\", \"between\": [{\"value\": " + one[3] + ", \"unit\": \""
                                + one[2] + "\"}, {\"value\": " + one[4] + ", \"unit\": \"" + one[2] + "\"}]}",
                        "{\"pointer\": \"" + one[5] + "\", \"" + side + "\": " + aim + "}");
                for (JsonNode met : solution.path("met")) {
                    for (String end : List.of("from", "to")) {
                        JsonNode back =
                                ask(one[0], with(input, one[1], met.path(end))).at(one[5]);
                        double value = back.isNumber()
                                ? back.asDouble()
                                : back.path("value").asDouble();
                        String what = one[0] + " " + side + " " + level + " at " + met;
                        switch (side) {
                            case "equals" -> assertThat(value).as(what).isCloseTo(level, within(1e-9 * level));
                            case "atMost" -> assertThat(value).as(what).isLessThanOrEqualTo(level);
                            default -> assertThat(value).as(what).isGreaterThanOrEqualTo(level);
                        }
                    }
                }
            }
        }
    }

    @Test
    void refusedValuesAreTold() {
        JsonNode solution = solve("centre-of-gravity", CART, """
                {"pointer": "/items/0/position/x", "between": [{"value": 10, "unit": "m"}, {"value": 20, "unit": "m"}], "steps": 10}""", "{\"pointer\": \"/frontAxle/share\", \"atMost\": 0}");
        assertThat(solution.at("/refused/0/from/value").asDouble()).isEqualTo(16);
        assertThat(solution.at("/refused/0/to/value").asDouble()).isEqualTo(20);
        assertThat(solution.at("/refused/0/faults/0/code").asString()).isEqualTo("out-of-range");
    }

    @Test
    void anAssessmentIsSolvedToo() {
        JsonNode solution = solve(
                "assessment",
                CART,
                "{\"pointer\": \"/items/0/position/x\", \"between\": [{\"value\": 0, \"unit\": \"m\"}, {\"value\": 6, \"unit\": \"m\"}], \"steps\": 10}",
                "{\"pointer\": \"/centre-of-gravity/frontAxle/share\", \"equals\": 0.2}");
        assertThat(solution.at("/first/value").asDouble()).isCloseTo(4.144, within(1e-8));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"pointer": "/items/0/position/x", "between": [{"value": 0, "unit": "m"}]}  | {"pointer": "/mass", "equals": {"value": 1, "unit": "kg"}} | /vary/between | too-few
            {"pointer": "/items/0/position/x", "between": [{"value": 2, "unit": "m"}, {"value": 1, "unit": "m"}]} | {"pointer": "/mass", "equals": {"value": 1, "unit": "kg"}} | /vary/between/1 | contradiction
            {"pointer": "/items/0/position/x"}                                          | {"pointer": "/mass", "equals": {"value": 1, "unit": "kg"}} | /vary/between | missing
            {"pointer": "/nowhere", "between": [1, 2]}                                  | {"pointer": "/mass", "equals": {"value": 1, "unit": "kg"}} | /vary/pointer | unknown-pointer
            {"pointer": "/bare/frontShare", "between": [0, 1], "steps": 100000}         | {"pointer": "/mass", "equals": {"value": 1, "unit": "kg"}} | /vary/steps | out-of-range
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/mass", "equals": 1}                          | /target/equals | wrong-type
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/mass", "equals": {"value": 1, "unit": "m"}}  | /target/equals/unit | unknown-unit
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/frontAxle/share", "equals": "x"}             | /target/equals | wrong-type
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/frontAxle/share"}                            | /target/equals | missing
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/frontAxle/share", "atMost": 1, "atLeast": 0} | /target/atLeast | contradiction
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/leverage", "atMost": 1}                      | /target/pointer | unknown-pointer
            {"pointer": "/bare/frontShare", "between": [0, 1]}                          | {"pointer": "/leverage/0/name", "atMost": 1}               | /target/pointer | wrong-type
            {"pointer": "/pack/cellsInSeries", "between": [1, 99999]}                   | {"pointer": "/frontAxle/share", "atMost": 1}               | /vary/between | too-many
            """)
    void whatCannotBeSolvedIsRefusedWithItsPlace(String vary, String target, String pointer, String code) {
        Reply reply = post("/v1/solutions", body("centre-of-gravity", CART, vary, target));
        assertThat(reply.status()).as(reply.text()).isEqualTo(422);
        assertThat(reply.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString() + " "
                                + error.path("code").asString()))
                .contains(pointer + " " + code);
    }

    @Test
    void everythingMissingComesTogether() {
        assertThat(post("/v1/solutions", "{\"input\": {}}")
                        .json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString()))
                .containsExactly("/calculation", "/vary", "/target");
        Reply lines = send(HttpRequest.newBuilder(uri("/v1/solutions"))
                .header("Content-Type", "application/json")
                .header("Accept", "application/x-ndjson")
                .POST(HttpRequest.BodyPublishers.ofString(body(
                        "centre-of-gravity", CART, BACK, "{\"pointer\": \"/frontAxle/share\", \"atLeast\": 0.2}"))));
        List<String> all = lines.text().lines().toList();
        assertThat(JSON.readTree(all.get(all.size() - 1)).at("/answer/solved").asBoolean())
                .isTrue();
    }
}
