package org.axlewright.domain.stability;

import java.util.ArrayList;
import java.util.List;

/**
 * Of all ways to fill seats and racks, the one that stands least. A lever over the height of the centre of gravity is a ratio of two sums
 * over what is aboard, so the least of all 2ⁿ fillings is found exactly, however many seats there are: W. Dinkelbach, On nonlinear
 * fractional programming, Management Science 13 (1967). Each round takes aboard just what lowers the sum of moments for the ratio found
 * so far; the ratio falls strictly, and there are only so many fillings.
 */
final class Fillings {

    private Fillings() {}

    /** A distance, m, that is linear in the place of a mass in plan. */
    interface Lever {
        double of(double xM, double yM);
    }

    /** Who and what is aboard, in the order of the request, and the vehicle so filled. */
    record Filling(List<Aboard> aboard, Whole whole) {}

    /** The vehicle filled so. */
    static Filling of(Whole fixed, List<Aboard> aboard) {
        double mass = fixed.massKg();
        double x = mass * fixed.xM();
        double y = mass * fixed.yM();
        double z = mass * fixed.zM();
        for (Aboard one : aboard) {
            mass += one.massKg();
            x += one.massKg() * one.xM();
            y += one.massKg() * one.yM();
            z += one.massKg() * one.zM();
        }
        return new Filling(List.copyOf(aboard), new Whole(mass, x / mass, y / mass, z / mass));
    }

    /**
     * The filling with the least lever over height.
     *
     * @param driven whether the driver must be aboard
     */
    static Filling least(Whole fixed, List<Aboard> movable, boolean driven, Lever lever) {
        Filling least = of(fixed, movable);
        while (true) {
            double ratio = ratio(least.whole(), lever);
            List<Aboard> chosen = new ArrayList<>();
            for (Aboard one : movable) {
                boolean lowers = lever.of(one.xM(), one.yM()) - ratio * one.zM() < 0;
                if (lowers || (driven && one.drives())) {
                    chosen.add(one);
                }
            }
            Filling next = of(fixed, chosen);
            if (!(ratio(next.whole(), lever) < ratio)) {
                return least;
            }
            least = next;
        }
    }

    static double ratio(Whole whole, Lever lever) {
        return lever.of(whole.xM(), whole.yM()) / whole.zM();
    }
}
