package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.UnreadableBody;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A place of the input and the values it gets, in order.
 *
 * @param place where
 * @param values as the place takes them
 * @param scale on which they lie; null when they were told one by one or have no numbers
 */
record Axis(Place place, List<Object> values, @Nullable Scale scale) {

    /** Most values of one axis that are told one by one. */
    static final int MOST_TOLD = 2_000;

    /** Far above every range of a section, and far below where steps would overflow. */
    private static final double LARGEST = 1e15;

    /** What varies, as sent. */
    @Schema(
            name = "Varied",
            description =
                    "What varies and how: from one value to another in even steps, or the values one by one. Give it one way.")
    record Sent(
            @Schema(
                    description =
                            "A place in `input`, RFC 6901: a quantity (`/items/0/position/x`), its number (`/items/0/position/x/value`), a plain number, a text, or any part. It need not be there yet; entries of lists must be.",
                    example = "/items/0/position/x")
            String pointer,

            @Schema(
                    description =
                            "The first value, as the place takes it: a quantity with its unit, a plain number, or an amount of money.")
            @Nullable
            JsonNode from,

            @Schema(description = "The last value; its unit may be another of the same dimension.") @Nullable
            JsonNode to,

            @Schema(
                    description =
                            "How many values, both ends counted, at least 2. Left out for whole numbers: every one of them.")
            @Nullable
            Integer steps,

            @Schema(
                    description =
                            "The values one by one, in place of `from`, `to` and `steps`: anything the place takes, such as wire or tyre sizes; at most 2000.")
            @Nullable
            List<JsonNode> values) {}

    /** Reads axes against the input, and takes down everything that is wrong. */
    record Reader(JsonMapper json, Setup input, int mostPoints, List<Fault> faults) {

        /** Null when something is wrong. */
        @Nullable
        Axis read(@Nullable Sent sent, String at) {
            if (sent == null) {
                faults.add(Fault.missing(at));
                return null;
            }
            Place place = place(sent.pointer(), at + "/pointer");
            boolean evenly = sent.from() != null || sent.to() != null || sent.steps() != null;
            if (sent.values() != null && evenly) {
                faults.add(Fault.contradiction(
                        at + "/values", "Give the values one way: one by one, or from, to and steps"));
                return null;
            }
            if (sent.values() != null) {
                return place == null ? null : told(place, sent.values(), at + "/values");
            }
            if (!evenly) {
                faults.add(Fault.missing(at + "/from"));
                faults.add(Fault.missing(at + "/to"));
                return null;
            }
            return evenly(place, sent, at);
        }

        /** Null, and a fault, when the input has no such place. */
        @Nullable
        Place place(@Nullable String pointer, String at) {
            if (pointer == null) {
                faults.add(Fault.missing(at));
                return null;
            }
            try {
                Place place = Place.of(pointer, Setup.class, "input");
                place.reach(input);
                return place;
            } catch (Place.Unknown unknown) {
                faults.add(new Fault(at, "unknown-pointer", String.valueOf(unknown.getMessage()), pointer, null));
                return null;
            }
        }

        @Nullable
        Axis told(Place place, List<JsonNode> sent, String at) {
            if (sent.isEmpty() || sent.size() > MOST_TOLD) {
                faults.add(size(at, sent.size(), 1, MOST_TOLD));
                return null;
            }
            List<Object> values = new ArrayList<>();
            for (int i = 0; i < sent.size(); i++) {
                Object value = value(place, sent.get(i), at + "/" + i);
                if (value != null) {
                    values.add(value);
                }
            }
            return values.size() < sent.size() ? null : new Axis(place, List.copyOf(values), null);
        }

        private @Nullable Axis evenly(@Nullable Place place, Sent sent, String at) {
            if (sent.from() == null) {
                faults.add(Fault.missing(at + "/from"));
            }
            if (sent.to() == null) {
                faults.add(Fault.missing(at + "/to"));
            }
            Integer steps = sent.steps();
            if (steps != null && (steps < 2 || steps > mostPoints)) {
                faults.add(beyond(at + "/steps", steps, 2, mostPoints));
                steps = null;
            }
            if (place == null || sent.from() == null || sent.to() == null) {
                return null;
            }
            Ends ends = ends(place, sent.from(), at + "/from", sent.to(), at + "/to");
            if (ends == null) {
                return null;
            }
            Scale scale = ends.scale();
            if (sent.steps() == null && scale.whole()) {
                return every(place, ends, at + "/to");
            }
            double from = scale.at(ends.from());
            double to = scale.at(ends.to());
            if (steps == null) {
                if (sent.steps() == null) {
                    faults.add(Fault.missing(at + "/steps"));
                }
                return null;
            }
            if (scale.whole() && (long) (to - from) % (steps - 1) != 0) {
                faults.add(new Fault(
                        at + "/steps",
                        "contradiction",
                        steps + " steps from " + (long) from + " to " + (long) to
                                + " don't land on whole numbers; leave steps out for every whole number",
                        steps,
                        null));
                return null;
            }
            List<Object> values = new ArrayList<>(steps);
            for (int i = 0; i < steps; i++) {
                values.add(scale.with(i == steps - 1 ? to : from + i * (to - from) / (steps - 1)));
            }
            return new Axis(place, values, scale);
        }

