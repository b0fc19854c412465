package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.Optional;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.CordAmpacity;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * An extension cord.
 *
 * @param temperatureC of its conductors, degC
 * @param lengthM length one way, m, the current goes out and back; null when only the size is known
 * @param ampacity current it carries for hours as it lies, A
 * @param wound whether it stays on its reel
 */
public record Cord(
        Conductor conductor, double temperatureC, @Nullable Double lengthM, Datum ampacity, boolean wound) {

    /** Temperature that the conductors of a cord without a mark may reach, degC. */
    public static final double UNMARKED_RATING_C = 60;

    public static final Source UNMARKED_RATING =
            Source.published("trade magazine, code question column: cords are 60 degC unless marked");

    /** Share of its rating that a cord wound on a reel carries. */
    static final double WOUND_SHARE = 500.0 / 2300;

    static final Source WOUND = Source.weak("marking of one cord reel: 500 W wound, 2300 W unwound");

    private static final Source OHM = Source.derived("Ohm's law over both conductors");

    private static final Symbol LOOP_RESISTANCE = new Symbol("R", RESISTANCE);
    private static final Symbol MAINS_CURRENT = new Symbol("I_ac", CURRENT);

    private static final Step LOOP = Step.of(
            "R",
            "resistance of the cord, out and back",
            "R = 2·l·r",
            RESISTANCE,
            Source.derived("two conductors in series"),
            new Symbol("l", LENGTH),
            new Symbol("r", RESISTANCE_PER_LENGTH));
    private static final Step DROP =
            Step.of("ΔU", "voltage lost in the cord", "ΔU = I_ac·R", VOLTAGE, OHM, MAINS_CURRENT, LOOP_RESISTANCE);
    private static final Step DROP_SHARE = Step.of(
            "δ",
            "share of the mains voltage lost in the cord",
            "δ = ΔU/U",
            NONE,
            Source.derived("definition"),
            new Symbol("ΔU", VOLTAGE),
            new Symbol("U", VOLTAGE));
    private static final Step HEAT =
            Step.of("P_c", "heat in the cord", "P_c = I_ac²·R", POWER, OHM, MAINS_CURRENT, LOOP_RESISTANCE);

    public Cord {
        Check.within(temperatureC, -100, 300, "temperature of the cord");
        Check.positive(lengthM == null ? 1 : lengthM, "length of the cord");
        Check.positive(ampacity.value(), "ampacity of the cord");
    }

    /**
     * A cord of the table of flexible cords; nothing when the table has no size as thin.
     *
     * @param wound whether it stays on its reel, where it can't cool
     */
    public static Optional<Cord> of(ConductorSize size, double temperatureC, @Nullable Double lengthM, boolean wound) {
        return CordAmpacity.of(size)
                .map(row -> new Cord(
                        Conductor.of(size),
                        temperatureC,
                        lengthM,
                        wound
                                ? new Datum(row.currentA() * WOUND_SHARE, WOUND)
                                : new Datum(row.currentA(), row.source()),
                        wound));
    }

    /** Resistance out and back, ohm; 0 when the length is not known. */
    double loopResistanceOhm(Trace trace) {
        if (lengthM == null) {
            return 0;
        }
        double resistance = conductor.resistanceOhmPerM(temperatureC, trace);
        return trace.note(LOOP, 2 * lengthM * resistance, lengthM, resistance);
    }

    /**
     * What a cord does under current.
     *
     * @param dropV voltage lost, out and back, V
     * @param dropShare of the mains voltage, 0 to 0.5
     * @param heatW heat in the cord, W
     */
    public record Loss(double dropV, double dropShare, double heatW) {}

    static Loss loss(double currentA, double loopResistanceOhm, double voltageV, Trace trace) {
        double dropV = trace.note(DROP, currentA * loopResistanceOhm, currentA, loopResistanceOhm);
        double share = trace.note(DROP_SHARE, dropV / voltageV, dropV, voltageV);
        double heatW = trace.note(HEAT, currentA * currentA * loopResistanceOhm, currentA, loopResistanceOhm);
        return new Loss(dropV, share, heatW);
    }
}
