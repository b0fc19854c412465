package org.axlewright.api.whatif;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.whatif.Crossings.Side;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * What a result shall be.
 *
 * @param watched where
 * @param side equal, at most or at least
 * @param level a quantity, money or a number
 */
record Goal(Watched watched, Side side, Object level) {

    /** Two values told one by one count as equal within this share of them: the sixteenth digit is noise. */
    private static final double SAME = 1e-9;

    /** A target, as sent. */
    @Schema(name = "Target", description = "What a result shall be: give one of `equals`, `atMost`, `atLeast`.")
    record Sent(
            @Schema(
                    description =
                            "A single number in `result`, RFC 6901; for `assessment` the first step names the calculation.",
                    example = "/frontAxle/share")
            String pointer,

            @Schema(description = "Exactly this: a quantity, a plain number or an amount of money, as the result is.")
            @Nullable
            JsonNode equals,

            @Schema(description = "This or less.") @Nullable JsonNode atMost,

            @Schema(description = "This or more.") @Nullable JsonNode atLeast) {}

    /** Null, and faults, when it is no target. */
    static @Nullable Goal read(
            @Nullable Sent sent, Probe.@Nullable Question question, Axis.Reader reader, List<Fault> faults) {
        if (sent == null) {
            faults.add(Fault.missing("/target"));
            return null;
        }
        List<String> given = new ArrayList<>();
        if (sent.equals() != null) {
            given.add("equals");
        }
        if (sent.atMost() != null) {
            given.add("atMost");
        }
        if (sent.atLeast() != null) {
            given.add("atLeast");
        }
        if (given.isEmpty()) {
            faults.add(Fault.missing("/target/equals"));
        }
        for (int i = 1; i < given.size(); i++) {
            faults.add(Fault.contradiction("/target/" + given.get(i), "Give one target: equals, atMost or atLeast"));
        }
        if (sent.pointer() == null) {
            faults.add(Fault.missing("/target/pointer"));
        }
        if (question == null || sent.pointer() == null || given.size() != 1) {
            return null;
        }
        Watched watched;
        try {
            watched = Watched.of(sent.pointer(), question);
        } catch (Place.Unknown unknown) {
            faults.add(new Fault(
                    "/target/pointer", "unknown-pointer", String.valueOf(unknown.getMessage()), sent.pointer(), null));
            return null;
        }
        if (!watched.isNumber()) {
            faults.add(new Fault(
                    "/target/pointer",
                    "wrong-type",
                    sent.pointer() + " is no number that a target could be set for",
                    sent.pointer(),
                    null));
            return null;
        }
        JsonNode level = sent.equals() != null ? sent.equals() : sent.atMost() != null ? sent.atMost() : sent.atLeast();
        Object value = level == null ? null : reader.value(watched.place(), level, "/target/" + given.get(0));
        if (value == null) {
            return null;
        }
        if (Scale.of(value) == null) {
            faults.add(new Fault("/target/" + given.get(0), "wrong-type", "Must be an amount of money", null, null));
            return null;
        }
        Side side = sent.equals() != null ? Side.EITHER : sent.atMost() != null ? Side.AT_MOST : Side.AT_LEAST;
        return new Goal(watched, side, value);
    }

    /** The number aimed at, in the unit in which it was sent. */
    double number() {
        return ((Number) Plain.in(Plain.unit(level), level)).doubleValue();
    }

    /** The number of a result in that unit; NaN for none. */
    double number(@Nullable Object result) {
        return result == null ? Double.NaN : ((Number) Plain.in(Plain.unit(level), result)).doubleValue();
    }

    boolean isMet(@Nullable Object result) {
        double value = number(result);
        return side == Side.EITHER
                ? Math.abs(value - number()) <= SAME * Math.max(Math.abs(value), Math.abs(number()))
                : side.admits(value, number());
    }
}
