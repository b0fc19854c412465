package org.axlewright.api.workspace;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import java.util.List;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Says in the contract who needs a token for what, and how often one may ask. */
@Component
@Order(3)
final class AccessInContract implements OpenApiCustomizer {

    private static final String SCHEME = "token";

    @Override
    public void customise(OpenAPI document) {
        document.getComponents()
                .addSecuritySchemes(
                        SCHEME,
                        new SecurityScheme()
                                .type(SecurityScheme.Type.HTTP)
                                .scheme("bearer")
                                .bearerFormat("axw_ and 72 hexadecimal digits")
                                .description(
                                        "Opens one workspace, to read or to write. Made by a command of the service, shown once. A"
                                                + " service that listens on its own machine alone, with its own database, keeps one"
                                                + " workspace that needs none."));
        response(document, "401", "No token, or one that opens nothing.", "WWW-Authenticate", "RFC 6750.", "string");
        response(
                document,
                "403",
                "The token may only read; or, without a token, the request comes from another site or machine.",
                "WWW-Authenticate",
                "RFC 6750, when the scope does not suffice.",
                "string");
        response(
                        document,
                        "429",
                        "This address or this token has asked too often.",
                        "Retry-After",
                        "Seconds to wait.",
                        "integer")
                .addHeaderObject(RateLimits.POLICY, policy());
        document.getPaths().forEach((path, item) -> {
            if (path.startsWith("/v1/")) {
                item.readOperationsMap().forEach((method, operation) -> describe(path, method, operation));
            }
        });
    }

    private static void describe(String path, PathItem.HttpMethod method, Operation operation) {
        answer(operation, "429");
        boolean saved = path.startsWith("/v1/setups");
        boolean mayName = Door.READING.contains(path) && !path.equals("/v1/assessments");
        if (!saved && !mayName) {
            return;
        }
        answer(operation, "401");
        answer(operation, "403");
        String scope = mayName || Door.SAFE.contains(method.name()) ? "read" : "write";
        operation.addSecurityItem(new SecurityRequirement().addList(SCHEME, List.of(scope)));
        if (mayName) { // whole setups are for everybody
            operation.addSecurityItem(new SecurityRequirement());
        }
    }

    private static void answer(Operation operation, String code) {
        operation.getResponses().putIfAbsent(code, new ApiResponse().$ref("#/components/responses/" + code));
    }

    private static Header policy() {
        return new Header()
                .description(
                        "Requests and seconds, draft-ietf-httpapi-ratelimit-headers-11; `RateLimit` says what is left."
                                + " Both stand in every answer under /v1.")
                .schema(type("string"));
    }

    private static ApiResponse response(
            OpenAPI document, String code, String description, String header, String meaning, String type) {
        ApiResponse response = new ApiResponse().description(description);
        response.addHeaderObject(header, new Header().description(meaning).schema(type(type)));
        response.content(new Content()
                .addMediaType(
                        "application/problem+json",
                        new MediaType().schema(new Schema<>().$ref("#/components/schemas/Problem"))));
        document.getComponents().addResponses(code, response);
        return response;
    }

    private static Schema<?> type(String type) {
        Schema<?> schema = new JsonSchema();
        schema.addType(type);
        return schema;
    }
}
