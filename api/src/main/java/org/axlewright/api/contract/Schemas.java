package org.axlewright.api.contract;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.axlewright.api.section.RatedHours;
import org.axlewright.api.section.Ratio;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Within;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;

/**
 * Completes the schemas: what is not {@code @Nullable} is required, what is sent admits no unknown name, a quantity's range is told, and
 * the order of the fields is kept in {@code x-order} since the document is sorted.
 */
@Component
@Order(1)
final class Schemas implements ModelConverter, OpenApiCustomizer {

    private final Map<String, Class<?>> records = new TreeMap<>();

    @Override
    public @Nullable Schema<?> resolve(
            AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
        Schema<?> schema = chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
        if (schema == null || schema.get$ref() == null || type.getType() == null) {
            return schema;
        }
        Class<?> raw = Json.mapper().constructType(type.getType()).getRawClass();
        if (raw.isRecord()) {
            String name = schema.get$ref().substring(schema.get$ref().lastIndexOf('/') + 1);
            Class<?> known = records.put(name, raw);
            if (known != null && known != raw) {
                throw new IllegalStateException(
                        "Two records share the schema name " + name + ": " + known + ", " + raw);
            }
        }
        return schema;
    }

    @Override
    public void customise(OpenAPI document) {
        records.forEach((name, type) -> {
            Schema<?> schema = document.getComponents().getSchemas().get(name);
            if (schema != null && schema.getProperties() != null) {
                complete(schema, type);
            }
        });
        document.getComponents()
                .getSchemas()
                .remove(JsonNode.class.getSimpleName()); // told as a setup, an id or a patch
        document.getComponents().getSchemas().remove(RatedHours.class.getSimpleName()); // told as a number or a Time
        document.getComponents().getSchemas().remove(Ratio.class.getSimpleName()); // told as a number or tooth counts
    }

    private static void complete(Schema<?> schema, Class<?> type) {
        boolean sent = type.getPackage() == Setup.class.getPackage();
        boolean value = Quantity.class.isAssignableFrom(type) || type == Money.class;
        for (RecordComponent component : type.getRecordComponents()) {
            String name = jsonName(component);
            Schema<?> property = schema.getProperties().get(name);
            if (property == null) {
                continue;
            }
            if (value || !component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                require(schema, name);
            }
            if (component.getType() == Object.class) {
                schema.getProperties().put(name, anyValue(property));
            }
            if (component.getType() == JsonNode.class) {
                schema.getProperties().put(name, anyJson(name, property));
            }
            if (component.getType() == RatedHours.class) {
                schema.getProperties().put(name, hoursOrTime(property));
            }
            if (component.getType() == Ratio.class) {
                schema.getProperties().put(name, numberOrTeeth(property, component));
            }
            tellRange(property(schema, name), component.getAccessor().getAnnotation(Within.class));
        }
        if (Quantity.class.isAssignableFrom(type)) {
            property(schema, "value").setDescription("The number.");
            property(schema, "unit").setDescription("Its unit.");
            schema.setDescription("A value with its unit.");
        }
        if (type == Money.class) {
            property(schema, "amount")
                    .setDescription(
                            "Plain decimal text; sent from 0 to 1000 for `energyPrice`, to 10000000 elsewhere.");
            property(schema, "amount").setPattern("^-?\\d{1,16}(\\.\\d{1,16})?$");
            property(schema, "currency").setDescription("ISO 4217 code.");
            schema.setDescription("An amount of money; for `energyPrice` the price of one kilowatt-hour.");
        }
        if (sent || value) {
            schema.setAdditionalProperties(false);
        }
        schema.addExtension(
                "x-order",
                Arrays.stream(type.getRecordComponents())
                        .map(Schemas::jsonName)
                        .filter(schema.getProperties()::containsKey)
                        .toList());
    }

    private static Schema<?> property(Schema<?> schema, String name) {
        return Objects.requireNonNull(schema.getProperties().get(name), name);
    }

    private static void require(Schema<?> schema, String name) {
        if (schema.getRequired() == null || !schema.getRequired().contains(name)) {
            schema.addRequiredItem(name);
        }
    }

    private static String jsonName(RecordComponent component) {
        JsonProperty renamed = component.getAccessor().getAnnotation(JsonProperty.class);
        return renamed == null ? component.getName() : renamed.value();
    }

    /** A quantity, a number or a text: any JSON value. */
    private static Schema<?> anyValue(Schema<?> property) {
        JsonSchema any = new JsonSchema();
        any.setDescription(property.getDescription());
        return any;
    }

    private static Schema<?> anyObject(Schema<?> property) {
        JsonSchema any = new JsonSchema();
        any.addType("object");
        any.setDescription(property.getDescription());
        return any;
    }

    private static Schema<?> anyJson(String name, Schema<?> property) {
        return switch (name) {
            case "patch" -> anyObject(property);
            case "before", "after", "setup" -> setupOrId(property);
            default -> anyValue(property);
        };
    }

    private static Schema<?> setupOrId(Schema<?> property) {
        JsonSchema id = new JsonSchema();
        id.addType("string");
        id.setFormat("uuid");
        JsonSchema either = new JsonSchema();
        either.setDescription(property.getDescription());
        JsonSchema number = new JsonSchema();
        number.addType("integer");
        number.setFormat("int64");
        number.setMinimum(BigDecimal.ONE);
        JsonSchema revision = new JsonSchema();
        revision.addType("object");
        revision.setDescription("A revision of a saved setup.");
        revision.addProperty("id", id);
        revision.addProperty("revision", number);
        revision.setRequired(List.of("id", "revision"));
        revision.setAdditionalProperties(false);
        either.setOneOf(List.of(new JsonSchema().$ref("#/components/schemas/Setup"), id, revision));
        return either;
    }

    private static Schema<?> hoursOrTime(Schema<?> property) {
        JsonSchema number = new JsonSchema();
        number.addType("number");
        JsonSchema either = new JsonSchema();
        either.setDescription(property.getDescription());
        either.setOneOf(List.of(number, new JsonSchema().$ref("#/components/schemas/Time")));
        return either;
    }

    private static Schema<?> numberOrTeeth(Schema<?> property, RecordComponent component) {
        JsonSchema number = new JsonSchema();
        number.addType("number");
        number.setMinimum(new BigDecimal(
                component.getAccessor().getAnnotation(DecimalMin.class).value()));
        number.setMaximum(new BigDecimal(
                component.getAccessor().getAnnotation(DecimalMax.class).value()));
        JsonSchema teeth = new JsonSchema();
        teeth.addType("string");
        teeth.setPattern("^\\s*\\d{1,4}(\\.\\d{1,4})?\\s*[:/]\\s*\\d{1,4}(\\.\\d{1,4})?\\s*$");
        JsonSchema either = new JsonSchema();
        either.setDescription(property.getDescription());
        either.setOneOf(List.of(number, teeth));
        return either;
    }

    private static void tellRange(Schema<?> property, @Nullable Within range) {
        if (range == null) {
            return;
        }
        BigDecimal min = plain(range.min());
        BigDecimal max = plain(range.max());
        String text = "From " + min.toPlainString() + " to " + max.toPlainString() + " " + range.unit() + ".";
        property.setDescription(property.getDescription() == null ? text : property.getDescription() + " " + text);
        Map<String, Object> extension = new LinkedHashMap<>();
        extension.put("maximum", max);
        extension.put("minimum", min);
        extension.put("unit", range.unit());
        property.addExtension("x-range", extension);
    }

    private static BigDecimal plain(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
        return decimal.scale() < 0 ? decimal.setScale(0) : decimal;
    }
}
