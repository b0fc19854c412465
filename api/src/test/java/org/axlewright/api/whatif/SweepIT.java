package org.axlewright.api.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.util.List;
import org.axlewright.api.Running;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Sweeps over HTTP: closed forms, equality with single questions, marks, refusals, limits. */
class SweepIT extends Running {

    private static final String CART = """
            {"chassis": {"wheelbase": {"value": 1.68, "unit": "m"}},
             "bare": {"axles": {"front": {"value": 190, "unit": "kg"}, "rear": {"value": 260, "unit": "kg"}},
                      "height": {"value": 0.55, "unit": "m"}},
             "items": [{"name": "pack", "mass": {"value": 60, "unit": "kg"},
                        "position": {"x": {"value": 1, "unit": "m"}, "z": {"value": 0.7, "unit": "m"}}}]}
            """;

    @Autowired
    Calculations calculations;

    private static String sweep(String calculation, String input, String vary, String watch) {
        return "{\"calculation\": \"" + calculation + "\", \"input\": " + input + ", \"vary\": " + vary
                + (watch.isEmpty() ? "" : ", \"watch\": " + watch) + "}";
    }

    private JsonNode answered(String path, String body) {
        Reply reply = post(path, body);
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        return reply.json();
    }

    /** Moments about the rear axle: the share falls by m/(M·L) for every metre; 60 kg of 510 kg on 1.68 m. */
    @Test
    void theFrontShareIsLinearInThePlaceOfAPart() {
        JsonNode sweep = answered("/v1/sweeps", sweep("centre-of-gravity", CART, """
                        [{"pointer": "/items/0/position/x", "from": {"value": 0, "unit": "m"}, "to": {"value": 2.5, "unit": "m"}, "steps": 26}]
                        """, "[\"/frontAxle/share\"]"));
        assertThat(sweep.path("points").asInt()).isEqualTo(26);
        assertThat(sweep.at("/vary/0/unit").asString()).isEqualTo("m");
        JsonNode shares = sweep.at("/series/0/values");
        double atFront = (190 + 60) / 510.0;
        for (int i = 0; i < 26; i++) {
            assertThat(sweep.at("/vary/0/values/" + i).asDouble()).isCloseTo(i * 0.1, within(1e-12));
            assertThat(shares.get(i).asDouble()).isCloseTo(atFront - 60 / 510.0 * i * 0.1 / 1.68, within(1e-12));
        }
    }

    /** U = I·R'·2·l: with one size of cable the drop is proportional to the length. */
    @Test
    void theVoltageDropIsLinearInTheLengthOfTheCable() {
        String circuit = """
                {"circuits": [{"name": "motor", "voltage": {"value": 48, "unit": "V"}, "length": {"value": 1, "unit": "m"},
                  "continuousCurrent": {"value": 40, "unit": "A"}, "allowedDropShare": 0.5, "ambient": {"value": 30, "unit": "degC"},
                  "insulationRating": {"value": 90, "unit": "degC"}, "terminationRating": {"value": 75, "unit": "degC"}, "sizes": "awg"}]}
                """;
        JsonNode sweep = answered(
                "/v1/sweeps", sweep("conductor-size", circuit, """
                        [{"pointer": "/circuits/0/length", "from": {"value": 1, "unit": "m"}, "to": {"value": 6, "unit": "m"}, "steps": 6}]
                        """, "[\"/circuits/0/drop\", \"/circuits/0/size\"]"));
        JsonNode drops = sweep.at("/series/0/values");
        for (int i = 1; i < 6; i++) {
            assertThat(sweep.at("/series/1/values/" + i)).isEqualTo(sweep.at("/series/1/values/0"));
            assertThat(drops.get(i).asDouble()).isCloseTo((i + 1) * drops.get(0).asDouble(), within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"metric", "us"})
    void everyPointOfEveryQuestionEqualsAQuestionOfItsOwn(String units) {
        ObjectNode input = JSON.readTree(DemoSetups.exampleText()).asObject();
        String vary = """
                [{"pointer": "/items/1/mass", "from": {"value": 31, "unit": "kg"}, "to": {"value": 58.7, "unit": "kg"}, "steps": 4}]
                """;
        JsonNode whole = answered("/v1/sweeps?units=" + units, sweep("assessment", input.toString(), vary, ""));
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            JsonNode sweep = null;
            for (int i = 0; i < 4; i++) {
                ((ObjectNode) input.at("/items/1/mass"))
                        .put("value", whole.at("/vary/0/values/" + i).asDouble());
                Reply single = post("/v1/" + calculation.name() + "?working=false&units=" + units, input.toString());
                if (single.status() != 200) {
                    continue;
                }
                if (sweep == null) {
                    sweep = answered(
                            "/v1/sweeps?units=" + units, sweep(calculation.name(), input.toString(), vary, ""));
                }
                for (JsonNode series : sweep.path("series")) {
                    JsonNode value = single.json()
                            .path("result")
                            .at(series.path("pointer").asString());
                    equal(series, i, value, calculation.name());
                    for (JsonNode one : whole.path("series")) {
                        if (one.path("pointer")
                                .asString()
                                .equals("/" + calculation.name()
                                        + series.path("pointer").asString())) {
                            equal(one, i, value, calculation.name());
                        }
                    }
                }
                assertThat(findings(sweep, i))
                        .as(calculation.name())
                        .containsExactlyInAnyOrderElementsOf(single.json()
                                .path("findings")
                                .valueStream()
                                .map(SweepIT::mark)
                                .distinct()
                                .toList());
            }
        }
    }

