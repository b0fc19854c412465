package org.axlewright.domain.drive;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.roadload.RoadLoad;

/**
 * What resists the vehicle, in still air of 15 degC at sea level.
 *
 * @param massKg as driven, kg
 * @param rotatingShare what rotating parts add to the mass when the speed changes
 * @param rollingResistance coefficient on the level road asked for
 * @param dragAreaM2 drag coefficient times frontal area
 * @param factor measured over reckoned rolling and drag, 1 without a measurement
 */
public record Road(double massKg, double rotatingShare, double rollingResistance, double dragAreaM2, double factor) {
    public Road {
        positive(massKg, "massKg");
        notNegative(rotatingShare, "rotatingShare");
        positive(rollingResistance, "rollingResistance");
        positive(dragAreaM2, "dragAreaM2");
        positive(factor, "factor");
    }

    Road calibrated(double measured) {
        return new Road(massKg, rotatingShare, rollingResistance, dragAreaM2, measured);
    }

    double weightN() {
        return massKg * Constants.STANDARD_GRAVITY;
    }

    /** Mass with its rotating parts, kg. */
    double movingKg() {
        return massKg * (1 + rotatingShare);
    }

    double rollingN(double coefficient, double gradeRad) {
        return factor * RoadLoad.rollingN(massKg, coefficient, gradeRad, Constants.STANDARD_GRAVITY);
    }

    double dragN(double speedMPS) {
        return factor * RoadLoad.dragN(Constants.AIR_DENSITY_ISO_2533, dragAreaM2, speedMPS);
    }

    double gradeN(double gradeRad) {
        return RoadLoad.gradeN(massKg, gradeRad, Constants.STANDARD_GRAVITY);
    }

    /** Sum of the three, N. */
    double resistanceN(double speedMPS, double coefficient, double gradeRad) {
        return rollingN(coefficient, gradeRad) + dragN(speedMPS) + gradeN(gradeRad);
    }

    /** On the level road asked for, N. */
    double levelN(double speedMPS) {
        return rollingN(rollingResistance, 0) + dragN(speedMPS);
    }
}
