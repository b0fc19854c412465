package org.axlewright.domain.conductor;

import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.jspecify.annotations.Nullable;

/**
 * One circuit to size, checked.
 *
 * @param index place in the request, from 0
 * @param reference opaque text of the sender
 * @param supply what feeds it
 * @param lengthM one way, m
 * @param steady whether the current does not change
 * @param allowedDropShare share of the voltage that may be lost out and back, 0 to 1
 * @param insulationC rating of the insulation, degC
 * @param terminationC rating of the terminals, degC; not below the coolest column
 * @param surroundings air around the cable
 * @param bundled current-carrying conductors that lie together, this circuit's own included
 */
public record CircuitInput(
        int index,
        @Nullable String name,
        @Nullable String reference,
        CircuitSide side,
        Supply supply,
        Controller controller,
        double lengthM,
        Cycle cycle,
        boolean steady,
        double allowedDropShare,
        AmpacityTable table,
        double insulationC,
        double terminationC,
        boolean terminationKnown,
        Surroundings surroundings,
        int bundled,
        SizeSeries sizes) {

    /**
     * What feeds a circuit.
     *
     * @param nominalV V, or null when not known
     * @param fullV highest voltage, at the end of a charge, V; null when not known
     * @param packOhm internal resistance of the pack, ohm; null when not known or when the circuit is not the pack's
     */
    public record Supply(
            @Nullable Double nominalV,
            @Nullable Double fullV,
            @Nullable Double packOhm) {
        public Supply {
            if (nominalV != null) {
                Check.positive(nominalV, "nominalV");
            }
            if (fullV != null) {
                Check.positive(fullV, "fullV");
            }
            if (packOhm != null) {
                Check.positive(packOhm, "packOhm");
            }
        }

        /** The highest voltage known, V; null when none is. */
        public @Nullable Double highestV() {
            return fullV != null ? fullV : nominalV;
        }
    }

    /** Limits of the controller on its two sides, A; null where not known. */
    public record Controller(
            @Nullable Double motorA, @Nullable Double batteryA) {}

    /**
     * Where the cable runs.
     *
     * @param ambientC of the air, degC; null for the location's own
     */
    public record Surroundings(Location location, @Nullable Double ambientC) {}

    public CircuitInput {
        Check.positive(lengthM, "lengthM");
        Check.positive(cycle.peakA(), "peak current");
        Check.within(allowedDropShare, 0, 1, "allowedDropShare");
        Check.within(bundled, 1, Integer.MAX_VALUE, "bundled");
        Check.within(
                Math.min(insulationC, terminationC), table.coolestColumnC(), Double.MAX_VALUE, "rating of the cable");
        Double ambient = surroundings.ambientC();
        if (ambient != null && surroundings.location() == Location.ENGINE_SPACE) {
            throw new InvalidInput("an engine space has its own ambient temperature");
        }
    }

    /** Column of the table by the insulation alone, degC. */
    public double insulationColumnC() {
        return table.columnC(insulationC).orElseThrow();
    }

    /** Column used: insulation and terminals, the lower of the two, degC. The conductor is kept at or below it. */
    public double columnC() {
        return table.columnC(Math.min(insulationC, terminationC)).orElseThrow();
    }

    /** Where it stands in the request. */
    public String pointer() {
        return "/circuits/" + index;
    }

    /** How a message calls it: by its name and the sender's reference. */
    String called() {
        String called = name == null ? "Circuit " + (index + 1) : "\"" + name + "\"";
        return reference == null ? called : called + " (" + reference + ")";
    }
}