    private static void equal(JsonNode series, int point, JsonNode value, String what) {
        JsonNode swept = series.path("values").get(point);
        String place = what + series.path("pointer").asString() + " at " + point;
        if (value.isMissingNode()) {
            assertThat(swept.isNull()).as(place).isTrue();
        } else {
            if (value.has("currency")) {
                assertThat(swept.asDouble())
                        .as(place)
                        .isEqualTo(Double.parseDouble(value.path("amount").asString()));
                assertThat(series.path("unit")).as(place).isEqualTo(value.path("currency"));
                return;
            }
            assertThat(swept).as(place).isEqualTo(value.isObject() ? value.path("value") : value);
            assertThat(series.path("unit")).as(place).isEqualTo(value.path("unit"));
        }
    }

    private static List<String> findings(JsonNode sweep, int point) {
        return sweep.path("findings")
                .valueStream()
                .filter(finding -> finding.path("runs")
                        .valueStream()
                        .anyMatch(run -> run.path("first").asInt() <= point
                                && point <= run.path("last").asInt()))
                .map(SweepIT::mark)
                .toList();
    }

    private static String mark(JsonNode finding) {
        return finding.path("code") + " " + finding.path("level") + " " + finding.path("pointer") + " "
                + finding.path("state");
    }

    /** The front is light below a share of 0.20, at x = (250 − 0.2·510)·1.68/60 = 4.144 m. */
    @Test
    void aFindingIsMarkedWhereItAppears() {
        JsonNode sweep = answered("/v1/sweeps", sweep("centre-of-gravity", CART, """
                        [{"pointer": "/items/0/position/x/value", "from": 4.0, "to": 4.3, "steps": 4}]
                        """, ""));
        JsonNode light = sweep.path("findings")
                .valueStream()
                .filter(finding -> finding.path("code").asString().equals("front-axle-light"))
                .findFirst()
                .orElseThrow();
        assertThat(light.path("runs")).hasSize(1);
        assertThat(light.at("/runs/0/first").asInt()).isEqualTo(2);
        assertThat(light.at("/runs/0/last").asInt()).isEqualTo(3);
        assertThat(light.at("/runs/0/from").asDouble()).isCloseTo(4.2, within(1e-12));
        assertThat(sweep.at("/vary/0").has("unit")).isFalse();
        assertThat(sweep.path("series")).hasSize(6);
    }

