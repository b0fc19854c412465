package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.pack.Sag;
import org.jspecify.annotations.Nullable;

/**
 * The pack behind a drive.
 *
 * @param emfV voltage without load, V: the nominal one
 * @param ohm internal resistance of the whole pack; 0 where it is not known
 * @param limitA the controller's limit on the battery side, A; null where none is known
 */
public record Supply(double emfV, double ohm, @Nullable Double limitA) {
    public Supply {
        positive(emfV, "emfV");
        notNegative(ohm, "ohm");
    }

    /** The most power at the terminals, W: at the controller's limit, and never more than the pack can give. */
    double greatestW() {
        double byPack = Sag.greatestPowerW(emfV, ohm);
        if (limitA == null) {
            return byPack;
        }
        double half = ohm > 0 ? emfV / (2 * ohm) : Double.MAX_VALUE;
        double amperes = Math.min(limitA, half);
        return Math.min(byPack, amperes * Sag.terminalV(emfV, ohm, amperes));
    }

    /** Current at a power within {@link #greatestW}, A. */
    double currentA(double powerW) {
        return Sag.currentA(emfV, ohm, Math.min(powerW, Sag.greatestPowerW(emfV, ohm)));
    }

    /** Voltage at a power within {@link #greatestW}, V. */
    double terminalV(double powerW) {
        return Sag.terminalV(emfV, ohm, currentA(powerW));
    }
}
