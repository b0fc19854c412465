package org.axlewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The published contract is what the service does: no drift, examples that run, answers that validate. */
@TestPropertySource(properties = {"springdoc.api-docs.enabled=true", "springdoc.api-docs.path=/v3/generated"})
class ContractIT extends Running {

    @Autowired
    Calculations calculations;

    private static final Path COMMITTED = Path.of("../docs/openapi.yaml");
    private static final String PLACE = "https://axlewright.invalid/openapi.json";

    @Test
    void theCommittedContractIsTheOneOfTheCode() throws IOException {
        String generated = get("/v3/generated.yaml").text();
        if (Boolean.getBoolean("contract.write")) {
            Files.writeString(COMMITTED, generated);
        }
        assertThat(generated)
                .as(
                        "docs/openapi.yaml differs from the code; write it anew with -Dcontract.write=true and review the difference")
                .isEqualTo(Files.readString(COMMITTED));
    }

    @Test
    void theElementsForOtherPagesKnowEveryField() throws IOException {
        String generated = EmbeddedContract.of(get("/v3/generated").json());
        if (Boolean.getBoolean("contract.write")) {
            Files.writeString(EmbeddedContract.COMMITTED, generated);
        }
        assertThat(generated)
                .as(EmbeddedContract.COMMITTED + " differs from the contract; write it anew with -Dcontract.write=true")
                .isEqualTo(Files.readString(EmbeddedContract.COMMITTED));
    }

    @Test
    void theContractIsServedAsJsonAndAsYaml() {
        Reply yaml = get("/v3/api-docs.yaml");
        Reply json = get("/v3/api-docs");
        assertThat(yaml.contentType()).startsWith("application/yaml");
        assertThat(json.contentType()).startsWith("application/json");
        assertThat(json.json()).isEqualTo(YAMLMapper.builder().build().readTree(yaml.text()));
        assertThat(json.json().path("openapi").asString()).startsWith("3.1");
        Reply again = send(HttpRequest.newBuilder(uri("/v3/api-docs")).header("If-None-Match", json.header("ETag")));
        assertThat(again.status()).isEqualTo(304);
    }

    @Test
    void theFormOfASetupIsServedByItself() {
        JsonNode whole = get("/v3/api-docs").json();
        Reply reply = get("/v3/api-docs/form");
        JsonNode form = reply.json();
        assertThat(form.at("/components/schemas/Setup")).isEqualTo(whole.at("/components/schemas/Setup"));
        assertThat(form.findValuesAsString("$ref"))
                .isNotEmpty()
                .allSatisfy(target ->
                        assertThat(form.at(target.substring(1)).isMissingNode()).isFalse());
        assertThat(form.path("paths").propertyNames())
                .containsExactlyInAnyOrderElementsOf(whole.path("paths").propertyNames());
        assertThat(reply.text().length()).isLessThan(get("/v3/api-docs").text().length() / 2);
    }

