package org.axlewright.domain.pack;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;

/**
 * A pack under load: terminal voltage V = E - I r, power P = V I. Discharge is positive, charge negative. Source: direct-current circuit
 * theory; holds for the resistance over the time it was measured for.
 */
public final class Sag {

    private Sag() {}

    /** The most power the pack can give, W: E²/(4 r), at half its voltage; infinite without resistance. */
    public static double greatestPowerW(double emfV, double resistanceOhm) {
        return emfV * emfV / (4 * Check.notNegative(resistanceOhm, "resistanceOhm"));
    }

    /**
     * Current at which the pack gives that power at its terminals, A: the smaller root of r I² - E I + P = 0, written so that it also holds
     * without resistance.
     *
     * @param powerW at the terminals, W, at most {@link #greatestPowerW}; negative while charging
     */
    public static double currentA(double emfV, double resistanceOhm, double powerW) {
        Check.positive(emfV, "emfV");
        if (!(powerW <= greatestPowerW(emfV, resistanceOhm))) {
            throw new InvalidInput("the pack can't give " + powerW + " W");
        }
        // at the very limit rounding can leave a root of a little less than nothing
        double discriminant = Math.max(0, emfV * emfV - 4 * resistanceOhm * powerW);
        return 2 * powerW / (emfV + Math.sqrt(discriminant));
    }

    /** Terminal voltage, V. */
    public static double terminalV(double emfV, double resistanceOhm, double currentA) {
        return emfV - currentA * resistanceOhm;
    }

    /**
     * Resistance of the pack from that of a part of it, ohm.
     *
     * @param partOhm resistance of one cell, block or the whole pack
     * @param partsInSeries cells or blocks in series; 1 for the pack
     * @param stringsInParallel strings; 1 for the pack
     */
    public static double packOhm(double partOhm, int partsInSeries, int stringsInParallel) {
        return partOhm * partsInSeries / stringsInParallel;
    }
}
