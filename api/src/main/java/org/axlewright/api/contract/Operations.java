package org.axlewright.api.contract;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.servers.Server;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.problem.Problem;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * Completes the operations from the registry: needs and leads, the example that really runs, the refusals, and a path for every question
 * that a saved setup can be asked.
 */
@Component
@Order(2)
final class Operations implements OpenApiCustomizer {

    private static final String ASK_SETUP = "/v1/setups/{id}/{calculation}";
    private static final String EXAMPLE = "OrchardRunaboutAsPlanned";

    private final Calculations calculations;
    private final JsonMapper json;

    Operations(Calculations calculations, JsonMapper json) {
        this.calculations = calculations;
        this.json = json;
    }

    @Override
    public void customise(OpenAPI document) {
        document.info(new Info()
                .title("Axlewright")
                .version("1")
                .description(
                        "What happens to a light electric utility vehicle when someone lifts it, stretches it, moves its"
                                + " battery, swaps motor, pack, tyres or charger. Every calculation takes the same sections, answers"
                                + " in the same envelope, creates nothing, and gives the same answer to the same input. No approval,"
                                + " no certification: the maker's ratings, local codes and licensed practice bind.")
                .license(new License().name("Apache-2.0").identifier("Apache-2.0")));
        document.servers(List.of(new Server().url("/").description("This service")));
        document.getComponents()
                .addExamples(
                        EXAMPLE,
                        new Example()
                                .summary("Orchard runabout, as planned")
                                .value(json.readValue(DemoSetups.exampleText(), Map.class)));
        addProblems(document);
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            Operation post = post(document, calculation);
            describe(post, calculation);
        }
        askSetups(document);
        assessments(document);
        document.getPaths().forEach((path, item) -> {
            if (path.startsWith("/v1/setups")) {
                item.readOperations().forEach(Operations::storageRefusals);
            }
        });
        document.getPaths().values().stream()
                .flatMap(path -> path.readOperations().stream())
                .forEach(Operations::describeParameters);
    }

    private static Operation post(OpenAPI document, Calculation<?, ?, ?> calculation) {
        PathItem path = document.getPaths().get("/v1/" + calculation.name());
        return Objects.requireNonNull(path, () -> "No resource answers " + calculation.name())
                .getPost();
    }

    private void describe(Operation post, Calculation<?, ?, ?> calculation) {
        post.summary(calculation.question());
        post.description(
                "Creates nothing; the same input gives the same answer. Sections that it does not use are checked for"
                        + " form and otherwise ignored. `x-needs` lists what suffices for an answer, `x-leads` the results that people"
                        + " ask for first.");
        post.addExtension("x-needs", calculation.needs().alternatives());
        post.addExtension("x-leads", calculation.leads());
        post.getRequestBody()
                .description("A setup, whole or in part.")
                .getContent()
                .values()
                .forEach(media ->
                        media.addExamples("orchardRunabout", new Example().$ref("#/components/examples/" + EXAMPLE)));
        Objects.requireNonNull(post.getResponses().get("200")).description("The answer.");
        refusals(post, "400", "408", "413", "415", "422", "500");
    }

    private static void refusals(Operation operation, String... codes) {
        for (String code : codes) {
            operation.getResponses().putIfAbsent(code, new ApiResponse().$ref("#/components/responses/" + code));
        }
    }

    /** One generic handler serves every question of a saved setup; the document names them one by one. */
    private void askSetups(OpenAPI document) {
        PathItem generic = document.getPaths().remove(ASK_SETUP);
        if (generic == null) {
            return;
        }
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            Operation post = post(document, calculation);
            Operation get = generic.getGet();
            Operation ask = new Operation()
                    .operationId(post.getOperationId() + "OfSetup")
                    .tags(get.getTags())
                    .summary(calculation.question() + " Asked of a saved setup.")
                    .description("The saved setup as the body of `POST /v1/" + calculation.name() + "`.");
            List<Parameter> parameters = new ArrayList<>(get.getParameters());
            parameters.removeIf(parameter -> "calculation".equals(parameter.getName()));
            ask.setParameters(parameters);
            ask.setResponses(new io.swagger.v3.oas.models.responses.ApiResponses());
            ask.getResponses().putAll(new LinkedHashMap<>(get.getResponses()));
            ask.getResponses().put("200", post.getResponses().get("200"));
            ask.addExtension("x-needs", calculation.needs().alternatives());
            ask.addExtension("x-leads", calculation.leads());
            refusals(ask, "422", "500");
            document.getPaths().addPathItem("/v1/setups/{id}/" + calculation.name(), new PathItem().get(ask));
        }
    }

    /** Results of an assessment are those of the calculations, by name; the examples of what takes more than one setup really run. */
    private void assessments(OpenAPI document) {
        Schema<?> results = new JsonSchema();
        results.addType("object");
        results.setDescription(
                "The result of each calculation that answered, by its name; the same as its own POST gives.");
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            results.addProperty(
                    calculation.name(), new JsonSchema().$ref(resultOf(post(document, calculation), document)));
        }
        results.setAdditionalProperties(false);
        Schema<?> assessment =
                Objects.requireNonNull(document.getComponents().getSchemas().get("Assessment"));
        assessment.getProperties().put("results", results);
        Map<?, ?> planned = json.readValue(DemoSetups.exampleText(), Map.class);
        Map<?, ?> found = json.readValue(DemoSetups.texts().get(1), Map.class);
        example(document, "/v1/assessments", planned);
        example(document, "/v1/build-sheets", planned);
        example(document, "/v1/comparisons", Map.of("before", found, "after", planned));
        example(
                document,
                "/v1/candidates",
                Map.of(
                        "setup",
                        planned,
                        "candidates",
                        List.of(candidate("10 A", 10), candidate("18 A", 18), candidate("25 A", 25)),
                        "calculations",
                        List.of("charge-time")));
        whatIf(document, planned);
    }

    /** What varies in these examples: the place of the pack. */
    private static void whatIf(OpenAPI document, Map<?, ?> planned) {
        Map<String, Object> place = Map.of("pointer", "/items/1/position/x");
        Map<String, Object> swept = new LinkedHashMap<>(place);
        swept.put("from", Map.of("value", 600, "unit", "mm"));
        swept.put("to", Map.of("value", 1800, "unit", "mm"));
        swept.put("steps", 13);
        Map<String, Object> sweep = new LinkedHashMap<>();
        sweep.put("calculation", "centre-of-gravity");
        sweep.put("input", planned);
        sweep.put("vary", List.of(swept));
        sweep.put("watch", List.of("/frontAxle/share", "/rearAxle/load"));
        example(document, "/v1/sweeps", sweep);
        inLines(document, "/v1/sweeps");
        Map<String, Object> within = new LinkedHashMap<>(place);
        within.put("between", List.of(Map.of("value", 600, "unit", "mm"), Map.of("value", 2400, "unit", "mm")));
        Map<String, Object> solution = new LinkedHashMap<>();
        solution.put("calculation", "centre-of-gravity");
        solution.put("input", planned);
        solution.put("vary", within);
        solution.put("target", Map.of("pointer", "/frontAxle/share", "atLeast", 0.28));
        example(document, "/v1/solutions", solution);
        inLines(document, "/v1/solutions");
        Map<String, Object> tolerance = new LinkedHashMap<>(place);
        tolerance.put("plusMinus", 20);
        Map<String, Object> tolerances = new LinkedHashMap<>();
        tolerances.put("calculation", "centre-of-gravity");
        tolerances.put("input", planned);
        tolerances.put("tolerances", List.of(tolerance));
        example(document, "/v1/tolerances", tolerances);
        inLines(document, "/v1/tolerances");
        batches(document, planned);
    }

    /** One line of a batch stands for all. */
    private static void batches(OpenAPI document, Map<?, ?> planned) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("id", "runabout");
        line.put("calculation", "assessment");
        line.put("input", planned);
        Operation post =
                Objects.requireNonNull(document.getPaths().get("/v1/batches")).getPost();
        post.getRequestBody()
                .getContent()
                .values()
                .forEach(media -> media.addExamples("orchardRunabout", new Example().value(line)));
        refusals(post, "400", "415", "500");
    }

    /** The same answer in lines, after lines of progress. */
    private static void inLines(OpenAPI document, String path) {
        JsonSchema line = new JsonSchema();
        line.addType("object");
        line.setDescription(
                "One line: `{\"progress\": {\"done\", \"of\"}}` now and then, and at the end `{\"answer\": …}` as in JSON, or `{\"problem\": …}`.");
        Objects.requireNonNull(Objects.requireNonNull(document.getPaths().get(path))
                        .getPost()
                        .getResponses()
                        .get("200"))
                .getContent()
                .addMediaType("application/x-ndjson", new MediaType().schema(line));
    }

    /** Reference to the schema of a calculation's result: that of its envelope. */
    private static String resultOf(Operation post, OpenAPI document) {
        Schema<?> answer = Objects.requireNonNull(post.getResponses().get("200")).getContent().values().stream()
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No answer is described for " + post.getOperationId()))
                .getSchema();
        String name = answer.get$ref().substring(answer.get$ref().lastIndexOf('/') + 1);
        Schema<?> envelope =
                Objects.requireNonNull(document.getComponents().getSchemas().get(name));
        return Objects.requireNonNull(envelope.getProperties().get("result")).get$ref();
    }

    private static Map<String, Object> candidate(String name, int current) {
        Map<String, Object> output = Map.of("value", current, "unit", "A");
        return Map.of("name", name, "patch", Map.of("charger", Map.of("current", output)));
    }

    private static void example(OpenAPI document, String path, Object body) {
        Operation post = Objects.requireNonNull(document.getPaths().get(path)).getPost();
        post.getRequestBody()
                .getContent()
                .values()
                .forEach(media -> media.addExamples("orchardRunabout", new Example().value(body)));
        Objects.requireNonNull(post.getResponses().get("200")).description("The answer.");
        refusals(post, "400", "408", "413", "415", "422", "500");
    }

    private static void describeParameters(Operation operation) {
        if (operation.getParameters() == null) {
            return;
        }
        for (Parameter parameter : operation.getParameters()) {
            if ("units".equals(parameter.getName())) {
                parameter.description("Output units, fixed for each dimension. Working stays in coherent SI.");
            }
            if ("working".equals(parameter.getName())) {
                parameter.description("`false` leaves the working out.");
            }
        }
    }

    /** What an operation on saved setups refuses follows from what it takes. */
    private static void storageRefusals(Operation operation) {
        if (operation.getParameters() != null) {
            for (Parameter parameter : operation.getParameters()) {
                switch (parameter.getName()) {
                    case "id" -> refusals(operation, "404");
                    case "limit" -> refusals(operation, "400");
                    case "If-Match" -> refusals(operation, "412", "428");
                    case "Idempotency-Key" -> refusals(operation, "400", "409", "422");
                    default -> {
                        // no refusal of its own
                    }
                }
            }
        }
        if (operation.getRequestBody() != null) {
            refusals(operation, "400", "408", "413", "415", "422");
        }
        refusals(operation, "500", "503");
    }

    private static void addProblems(OpenAPI document) {
        Schema<?> schema = new Schema<Problem>().$ref("#/components/schemas/Problem");
        Map<String, String> problems = new LinkedHashMap<>();
        problems.put(
                "400",
                "The body can't be read: syntax, limits, duplicate key, unknown name or unit, wrong type. The first fault.");
        problems.put("404", "There is nothing of this id.");
        problems.put("408", "The body did not arrive in time.");
        problems.put("409", "The same request is being worked on: repeat it when that has been answered.");
        problems.put("412", "If-Match names another revision than the one stored; its ETag comes along.");
        problems.put("413", "The body is too large.");
        problems.put("415", "The body is of another media type.");
        problems.put("422", "The body is read and not valid: everything found, together.");
        problems.put("428", "If-Match is missing.");
        problems.put("500", "The service failed.");
        problems.put("503", "The database can't be reached. Calculations can. `Retry-After` has the seconds to wait.");
        problems.forEach((code, text) -> document.getComponents()
                .addResponses(
                        code,
                        new ApiResponse()
                                .description(text)
                                .content(new Content()
                                        .addMediaType("application/problem+json", new MediaType().schema(schema)))));
    }
}
