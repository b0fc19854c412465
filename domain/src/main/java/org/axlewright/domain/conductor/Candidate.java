package org.axlewright.domain.conductor;

import java.util.Set;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.jspecify.annotations.Nullable;

/**
 * A size that could be used, and how it stands.
 *
 * @param parallel runs side by side on each pole
 * @param tableRow gauge whose row of the table holds for one run
 * @param resistanceOhmPerM of one run, at the column's temperature
 * @param ampacityA of all runs together
 * @param dropV out and back at the peak current
 * @param dropShare of the nominal voltage; null when that is not known
 * @param lossW mean over the cycle
 * @param timeConstantS thermal, of one run
 * @param fails what it is too thin for; nothing when it passes
 */
public record Candidate(
        Conductor conductor,
        int parallel,
        ConductorSize tableRow,
        double resistanceOhmPerM,
        double ampacityA,
        double dropV,
        @Nullable Double dropShare,
        double lossW,
        double timeConstantS,
        Set<Limit> fails) {

    public boolean passes() {
        return fails.isEmpty();
    }
}
