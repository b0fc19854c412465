package org.axlewright.domain.legalclass;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle as far as classes ask about it; null what is not known.
 *
 * @param topSpeedMPerS reached on level pavement within a mile, m/s
 * @param formerTopSpeedMPerS the same before the change, m/s
 * @param ratings stated by the maker
 * @param masses weighed
 * @param seats the driver's included
 * @param wheels 3 or 4
 * @param powerW largest continuous rated power of the motor, W
 * @param size outer measures
 * @param drawbarPullN largest pull at the drawbar, N
 * @param enclosed whether a compartment encloses driver and riders
 */
public record Vehicle(
        double topSpeedMPerS,
        @Nullable Double formerTopSpeedMPerS,
        Ratings ratings,
        Masses masses,
        @Nullable Integer seats,
        int wheels,
        @Nullable Double powerW,
        Size size,
        @Nullable Double drawbarPullN,
        Place place,
        Carries carries,
        @Nullable Boolean enclosed,
        @Nullable HeldBy heldBy,
        @Nullable ChangedBy changedBy) {

    /**
     * What the maker states.
     *
     * @param grossKg gross vehicle weight rating, kg
     * @param frontKg gross axle weight rating in front, kg
     * @param rearKg gross axle weight rating behind, kg
     */
    public record Ratings(
            @Nullable Double grossKg,
            @Nullable Double frontKg,
            @Nullable Double rearKg) {

        public Ratings {
            positive(grossKg, "gross rating");
            positive(frontKg, "front rating");
            positive(rearKg, "rear rating");
        }
    }

    /**
     * What scales say.
     *
     * @param unladenKg ready for use with its pack, without people and goods, kg
     * @param packKg propulsion battery, less than the whole, kg
     * @param cargoKg goods that the maker rates it for, kg
     */
    public record Masses(
            @Nullable Double unladenKg,
            @Nullable Double packKg,
            @Nullable Double cargoKg) {

        public Masses {
            positive(unladenKg, "unladen mass");
            positive(packKg, "mass of the pack");
            Check.notNegative(cargoKg == null ? 0 : cargoKg, "cargo");
            if (unladenKg != null && packKg != null) {
                Check.positive(unladenKg - packKg, "mass without pack");
            }
        }
    }

    /** Measures, m. */
    public record Size(
            @Nullable Double lengthM,
            @Nullable Double widthM,
            @Nullable Double heightM,
            @Nullable Double wheelbaseM,
            @Nullable Double groundClearanceM,
            @Nullable Double seatHeightM) {

        public Size {
            positive(lengthM, "length");
            positive(widthM, "width");
            positive(heightM, "height");
            positive(wheelbaseM, "wheelbase");
            positive(groundClearanceM, "ground clearance");
            positive(seatHeightM, "seat height");
        }
    }

    public Vehicle {
        Check.positive(topSpeedMPerS, "top speed");
        positive(formerTopSpeedMPerS, "former top speed");
        positive(powerW, "power");
        positive(drawbarPullN, "drawbar pull");
        Check.within(wheels, 3, 4, "wheels");
        Check.within(seats == null ? 1 : seats, 1, 1000, "seats");
    }

    /** The same vehicle at another top speed. */
    Vehicle at(double otherTopSpeedMPerS) {
        return new Vehicle(
                otherTopSpeedMPerS,
                null,
                ratings,
                masses,
                seats,
                wheels,
                powerW,
                size,
                drawbarPullN,
                place,
                carries,
                enclosed,
                heldBy,
                changedBy);
    }

    private static void positive(@Nullable Double value, String name) {
        Check.positive(value == null ? 1 : value, name);
    }
}
