package org.axlewright.api.conductor;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.energy.PackRangeCalculation;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.conductor.Cycle;
import org.axlewright.domain.conductor.Segment;
import org.axlewright.domain.energy.LegDemand;
import org.axlewright.domain.energy.PackRange;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What the route draws from the pack, as the cycle of a circuit: the answer of {@code pack-range}, leg by leg. */
final class RouteCurrent {

    private static final PackRangeCalculation RANGE = new PackRangeCalculation();

    private RouteCurrent() {}

    /** Null when the route can't be reckoned; what lacks or is refused is noted. */
    static @Nullable Cycle of(Setup setup, Resolution resolution) {
        if (setup.route() == null || setup.route().isEmpty()) {
            resolution.missing("/route");
            return null;
        }
        Set<String> missing = Set.copyOf(RANGE.needs().missing(setup));
        if (!missing.isEmpty()) {
            missing.forEach(resolution::missing);
            return null;
        }
        PackRange.Input input;
        Resolution own = new Resolution();
        try {
            input = RANGE.resolve(setup, own);
        } catch (Refused refused) {
            refused.faults().forEach(resolution::refuse);
            return null;
        }
        own.assumptions().forEach(resolution::assume);
        return cycle(RANGE.calculate(input, Trace.withoutWorking()).legs(), resolution);
    }

    private static @Nullable Cycle cycle(List<LegDemand> legs, Resolution resolution) {
        List<Segment> segments = new ArrayList<>();
        boolean whole = true;
        for (int i = 0; i < legs.size(); i++) {
            LegDemand demand = legs.get(i);
            if (!demand.withinPack()) {
                resolution.refuse(new Fault(
                        "/route/" + i,
                        "beyond-pack",
                        "The pack can't give what this leg asks for, so its current can't be told",
                        null,
                        null));
                whole = false;
                continue;
            }
            segments.add(segment(demand.movingChargeC(), demand.movingTimeS()));
            if (demand.leg().waitS() > 0) {
                segments.add(segment(demand.waitingChargeC(), demand.leg().waitS()));
            }
        }
        if (whole && segments.stream().allMatch(segment -> segment.currentA() == 0)) {
            resolution.refuse(new Fault(
                    "/route", "no-current", "The route draws no current: nothing can be sized by it", null, null));
            whole = false;
        }
        return whole ? new Cycle(segments) : null;
    }

    /** Current into the pack heats as current out of it. */
    private static Segment segment(double chargeC, double timeS) {
        return new Segment(Math.abs(chargeC) / timeS, timeS);
    }
}
