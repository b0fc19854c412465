package org.axlewright.api.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.axlewright.api.Running;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Tolerances over HTTP: closed forms, the two methods beside each other, budgets, refusals. */
class ToleranceIT extends Running {

    private static final String SCALES = """
            {"chassis": {"wheelbase": {"value": 1.68, "unit": "m"}},
             "bare": {"axles": {"front": {"value": 190, "unit": "kg", "plusMinus": 2}, "rear": {"value": 260, "unit": "kg", "plusMinus": 2}}}}
            """;

    private JsonNode answered(String body) {
        Reply reply = post("/v1/tolerances", body);
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        return reply.json();
    }

    private static String body(String input, String rest) {
        return "{\"calculation\": \"centre-of-gravity\", \"input\": " + input + rest + "}";
    }

    /** u = 2 kg/sqrt(3) on each scale; mass u·sqrt(2), x = L·R/(F+R): dx/dF = -L·R/M², dx/dR = L·F/M² (JCGM 100:2008, equation 10). */
    @Test
    void twoScalesOfTwoKilograms() {
        JsonNode answer = answered(body(SCALES, ", \"watch\": [\"/mass\", \"/position/x\"]"));
        double u = 2 / Math.sqrt(3);
        double mass = 450;
        assertThat(answer.at("/results/0/value").asDouble()).isCloseTo(mass, within(1e-9));
        assertThat(answer.at("/results/0/unit").asString()).isEqualTo("kg");
        assertThat(answer.at("/results/0/standardUncertainty").asDouble()).isCloseTo(u * Math.sqrt(2), within(1e-9));
        // 1.959964: two-sided 95 % of the normal distribution
        assertThat(answer.at("/results/0/plusMinus").asDouble()).isCloseTo(1.959964 * u * Math.sqrt(2), within(1e-5));
        double byFront = -1.68 * 260 / mass / mass * u;
        double byRear = 1.68 * 190 / mass / mass * u;
        assertThat(answer.at("/results/1/standardUncertainty").asDouble())
                .isCloseTo(Math.hypot(byFront, byRear), within(1e-7));
        assertThat(answer.at("/results/1/budget/0/pointer").asString()).isEqualTo("/bare/axles/front");
        assertThat(answer.at("/results/1/budget/0/contribution").asDouble()).isCloseTo(byFront, within(1e-7));
        assertThat(answer.at("/results/1/budget/1/contribution").asDouble()).isCloseTo(byRear, within(1e-7));
        assertThat(answer.at("/results/1/budget/0/share").asDouble()
                        + answer.at("/results/1/budget/1/share").asDouble())
                .isCloseTo(1, within(1e-12));
    }

    /** Nearly linear over so little, so the two methods must agree; the interval of two rectangles is a little narrower. */
    @Test
    void theTwoMethodsAgreeWhereTheyMust() {
        String normal = """
                , "tolerances": [{"pointer": "/bare/axles/front", "plusMinus": 2, "distribution": "normal"},
                                 {"pointer": "/bare/axles/rear/value", "plusMinus": 2, "distribution": "normal"}]""";
        String plain = SCALES.replace(", \"plusMinus\": 2", "");
        JsonNode first = answered(body(plain, normal));
        JsonNode drawn =
                answered(body(plain, normal + ", \"method\": \"monte-carlo\", \"trials\": 40000, \"seed\": 7"));
        assertThat(first.path("results").size())
                .isEqualTo(drawn.path("results").size())
                .isPositive();
        for (int i = 0; i < first.path("results").size(); i++) {
            JsonNode one = first.at("/results/" + i);
            JsonNode other = drawn.at("/results/" + i);
            if (!one.has("plusMinus")) {
                assertThat(other.has("plusMinus")).isFalse();
                continue;
            }
            double u = one.path("standardUncertainty").asDouble();
            assertThat(other.path("standardUncertainty").asDouble()).isCloseTo(u, within(0.02 * u));
            assertThat(other.path("plusMinus").asDouble())
                    .isCloseTo(
                            one.path("plusMinus").asDouble(),
                            within(0.03 * one.path("plusMinus").asDouble()));
            assertThat(other.path("mean").asDouble())
                    .isCloseTo(one.path("value").asDouble(), within(0.03 * u));
            assertThat(other.path("answered").asInt()).isEqualTo(40_000);
        }
        assertThat(answered(body(plain, normal + ", \"method\": \"monte-carlo\", \"trials\": 500, \"seed\": 7")))
                .isEqualTo(
                        answered(body(plain, normal + ", \"method\": \"monte-carlo\", \"trials\": 500, \"seed\": 7")));
    }

