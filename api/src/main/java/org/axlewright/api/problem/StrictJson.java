package org.axlewright.api.problem;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import org.axlewright.api.section.RatedHours;
import org.axlewright.api.section.Ratio;
import org.axlewright.domain.check.Unreadable;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.DeserializationConfig;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.cfg.CoercionAction;
import tools.jackson.databind.cfg.CoercionInputShape;
import tools.jackson.databind.deser.BeanDeserializerBuilder;
import tools.jackson.databind.deser.NullValueProvider;
import tools.jackson.databind.deser.SettableBeanProperty;
import tools.jackson.databind.deser.ValueDeserializerModifier;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.exc.InvalidNullException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;
import tools.jackson.databind.type.LogicalType;
import tools.jackson.databind.util.AccessPattern;

/**
 * Strict in (contract R7), beyond what properties can say: duplicate keys, nulls, numbers that are texts, texts that are numbers and
 * numbers beyond the range of a double are refused where they stand.
 */
@Configuration(proxyBeanMethods = false)
public class StrictJson {

    @Bean
    JsonMapperBuilderCustomizer strictReading() {
        return StrictJson::strict;
    }

    /** Makes a mapper strict; for those that read setups outside the web layer. */
    public static void strict(JsonMapper.Builder builder) {
        SimpleModule numbers = new SimpleModule("strict-numbers");
        numbers.addDeserializer(Double.class, new FiniteNumber(Double.class));
        numbers.addDeserializer(double.class, new FiniteNumber(double.class));
        numbers.addDeserializer(Integer.class, new WholeNumber());
        numbers.addDeserializer(RatedHours.class, new HoursOrTime());
        numbers.addSerializer(RatedHours.class, new HoursAsSent());
        numbers.addDeserializer(Ratio.class, new NumberOrTeeth());
        numbers.setDeserializerModifier(new NoNulls());
        builder.enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .enable(
                        StreamWriteFeature
                                .USE_FAST_DOUBLE_WRITER) // JDK 17 writes doubles slowly, and longer than need be
                .changeDefaultNullHandling(nulls -> JsonSetter.Value.forContentNulls(Nulls.FAIL))
                .withCoercionConfig(
                        LogicalType.Textual,
                        texts -> texts.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
                .addModule(numbers);
    }

    /**
     * Tells null from absent: null is refused where it stands, what is absent is for {@link org.axlewright.api.section.Form} to judge.
     * The mapper's own setting for nulls takes an absent component of a record for a null.
     */
    private static final class NoNulls extends ValueDeserializerModifier {

        private static final long serialVersionUID = 1L;

        @Override
        public BeanDeserializerBuilder updateBuilder(
                DeserializationConfig config, BeanDescription.Supplier description, BeanDeserializerBuilder builder) {
            SettableBeanProperty[] components = builder.getValueInstantiator().getFromObjectArguments(config);
            if (components != null) {
                for (int i = 0; i < components.length; i++) {
                    components[i] = components[i].withNullProvider(new NullRefused(components[i]));
                }
            }
            return builder;
        }
    }

    /** Null is no value; an absent number is NaN, which no range lets pass. */
    private record NullRefused(SettableBeanProperty component) implements NullValueProvider {

        @Override
        public @Nullable Object getNullValue(DeserializationContext context) {
            throw InvalidNullException.from(context, component.getFullName(), component.getType());
        }

        @Override
        public @Nullable Object getAbsentValue(DeserializationContext context) {
            if (component.getType().hasRawClass(double.class)) {
                return Double.NaN;
            }
            return null;
        }

        @Override
        public AccessPattern getNullAccessPattern() {
            return AccessPattern.DYNAMIC;
        }
    }

    /** JSON numbers that a double can hold; the parser itself reads 1e400 as infinity. */
    private static final class FiniteNumber extends StdDeserializer<Double> {

        FiniteNumber(Class<?> type) {
            super(type);
        }

        @Override
        public Double deserialize(JsonParser parser, DeserializationContext context) {
            if (parser.currentToken().isNumeric()) {
                double value = parser.getDoubleValue();
                if (Double.isFinite(value)) {
                    return value;
                }
            }
            return (Double) context.handleUnexpectedToken(getValueType(context), parser);
        }
    }

    /** Whole JSON numbers; 2.0 is one, as in JSON Schema. */
    private static final class WholeNumber extends StdDeserializer<Integer> {

        WholeNumber() {
            super(Integer.class);
        }

        @Override
        public Integer deserialize(JsonParser parser, DeserializationContext context) {
            if (parser.currentToken().isNumeric()) {
                double value = parser.getDoubleValue();
                if (Math.rint(value) == value && Math.abs(value) <= 999_999_999) {
                    return (int) value;
                }
            }
            return (Integer) context.handleUnexpectedToken(getValueType(context), parser);
        }
    }

    /** A plain number of hours as data sheets print it, or a time with its unit. */
    private static final class HoursOrTime extends StdDeserializer<RatedHours> {

        HoursOrTime() {
            super(RatedHours.class);
        }

        @Override
        public RatedHours deserialize(JsonParser parser, DeserializationContext context) {
            if (parser.currentToken() == JsonToken.START_OBJECT) {
                return new RatedHours(context.readValue(parser, Time.class), false);
            }
            return new RatedHours(new Time(context.readValue(parser, Double.class), TimeUnit.HOUR), true);
        }
    }

    /** A plain number, or two tooth counts in a text; a number in a text is neither. */
    private static final class NumberOrTeeth extends StdDeserializer<Ratio> {

        NumberOrTeeth() {
            super(Ratio.class);
        }

        @Override
        public Ratio deserialize(JsonParser parser, DeserializationContext context) {
            JsonToken token = parser.currentToken();
            if (token.isNumeric() && Double.isFinite(parser.getDoubleValue())) {
                return new Ratio(parser.getDoubleValue(), null);
            }
            if (token == JsonToken.VALUE_STRING) {
                try {
                    return Ratio.ofTeeth(parser.getString());
                } catch (Unreadable neither) {
                    return (Ratio) context.handleUnexpectedToken(getValueType(context), parser);
                }
            }
            return (Ratio) context.handleUnexpectedToken(getValueType(context), parser);
        }
    }

    /** Back as it was sent: a setup that is shown can be sent again. */
    private static final class HoursAsSent extends StdSerializer<RatedHours> {

        HoursAsSent() {
            super(RatedHours.class);
        }

        @Override
        public void serialize(RatedHours hours, JsonGenerator json, SerializationContext context) {
            context.writeValue(json, hours.plain() ? (Object) hours.time().value() : hours.time());
        }
    }
}
