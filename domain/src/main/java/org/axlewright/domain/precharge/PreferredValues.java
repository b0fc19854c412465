package org.axlewright.domain.precharge;

import java.util.List;
import java.util.OptionalDouble;
import org.axlewright.domain.cable.TableFile;
import org.axlewright.domain.check.Check;

/** Values in which resistors are sold. */
public final class PreferredValues {

    private static final List<Double> E24 = read("/precharge/iec-60063-e24.csv");
    private static final List<Double> POWERS = read("/precharge/resistor-powers.csv");

    private PreferredValues() {}

    /** The largest value of series E24 that is not above a resistance, ohm. Source: IEC 60063. */
    public static double e24AtMost(double ohm) {
        Check.positive(ohm, "ohm");
        // one decade below and above, so that an error of the logarithm can't miss the value
        int decade = (int) Math.floor(Math.log10(ohm));
        double best = 0;
        for (int d = decade - 1; d <= decade + 1; d++) {
            for (double value : E24) {
                double candidate = scaled(value, d);
                if (candidate <= ohm * (1 + 1e-12) && candidate > best) {
                    best = candidate;
                }
            }
        }
        return best;
    }

    /** The smallest usual power rating that is not below a power, W; nothing above the largest. */
    public static OptionalDouble powerAtLeast(double watt) {
        return POWERS.stream()
                .mapToDouble(Double::doubleValue)
                .filter(rating -> rating >= watt)
                .findFirst();
    }

    /** Whole tens are divided by, not multiplied with their inverse, so that 4.7 in the decade of tenths is 0.47. */
    private static double scaled(double value, int decade) {
        double tens = Math.round(value * 10);
        int power = decade - 1;
        return power >= 0 ? tens * Math.pow(10, power) : tens / Math.pow(10, -power);
    }

    private static List<Double> read(String resource) {
        return TableFile.read(resource).rows().stream()
                .map(row -> Double.valueOf(row[0]))
                .sorted()
                .toList();
    }
}
