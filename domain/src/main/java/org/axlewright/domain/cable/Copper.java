package org.axlewright.domain.cable;

import static org.axlewright.domain.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** What copper does: resistivity and its rise with temperature. Direct current, copper at or near 100 % IACS. */
public final class Copper {

    /** Resistivity at 20 degrees Celsius, ohm m: 1/58 ohm mm2/m. Source: International Annealed Copper Standard, NBS Handbook 100. */
    public static final double RESISTIVITY_IACS_20 = 1e-6 / 58;

    /** Temperature at which the resistance of copper would vanish, degC below zero. Source: IEC 60949, read in a reprint [weak]. */
    public static final double INFERRED_ZERO_IEC_60949 = 234.5;

    /** Heat taken up by volume, J/(m3 K). Source: IEC 60949 Table 1, recalled [from memory]. */
    public static final double VOLUMETRIC_HEAT_IEC_60949 = 3.45e6;

    static final Source TEMPERATURE_LAW =
            Source.weak("IEC 60949, inferred zero of copper at -234.5 degC, read in a reprint");

    private static final Step AT_TEMPERATURE = Step.of(
            "r",
            "resistance of the conductor for its length, at its temperature",
            "r = r1·(234.5 + T)/(234.5 + T1)",
            RESISTANCE_PER_LENGTH,
            TEMPERATURE_LAW,
            new Symbol("r1", RESISTANCE_PER_LENGTH),
            new Symbol("T", TEMPERATURE),
            new Symbol("T1", TEMPERATURE));

    private Copper() {}

    /** Resistance at one temperature over resistance at another, both degC above {@code -234.5}; agrees with 0.00393 /K within 0.1 %. */
    public static double ratio(double temperatureC, double referenceC) {
        return (INFERRED_ZERO_IEC_60949 + temperatureC) / (INFERRED_ZERO_IEC_60949 + referenceC);
    }

    /** Change of that ratio by kelvin. */
    public static double ratioPerK(double referenceC) {
        return 1 / (INFERRED_ZERO_IEC_60949 + referenceC);
    }

    /** Resistivity, ohm m, at a temperature in degC. */
    public static double resistivityOhmM(double temperatureC) {
        return RESISTIVITY_IACS_20 * ratio(temperatureC, 20);
    }

    /** A resistance per length, ohm/m, brought from one temperature to another, degC. */
    public static double atTemperature(double resistanceOhmPerM, double referenceC, double temperatureC, Trace trace) {
        return trace.note(
                AT_TEMPERATURE,
                resistanceOhmPerM * ratio(temperatureC, referenceC),
                resistanceOhmPerM,
                temperatureC,
                referenceC);
    }
}
