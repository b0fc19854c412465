package org.axlewright.api.whatif;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.axlewright.api.calculation.Pointer;
import org.axlewright.api.section.RatedHours;
import org.axlewright.api.section.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * A place in a document of records, by its RFC 6901 pointer: reads what stands there, and makes the same document with another value
 * there. A setup and a result are such documents.
 */
final class Place {

    private final String pointer;
    private final List<Step> steps;
    private final Type type;

    /**
     * One step down.
     *
     * @param name of a component, or digits
     * @param shape of the record that is stepped into; null where only the value itself tells
     * @param index of the component in the record, or of the entry in the list
     */
    private record Step(String name, @Nullable Shape shape, int index) {}

    /** There is no such place. The message is for people. */
    static final class Unknown extends Exception {
        private static final long serialVersionUID = 1L;

        Unknown(String message) {
            super(message);
        }
    }

    /** A record, taken apart once: reflection is slow. */
    private record Shape(
            List<String> names,
            List<Type> types,
            List<Method> accessors,
            Constructor<?> constructor,
            List<@Nullable Object> nothing) {

        int indexOf(String name) {
            return names.indexOf(name);
        }
    }

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            List<String> names = new ArrayList<>();
            List<Type> types = new ArrayList<>();
            List<Method> accessors = new ArrayList<>();
            List<@Nullable Object> nothing = new ArrayList<>();
            List<Class<?>> parameters = new ArrayList<>();
            for (RecordComponent component : type.getRecordComponents()) {
                names.add(Pointer.jsonName(component));
                types.add(component.getGenericType());
                Method accessor = component.getAccessor();
                accessor.setAccessible(true);
                accessors.add(accessor);
                parameters.add(component.getType());
                nothing.add(component.getType() == double.class ? (Object) Double.NaN : null);
            }
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(parameters.toArray(Class<?>[]::new));
                constructor.setAccessible(true);
                return new Shape(names, types, accessors, constructor, nothing);
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
    };

    private Place(String pointer, List<Step> steps, Type type) {
        this.pointer = pointer;
        this.steps = steps;
        this.type = type;
    }

    /**
     * Reads a pointer against the records.
     *
     * @param what the document is called in the message
     * @throws Unknown when the records have no such place
     */
    static Place of(String pointer, Type root, String what) throws Unknown {
        if (!pointer.startsWith("/")) {
            throw new Unknown("\"" + pointer + "\" is no JSON pointer (RFC 6901); it begins with /");
        }
        List<Step> steps = new ArrayList<>();
        Type type = root;
        for (String written : pointer.substring(1).split("/", -1)) {
            String name = written.replace("~1", "/").replace("~0", "~");
            if (type instanceof ParameterizedType list && List.class.isAssignableFrom((Class<?>) list.getRawType())) {
                steps.add(new Step(name, null, index(name, pointer)));
                type = list.getActualTypeArguments()[0];
            } else if (type instanceof Class<?> record && record.isRecord() && !isValue(record)) {
                Shape shape = SHAPES.get(record);
                int index = shape.indexOf(name);
                if (index < 0) {
                    throw new Unknown("The " + what + " has no " + pointer + "; known beside \"" + name + "\": "
                            + String.join(", ", shape.names()));
                }
                steps.add(new Step(name, shape, index));
                type = shape.types().get(index);
            } else if (type == Object.class || type instanceof ParameterizedType) {
                steps.add(new Step(name, null, -1));
                type = Object.class;
            } else {
                throw new Unknown("The " + what + " has no " + pointer
                        + "; there is nothing within the value before \"/" + written + "\"");
            }
        }
        return new Place(pointer, List.copyOf(steps), type);
    }

    /** Sent as one plain value or as a quantity: taken whole. */
    private static boolean isValue(Class<?> type) {
        return type == RatedHours.class || type == Ratio.class;
    }

    private static int index(String name, String pointer) throws Unknown {
        if (!name.matches("0|[1-9]\\d{0,5}")) {
            throw new Unknown(pointer + " needs the number of an entry, counted from 0, in place of \"" + name + "\"");
        }
        return Integer.parseInt(name);
    }

    /** What the records say of the value there. */
    Type type() {
        return type;
    }

    /** Its class; {@link Object} where only the value tells. */
    Class<?> rawType() {
        Type raw = type instanceof ParameterizedType generic ? generic.getRawType() : type;
        return raw instanceof Class<?> known ? known : Object.class;
    }

    /** Whether one of the two lies within the other, or they are the same. */
    boolean overlaps(Place other) {
        return (pointer + "/").startsWith(other.pointer + "/") || (other.pointer + "/").startsWith(pointer + "/");
    }

    /** What stands there, or null. */
    @Nullable
    Object in(@Nullable Object document) {
        Object value = document;
        for (Step step : steps) {
            if (value == null) {
                return null;
            }
            if (value instanceof List<?> list) {
                int index = step.index() >= 0 ? step.index() : number(step.name());
                value = index >= 0 && index < list.size() ? list.get(index) : null;
            } else if (value instanceof Map<?, ?> map) {
                value = map.get(step.name());
            } else if (step.shape() != null) {
                value = read(step.shape().accessors().get(step.index()), value);
            } else if (value.getClass().isRecord()) {
                Shape shape = SHAPES.get(value.getClass());
                int index = shape.indexOf(step.name());
                value = index < 0 ? null : read(shape.accessors().get(index), value);
            } else {
                return null;
            }
        }
        return value;
    }

    private static int number(String name) {
        return name.matches("\\d{1,6}") ? Integer.parseInt(name) : -1;
    }

    /**
     * Whether a value can be put there: every list on the way has the entry that is meant.
     *
     * @throws Unknown when one has not
     */
    void reach(Object document) throws Unknown {
        Object value = document;
        StringBuilder way = new StringBuilder();
        for (Step step : steps) {
            if (step.shape() == null) {
                int size = value instanceof List<?> list ? list.size() : 0;
                if (step.index() >= size) {
                    throw new Unknown(way + " has " + size + " entries, " + pointer + " needs number " + step.index());
                }
                value = value == null ? null : ((List<?>) value).get(step.index());
            } else {
                value = value == null ? null : read(step.shape().accessors().get(step.index()), value);
            }
            way.append('/').append(step.name());
        }
    }

    /** The same document with this value at the place; what is not there on the way is made. */
    Object with(Object document, Object value) {
        return rebuilt(document, 0, value);
    }

    private Object rebuilt(@Nullable Object owner, int depth, Object value) {
        if (depth == steps.size()) {
            return value;
        }
        Step step = steps.get(depth);
        Shape shape = step.shape();
        if (shape == null) {
            List<@Nullable Object> entries = new ArrayList<>((List<?>) java.util.Objects.requireNonNull(owner));
            entries.set(step.index(), rebuilt(entries.get(step.index()), depth + 1, value));
            return entries;
        }
        @Nullable Object[] parts = shape.nothing().toArray();
        if (owner != null) {
            for (int i = 0; i < parts.length; i++) {
                parts[i] = read(shape.accessors().get(i), owner);
            }
        }
        parts[step.index()] = rebuilt(parts[step.index()], depth + 1, value);
        try {
            return shape.constructor().newInstance(parts);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
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
        return pointer;
    }
}
