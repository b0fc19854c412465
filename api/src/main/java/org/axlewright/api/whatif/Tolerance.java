package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.whatif.Uncertainty.Distribution;
import org.axlewright.domain.whatif.Uncertainty.Input;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An input that is known within limits only.
 *
 * @param place of the quantity or the number
 * @param scale on which it lies
 */
record Tolerance(Place place, Scale scale, Input input) {

    private static final String FIELD = "plusMinus";

    /** How far draws are looked for, in half-widths: a normal one leaves its limits. */
    private static final double REACH = 3;

    /** As sent. */
    @Schema(name = "ToleranceOf", description = "Limits of one input.")
    record Sent(
            @Schema(description = "A quantity or a plain number in `input`, RFC 6901.", example = "/drive/efficiency")
            String pointer,

            @Schema(description = "Half-width of its limits, in the unit that stands there.")
            Double plusMinus,

            @Schema(
                    description =
                            "How it is spread within them: `rectangular` (anywhere alike, the default), `triangular`, or `normal` (the limits are two standard uncertainties).")
            @Nullable
            Distribution distribution) {}

    /** Takes {@code plusMinus} out of every quantity of a tree; a fault for every one that is no half-width. */
    static List<Sent> takenFrom(JsonNode tree, List<Fault> faults) {
        List<Sent> taken = new ArrayList<>();
        take(tree, "", taken, faults);
        return taken;
    }

    private static void take(JsonNode node, String pointer, List<Sent> taken, List<Fault> faults) {
        if (node instanceof ObjectNode object) {
            if (object.has(FIELD) && object.has("value") && object.has("unit")) {
                JsonNode sent = object.remove(FIELD);
                if (sent.isNumber()) {
                    taken.add(new Sent(pointer, sent.asDouble(), null));
                } else {
                    faults.add(new Fault(
                            "/input" + pointer + "/" + FIELD,
                            "wrong-type",
                            "Must be a number, in the unit of the value",
                            null,
                            null));
                }
            }
            object.properties()
                    .forEach(entry -> take(
                            entry.getValue(),
                            pointer + "/" + entry.getKey().replace("~", "~0").replace("/", "~1"),
                            taken,
                            faults));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                take(node.get(i), pointer + "/" + i, taken, faults);
            }
        }
    }

    /** Null, and faults, when it is none. */
    static @Nullable Tolerance read(@Nullable Sent sent, String at, Setup input, Axis.Reader reader) {
        List<Fault> faults = reader.faults();
        if (sent == null) {
            faults.add(Fault.missing(at));
            return null;
        }
        if (sent.plusMinus() == null) {
            faults.add(Fault.missing(at + "/" + FIELD));
        }
        Place place = reader.place(sent.pointer(), at + "/pointer");
        if (place == null || sent.plusMinus() == null) {
            return null;
        }
        if (!(sent.plusMinus() > 0 && sent.plusMinus() < 1e15)) {
            faults.add(new Fault(at + "/" + FIELD, "out-of-range", "Must be above 0", sent.plusMinus(), 0));
            return null;
        }
        Object value = place.in(input);
        Scale scale = value == null ? null : Scale.of(value);
        if (value == null || scale == null || scale.whole() || Double.isNaN(scale.at(value))) {
            faults.add(new Fault(
                    at + "/pointer",
                    "wrong-type",
                    value == null
                            ? place + " is not in the input; a tolerance needs a value"
                            : place + " is no quantity and no plain number that could have a tolerance",
                    sent.pointer(),
                    null));
            return null;
        }
        Distribution distribution = sent.distribution() == null ? Distribution.RECTANGULAR : sent.distribution();
        return new Tolerance(place, scale, new Input(scale.at(value), sent.plusMinus(), distribution));
    }

    /** The axis that its draws stay on. */
    Axis axis() {
        double reach = REACH * input.halfWidth();
        return new Axis(place, List.of(scale.with(input.value() - reach), scale.with(input.value() + reach)), scale);
    }
}
