package org.axlewright.domain.energy;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the route at one speed, grade and surface.
 *
 * @param distanceM along the road, m
 * @param gradeRad slope, uphill positive, rad
 * @param inDegrees whether the slope was sent in degrees
 * @param speedMPS steady speed, m/s
 * @param rollingResistance coefficient
 * @param stops full stops on the stretch
 * @param waitS time standing still with the accessories on, s; after the driving
 * @param reference of the sender
 */
public record RouteLeg(
        double distanceM,
        double gradeRad,
        boolean inDegrees,
        double speedMPS,
        double rollingResistance,
        int stops,
        double waitS,
        @Nullable String reference) {

    public RouteLeg {
        Check.positive(distanceM, "distanceM");
        Check.within(gradeRad, -Math.PI / 2, Math.PI / 2, "gradeRad");
        Check.positive(speedMPS, "speedMPS");
        Check.notNegative(rollingResistance, "rollingResistance");
        Check.notNegative(stops, "stops");
        Check.notNegative(waitS, "waitS");
    }
}
