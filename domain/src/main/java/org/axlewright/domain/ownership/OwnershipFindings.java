package org.axlewright.domain.ownership;

import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.axlewright.domain.ownership.Ownership.Cost;
import org.axlewright.domain.ownership.Ownership.Input;
import org.axlewright.domain.ownership.Ownership.Result;
import org.axlewright.domain.ownership.Ownership.Sensitivity;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What stands out in a comparison of costs. */
final class OwnershipFindings {

    /** A lead that is smaller than this share of the cost is none: prices and lives are not known better. */
    private static final double CLOSE = 0.05;

    /** A change by less than this share turns the answer round. */
    private static final double SENSITIVE = 0.2;

    /** A flip so near to what was sent that a set more or less is needed at the least change. */
    private static final double AT_ONCE = 1e-6;

    private static final Caution LIFE = new Caution(
            "life-is-a-guess",
            "Life decides most and is known least: a warranty is no life, a claim is no measurement, and a charger without a voltage limit"
                    + " kills lead-acid early (field survey of vehicle operators, 2020). Ask with the shortest and the longest life you believe.");

    private OwnershipFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(LIFE);
        close(result, trace);
        sensitive(result, trace);
        for (Cost cost : result.costs()) {
            if (cost.option().cyclesEndFirst() && cost.lifeYears() < input.horizonYears()) {
                trace.find(Finding.of(
                                "cycles-end-life",
                                Level.NOTICE,
                                "Cycles end the life of " + cost.option().name()
                                        + " after {actual} years, before the calendar does after {limit}",
                                Source.derived("cycle life over cycles in a year"))
                        .at("/ownership/options/" + cost.option().index() + "/cycleLife")
                        .actual(new Measure(cost.lifeYears(), NONE))
                        .limit(new Measure(cost.option().calendarLifeYears(), NONE)));
            }
        }
        energy(input, trace);
    }

    private static void close(Result result, Trace trace) {
        List<Cost> ranked = result.costs().stream()
                .sorted(Comparator.comparingDouble(Cost::presentValue))
                .toList();
        if (ranked.size() < 2) {
            return;
        }
        double best = ranked.get(0).presentValue();
        double next = ranked.get(1).presentValue();
        if (next - best < CLOSE * Math.abs(next)) {
            trace.find(Finding.of(
                            "no-clear-winner",
                            Level.CAUTION,
                            ranked.get(0).option().name() + " leads "
                                    + ranked.get(1).option().name()
                                    + " by a share of {actual}, less than {limit}: the answer hangs on life and use",
                            Source.COMMON_PRACTICE)
                    .at("/ownership/options")
                    .actual(new Measure(next == 0 ? 0 : (next - best) / Math.abs(next), NONE))
                    .limit(new Measure(CLOSE, NONE))
                    .action("Decide by what else counts: mass, upkeep, range, who services it"));
        }
    }

    private static void sensitive(Result result, Trace trace) {
        result.sensitivities().stream()
                .filter(one -> one.factor() != null && Math.abs(one.factor() - 1) <= SENSITIVE)
                .min(Comparator.comparingDouble(one -> Math.abs(Objects.requireNonNull(one.factor()) - 1)))
                .ifPresent(one -> trace.find(Finding.of(
                                "winner-is-sensitive",
                                Level.CAUTION,
                                Math.abs(Objects.requireNonNull(one.factor()) - 1) < AT_ONCE
                                        ? "Another option is cheaper at the least change of " + what(one)
                                        : "Another option is cheaper once " + what(one)
                                                + " is {actual} times what was sent",
                                Source.derived("root of the difference of present values"))
                        .at("/ownership")
                        .actual(new Measure(Objects.requireNonNull(one.factor()), NONE))
                        .limit(new Measure(1, NONE))
                        .action("Find this figure out before you buy")));
    }

    private static String what(Sensitivity one) {
        String name = one.varied().toString().replace('-', ' ').toLowerCase(Locale.ROOT);
        return "the " + name
                + (one.option() == null ? "" : " of " + one.option().name());
    }

    private static void energy(Input input, Trace trace) {
        boolean any = input.options().stream().anyMatch(option -> option.energyOutPerYearJ() > 0);
        if (!any || input.energyPrice() == null) {
            trace.find(Finding.of(
                            "energy-not-counted",
                            Level.NOTICE,
                            "Energy is left out of the cost: price, use or energy of a cycle is not known",
                            Source.derived("sum of what is known"))
                    .at("/energyPrice"));
        }
    }
}
