package org.axlewright.api.contract;

import io.swagger.v3.oas.annotations.Hidden;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Supplier;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.DigestUtils;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The contract that ships: {@code docs/openapi.yaml}, as it is and as JSON. It is generated when the code changes, not when the service
 * runs: that takes seconds, and a reader should not wait for it.
 */
@Hidden
@RestController
final class ContractResource {

    private static final String SCHEMAS = "#/components/schemas/";

    private final Supplier<ResponseEntity<byte[]>> yaml = SingletonSupplier.of(() -> answer(committed()));
    private final Supplier<ResponseEntity<byte[]>> json =
            SingletonSupplier.of(() -> answer(JsonMapper.shared().writeValueAsBytes(document())));
    private final Supplier<ResponseEntity<byte[]>> form =
            SingletonSupplier.of(() -> answer(JsonMapper.shared().writeValueAsBytes(form(document()))));

    @GetMapping(path = "/v3/api-docs", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> json() {
        return json.get();
    }

    @GetMapping(path = "/v3/api-docs.yaml", produces = MediaType.APPLICATION_YAML_VALUE)
    ResponseEntity<byte[]> yaml() {
        return yaml.get();
    }

    /** What a form of a setup needs of it: the schemas that {@code Setup} leads to, and the names of the paths. */
    @GetMapping(path = "/v3/api-docs/form", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> form() {
        return form.get();
    }

    private static JsonNode form(JsonNode whole) {
        ObjectNode form = JsonNodeFactory.instance.objectNode();
        form.set("openapi", whole.path("openapi"));
        form.set("info", whole.path("info"));
        ObjectNode paths = form.putObject("paths");
        whole.path("paths").propertyNames().forEach(paths::putObject);
        ObjectNode schemas = form.putObject("components").putObject("schemas");
        Deque<String> open = new ArrayDeque<>(List.of("Setup"));
        while (!open.isEmpty()) {
            String name = open.pop();
            if (!schemas.has(name)) {
                JsonNode schema = whole.at("/components/schemas/" + name);
                schemas.set(name, schema);
                schema.findValuesAsString("$ref").forEach(target -> open.push(target.substring(SCHEMAS.length())));
            }
        }
        return form;
    }

    private static JsonNode document() {
        return YAMLMapper.builder().build().readTree(committed());
    }

    private static byte[] committed() {
        try (InputStream contract = new ClassPathResource("contract/openapi.yaml").getInputStream()) {
            return contract.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Its tag is weak: what is compressed on the way has other bytes. */
    private static ResponseEntity<byte[]> answer(byte[] document) {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .eTag("W/\"" + DigestUtils.md5DigestAsHex(document) + "\"")
                .body(document);
    }
}
