package org.axlewright.domain.conductor;

import java.util.List;
import org.axlewright.domain.cable.Conductor;
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
 * @param stated size that is to be judged; null when it is only to be chosen
 * @param initialC temperature of the conductor before the peak, degC; null for that of the repeated cycle
 * @param flat the pack when it gives least; null when not known
 * @param breakers what else can open the circuit, as far as it is known
 * @param route current of a route that flows here too; null when none does
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
        SizeSeries sizes,
        @Nullable Stated stated,
        Insulation insulation,
        @Nullable Double initialC,
        @Nullable Flat flat,
        List<Breaker> breakers,
        FuseSent fuse,
        @Nullable Cycle route) {

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

    /** A size that somebody has chosen, and how many runs of it. */
    public record Stated(Conductor conductor, int runs) {
        public Stated {
            Check.within(runs, 1, Integer.MAX_VALUE, "runs");
        }
    }

    /**
     * Around the conductor: wall thickness or diameter outside, m; one of them.
     *
     * @param wallM m
     * @param outsideM m
     */
    public record Insulation(
            @Nullable Double wallM, @Nullable Double outsideM) {
        public Insulation {
            if ((wallM == null) == (outsideM == null)) {
                throw new InvalidInput("insulation is known by its wall or its diameter");
            }
        }

        /** Thickness on a conductor, m; null when the strand does not fit into the diameter outside. */
        @Nullable
        Double wallM(Conductor conductor) {
            if (outsideM == null) {
                return wallM;
            }
            double wall = (outsideM - CableHeat.strandM(conductor.areaM2())) / 2;
            return wall >= LEAST_WALL_M ? (Double) wall : null;
        }
    }

    /** Thinner insulation than any cable has, m. Common practice, no source. */
    private static final double LEAST_WALL_M = 0.1e-3;

    /**
     * The pack flat and cold.
     *
     * @param cutOffV V
     * @param coldFactor resistance then over that stated
     */
    public record Flat(double cutOffV, double coldFactor) {
        public Flat {
            Check.positive(cutOffV, "cutOffV");
            Check.positive(coldFactor, "coldFactor");
        }
    }

    /**
     * A contactor or the battery management.
     *
     * @param pointer where its rating stands in the request
     * @param carriesA what it carries, A
     * @param breaksA most it may break, A; null when not known
     * @param opensAfterS time after which it opens on a fault, s; null when not known
     */
    public record Breaker(
            String name,
            String pointer,
            double carriesA,
            @Nullable Double breaksA,
            @Nullable Double opensAfterS) {
        public Breaker {
            Check.positive(carriesA, "carriesA");
            if (breaksA != null) {
                Check.positive(breaksA, "breaksA");
            }
            if (opensAfterS != null) {
                Check.positive(opensAfterS, "opensAfterS");
            }
        }
    }

    public CircuitInput {
        breakers = List.copyOf(breakers);
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
