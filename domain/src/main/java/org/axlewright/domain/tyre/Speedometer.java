package org.axlewright.domain.tyre;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.trace.Source;

/** What a speedometer may show, UN R39 par. 5.3: never less than the true speed V2, and no more than V2 + V2/10 + 4 km/h. */
public final class Speedometer {

    public static final Source SOURCE = Source.regulation("UN R39 par. 5.3");

    /** 4 km/h in m/s. */
    private static final double ALLOWANCE = 4 / 3.6;

    private Speedometer() {}

    /** Highest speed that may be shown at a true speed, m/s. */
    public static double highestShown(double trueSpeed) {
        return 1.1 * notNegative(trueSpeed, "trueSpeed") + ALLOWANCE;
    }

    /** Largest share by which the speed shown may exceed the true speed. */
    public static double largestError(double trueSpeed) {
        return highestShown(positive(trueSpeed, "trueSpeed")) / trueSpeed - 1;
    }
}
