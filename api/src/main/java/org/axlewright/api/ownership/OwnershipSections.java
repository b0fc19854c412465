package org.axlewright.api.ownership;

import static org.axlewright.domain.quantity.Dimension.LIFE_TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.ownership.OwnershipCostCalculation.Question;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Ownership.Option;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.ownership.CostOption;
import org.axlewright.domain.ownership.Ownership;
import org.axlewright.domain.ownership.OwnershipHabit;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the section ownership to the checked input: one currency, defaults by chemistry, and what can't be answered. */
final class OwnershipSections {

    /** More sets than this over a horizon are a slip of a digit. */
    private static final double MOST_SETS = 500;

    private OwnershipSections() {}

    static Question resolve(Setup setup, Resolution resolution) {
        org.axlewright.api.section.Ownership sent = Objects.requireNonNull(setup.ownership(), "ownership");
        List<Option> options = Objects.requireNonNull(sent.options(), "options");
        String currency = oneCurrency(setup, sent, options, resolution);
        double discountRate = sent.discountRate() != null
                ? sent.discountRate()
                : resolution.assume(
                        "no-discount",
                        "/ownership/discountRate",
                        Measure.number(0),
                        "money next year counts like money today: a plain sum",
                        Source.COMMON_PRACTICE);
        double horizonYears =
                TimeUnit.YEAR.fromSi(Objects.requireNonNull(sent.horizon()).si());
        List<CostOption> resolved = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            resolved.add(option(sent, options.get(i), i, resolution));
        }
        resolution.refuseIfFaulty();
        for (CostOption option : resolved) {
            double life = lifeYears(option);
            if (horizonYears / life > MOST_SETS) {
                resolution.refuse(
                        Fault.contradiction(
                                "/ownership/options/" + option.index(),
                                "It would be replaced more than 500 times over the horizon; check life, cycles in a year and energy of a cycle"));
            }
        }
        resolution.refuseIfFaulty();
        Double price = setup.energyPrice() == null
                ? null
                : (Double) setup.energyPrice().decimal().doubleValue();
        Double distanceM = sent.distancePerYear() == null
                ? null
                : (Double) sent.distancePerYear().si();
        Ownership.Input input =
                new Ownership.Input(horizonYears, discountRate, price, distanceM, List.copyOf(resolved));
        notAnswered(input, resolution);
        return new Question(input, currency);
    }

    private static double lifeYears(CostOption option) {
        return option.cyclesPerYear() > 0
                ? Math.min(option.calendarLifeYears(), option.cycleLife() / option.cyclesPerYear())
                : option.calendarLifeYears();
    }

    /** Amounts in two currencies can't be added. */
    private static String oneCurrency(
            Setup setup, org.axlewright.api.section.Ownership sent, List<Option> options, Resolution resolution) {
        String currency =
                Objects.requireNonNull(options.get(0).price(), "price").currency();
        same(setup.energyPrice(), "/energyPrice", currency, resolution);
        same(sent.labourRate(), "/ownership/labourRate", currency, resolution);
        for (int i = 0; i < options.size(); i++) {
            Option option = options.get(i);
            String pointer = "/ownership/options/" + i;
            same(option.price(), pointer + "/price", currency, resolution);
            same(option.extras(), pointer + "/extras", currency, resolution);
            same(option.replacementPrice(), pointer + "/replacementPrice", currency, resolution);
            same(option.disposal(), pointer + "/disposal", currency, resolution);
            same(option.resale(), pointer + "/resale", currency, resolution);
            same(option.upkeepPerYear(), pointer + "/upkeepPerYear", currency, resolution);
        }
        return currency;
    }

    private static void same(@Nullable Money money, String pointer, String currency, Resolution resolution) {
        if (money != null && !money.currency().equals(currency)) {
            resolution.refuse(Fault.contradiction(
                    pointer + "/currency",
                    "All amounts must be in one currency: " + money.currency() + " stands beside " + currency));
        }
    }

    private static CostOption option(
            org.axlewright.api.section.Ownership sent, Option option, int index, Resolution resolution) {
        String pointer = "/ownership/options/" + index;
        OwnershipHabit habit = option.chemistry() == null ? null : OwnershipHabit.of(option.chemistry());
        Double perCycleJ = si(option.energyPerCycle());
        Double byDistanceJ = sent.distancePerYear() == null || sent.consumption() == null
                ? null
                : (Double) (sent.distancePerYear().si() * sent.consumption().si());
        boolean electric = habit != null || perCycleJ != null || option.batteryEfficiency() != null;
        double cycles = cycles(sent, perCycleJ, byDistanceJ);
        double outJ = !electric ? 0 : byDistanceJ != null ? byDistanceJ : perCycleJ == null ? 0 : perCycleJ * cycles;
        double price = amount(option.price());
        double efficiency = outJ > 0
                ? share(
                                "battery-efficiency",
                                pointer + "/batteryEfficiency",
                                option.batteryEfficiency(),
                                habit == null ? null : habit.batteryEfficiency(),
                                resolution)
                        * share(
                                "charger-efficiency",
                                pointer + "/chargerEfficiency",
                                option.chargerEfficiency(),
                                habit == null ? null : habit.chargerEfficiency(),
                                resolution)
                : 1;
        double labourH = option.labourPerYear() == null
                ? 0
                : TimeUnit.HOUR.fromSi(option.labourPerYear().si());
        if (labourH > 0 && sent.labourRate() == null) {
            resolution.missing("/ownership/labourRate");
        }
        return new CostOption(
                index,
                option.name() == null ? "option " + (index + 1) : option.name(),
                option.reference(),
                price,
                amount(option.extras()),
                option.replacementPrice() == null ? price : amount(option.replacementPrice()),
                amount(option.disposal()),
                amount(option.resale()),
                amount(option.upkeepPerYear()) + labourH * amount(sent.labourRate()),
                calendarLife(option, habit, pointer, resolution),
                cycleLife(option, habit, cycles, pointer, resolution),
                electric ? cycles : 0,
                outJ,
                efficiency);
    }

    private static double cycles(
            org.axlewright.api.section.Ownership sent, @Nullable Double perCycleJ, @Nullable Double byDistanceJ) {
        if (sent.cyclesPerYear() != null) {
            return sent.cyclesPerYear();
        }
        return byDistanceJ != null && perCycleJ != null ? byDistanceJ / perCycleJ : 0;
    }

    private static double calendarLife(
            Option option, @Nullable OwnershipHabit habit, String pointer, Resolution resolution) {
        if (option.calendarLife() != null) {
            return TimeUnit.YEAR.fromSi(option.calendarLife().si());
        }
        if (habit == null) {
            return Double.POSITIVE_INFINITY;
        }
        return TimeUnit.YEAR.fromSi(resolution.assume(
                "calendar-life",
                pointer + "/calendarLife",
                new Measure(TimeUnit.YEAR.toSi(habit.calendarLifeYears().value()), LIFE_TIME),
                "usual service life of " + option.chemistry(),
                habit.calendarLifeYears().source()));
    }

    private static double cycleLife(
            Option option, @Nullable OwnershipHabit habit, double cycles, String pointer, Resolution resolution) {
        if (option.cycleLife() != null) {
            return option.cycleLife();
        }
        if (habit == null || cycles == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return resolution.assume(
                "cycle-life",
                pointer + "/cycleLife",
                Measure.number(habit.cycleLife().value()),
                "usual for " + option.chemistry(),
                habit.cycleLife().source());
    }

    private static double share(
            String code, String pointer, @Nullable Double sent, @Nullable Datum usual, Resolution resolution) {
        if (sent != null) {
            return sent;
        }
        return usual != null
                ? resolution.assume(
                        code, pointer, Measure.number(usual.value()), "usual for the chemistry", usual.source())
                : resolution.assume(
                        code,
                        pointer,
                        Measure.number(1),
                        "no chemistry to tell it: nothing is lost",
                        Source.derived("upper bound"));
    }

    private static void notAnswered(Ownership.Input input, Resolution resolution) {
        for (CostOption option : input.options()) {
            String at = "/options/" + option.index();
            List<String> energy = new ArrayList<>();
            if (option.energyOutPerYearJ() == 0) {
                energy.add("/ownership/consumption");
                energy.add("/ownership/options/" + option.index() + "/energyPerCycle");
                resolution.notAnswered(at + "/perKilowattHour", energy);
            }
            if (input.energyPrice() == null) {
                energy.add("/energyPrice");
            }
            resolution.notAnswered(at + "/energy", energy);
            if (input.distancePerYearM() == null) {
                resolution.notAnswered(at + "/perDistance", "/ownership/distancePerYear");
            }
        }
    }

    private static double amount(@Nullable Money money) {
        return money == null ? 0 : money.decimal().doubleValue();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }
}
