package org.axlewright.domain.energy;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * What the road has to do with on a route.
 *
 * @param massKg as driven, kg
 * @param rotatingMassShare what rotating parts add to the mass when the speed changes
 * @param dragAreaM2 drag coefficient times frontal area, m2
 * @param driveEfficiency from pack to wheel while driving, more than 0 to 1
 * @param regenerationShare share of the braking energy at the wheel that comes back into the pack, 0 to 1
 * @param accessoriesW everything on board that is not the drive, at the pack, W
 * @param controllerA battery-side limit of the controller, A; null when not known
 * @param speedLimitMPS speed the controller is set to hold, m/s; null when not known
 */
public record Vehicle(
        double massKg,
        double rotatingMassShare,
        double dragAreaM2,
        double driveEfficiency,
        double regenerationShare,
        double accessoriesW,
        @Nullable Double controllerA,
        @Nullable Double speedLimitMPS) {

    public Vehicle {
        Check.positive(massKg, "massKg");
        Check.notNegative(rotatingMassShare, "rotatingMassShare");
        Check.notNegative(dragAreaM2, "dragAreaM2");
        Check.positive(Check.within(driveEfficiency, 0, 1, "driveEfficiency"), "driveEfficiency");
        Check.within(regenerationShare, 0, 1, "regenerationShare");
        Check.notNegative(accessoriesW, "accessoriesW");
    }

    /** The same vehicle with another drive efficiency and drag area. */
    public Vehicle with(double otherEfficiency, double otherDragAreaM2) {
        return new Vehicle(
                massKg,
                rotatingMassShare,
                otherDragAreaM2,
                otherEfficiency,
                regenerationShare,
                accessoriesW,
                controllerA,
                speedLimitMPS);
    }
}