    @Test
    void refusedPointsAreToldAndNotDropped() {
        JsonNode sweep = answered("/v1/sweeps", sweep("centre-of-gravity", CART, """
                        [{"pointer": "/items/0/position/x", "from": {"value": 13, "unit": "m"}, "to": {"value": 17, "unit": "m"}, "steps": 5}]
                        """, "[\"/frontAxle/share\"]"));
        assertThat(sweep.at("/series/0/values").valueStream().map(JsonNode::isNull))
                .containsExactly(false, false, false, true, true);
        assertThat(sweep.path("refused")).hasSize(1);
        assertThat(sweep.at("/refused/0/run/first").asInt()).isEqualTo(3);
        assertThat(sweep.at("/refused/0/run/last").asInt()).isEqualTo(4);
        assertThat(sweep.at("/refused/0/run/from").toString()).isEqualTo("{\"value\":16.0,\"unit\":\"m\"}");
        assertThat(sweep.at("/refused/0/faults/0/pointer").asString()).isEqualTo("/items/0/position/x/value");
        assertThat(sweep.at("/refused/0/faults/0/code").asString()).isEqualTo("out-of-range");
    }

    @Test
    void twoVariablesGiveEveryPair() {
        JsonNode sweep = answered("/v1/sweeps", sweep("centre-of-gravity", CART, """
                        [{"pointer": "/items/0/mass", "values": [{"value": 60, "unit": "kg"}, {"value": 100, "unit": "lb"}]},
                         {"pointer": "/items/0/position/x", "from": {"value": 0, "unit": "m"}, "to": {"value": 1.68, "unit": "m"}, "steps": 3}]
                        """, "[\"/frontAxle/load\"]"));
        assertThat(sweep.path("points").asInt()).isEqualTo(6);
        double pounds = 45.359237;
        double[] expected = {250, 220, 190, 190 + pounds, 190 + pounds / 2, 190};
        for (int i = 0; i < 6; i++) {
            assertThat(sweep.at("/series/0/values/" + i).asDouble()).isCloseTo(expected[i], within(1e-9));
        }
        assertThat(sweep.at("/vary/0/unit").asString()).isEqualTo("kg");
        assertThat(sweep.at("/vary/0/values/1").asDouble()).isCloseTo(pounds, within(1e-9));
    }

    @Test
    void namesAndWholeNumbersAreSweptToo() {
        String input = DemoSetups.exampleText();
        JsonNode tyres = answered(
                "/v1/sweeps",
                sweep(
                        "lift-geometry",
                        input,
                        "[{\"pointer\": \"/tyres/rear/size\", \"values\": [\"18x8.5-8\", \"22x11-10\", \"nonsense\"]}]",
                        "[\"/speedFactor\"]"));
        assertThat(tyres.at("/series/0/values/0").asDouble())
                .isLessThan(tyres.at("/series/0/values/1").asDouble());
        assertThat(tyres.at("/refused/0/run/first").asInt()).isEqualTo(2);
        assertThat(tyres.at("/refused/0/faults/0/pointer").asString()).isEqualTo("/tyres/rear/size");
        JsonNode cells = answered(
                "/v1/sweeps",
                sweep(
                        "pack-range",
                        input,
                        "[{\"pointer\": \"/pack/cellsInSeries\", \"from\": 15, \"to\": 18}]",
                        "[\"/fullVoltage\"]"));
        assertThat(cells.at("/vary/0/values").toString()).isEqualTo("[15,16,17,18]");
        // 3.65 V for each cell at full charge
        assertThat(cells.at("/series/0/values/0").asDouble()).isCloseTo(54.75, within(1e-9));
        assertThat(cells.at("/series/0/values/3").asDouble()).isCloseTo(65.7, within(1e-9));
    }

