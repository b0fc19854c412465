package org.axlewright.api.calculation;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.axlewright.api.section.Setup;
import org.jspecify.annotations.Nullable;

/**
 * An RFC 6901 pointer into a setup, read against the section records when it is made: a pointer that no section has is a mistake that
 * shows at start.
 */
public final class Pointer {

    private final String text;
    private final List<Step> steps;

    /** A component of a record, or a place in a list. */
    private sealed interface Step {
        record Component(Method accessor) implements Step {}

        record Place(int index) implements Step {}
    }

    /** A component of a section. */
    private record Part(Method accessor, Type type) {}

    /** The components of a record by their JSON names; nothing of any other class. Reflection is slow, and asked for once. */
    private static final ClassValue<Map<String, Part>> PARTS = new ClassValue<>() {
        @Override
        protected Map<String, Part> computeValue(Class<?> type) {
            Map<String, Part> parts = new LinkedHashMap<>();
            if (type.isRecord()) {
                for (RecordComponent component : type.getRecordComponents()) {
                    Method accessor = component.getAccessor();
                    accessor.setAccessible(true);
                    parts.put(jsonName(component), new Part(accessor, component.getGenericType()));
                }
            }
            return Collections.unmodifiableMap(parts);
        }
    };

    private Pointer(String text, List<Step> steps) {
        this.text = text;
        this.steps = steps;
    }

    /** Whether the sections have such a place. */
    public static boolean exists(String text) {
        try {
            of(text);
            return true;
        } catch (IllegalArgumentException none) {
            return false;
        }
    }

    /**
     * Reads a pointer.
     *
     * @throws IllegalArgumentException when the sections have no such place
     */
    public static Pointer of(String text) {
        List<Step> steps = new ArrayList<>();
        Type type = Setup.class;
        for (String name : text.substring(1).split("/", -1)) {
            if (type instanceof ParameterizedType list) {
                steps.add(new Step.Place(Integer.parseInt(name)));
                type = list.getActualTypeArguments()[0];
                continue;
            }
            Part part = PARTS.get((Class<?>) type).get(name);
            if (part == null) {
                throw new IllegalArgumentException("No section has " + text);
            }
            steps.add(new Step.Component(part.accessor()));
            type = part.type();
        }
        return new Pointer(text, List.copyOf(steps));
    }

    /** The name in JSON: the component's own, unless Java reserves it. */
    public static String jsonName(RecordComponent component) {
        JsonProperty renamed = component.getAccessor().getAnnotation(JsonProperty.class);
        return renamed == null ? component.getName() : renamed.value();
    }

    /** The same pointer with another place in its first list. */
    public Pointer at(int index) {
        StringBuilder shifted = new StringBuilder();
        List<Step> moved = new ArrayList<>(steps);
        String[] names = text.substring(1).split("/", -1);
        boolean done = false;
        for (int i = 0; i < moved.size(); i++) {
            if (!done && moved.get(i) instanceof Step.Place) {
                moved.set(i, new Step.Place(index));
                names[i] = String.valueOf(index);
                done = true;
            }
            shifted.append('/').append(names[i]);
        }
        return new Pointer(shifted.toString(), List.copyOf(moved));
    }

    /** What stands there, or null. An empty list and an object without any value count as nothing. */
    public @Nullable Object in(Setup setup) {
        Object value = setup;
        for (Step step : steps) {
            if (value == null) {
                return null;
            }
            if (step instanceof Step.Place place) {
                List<?> list = (List<?>) value;
                value = place.index() < list.size() ? list.get(place.index()) : null;
            } else {
                value = read(((Step.Component) step).accessor(), value);
            }
        }
        return value;
    }

    /** Whether anything stands there. */
    public boolean isIn(Setup setup) {
        return !isNothing(in(setup));
    }

    private static boolean isNothing(@Nullable Object value) {
        if (value == null) {
            return true;
        }
        if (value instanceof List<?> list) {
            return list.isEmpty();
        }
        if (value instanceof Record && value.getClass().getPackage() == Setup.class.getPackage()) {
            return PARTS.get(value.getClass()).values().stream()
                    .allMatch(part -> isNothing(read(part.accessor(), value)));
        }
        return false;
    }

    private static @Nullable Object read(Method accessor, Object owner) {
        try {
            return accessor.invoke(owner);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
