package org.axlewright.api;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the elements for other pages need of the contract, as a small module of their own: the whole document would outweigh them. */
final class EmbeddedContract {

    static final Path COMMITTED = Path.of("../web/src/main/resources/META-INF/resources/embed/v1/contract.js");

    private static final JsonMapper JSON = JsonMapper.shared();

    private final JsonNode document;
    private final Map<String, JsonNode> units = new TreeMap<>();

    private EmbeddedContract(JsonNode document) {
        this.document = document;
    }

    /** The text of the module. */
    static String of(JsonNode document) {
        EmbeddedContract contract = new EmbeddedContract(document);
        Map<String, Object> fields = contract.fields(contract.schema("Setup"));
        Map<String, JsonNode> calculations = new TreeMap<>();
        document.path("paths").properties().forEach(path -> {
            JsonNode post = path.getValue().path("post");
            if (post.has("x-needs")) {
                calculations.put(path.getKey().substring("/v1/".length()), post.path("x-leads"));
            }
        });
        return """
                // @ts-check
                /** What the elements know of the contract: written from docs/openapi.yaml by ContractIT, never by hand. */

                /** Units of each dimension. @type {Record<string, string[]>} */
                export const UNITS = %s;

                /**
                 * Every field of a setup: a dimension, `Money`, `number`, `flag`, `text`, choices between bars, a group, or a list with its one kind of entry.
                 * @typedef {string | Fields | Field[]} Field
                 * @typedef {{[name: string]: Field}} Fields
                 * @type {Fields}
                 */
                export const FIELDS = %s;

                /** Every calculation with its leading results, pointers into the result. @type {Record<string, string[]>} */
                export const CALCULATIONS = %s;
                """.formatted(lines(contract.units), lines(fields), lines(calculations));
    }

    private static String lines(Map<String, ?> entries) {
        StringBuilder text = new StringBuilder("{\n");
        entries.forEach((name, value) -> text.append("    ")
                .append(JSON.writeValueAsString(name))
                .append(": ")
                .append(JSON.writeValueAsString(value))
                .append(",\n"));
        return text.append("}").toString();
    }

    private JsonNode schema(String name) {
        return document.path("components").path("schemas").path(name);
    }

    private static String name(JsonNode reference) {
        String target = reference.path("$ref").asString("");
        return target.substring(target.lastIndexOf('/') + 1);
    }

    /** What a reference leads to. */
    private JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? resolved(schema(name(schema))) : schema;
    }

    /** Properties in the order people read in. */
    private Map<String, Object> fields(JsonNode schema) {
        Map<String, Object> fields = new LinkedHashMap<>();
        schema.path("x-order")
                .forEach(name -> fields.put(
                        name.asString(), kind(schema.path("properties").path(name.asString()))));
        return fields;
    }

    private Object kind(JsonNode property) {
        JsonNode schema = resolved(property);
        List<JsonNode> alternatives = new ArrayList<>(List.of(property));
        schema.path("oneOf").forEach(alternatives::add);
        schema.path("anyOf").forEach(alternatives::add);
        for (JsonNode alternative : alternatives) {
            JsonNode quantity = resolved(alternative).path("properties");
            if (quantity.has("value") && quantity.has("unit") && quantity.size() == 2) {
                units.put(name(alternative), resolved(quantity.path("unit")).path("enum"));
                return name(alternative);
            }
        }
        if (schema.path("properties").has("currency")) {
            return "Money";
        }
        if (schema.path("type").asString("").equals("array")) {
            return List.of(kind(schema.path("items")));
        }
        if (schema.has("properties")) {
            return fields(schema);
        }
        if (schema.has("enum")) {
            return String.join(
                    "|",
                    schema.path("enum").valueStream().map(JsonNode::asString).toList());
        }
        if (schema.path("type").asString("").equals("boolean")) {
            return "flag";
        }
        return alternatives.stream()
                        .anyMatch(one -> resolved(one).path("type").asString("").matches("number|integer"))
                ? "number"
                : "text";
    }
}
