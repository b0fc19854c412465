package org.axlewright.api.calculation;

import org.axlewright.api.section.Ground;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.roadload.Grip;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;

/** The ground, one rule for every question: friction as sent, else the usual value of the surface, else that of dry asphalt. */
public final class GroundSections {

    private GroundSections() {}

    /** Tyre to ground friction; an assumption where it was not sent. */
    public static double friction(Setup setup, Resolution resolution) {
        Ground ground = setup.ground();
        if (ground != null && ground.friction() != null) {
            return ground.friction();
        }
        Surface surface = ground == null ? null : ground.surface();
        Datum typical = Grip.of(surface == null ? Surface.ASPHALT : surface).typical();
        return resolution.assume(
                "friction",
                "/ground/friction",
                Measure.number(typical.value()),
                surface == null ? "dry asphalt or concrete" : surface + ", dry",
                typical.source());
    }
}
