package org.axlewright.api.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.whatif.Probe.Heard;
import org.axlewright.api.whatif.Tolerated.Contribution;
import org.axlewright.api.whatif.Tolerated.Method;
import org.axlewright.api.whatif.Tolerated.Sure;
import org.axlewright.api.whatif.Tolerated.Uncertain;
import org.axlewright.domain.whatif.Uncertainty;
import org.axlewright.domain.whatif.Uncertainty.FirstOrder;
import org.axlewright.domain.whatif.Uncertainty.Input;
import org.axlewright.domain.whatif.Uncertainty.Spread;
import org.jspecify.annotations.Nullable;

/** Propagates tolerances of the input to the watched results. */
final class Tolerances {

    private final Calculations calculations;
    private final Probe probe;
    private final List<Tolerance> tolerances;
    private final List<Watched> watched;
    private final Wanted wanted;
    private final @Nullable Object[] units;
    private long asked;

    /** How it is wanted. */
    record Wanted(Method method, double coverage, int trials, int seed) {}

    Tolerances(
            Calculations calculations, Probe probe, List<Tolerance> tolerances, List<Watched> watched, Wanted wanted) {
        this.calculations = calculations;
        this.probe = probe;
        this.tolerances = tolerances;
        this.watched = watched;
        this.wanted = wanted;
        this.units = new Object[watched.size()];
    }

    /**
     * The results with their uncertainty.
     *
     * @throws Refused when the input, or an input moved by its standard uncertainty, is refused
     */
    Tolerated propagate(Effort effort) {
        boolean draws = wanted.method() == Method.MONTE_CARLO;
        long expected = 1 + 2L * tolerances.size() + (draws ? wanted.trials() : 0);
        Input[] inputs = tolerances.stream().map(Tolerance::input).toArray(Input[]::new);
        double[] estimate = new double[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            estimate[i] = inputs[i].value();
        }
        effort.step(asked++, expected);
        double[] at = numbers(firmly(estimate));
        FirstOrder[] first = Uncertainty.firstOrder(
                x -> {
                    effort.step(asked++, expected);
                    return numbers(firmly(x));
                },
                inputs);
        Spread[] spreads = draws
                ? Uncertainty.monteCarlo(
                        x -> {
                            effort.step(asked++, expected);
                            return numbers(probe.ask(values(x)));
                        },
                        wanted.trials(),
                        wanted.seed(),
                        wanted.coverage(),
                        inputs)
                : new Spread[0];
        double factor = Uncertainty.coverageFactor(wanted.coverage());
        List<Sure> results = new ArrayList<>();
        for (int k = 0; k < watched.size(); k++) {
            results.add(draws ? drawn(k, at[k], first[k], spreads[k]) : firstOrder(k, at[k], first[k], factor));
        }
        return new Tolerated(
                calculations.engine(),
                probe.question().name(),
                wanted.method(),
                wanted.coverage(),
                draws ? null : factor,
                draws ? wanted.trials() : null,
                draws ? wanted.seed() : null,
                tolerances.stream().map(Tolerances::shown).toList(),
                results,
                (draws ? Uncertainty.MONTE_CARLO : Uncertainty.FIRST_ORDER).toString());
    }

    private List<Object> values(double[] x) {
        List<Object> values = new ArrayList<>(x.length);
        for (int i = 0; i < x.length; i++) {
            values.add(tolerances.get(i).scale().with(x[i]));
        }
        return values;
    }

    /** Refuses where the input is refused: first order has nothing to say beside a value that can't be. */
    private List<Heard> firmly(double[] x) {
        List<Heard> heard = probe.ask(values(x));
        for (Watched one : watched) {
            List<Fault> faults = heard.get(one.which()).faults();
            if (!faults.isEmpty() && !probe.question().assessment()) {
                throw Probe.inInput(faults);
            }
        }
        return heard;
    }

    private double[] numbers(List<Heard> heard) {
        double[] numbers = new double[watched.size()];
        for (int k = 0; k < numbers.length; k++) {
            Object value = watched.get(k).in(heard);
            if (value != null && units[k] == null) {
                units[k] = Plain.unit(value);
            }
            numbers[k] = value != null && Plain.in(units[k], value) instanceof Number number
                    ? number.doubleValue()
                    : Double.NaN;
        }
        return numbers;
    }

    private static Uncertain shown(Tolerance tolerance) {
        Input input = tolerance.input();
        return new Uncertain(
                tolerance.place().toString(),
                tolerance.scale().unit(),
                input.value(),
                input.halfWidth(),
                input.distribution(),
                input.distribution().standard(input.halfWidth()));
    }

    private Sure firstOrder(int k, double value, FirstOrder first, double factor) {
        double half = factor * first.standard();
        return new Sure(
                watched.get(k).pointer(),
                units[k],
                known(value),
                known(half),
                known(first.standard()),
                known(value - half),
                known(value + half),
                null,
                null,
                budget(first));
    }

    private Sure drawn(int k, double value, FirstOrder first, Spread spread) {
        return new Sure(
                watched.get(k).pointer(),
                units[k],
                known(value),
                known((spread.high() - spread.low()) / 2),
                known(spread.standard()),
                known(spread.low()),
                known(spread.high()),
                known(spread.mean()),
                spread.answered(),
                budget(first));
    }

    /** Null for what has no value. */
    private static @Nullable Double known(double value) {
        return Double.isFinite(value) ? (Double) value : null;
    }

    private List<Contribution> budget(FirstOrder first) {
        List<Contribution> budget = new ArrayList<>();
        double variance = first.standard() * first.standard();
        for (int i = 0; i < tolerances.size(); i++) {
            double own = first.contributions().get(i);
            if (Double.isFinite(own) && Double.isFinite(variance)) {
                budget.add(new Contribution(
                        tolerances.get(i).place().toString(), own, variance > 0 ? own * own / variance : 0));
            }
        }
        budget.sort(Comparator.comparingDouble((Contribution one) -> -one.share()));
        return budget;
    }
}
