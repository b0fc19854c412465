package org.axlewright.domain.ownership;

import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.jspecify.annotations.Nullable;

/**
 * Cost of ownership over a horizon: every payment brought to its value today. Money is reckoned in doubles here, whose sixteen digits hold
 * a ten-thousandth of a cent of any amount that can be sent, and becomes decimal where it leaves.
 */
public final class Ownership {

    private static final Source TABLES = Source.published("compound-interest tables of engineering economics");
    private static final Source SUM = Source.derived("sum of the payments at their present values");

    private static final Symbol RATE = new Symbol("d", NONE);
    private static final Symbol HORIZON = new Symbol("N", NONE);
    private static final Symbol LIFE = new Symbol("l", NONE);
    private static final Symbol COUNT = new Symbol("n", NONE);

    private static final Step ANNUITY = Step.of(
            "P/A",
            "present value of one unit a year over the horizon, years",
            "P/A = [1 − (1 + d)^−N]/d; N when d = 0; the last part of a year in proportion at its end",
            NONE,
            TABLES,
            RATE,
            HORIZON);
    private static final Step LIFE_STEP = Step.of(
            "l",
            "life of a set, years: by the calendar or by cycles, whichever ends first",
            "l = min(l_c, Z/z)",
            NONE,
            Source.derived("whichever ends first"),
            new Symbol("l_c", NONE),
            new Symbol("Z", NONE),
            new Symbol("z", NONE));
    private static final Step CALENDAR = Step.of(
            "l",
            "life of a set, years, by the calendar",
            "l = l_c",
            NONE,
            Source.derived("no cycles known"),
            new Symbol("l_c", NONE));
    private static final Step REPLACEMENTS = Step.of(
            "n", "sets after the first", "n = ceil(N/l) − 1", NONE, Source.derived("whole sets"), HORIZON, LIFE);
    private static final Step LATER_SETS = Step.of(
            "K_r",
            "present value of the later sets",
            "K_r = p_r·Σ(1 + d)^(−k·l), k = 1 to n",
            NONE,
            TABLES,
            new Symbol("p_r", NONE),
            RATE,
            LIFE,
            COUNT);
    private static final Step MAINS = Step.of(
            "E",
            "energy from the mains in a year",
            "E = E_out/η, η = η_battery·η_charger",
            ENERGY,
            Source.derived("energy balance"),
            new Symbol("E_out", ENERGY),
            new Symbol("η", NONE));
    private static final Step ENERGY_COST = Step.of(
            "K_e",
            "present value of the energy",
            "K_e = k·E/(3 600 000 J/kWh)·P/A",
            NONE,
            TABLES,
            new Symbol("k", NONE),
            new Symbol("E", ENERGY),
            new Symbol("P/A", NONE));
    private static final Step PRESENT_VALUE = Step.of(
            "K",
            "present value of everything",
            "K = p + x + K_r + K_e + u·P/A + K_d − R·(1 + d)^−N",
            NONE,
            SUM,
            new Symbol("p", NONE),
            new Symbol("x", NONE),
            new Symbol("K_r", NONE),
            new Symbol("K_e", NONE),
            new Symbol("u", NONE),
            new Symbol("P/A", NONE),
            new Symbol("K_d", NONE),
            new Symbol("R", NONE),
            RATE,
            HORIZON);
    private static final Step PER_YEAR = Step.of(
            "A",
            "equal yearly payment of the same present value",
            "A = K/(P/A)",
            NONE,
            TABLES,
            new Symbol("K", NONE),
            new Symbol("P/A", NONE));

    /** An input is varied between its fifth and its fivefold, the discount rate from nothing to this. */
    static final double MOST_RATE = 0.3;

    static final double LEAST_FACTOR = 0.2;
    static final double MOST_FACTOR = 5;

    private static final double GRID = 1.01;

    private Ownership() {}

    /**
     * The question.
     *
     * @param horizonYears years looked at
     * @param discountRate share for each year
     * @param energyPrice of a kilowatt-hour from the mains; null when not known
     * @param distancePerYearM m; null when not known
     */
    public record Input(
            double horizonYears,
            double discountRate,
            @Nullable Double energyPrice,
            @Nullable Double distancePerYearM,
            List<CostOption> options) {

        public Input {
            Check.positive(horizonYears, "horizon");
            Check.within(discountRate, 0, 1, "discount rate");
            Check.notNegative(energyPrice == null ? 0 : energyPrice, "energy price");
            Check.positive(distancePerYearM == null ? 1 : distancePerYearM, "distance");
        }
    }

