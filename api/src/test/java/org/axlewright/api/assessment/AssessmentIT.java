package org.axlewright.api.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.axlewright.api.Running;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** One setup through every question; two side by side; several changes on one. Without a database, through HTTP. */
class AssessmentIT extends Running {

    private static final List<String> SEVERITY = List.of("danger", "warning", "caution", "notice");

    @Autowired
    Calculations calculations;

    /** The demo vehicles, each whole and with each of its sections left out. */
    @TestFactory
    Stream<DynamicTest> anAssessmentEqualsTheSingleCalculations() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String text : DemoSetups.texts()) {
            ObjectNode whole = JSON.readTree(text).asObject();
            String name = whole.path("name").asString();
            tests.add(DynamicTest.dynamicTest(name, () -> equalsTheSingles(whole)));
            for (String section : List.copyOf(whole.propertyNames())) {
                ObjectNode without = whole.deepCopy();
                without.remove(section);
                tests.add(DynamicTest.dynamicTest(name + " without " + section, () -> equalsTheSingles(without)));
            }
        }
        return tests.stream();
    }

    private void equalsTheSingles(ObjectNode setup) {
        Reply reply = post("/v1/assessments?units=us", setup.toString());
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        JsonNode assessment = reply.json();
        int answered = 0;
        int findings = 0;
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            String name = calculation.name();
            Reply single = post("/v1/" + name + "?units=us", setup.toString());
            JsonNode left = left(assessment, name);
            if (single.status() == 422) {
                assertThat(assessment.path("results").has(name)).as(name).isFalse();
                List<String> refused = new ArrayList<>(left.path("missing")
                        .valueStream()
                        .map(JsonNode::asString)
                        .toList());
                refused.addAll(left.path("faults").findValuesAsString("pointer"));
                assertThat(refused)
                        .as(name)
                        .containsExactlyInAnyOrderElementsOf(
                                single.json().path("errors").findValuesAsString("pointer"));
                continue;
            }
            answered++;
            JsonNode answer = single.json();
            assertThat(left.isMissingNode()).as(name).isTrue();
            assertThat(assessment.path("results").path(name)).as(name).isEqualTo(answer.path("result"));
            assertThat(assessment.path("working").path(name)).as(name).isEqualTo(answer.path("working"));
            for (JsonNode finding : answer.path("findings")) {
                assertThat(carried(assessment.path("findings"), finding, name))
                        .as(name + " " + finding)
                        .isTrue();
                findings++;
            }
            for (JsonNode assumption : answer.path("assumptions")) {
                assertThat(carried(assessment.path("assumptions"), assumption, name))
                        .as(name + " " + assumption)
                        .isTrue();
            }
            for (JsonNode caution : answer.path("cautions")) {
                assertThat(assessment.path("cautions").valueStream()).contains(caution);
            }
        }
        assertThat(assessment.path("results").size()).isEqualTo(answered);
        assertThat(assessment
                        .path("findings")
                        .valueStream()
                        .mapToInt(finding -> finding.path("calculations").size())
                        .sum())
                .isEqualTo(findings);
        List<Integer> order = assessment
                .path("findings")
                .valueStream()
                .map(finding -> SEVERITY.indexOf(finding.path("level").asString()))
                .toList();
        assertThat(order).isSorted();
    }

    private static JsonNode left(JsonNode assessment, String name) {
        return assessment
                .path("notAssessed")
                .valueStream()
                .filter(one -> one.path("calculation").asString().equals(name))
                .findFirst()
                .orElse(assessment.path("nothing"));
    }

    /** Whether a list of the assessment has the same entry and names the calculation. */
    private static boolean carried(JsonNode list, JsonNode single, String name) {
        return list.valueStream()
                .anyMatch(one -> one.path("calculations")
                                .valueStream()
                                .anyMatch(by -> by.asString().equals(name))
                        && single.properties().stream()
                                .allMatch(field -> field.getValue().equals(one.get(field.getKey()))));
    }

    @Test
    void anAssessmentNamesThePartThatCausesAFinding() {
        ObjectNode setup = demo(0);
        setup.withArray("/items").removeAll();
        setup.withArray("/items")
                .addObject()
                .put("name", "block of lead")
                .put("reference", "A-7")
                .set("mass", quantity(300, "kg"));
        setup.withObject("/items/0").set("position", position(2.9, 0.5));
        JsonNode assessment =
                post("/v1/assessments?working=false", setup.toString()).json();
        assertThat(assessment.has("working")).isFalse();
        assertThat(assessment
                        .path("findings")
                        .valueStream()
                        .filter(finding -> finding.path("pointer").asString("").startsWith("/items/0"))
                        .map(finding -> finding.path("part")))
                .isNotEmpty()
                .allSatisfy(part -> {
                    assertThat(part.path("pointer").asString()).isEqualTo("/items/0");
                    assertThat(part.path("name").asString()).isEqualTo("block of lead");
                    assertThat(part.path("reference").asString()).isEqualTo("A-7");
                });
    }

    @Test
    void aFormThatIsNotInOrderIsRefusedAsAWhole() {
        ObjectNode setup = demo(0);
        setup.withObject("/chassis").set("wheelbase", quantity(-1, "m"));
        Reply reply = post("/v1/assessments", setup.toString());
        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.json().path("errors").findValuesAsString("pointer")).contains("/chassis/wheelbase/value");
    }

    /** Front share falls linearly in the mass put behind: only one section differs, so it has the whole change. */
    @Test
    void oneChangedSectionHasTheWholeChange() {
        ObjectNode before = demo(0);
        ObjectNode after = before.deepCopy();
        after.withObject("/charger").set("current", quantity(9, "A"));
        JsonNode comparison = compare(before, after);
        JsonNode shares = comparison.path("shares");
        assertThat(shares.path("method").asString()).isEqualTo("shapley");
        assertThat(shares.path("sections").valueStream().map(JsonNode::asString))
                .containsExactly("charger");
        assertThat(shares.path("results")).isNotEmpty();
        for (JsonNode result : shares.path("results")) {
            assertThat(result.path("parts").path(0).path("share").asDouble()).isCloseTo(1, within(1e-12));
        }
        JsonNode current = change(comparison, "charge-time", "/packCurrent");
        assertThat(current.path("after").path("value").asDouble()).isEqualTo(9);
        assertThat(current.path("change").path("value").asDouble())
                .isEqualTo(9 - current.path("before").path("value").asDouble());
    }

    /**
     * Time at constant current is charge over current. Twice the charge at twice the current, v(0) = T, v(charge) = 2T, v(current) =
     * T/2, v(both) = T: nothing in sum, and by hand (2T − T + T − T/2)/2 = 3T/4 to the charge and the opposite to the current.
     */
    @Test
    void twoSectionsShareAProductAsShapleySays() {
        ObjectNode before = JSON.createObjectNode();
        before.withObject("/pack")
                .put("chemistry", "lfp")
                .put("cellsInSeries", 16)
                .set("capacity", quantity(50, "Ah"));
        before.withObject("/charger").set("current", quantity(5, "A"));
        before.withObject("/charge").put("from", 0.15).put("to", 0.95);
        ObjectNode after = before.deepCopy();
        after.withObject("/pack").set("capacity", quantity(100, "Ah"));
        after.withObject("/charger").set("current", quantity(10, "A"));
        after.withObject("/charge").put("to", 0.94999); // so that the time is among what changed
        JsonNode shared = comparisonShare(compare(before, after), "charge-time", "/time");
        double hours = 0.8 * 50 / 5;
        assertThat(part(shared, "pack")).isCloseTo(0.75 * hours, within(0.001));
        assertThat(part(shared, "charger")).isCloseTo(-0.75 * hours, within(0.001));
        double sum = part(shared, "pack") + part(shared, "charger") + part(shared, "charge");
        assertThat(sum).isCloseTo(shared.path("change").path("value").asDouble(), within(1e-9));
    }

    @Test
    void moreThanSixSectionsAreChangedOneAtATimeWithTheInteractionBeside() {
        ObjectNode before = demo(1);
        ObjectNode after = demo(0);
        JsonNode shares = compare(before, after).path("shares");
        assertThat(shares.path("sections").size()).isGreaterThan(6);
        assertThat(shares.path("method").asString()).isEqualTo("one-at-a-time");
        long told = 0;
        for (JsonNode result : shares.path("results")) {
            if (result.path("parts").isEmpty()) {
                continue;
            }
            told++;
            double sum = result.path("parts")
                    .valueStream()
                    .mapToDouble(part -> amount(part.path("change")))
                    .sum();
            assertThat(sum + amount(result.path("interaction")))
                    .isCloseTo(amount(result.path("change")), within(1e-9 * (1 + Math.abs(sum))));
        }
        assertThat(told).isPositive();
    }

    @Test
    void aSetupIsNotDifferentFromItself() {
        JsonNode comparison = compare(demo(0), demo(0));
        assertThat(comparison.path("findings").path("gained")).isEmpty();
        assertThat(comparison.path("findings").path("lost")).isEmpty();
        assertThat(comparison.path("findings").path("kept")).isNotEmpty();
        assertThat(comparison.path("shares").path("sections")).isEmpty();
        assertThat(comparison.path("changes").valueStream().filter(change -> change.has("relative")))
                .isNotEmpty()
                .allSatisfy(
                        change -> assertThat(change.path("relative").asDouble()).isZero());
    }

    /** The outlet carries 12 A: 0.98 and 0.92 make 23.9 A at 54.4 V of it, so a 30 A charger asks too much and a 10 A one does not. */
    @Test
    void candidatesAreJudgedOneByOne() {
        ObjectNode body = JSON.createObjectNode();
        ObjectNode setup = demo(0);
        setup.withObject("/charger").remove("maximumInput");
        setup.withObject("/supply").remove("cord");
        body.set("setup", setup);
        body.withArray("/calculations").add("charge-time");
        for (int current : new int[] {10, 30}) {
            ObjectNode one = body.withArray("/candidates").addObject().put("name", current + " A");
            one.withObject("/patch/charger").set("current", quantity(current, "A"));
        }
        ObjectNode broken = body.withArray("/candidates").addObject().put("name", "no such cells");
        broken.withObject("/patch/pack").put("cellsInSeries", 0);
        ObjectNode removed = body.withArray("/candidates").addObject().put("name", "no charger");
        removed.withObject("/patch").putNull("charger");
        Reply reply = post("/v1/candidates", body.toString());
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        JsonNode tried = reply.json().path("candidates");
        assertThat(tried.findValuesAsString("name")).contains("10 A", "30 A", "no such cells", "no charger");
        assertThat(tried.path(1).path("verdict").asString()).isEqualTo("warning");
        assertThat(tried.path(1).path("deciding").path("code").asString()).isEqualTo("charger-above-outlet");
        assertThat(tried.path(0).path("deciding").path("code").asString("")).isNotEqualTo("charger-above-outlet");
        assertThat(tried.path(0).path("leading").findValuesAsString("pointer")).contains("/time");
        assertThat(tried.path(2).path("verdict").asString()).isEqualTo("refused");
        assertThat(tried.path(2).path("faults").findValuesAsString("pointer")).contains("/pack/cellsInSeries");
        assertThat(tried.path(3).path("notAssessed").findValuesAsString("calculation"))
                .containsExactly("charge-time");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/v1/comparisons | {} | 422 | /before",
                "/v1/comparisons | [] | 400 | ''",
                "/v1/comparisons | {\"before\":{},\"after\":{},\"c\":1} | 400 | /c",
                "/v1/comparisons | {\"before\":{},\"after\":7} | 400 | /after",
                "/v1/comparisons | {\"before\":{},\"after\":{\"chassis\":{\"x\":1}}} | 400 | /after/chassis/x",
                "/v1/comparisons | {\"before\":{},\"after\":{\"chassis\":{\"wheelbase\":{\"value\":-1,\"unit\":\"m\"}}}} | 422 | /after/chassis/wheelbase/value",
                "/v1/comparisons | {\"before\":{},\"after\":{\"pack\":{\"cellsInSeries\":null}}} | 400 | /after/pack/cellsInSeries",
                "/v1/candidates | {\"setup\":{}} | 422 | /candidates",
                "/v1/candidates | {\"setup\":{},\"candidates\":{}} | 400 | /candidates",
                "/v1/candidates | {\"setup\":{},\"candidates\":[{\"name\":\"a\"}]} | 422 | /candidates/0/patch",
                "/v1/candidates | {\"setup\":{},\"candidates\":[{\"patch\":[]}]} | 400 | /candidates/0/patch",
                "/v1/candidates | {\"setup\":{},\"candidates\":[],\"calculations\":[\"no-such\"]} | 400 | /calculations/0",
            })
    void whatCantBeReadIsRefusedWhereItStands(String path, String body, int status, String pointer) {
        Reply reply = post(path, body);
        assertThat(reply.status()).as(reply.text()).isEqualTo(status);
        assertThat(reply.contentType()).isEqualTo("application/problem+json");
        assertThat(reply.json().path("errors").findValuesAsString("pointer")).contains(pointer);
    }

    private JsonNode compare(ObjectNode before, ObjectNode after) {
        ObjectNode body = JSON.createObjectNode();
        body.set("before", before);
        body.set("after", after);
        Reply reply = post("/v1/comparisons", body.toString());
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        return reply.json();
    }

    private static JsonNode change(JsonNode comparison, String calculation, String pointer) {
        return comparison
                .path("changes")
                .valueStream()
                .filter(change -> change.path("calculation").asString().equals(calculation)
                        && change.path("pointer").asString().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode comparisonShare(JsonNode comparison, String calculation, String pointer) {
        return comparison
                .path("shares")
                .path("results")
                .valueStream()
                .filter(result -> result.path("calculation").asString().equals(calculation)
                        && result.path("pointer").asString().equals(pointer))
                .findFirst()
                .orElseThrow();
    }

    private static double part(JsonNode shared, String section) {
        return shared.path("parts")
                .valueStream()
                .filter(part -> part.path("section").asString().equals(section))
                .mapToDouble(part -> amount(part.path("change")))
                .findFirst()
                .orElseThrow();
    }

    private static double amount(JsonNode shown) {
        if (shown.isNumber()) {
            return shown.asDouble();
        }
        return shown.has("amount")
                ? Double.parseDouble(shown.path("amount").asString())
                : shown.path("value").asDouble();
    }

    private static ObjectNode demo(int index) {
        return JSON.readTree(DemoSetups.texts().get(index)).asObject();
    }

    private static JsonNode quantity(double value, String unit) {
        return JSON.valueToTree(Map.of("value", value, "unit", unit));
    }

    private static JsonNode position(double x, double z) {
        return JSON.valueToTree(Map.of("x", Map.of("value", x, "unit", "m"), "z", Map.of("value", z, "unit", "m")));
    }
}