        /** Two ends on one scale, the lower first. */
        record Ends(Object from, Object to, Scale scale) {}

        /** Null, and faults, when they are not two numbers that the place takes. */
        @Nullable
        Ends ends(Place place, JsonNode lower, String atLower, JsonNode upper, String atUpper) {
            Object from = value(place, lower, atLower);
            Object to = value(place, upper, atUpper);
            if (from == null || to == null) {
                return null;
            }
            Scale scale = Scale.of(from);
            if (scale == null || Scale.of(to) == null) {
                faults.add(new Fault(
                        scale == null ? atLower : atUpper,
                        "wrong-type",
                        place + " takes no number that could go in steps; give the values one by one",
                        null,
                        null));
                return null;
            }
            if (from instanceof Money here
                    && to instanceof Money there
                    && !here.currency().equals(there.currency())) {
                faults.add(Fault.contradiction(atUpper, "Both ends must be of one currency"));
                return null;
            }
            if (Math.max(Math.abs(scale.at(from)), Math.abs(scale.at(to))) > LARGEST) {
                faults.add(new Fault(atUpper, "out-of-range", "No range reaches beyond " + LARGEST, to, LARGEST));
                return null;
            }
            if (!(scale.at(from) < scale.at(to))) {
                faults.add(new Fault(atUpper, "contradiction", "The upper end must lie above the lower one", to, from));
                return null;
            }
            return new Ends(from, to, scale);
        }

        /** Every whole number between the ends; null, and a fault, when they are too many. */
        @Nullable
        Axis every(Place place, Ends ends, String at) {
            long count = (long) ends.scale().at(ends.to()) - (long) ends.scale().at(ends.from()) + 1;
            if (count > mostPoints) {
                faults.add(new Fault(
                        at, "too-many", "Would be " + count + " values; at most " + mostPoints, count, mostPoints));
                return null;
            }
            List<Object> values = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                values.add(ends.scale().with(ends.scale().at(ends.from()) + i));
            }
            return new Axis(place, values, ends.scale());
        }

        /** The value as the place takes it; null, and a fault, when it does not. */
        @Nullable
        Object value(Place place, JsonNode sent, String at) {
            boolean quantity = Quantity.class.isAssignableFrom(place.rawType());
            if (quantity && sent.isNumber()) {
                faults.add(new Fault(
                        at,
                        "wrong-type",
                        place + " is a quantity: send {value, unit}, or point at its number " + place + "/value",
                        null,
                        null));
                return null;
            }
            try {
                JavaType type = json.getTypeFactory().constructType(place.type());
                Object value = json.readerFor(type).readValue(sent);
                if (value == null) {
                    throw new IllegalStateException("null was read from " + sent);
                }
                return quantity ? complete((Quantity) value, at) : value;
            } catch (JacksonException unreadable) {
                Fault fault = UnreadableBody.fault(unreadable);
                faults.add(
                        new Fault(at + fault.pointer(), fault.code(), fault.message(), fault.actual(), fault.limit()));
                return null;
            }
        }

        private @Nullable Object complete(Quantity quantity, String at) {
            if (quantity.unit() == null) {
                faults.add(Fault.missing(at + "/unit"));
            }
            if (Double.isNaN(quantity.value())) {
                faults.add(Fault.missing(at + "/value"));
            }
            return quantity.unit() == null || Double.isNaN(quantity.value()) ? null : quantity;
        }
    }

    static Fault size(String at, int entries, int least, int most) {
        boolean few = entries < least;
        return new Fault(
                at,
                few ? "too-few" : "too-many",
                "Must have at " + (few ? "least " + least : "most " + most) + " entries, has " + entries,
                entries,
                few ? least : most);
    }

    static Fault beyond(String at, long actual, long least, long most) {
        boolean below = actual < least;
        return new Fault(
                at,
                "out-of-range",
                "Must be at " + (below ? "least " + least : "most " + most) + ", was " + actual,
                actual,
                below ? least : most);
    }

    /** Unit in which the values are shown; null when they have none. */
    @Nullable
    Object unit() {
        return scale != null ? scale.unit() : Plain.unit(values.get(0));
    }

    /** Values whose form decides the form of all: the two ends of an even axis, else every one. */
    List<Object> extremes() {
        return scale == null ? values : List.of(values.get(0), values.get(values.size() - 1));
    }

    /** Whether every value fills the place and nothing beside it, so that what is missing is missing for all. */
    boolean leaf() {
        return scale != null || values.stream().noneMatch(value -> value instanceof List || isSection(value));
    }

    private static boolean isSection(Object value) {
        return value.getClass().getPackage() == Setup.class.getPackage() && Scale.of(value) == null;
    }

    /** What several axes of one request may not do: reach into each other. */
    static List<Fault> overlaps(List<Axis> axes, String at) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 1; i < axes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (axes.get(i).place().overlaps(axes.get(j).place())) {
                    faults.add(Fault.contradiction(
                            at + "/" + i + "/pointer",
                            "Varies the same place as " + axes.get(j).place()));
                }
            }
        }
        return faults;
    }
}