    @TestFactory
    Stream<DynamicTest> everyExampleIsAnsweredAsTheContractSays() throws IOException {
        JsonNode document = document();
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : document.path("paths").properties()) {
            JsonNode post = path.getValue().path("post");
            if (post.has("x-needs")) {
                tests.add(DynamicTest.dynamicTest(path.getKey(), () -> runExample(document, path.getKey(), post)));
            }
        }
        assertThat(tests).hasSameSizeAs(calculations.all());
        return tests.stream();
    }

    private void runExample(JsonNode document, String path, JsonNode post) {
        JsonNode media = post.at("/requestBody/content/application~1json");
        assertThat(media.path("examples")).isNotEmpty();
        for (JsonNode example : media.path("examples")) {
            String body = resolved(document, example).path("value").toString();
            assertThat(validate(document, "#/components/schemas/Setup", body)).isEmpty();
            for (String query : List.of("", "?units=us", "?working=false")) {
                Reply reply = post(path + query, body);
                assertThat(reply.status()).as(reply.text()).isEqualTo(200);
                String answer = post.at("/responses/200/content/application~1json/schema/$ref")
                        .asString();
                assertThat(validate(document, answer, reply.text()))
                        .as(path + query)
                        .isEmpty();
                assertThat(reply.json().has("working")).isEqualTo(!query.contains("working=false"));
            }
        }
        List<JsonNode> answers = DemoSetups.texts().stream()
                .map(vehicle -> post(path, vehicle).json().path("result"))
                .toList();
        assertThat(answers.get(0).at(post.at("/x-leads/0").asString()).isMissingNode())
                .as("first leading result of the example")
                .isFalse();
        for (JsonNode lead : post.path("x-leads")) {
            assertThat(answers)
                    .as("leading result " + lead + " of some demo vehicle")
                    .anyMatch(answer -> !answer.at(lead.asString()).isMissingNode());
        }
    }

    /** Whole vehicles at once: assessed, compared, tried with other parts. */
    @ParameterizedTest
    @CsvSource({"/v1/assessments,Assessment", "/v1/comparisons,Comparison", "/v1/candidates,Tryout", "/v1/sweeps,Sweep"
    })
    void whatAsksEveryQuestionAnswersItsExampleAsTheContractSays(String path, String answer) throws IOException {
        JsonNode document = document();
        JsonNode examples =
                document.path("paths").path(path).at("/post/requestBody/content/application~1json/examples");
        assertThat(examples).isNotEmpty();
        for (JsonNode example : examples) {
            Reply reply = post(path, example.path("value").toString());
            assertThat(reply.status()).as(reply.text()).isEqualTo(200);
            assertThat(validate(document, "#/components/schemas/" + answer, reply.text()))
                    .isEmpty();
        }
    }

    @Test
    void refusalsAreProblemDocumentsOfTheContract() throws IOException {
        JsonNode document = document();
        for (String body :
                List.of("", "[]", "{\"a\":1}", "{}", "{\"chassis\":{\"wheelbase\":{\"value\":9e9,\"unit\":\"in\"}}}")) {
            Reply reply = post("/v1/centre-of-gravity", body);
            assertThat(reply.status()).isBetween(400, 499);
            assertThat(reply.contentType()).isEqualTo("application/problem+json");
            assertThat(validate(document, "#/components/schemas/Problem", reply.text()))
                    .isEmpty();
        }
    }

    @Test
    void everyOperationAndEveryFieldIsDescribed() throws IOException {
        JsonNode document = document();
        List<String> bare = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : document.path("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                String name = operation.getKey() + " " + path.getKey();
                if (operation.getValue().path("operationId").asString("").isEmpty()
                        || operation.getValue().path("summary").asString("").isEmpty()) {
                    bare.add(name);
                }
                for (Map.Entry<String, JsonNode> response :
                        operation.getValue().path("responses").properties()) {
                    if (resolved(document, response.getValue())
                            .path("description")
                            .asString("")
                            .isEmpty()) {
                        bare.add(name + " " + response.getKey());
                    }
                }
            }
        }
        for (Map.Entry<String, JsonNode> schema :
                document.at("/components/schemas").properties()) {
            for (Map.Entry<String, JsonNode> property :
                    schema.getValue().path("properties").properties()) {
                if (property.getValue().path("description").asString("").isEmpty()
                        && resolved(document, property.getValue())
                                .path("description")
                                .asString("")
                                .isEmpty()) {
                    bare.add(schema.getKey() + "/" + property.getKey());
                }
            }
        }
        assertThat(bare).isEmpty();
    }

    private static JsonNode resolved(JsonNode document, JsonNode node) {
        return node.has("$ref") ? document.at(node.path("$ref").asString().substring(1)) : node;
    }

    private JsonNode document() {
        return YAMLMapper.builder().build().readTree(get("/v3/generated.yaml").text());
    }

    private static List<String> validate(JsonNode document, String reference, String json) {
        SchemaRegistry registry = SchemaRegistry.withDialect(
                Dialects.getOpenApi31(), builder -> builder.schemas(Map.of(PLACE, document.toString())));
        Schema schema = registry.getSchema(SchemaLocation.of(PLACE + reference));
        return schema.validate(json, InputFormat.JSON).stream()
                .map(String::valueOf)
                .toList();
    }
}