    @Test
    void linesOfProgressEndInTheSameAnswer() {
        String body = sweep("centre-of-gravity", CART, """
                [{"pointer": "/items/0/position/x/value", "from": 0, "to": 2, "steps": 3}]""", "");
        Reply lines = send(HttpRequest.newBuilder(uri("/v1/sweeps"))
                .header("Content-Type", "application/json")
                .header("Accept", "application/x-ndjson")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
        assertThat(lines.status()).isEqualTo(200);
        assertThat(lines.contentType()).startsWith("application/x-ndjson");
        List<String> all = lines.text().lines().toList();
        assertThat(JSON.readTree(all.get(all.size() - 1)).path("answer")).isEqualTo(answered("/v1/sweeps", body));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            [{"pointer": "/items/0/position/q", "from": 1, "to": 2, "steps": 3}]           | /vary/0/pointer   | unknown-pointer
            [{"pointer": "/items/7/mass/value", "from": 1, "to": 2, "steps": 3}]           | /vary/0/pointer   | unknown-pointer
            [{"pointer": "/items/-1/mass/value", "from": 1, "to": 2, "steps": 3}]          | /vary/0/pointer   | unknown-pointer
            [{"pointer": "", "from": 1, "to": 2, "steps": 3}]                              | /vary/0/pointer   | unknown-pointer
            [{"pointer": "/chassis/driven/x", "from": 1, "to": 2, "steps": 3}]             | /vary/0/pointer   | unknown-pointer
            [{"pointer": "/chassis/driven", "from": "front", "to": "rear", "steps": 3}]    | /vary/0/from      | wrong-type
            [{"pointer": "/chassis/wheelbase", "from": 1, "to": 2, "steps": 3}]            | /vary/0/from      | wrong-type
            [{"pointer": "/chassis/wheelbase", "from": {"value": 1}, "to": {"value": 2, "unit": "m"}, "steps": 3}] | /vary/0/from/unit | missing
            [{"pointer": "/chassis/wheelbase", "from": {"value": 1, "unit": "kg"}, "to": {"value": 2, "unit": "m"}, "steps": 3}] | /vary/0/from/unit | unknown-unit
            [{"pointer": "/bare/frontShare", "from": "0.1", "to": 0.2, "steps": 3}]        | /vary/0/from      | wrong-type
            [{"pointer": "/bare/frontShare", "from": 0.3, "to": 0.2, "steps": 3}]          | /vary/0/to        | contradiction
            [{"pointer": "/bare/frontShare", "from": 0.2, "to": 0.2, "steps": 3}]          | /vary/0/to        | contradiction
            [{"pointer": "/bare/frontShare", "from": -1e308, "to": 1e308, "steps": 3}]     | /vary/0/to        | out-of-range
            [{"pointer": "/bare/frontShare", "from": 0.1, "to": 0.2, "steps": 1}]          | /vary/0/steps     | out-of-range
            [{"pointer": "/bare/frontShare", "from": 0.1, "to": 0.2, "steps": 999999999}]  | /vary/0/steps     | out-of-range
            [{"pointer": "/bare/frontShare", "from": 0.1, "to": 0.2}]                      | /vary/0/steps     | missing
            [{"pointer": "/bare/frontShare", "to": 0.2, "steps": 3}]                       | /vary/0/from      | missing
            [{"pointer": "/bare/frontShare"}]                                              | /vary/0/from      | missing
            [{"pointer": "/bare/frontShare", "values": []}]                                | /vary/0/values    | too-few
            [{"pointer": "/bare/frontShare", "values": [0.5, "x"]}]                        | /vary/0/values/1  | wrong-type
            [{"pointer": "/bare/frontShare", "values": [0.5], "from": 1}]                  | /vary/0/values    | contradiction
            [{"pointer": "/pack/cellsInSeries", "from": 10, "to": 15, "steps": 3}]         | /vary/0/steps     | contradiction
            [{"pointer": "/pack/cellsInSeries", "from": 10, "to": 900000000}]              | /vary/0/to        | too-many
            [{"pointer": "/pack/cellsInSeries", "from": 10.5, "to": 15}]                   | /vary/0/from      | wrong-type
            [{"pointer": "/energyPrice", "from": {"amount": "x", "currency": "EUR"}, "to": {"amount": "1", "currency": "EUR"}, "steps": 2}] | /vary/0/from | wrong-type
            [{"pointer": "/energyPrice", "from": {"amount": "0.1", "currency": "EUR"}, "to": {"amount": "1", "currency": "USD"}, "steps": 2}] | /vary/0/to | contradiction
            [{"from": 1, "to": 2, "steps": 3}]                                             | /vary/0/pointer   | missing
            []                                                                             | /vary             | too-few
            [{"pointer": "/items/0/mass/value", "from": 1, "to": 2, "steps": 2}, {"pointer": "/items/0/mass/value", "from": 1, "to": 2, "steps": 2}] | /vary/1/pointer | contradiction
            [{"pointer": "/items/0/mass/value", "from": 1, "to": 2, "steps": 2}, {"pointer": "/items/0", "values": [{}]}] | /vary/1/pointer | contradiction
            [{"pointer": "/items/0/mass/value", "from": 1, "to": 2, "steps": 2000}, {"pointer": "/bare/frontShare", "from": 0, "to": 1, "steps": 20}] | /vary | too-many
            """)
    void whatCannotBeVariedIsRefusedWithItsPlaceInTheRequest(String vary, String pointer, String code) {
        Reply reply = post("/v1/sweeps", sweep("centre-of-gravity", CART, vary, ""));
        assertThat(reply.status()).as(reply.text()).isEqualTo(422);
        assertThat(reply.contentType()).isEqualTo("application/problem+json");
        assertThat(reply.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString() + " "
                                + error.path("code").asString()))
                .contains(pointer + " " + code);
        assertThat(reply.text()).doesNotContain("java.", "axlewright.api", "Exception", "NaN", "Infinity");
    }

    @Test
    void everythingWrongComesTogether() {
        Reply reply = post("/v1/sweeps", """
                {"calculation": "kerb-weight", "input": {}, "vary": [{"pointer": "/nowhere", "from": 1, "to": 2, "steps": 2}]}""");
        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString()))
                .containsExactly("/calculation", "/vary/0/pointer");
        Reply watch = post(
                "/v1/sweeps",
                sweep(
                        "centre-of-gravity",
                        CART,
                        "[{\"pointer\": \"/bare/frontShare\", \"from\": 0.1, \"to\": 0.2}]",
                        "[\"/frontAxle\", \"/frontAxle/weight\", \"share\", \"/leverage\", \"/leverage/0/frontLoadChange\"]"));
        assertThat(watch.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString()))
                .containsExactly("/watch/0", "/watch/1", "/watch/2", "/watch/3", "/vary/0/steps");
        for (String body : List.of(
                "",
                "[]",
                "{\"a\": 1}",
                "{\"calculation\": 5}",
                "{\"vary\": {}}",
                "{\"vary\": [null]}",
                "{\"input\": {\"bare\": {\"mass\": 5}}}",
                "{\"vary\": [{\"pointer\": null}]}",
                "{\"watch\": [null]}")) {
            assertThat(post("/v1/sweeps", body).status()).as(body).isEqualTo(400);
        }
        assertThat(post("/v1/sweeps", "{}")
                        .json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString()))
                .containsExactly("/calculation", "/input", "/vary");
    }

    /** What is wrong beside the varied value refuses the whole, with the places in the request. */
    @Test
    void anInputThatNoPointCanAnswerIsRefused() {
        Reply reply = post(
                "/v1/sweeps",
                sweep(
                        "centre-of-gravity",
                        "{\"bare\": {\"frontShare\": 7}}",
                        "[{\"pointer\": \"/chassis/wheelbase\", \"from\": {\"value\": 1, \"unit\": \"m\"}, \"to\": {\"value\": 2, \"unit\": \"m\"}, \"steps\": 3}]",
                        ""));
        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString()))
                .containsExactlyInAnyOrder("/input/bare/frontShare", "/input/bare/mass");
    }

    @Test
    void aSweepBeyondItsBudgetIsToldItsCost() {
        ArrayNode vary = JSON.createArrayNode();
        vary.add(JSON.readTree("""
                {"pointer": "/items/1/mass/value", "from": 10, "to": 60, "steps": 20000}"""));
        long start = System.nanoTime();
        Reply reply = post("/v1/sweeps", sweep("assessment", DemoSetups.exampleText(), vary.toString(), ""));
        if (reply.status() == 422) { // a machine that is fast enough answers
            assertThat(reply.json().at("/errors/0/code").asString()).isEqualTo("too-costly");
            assertThat(reply.json().at("/errors/0/actual").asDouble()).isGreaterThan(60);
            assertThat((System.nanoTime() - start) / 1e9).isLessThan(60);
        } else {
            assertThat(reply.status()).isEqualTo(200);
        }
    }
}
