package org.axlewright.domain.fit;

import java.util.List;
import org.axlewright.domain.fit.FitInput.Charger;
import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Motor;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Parts for the tests, as plain as they can be. */
final class FitCases {

    private FitCases() {}

    static Pack pack(Chemistry chemistry, int cells) {
        return pack(chemistry, cells, null, null, Limits.NONE, null);
    }

    static Pack pack(
            Chemistry chemistry,
            int cells,
            @Nullable Double ohm,
            @Nullable Double celsius,
            Limits limits,
            @Nullable Double massKg) {
        return new Pack(chemistry, cells, 1, null, null, ohm, false, celsius, limits, massKg, false, false);
    }

    static Pack weighed(Chemistry chemistry, int cells, double ampereHours, double massKg) {
        return new Pack(
                chemistry, cells, 1, null, 3600 * ampereHours, null, false, null, Limits.NONE, massKg, false, false);
    }

    static Limits discharge(@Nullable Double continuousA, @Nullable Double peakA) {
        return new Limits(
                continuousA, peakA, peakA == null ? null : 10.0, null, null, null, List.of(), null, null, null);
    }

    static Limits charge(double chargeA) {
        return new Limits(null, null, null, chargeA, null, null, List.of(), null, null, null);
    }

    static Controller controller(@Nullable Double batteryA, double leastV, double mostV) {
        return new Controller(batteryA, null, leastV, mostV, null, false, null);
    }

    static Controller braking(double regenerationA, double mostV) {
        return new Controller(100.0, null, 10.0, mostV, null, true, regenerationA);
    }

    static FitInput with(Pack pack, @Nullable Controller controller) {
        return new FitInput(pack, controller, null, null, null, null, null, null);
    }

    static FitInput with(Pack pack, Charger charger) {
        return new FitInput(pack, null, null, null, charger, null, null, null);
    }

    static FitInput with(Pack pack, Motor motor, @Nullable Double efficiency) {
        return new FitInput(pack, null, motor, efficiency, null, null, null, null);
    }

    static FitResult of(FitInput input) {
        return PackFit.of(input, Trace.withoutWorking());
    }

    static FitCheck check(FitResult result, String name) {
        return result.pairs().stream()
                .flatMap(pair -> pair.checks().stream())
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no check " + name + " in " + result.pairs()));
    }

    static List<String> findings(FitInput input) {
        Trace trace = Trace.withoutWorking();
        PackFit.of(input, trace);
        return trace.findings().stream().map(finding -> finding.code()).toList();
    }
}
