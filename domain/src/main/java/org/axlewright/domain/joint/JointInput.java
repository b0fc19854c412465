package org.axlewright.domain.joint;

import java.util.List;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.jspecify.annotations.Nullable;

/**
 * One joint as measured, checked.
 *
 * @param index place in the request, from 0
 * @param reading millivolts at amperes, or a resistance
 * @param load current it carries; empty when not known
 * @param ambientC around it, degC; null when no temperature was measured
 * @param ratingC lowest temperature rating of terminal and insulation there, degC
 * @param conductor of the cable that ends there; null when not known
 * @param probesM length of current path between the probes, m; null when not known
 * @param cableM one-way length of that cable, m; null when not known
 */
public record JointInput(
        int index,
        @Nullable String name,
        @Nullable String reference,
        Reading reading,
        List<Stretch> load,
        @Nullable Double ambientC,
        double ratingC,
        @Nullable Conductor conductor,
        @Nullable Double probesM,
        @Nullable Double cableM) {

    /**
     * What was measured.
     *
     * @param dropV across the joint, V; null when the resistance was sent
     * @param currentA at which drop and temperature were read, A; null when neither was
     * @param resistanceOhm ohm; null when the drop was sent
     * @param temperatureC of the joint after it settled at that current, degC; null when not read
     */
    public record Reading(
            @Nullable Double dropV,
            @Nullable Double currentA,
            @Nullable Double resistanceOhm,
            @Nullable Double temperatureC) {
        public Reading {
            if (resistanceOhm == null && (dropV == null || currentA == null)) {
                throw new InvalidInput("a joint is known by its resistance or by drop and current");
            }
            if (dropV != null) {
                Check.notNegative(dropV, "dropV");
            }
            if (currentA != null) {
                Check.positive(currentA, "currentA");
            }
            if (resistanceOhm != null) {
                Check.notNegative(resistanceOhm, "resistanceOhm");
            }
        }
    }

    /** Constant current for a time: ampere and second. */
    public record Stretch(double currentA, double durationS) {
        public Stretch {
            Check.notNegative(currentA, "currentA");
            Check.positive(durationS, "durationS");
        }
    }

    public JointInput {
        load = List.copyOf(load);
        Check.finite(ratingC, "ratingC");
    }

    public String pointer() {
        return "/joints/" + index;
    }

    String called() {
        String called = name == null ? "Joint " + (index + 1) : "\"" + name + "\"";
        return reference == null ? called : called + " (" + reference + ")";
    }
}