    /**
     * Cost of one option; amounts at their present value.
     *
     * @param energy null without a price or without energy
     * @param purchasesWhole whole sets as paid, not discounted
     * @param purchasesProRata the same with the unused life of the last set taken off
     * @param mainsEnergyPerYearJ J; 0 when not known
     */
    public record Cost(
            CostOption option,
            double lifeYears,
            double replacements,
            double presentValue,
            double purchase,
            double laterSets,
            @Nullable Double energy,
            double upkeep,
            double disposal,
            double resale,
            double perYear,
            double purchasesWhole,
            double purchasesProRata,
            double mainsEnergyPerYearJ) {}

    /** From when on the option that costs more at first has cost less in all; null within the horizon when it never does. */
    public record BreakEven(
            CostOption option, CostOption against, @Nullable Double years) {}

    /** What a sensitivity varies. {@code toString} is the name in answers. */
    public enum Varied {
        ENERGY_PRICE("energy-price"),
        USE("use"),
        DISCOUNT_RATE("discount-rate"),
        PRICE("price"),
        LIFE("life");

        private final String token;

        Varied(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * By how much one input must change until another option is cheapest.
     *
     * @param option whose price or life it is; null for the rest
     * @param value of the input where it flips, in the unit of the input; null when nothing flips in range
     * @param factor the same over the value now; null when nothing flips in range or the value now is 0
     */
    public record Sensitivity(
            Varied varied,
            @Nullable CostOption option,
            @Nullable Double value,
            @Nullable Double factor) {}

    /** The answer. */
    public record Result(
            double annuity,
            List<Cost> costs,
            int cheapest,
            List<BreakEven> breakEvens,
            List<Sensitivity> sensitivities) {}

    /** Works out the costs. Pure. */
    public static Result of(Input input, Trace trace) {
        double annuity = trace.note(
                ANNUITY,
                Discounting.series(input.discountRate(), input.horizonYears()),
                input.discountRate(),
                input.horizonYears());
        List<Cost> costs = input.options().stream()
                .map(option -> cost(input, option, annuity, trace.of(option.name())))
                .toList();
        int cheapest = cheapest(input);
        Result result = new Result(annuity, costs, cheapest, breakEvens(input), sensitivities(input, cheapest));
        OwnershipFindings.find(input, result, trace);
        return result;
    }

    private static Cost cost(Input input, CostOption option, double annuity, Trace trace) {
        double rate = input.discountRate();
        double horizon = input.horizonYears();
        double life = option.lifeYears();
        if (option.cyclesPerYear() > 0
                && life < Double.MAX_VALUE
                && option.calendarLifeYears() < Double.MAX_VALUE
                && option.cycleLife() < Double.MAX_VALUE) {
            trace.note(LIFE_STEP, life, option.calendarLifeYears(), option.cycleLife(), option.cyclesPerYear());
        } else if (life < Double.MAX_VALUE) {
            trace.note(CALENDAR, life, life);
        }
        double count = option.replacements(horizon);
        if (life < Double.MAX_VALUE) {
            trace.note(REPLACEMENTS, count, horizon, life);
        }
        double laterSets = laterSets(option, rate, life, count);
        if (count > 0) {
            trace.note(LATER_SETS, laterSets, option.replacementPrice(), rate, life, count);
        }
        double mainsJ = option.energyOutPerYearJ() / option.efficiency();
        Double energy = null;
        if (option.energyOutPerYearJ() > 0) {
            trace.note(MAINS, mainsJ, option.energyOutPerYearJ(), option.efficiency());
            if (input.energyPrice() != null) {
                energy = trace.note(
                        ENERGY_COST,
                        input.energyPrice() * EnergyUnit.KILOWATT_HOUR.fromSi(mainsJ) * annuity,
                        input.energyPrice(),
                        mainsJ,
                        annuity);
            }
        }
        double disposal = disposal(option, rate, horizon, life, count);
        double resale = option.resale() * Discounting.single(rate, horizon);
        double energyCost = energy == null ? 0 : energy;
        double present = trace.note(
                PRESENT_VALUE,
                presentValue(input, option),
                option.price(),
                option.extras(),
                laterSets,
                energyCost,
                option.upkeepPerYear(),
                annuity,
                disposal,
                option.resale(),
                rate,
                horizon);
        double whole = option.price() + count * option.replacementPrice();
        double unused = life < Double.MAX_VALUE ? (count + 1) - horizon / life : 0;
        double last = count > 0 ? option.replacementPrice() : option.price();
        return new Cost(
                option,
                life,
                count,
                present,
                option.price() + option.extras(),
                laterSets,
                energy,
                option.upkeepPerYear() * annuity,
                disposal,
                resale,
                trace.note(PER_YEAR, present / annuity, present, annuity),
                whole,
                whole - unused * last,
                mainsJ);
    }

    private static double laterSets(CostOption option, double rate, double life, double count) {
        return count > 0 ? option.replacementPrice() * Discounting.repeated(rate, life, count) : 0;
    }

    private static double disposal(CostOption option, double rate, double horizon, double life, double count) {
        double during = count > 0 ? Discounting.repeated(rate, life, count) : 0;
        return option.disposal() * (during + Discounting.single(rate, horizon));
    }

    /** Everything at its value today. */
    static double presentValue(Input input, CostOption option) {
        double rate = input.discountRate();
        double horizon = input.horizonYears();
        double life = option.lifeYears();
        double count = option.replacements(horizon);
        double annuity = Discounting.series(rate, horizon);
        double energyPerYear = Objects.requireNonNullElse(input.energyPrice(), 0.0)
                * EnergyUnit.KILOWATT_HOUR.fromSi(option.energyOutPerYearJ() / option.efficiency());
        return option.price()
                + option.extras()
                + laterSets(option, rate, life, count)
                + (energyPerYear + option.upkeepPerYear()) * annuity
                + disposal(option, rate, horizon, life, count)
                - option.resale() * Discounting.single(rate, horizon);
    }

    private static int cheapest(Input input) {
        List<CostOption> options = input.options();
        return options.stream()
                .min(Comparator.comparingDouble(option -> presentValue(input, option)))
                .map(options::indexOf)
                .orElseThrow();
    }

    /** Against every option that costs less at first: from when on has this one cost less in all. */
    private static List<BreakEven> breakEvens(Input input) {
        List<BreakEven> pairs = new ArrayList<>();
        for (CostOption dear : input.options()) {
            for (CostOption cheap : input.options()) {
                if (dear.price() + dear.extras() > cheap.price() + cheap.extras()) {
                    pairs.add(new BreakEven(dear, cheap, overtakes(input, dear, cheap)));
                }
            }
        }
        return List.copyOf(pairs);
    }

    /** The first payment after which the dearer one has cost no more in all, and stays so to the end of the horizon; resale left out. */
    private static @Nullable Double overtakes(Input input, CostOption dear, CostOption cheap) {
        TreeSet<Double> times = new TreeSet<>();
        times.addAll(payments(input, dear));
        times.addAll(payments(input, cheap));
        Double since = null;
        for (double time : times) {
            boolean ahead = paid(input, dear, time) <= paid(input, cheap, time) * (1 + 1e-12);
            since = ahead ? (since == null ? (Double) time : since) : null;
        }
        return since;
    }

    private static List<Double> payments(Input input, CostOption option) {
        List<Double> times = new ArrayList<>();
        double horizon = input.horizonYears();
        for (int year = 1; year <= horizon; year++) {
            times.add((double) year);
        }
        times.add(horizon);
        double count = option.replacements(horizon);
        for (int k = 1; k <= count; k++) {
            times.add(k * option.lifeYears());
        }
        return times;
    }

    /** Paid until a time, resale and the last disposal left out, at its value today. */
    private static double paid(Input input, CostOption option, double years) {
        double rate = input.discountRate();
        double life = option.lifeYears();
        double count = life < Double.MAX_VALUE
                ? Math.min(option.replacements(input.horizonYears()), Math.floor(years / life * (1 + 1e-12)))
                : 0;
        double perYear = option.upkeepPerYear()
                + Objects.requireNonNullElse(input.energyPrice(), 0.0)
                        * EnergyUnit.KILOWATT_HOUR.fromSi(option.energyOutPerYearJ() / option.efficiency());
        double reached = years >= input.horizonYears() ? years : Math.floor(years * (1 + 1e-12));
        return option.price()
                + option.extras()
                + laterSets(option, rate, life, count)
                + (count > 0 ? option.disposal() * Discounting.repeated(rate, life, count) : 0)
                + perYear * Discounting.series(rate, reached);
    }

    private static List<Sensitivity> sensitivities(Input input, int cheapest) {
        if (input.options().size() < 2) {
            return List.of();
        }
        List<Sensitivity> found = new ArrayList<>();
        CostOption winner = input.options().get(cheapest);
        if (input.energyPrice() != null && input.energyPrice() > 0) {
            double price = input.energyPrice();
            found.add(scaled(
                    Varied.ENERGY_PRICE, null, price, factor -> lead(input, winner, price * factor, 1, null, 1, 1)));
        }
        if (input.options().stream().anyMatch(option -> option.cyclesPerYear() > 0 || option.energyOutPerYearJ() > 0)) {
            double use = winner.cyclesPerYear();
            found.add(scaled(
                    Varied.USE, null, use, factor -> lead(input, winner, input.energyPrice(), factor, null, 1, 1)));
        }
        found.add(rate(input, winner));
        for (CostOption option : input.options()) {
            if (option.price() > 0) {
                found.add(scaled(
                        Varied.PRICE,
                        option,
                        option.price(),
                        factor -> lead(input, winner, input.energyPrice(), 1, option, factor, 1)));
            }
            if (option.calendarLifeYears() < Double.MAX_VALUE) {
                found.add(scaled(
                        Varied.LIFE,
                        option,
                        option.lifeYears(),
                        factor -> lead(input, winner, input.energyPrice(), 1, option, 1, factor)));
            }
        }
        return List.copyOf(found);
    }

    /** How much more the best of the others costs than the winner, with some inputs changed. */
    private static double lead(
            Input input,
            CostOption winner,
            @Nullable Double energyPrice,
            double use,
            @Nullable CostOption changed,
            double price,
            double life) {
        Input varied = new Input(
                input.horizonYears(),
                input.discountRate(),
                energyPrice,
                input.distancePerYearM(),
                input.options().stream()
                        .map(option -> changed != null && option.index() == changed.index()
                                ? option.withPrices(price).withLife(life)
                                : option)
                        .map(option -> use == 1 ? option : option.withUse(use))
                        .toList());
        return lead(varied, winner.index());
    }

    private static double lead(Input input, int winner) {
        double own = 0;
        double best = Double.POSITIVE_INFINITY;
        for (CostOption option : input.options()) {
            double cost = presentValue(input, option);
            if (option.index() == winner) {
                own = cost;
            } else {
                best = Math.min(best, cost);
            }
        }
        return best - own;
    }

    /** The flip nearest to the value now, above or below it. */
    private static Sensitivity scaled(
            Varied varied, @Nullable CostOption option, double now, DoubleUnaryOperator lead) {
        Double up = flip(lead, 1, MOST_FACTOR, GRID);
        Double down = flip(lead, 1, LEAST_FACTOR, 1 / GRID);
        Double factor = up == null ? down : down == null ? up : Math.log(up) <= -Math.log(down) ? up : down;
        return new Sensitivity(varied, option, factor == null ? null : (Double) (factor * now), factor);
    }

    private static @Nullable Double flip(DoubleUnaryOperator lead, double from, double to, double step) {
        double last = from;
        while (step > 1 ? last < to : last > to) {
            double next = step > 1 ? Math.min(to, last * step) : Math.max(to, last * step);
            if (lead.applyAsDouble(next) < 0) {
                return solve(lead, Math.min(last, next), Math.max(last, next));
            }
            last = next;
        }
        return null;
    }

    /** Cost jumps where a set more is needed, so the interval is halved and no slope is trusted. */
    private static double solve(DoubleUnaryOperator lead, double low, double high) {
        double atLow = lead.applyAsDouble(low);
        double atHigh = lead.applyAsDouble(high);
        if (atLow == 0 || atHigh == 0) {
            return atLow == 0 ? low : high;
        }
        return new BisectionSolver(1e-12, 1e-12).solve(200, lead::applyAsDouble, low, high);
    }

    private static Sensitivity rate(Input input, CostOption winner) {
        DoubleUnaryOperator lead = rate -> lead(
                new Input(input.horizonYears(), rate, input.energyPrice(), input.distancePerYearM(), input.options()),
                winner.index());
        double now = input.discountRate();
        Double flip = null;
        double step = 0.0025;
        for (int i = 1; i * step <= MOST_RATE && flip == null; i++) {
            double above = now + i * step;
            double below = now - i * step;
            if (above <= MOST_RATE && lead.applyAsDouble(above) < 0) {
                flip = solve(lead, above - step, above);
            } else if (below >= 0 && lead.applyAsDouble(below) < 0) {
                flip = solve(lead, below, below + step);
            }
        }
        return new Sensitivity(
                Varied.DISCOUNT_RATE, null, flip, flip == null || now == 0 ? null : (Double) (flip / now));
    }
}
