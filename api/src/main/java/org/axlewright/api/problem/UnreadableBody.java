package org.axlewright.api.problem;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.axlewright.api.section.Ratio;
import org.axlewright.domain.quantity.Unit;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.InvalidNullException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Says where and why a body could not be read, in our words: the parser's own name classes. */
public final class UnreadableBody {

    private UnreadableBody() {}

    public static Fault fault(JacksonException failure) {
        String pointer = pointer(failure);
        if (failure instanceof UnrecognizedPropertyException unknown) {
            String known = unknown.getKnownPropertyIds() == null
                    ? ""
                    : "; known here: "
                            + unknown.getKnownPropertyIds().stream()
                                    .map(String::valueOf)
                                    .sorted()
                                    .collect(Collectors.joining(", "));
            return new Fault(
                    pointer, "unknown-field", "\"" + unknown.getPropertyName() + "\" is not known" + known, null, null);
        }
        if (failure instanceof InvalidNullException) {
            return new Fault(pointer, "wrong-type", "null is not a value; leave the field out", null, null);
        }
        if (failure instanceof InvalidFormatException wrong && wrong.getTargetType() != null) {
            if (wrong.getTargetType().isEnum()) {
                boolean unit = Unit.class.isAssignableFrom(wrong.getTargetType());
                String known = Arrays.stream(wrong.getTargetType().getEnumConstants())
                        .map(String::valueOf)
                        .collect(Collectors.joining(", "));
                return new Fault(
                        pointer,
                        unit ? "unknown-unit" : "unknown-value",
                        "\"" + shortened(wrong.getValue()) + "\" is not " + (unit ? "a unit known" : "known")
                                + " here; known: " + known,
                        shortened(wrong.getValue()),
                        known);
            }
            return new Fault(pointer, "wrong-type", "Must be " + wanted(wrong), null, null);
        }
        if (failure instanceof MismatchedInputException wrong) {
            return new Fault(pointer, "wrong-type", "Must be " + wanted(wrong), null, null);
        }
        if (failure instanceof StreamConstraintsException) {
            return new Fault(
                    pointer,
                    "limit-exceeded",
                    "The document is too deep, or a number, name, text or the whole is too long (depth 32, 60000 tokens,"
                            + " numbers of 40 characters, names of 100, texts of 20000)",
                    null,
                    null);
        }
        String message = failure.getOriginalMessage();
        if (message != null && message.startsWith("Duplicate")) {
            return new Fault(pointer, "duplicate-key", "The same name stands twice in one object", null, null);
        }
        String where = failure.getLocation() == null
                ? ""
                : " near line " + failure.getLocation().getLineNr() + ", column "
                        + failure.getLocation().getColumnNr();
        return new Fault(pointer, "bad-json", "Not valid JSON" + where, null, null);
    }

    private static String wanted(MismatchedInputException wrong) {
        Class<?> type = wrong.getTargetType();
        if (type == null) {
            return "of another type";
        }
        if (type == String.class) {
            return "a text";
        }
        if (type == Integer.class || type == int.class) {
            return "a whole number of at most nine digits, without quotes";
        }
        if (type == Double.class || type == double.class) {
            return "a finite number, without quotes";
        }
        if (type == Ratio.class) {
            return "a finite number, without quotes, or two tooth counts such as \"14:60\"";
        }
        if (type == Boolean.class) {
            return "true or false";
        }
        if (java.util.Collection.class.isAssignableFrom(type)) {
            return "a list";
        }
        if (type.isEnum()) {
            return "one of "
                    + Arrays.stream(type.getEnumConstants())
                            .map(String::valueOf)
                            .collect(Collectors.joining(", "));
        }
        return "an object";
    }

    private static String shortened(Object value) {
        String text = String.valueOf(value);
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }

    private static String pointer(JacksonException failure) {
        if (failure instanceof StreamReadException && failure.processor() instanceof JsonParser parser) {
            return parser.streamReadContext().pathAsPointer().toString();
        }
        StringBuilder pointer = new StringBuilder();
        for (JacksonException.Reference step : failure.getPath()) {
            pointer.append('/')
                    .append(
                            step.getPropertyName() == null
                                    ? String.valueOf(step.getIndex())
                                    : step.getPropertyName().replace("~", "~0").replace("/", "~1"));
        }
        return pointer.toString();
    }
}
