package org.axlewright.domain.precharge;

import java.util.Set;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.pack.Chemistry;
import org.jspecify.annotations.Nullable;

/**
 * A precharge path, checked.
 *
 * @param cells in series
 * @param capacitanceF of everything between the battery terminals, F; null when not known
 * @param measured reading that tells the capacitance; null when it was sent or is not known
 * @param part what stands in the path
 * @param resistanceOhm of the part, ohm; null when it is to be chosen
 * @param powerRatingW power it may take for good, W
 * @param pulseRatingJ energy it may take at once, J
 * @param closingShare share of the full-charge voltage at which the contactor closes, above 0, below 1
 * @param timeoutS after which the path is opened or the contactor closed, s; null when it can't be told
 * @param timeoutSent whether the timeout was stated
 * @param currentLimitA largest current of the path, A
 * @param attempts how often it is repeated; null when not known
 * @param held load that draws while the capacitor fills; null for none
 * @param closers what can close the contactor; empty when not said
 * @param coil of the contactor; null when not known
 */
public record PrechargeInput(
        Chemistry chemistry,
        int cells,
        @Nullable Double capacitanceF,
        @Nullable Reading measured,
        PrechargePart part,
        @Nullable Double resistanceOhm,
        @Nullable Double powerRatingW,
        @Nullable Double pulseRatingJ,
        double closingShare,
        @Nullable Double timeoutS,
        boolean timeoutSent,
        @Nullable Double currentLimitA,
        @Nullable Attempts attempts,
        @Nullable Held held,
        Set<Closer> closers,
        @Nullable Coil coil) {

    /**
     * A reading on the capacitor while it fills from empty.
     *
     * @param resistanceOhm in the path, ohm
     * @param timeS from the start, s
     * @param share of the final voltage reached then, above 0, below 1
     */
    public record Reading(double resistanceOhm, double timeS, double share) {
        public Reading {
            Check.positive(resistanceOhm, "resistanceOhm");
            Check.positive(timeS, "timeS");
            Check.within(share, 1e-6, 1 - 1e-9, "share");
        }
    }

    /** So many precharges in so many seconds. */
    public record Attempts(int count, double periodS) {
        public Attempts {
            Check.within(count, 1, Integer.MAX_VALUE, "count");
            Check.positive(periodS, "periodS");
        }
    }

    /** A load that draws while the capacitor fills: constant power, W, or resistance, ohm; one of them. */
    public record Held(@Nullable Double powerW, @Nullable Double resistanceOhm) {
        public Held {
            if ((powerW == null) == (resistanceOhm == null)) {
                throw new InvalidInput("a load is a power or a resistance");
            }
            Check.positive(powerW != null ? powerW : resistanceOhm == null ? Double.NaN : resistanceOhm, "load");
        }
    }

    /**
     * The coil of the contactor.
     *
     * @param inductanceH H
     * @param currentA steady, A
     * @param resistanceOhm ohm; null when only the current is known and the supply is not
     * @param supplyV V; null when not known
     * @param openingS time in which the switch interrupts the current, s; null when not known
     * @param clampV voltage of the suppressor across the coil, V; null without suppressor or when not known
     */
    public record Coil(
            double inductanceH,
            double currentA,
            @Nullable Double resistanceOhm,
            @Nullable Double supplyV,
            @Nullable Double openingS,
            @Nullable Suppression suppression,
            @Nullable Double clampV) {
        public Coil {
            Check.positive(inductanceH, "inductanceH");
            Check.positive(currentA, "currentA");
        }
    }

    public PrechargeInput {
        Check.within(cells, 1, Integer.MAX_VALUE, "cells");
        Check.within(closingShare, 1e-3, 1 - 1e-9, "closingShare");
        if (capacitanceF != null) {
            Check.positive(capacitanceF, "capacitanceF");
        }
        if (resistanceOhm != null) {
            Check.positive(resistanceOhm, "resistanceOhm");
        }
        if (timeoutS != null) {
            Check.positive(timeoutS, "timeoutS");
        }
        if (currentLimitA != null) {
            Check.positive(currentLimitA, "currentLimitA");
        }
    }
}
