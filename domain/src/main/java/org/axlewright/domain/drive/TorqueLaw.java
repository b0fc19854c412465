package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.positive;

/**
 * Torque of a motor for its current, through one known pair. Proportional; of a series motor with the square of the current up to the
 * known pair, where its iron is taken to saturate, and proportional above. Source: direct-current machine, T = k·φ·I, with φ
 * proportional to the field's current while unsaturated.
 *
 * @param torqueNm of the known pair, N m
 * @param currentA of the known pair, A
 * @param square whether the motor is a series one
 */
public record TorqueLaw(double torqueNm, double currentA, boolean square) {
    public TorqueLaw {
        positive(torqueNm, "torqueNm");
        positive(currentA, "currentA");
    }

    /** Torque, N m, at a motor current, A. */
    public double torqueNm(double current) {
        double share = current / currentA;
        return square && share < 1 ? torqueNm * share * share : torqueNm * share;
    }

    /** Motor current, A, for a torque, N m. */
    public double currentA(double torque) {
        double share = torque / torqueNm;
        return square && share < 1 ? currentA * Math.sqrt(share) : currentA * share;
    }
}