    @Test
    void aPlainNumberGetsOneByPointer() {
        ObjectNode vehicle = JSON.readTree(DemoSetups.exampleText()).asObject();
        JsonNode answer = answered(
                "{\"calculation\": \"pack-range\", \"input\": " + vehicle
                        + ", \"tolerances\": [{\"pointer\": \"/drive/efficiency\", \"plusMinus\": 0.03}], \"watch\": [\"/range\"]}");
        assertThat(answer.at("/results/0/plusMinus").asDouble()).isPositive();
        assertThat(answer.at("/results/0/budget/0/contribution").asDouble()).isPositive();
        assertThat(answer.at("/results/0/budget/0/share").asDouble()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            , "tolerances": [{"pointer": "/nowhere", "plusMinus": 1}]                   | /tolerances/0/pointer   | unknown-pointer
            , "tolerances": [{"pointer": "/bare/height", "plusMinus": 1}]               | /tolerances/0/pointer   | wrong-type
            , "tolerances": [{"pointer": "/chassis", "plusMinus": 1}]                   | /tolerances/0/pointer   | wrong-type
            , "tolerances": [{"pointer": "/chassis/wheelbase", "plusMinus": 0}]         | /tolerances/0/plusMinus | out-of-range
            , "tolerances": [{"pointer": "/chassis/wheelbase", "plusMinus": -1}]        | /tolerances/0/plusMinus | out-of-range
            , "tolerances": [{"pointer": "/chassis/wheelbase"}]                         | /tolerances/0/plusMinus | missing
            , "tolerances": [{"pointer": "/bare/axles/front", "plusMinus": 1}]          | /tolerances/0/pointer   | contradiction
            , "trials": 1                                                               | /trials                 | out-of-range
            , "coverage": 1                                                             | /coverage               | out-of-range
            , "watch": ["/leverage/0/name"]                                             | /watch/0                | wrong-type
            , "method": "monte-carlo", "trials": 100000, "watch": ["/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass", "/mass"] | /trials | too-costly
            """)
    void whatIsNoToleranceIsRefusedWithItsPlace(String rest, String pointer, String code) {
        Reply reply = post("/v1/tolerances", body(SCALES, rest));
        assertThat(reply.status()).as(reply.text()).isEqualTo(422);
        assertThat(reply.json()
                        .path("errors")
                        .valueStream()
                        .map(error -> error.path("pointer").asString() + " "
                                + error.path("code").asString()))
                .contains(pointer + " " + code);
    }

    @Test
    void anInputThatIsRefusedWithinItsTolerancesIsRefused() {
        Reply reply = post("/v1/tolerances", body(SCALES.replace("\"plusMinus\": 2", "\"plusMinus\": 1e9"), ""));
        assertThat(reply.status()).as(reply.text()).isEqualTo(422);
        assertThat(reply.json().at("/errors/0/pointer").asString()).startsWith("/input/bare/axles/");
        assertThat(post("/v1/tolerances", body(SCALES.replace("\"plusMinus\": 2", "\"plusMinus\": \"2\""), ""))
                        .json()
                        .at("/errors/0/pointer")
                        .asString())
                .isEqualTo("/input/bare/axles/front/plusMinus");
        assertThat(post("/v1/tolerances", body(SCALES.replace("plusMinus", "minusPlus"), ""))
                        .status())
                .isEqualTo(400);
        assertThat(post("/v1/tolerances", "{}").status()).isEqualTo(422);
        assertThat(post("/v1/tolerances", "{\"input\": 5}").status()).isEqualTo(400);
    }
}
