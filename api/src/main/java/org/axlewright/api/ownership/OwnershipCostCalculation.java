package org.axlewright.api.ownership;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.ownership.OwnershipCostResult.BreakEven;
import org.axlewright.api.ownership.OwnershipCostResult.Cost;
import org.axlewright.api.ownership.OwnershipCostResult.Sensitivity;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.ownership.CostOption;
import org.axlewright.domain.ownership.Ownership;
import org.axlewright.domain.ownership.Ownership.Varied;
import org.axlewright.domain.quantity.DistanceUnit;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Ownership: any number of options over a horizon, their present values, and what would turn the answer round. */
public final class OwnershipCostCalculation
        implements Calculation<
                OwnershipCostCalculation.Question, OwnershipCostCalculation.Output, OwnershipCostResult> {

    /** Decimals of an amount: far below a cent. */
    private static final int DECIMALS = 10;

    private static final Needs NEEDS = Needs.all(
            Needs.value("/ownership/horizon"),
            Needs.some("/ownership/options", Needs.value("/ownership/options/0/price")));

    /** The question with its currency, which the domain does not see. */
    public record Question(Ownership.Input input, String currency) {}

    /** What the domain found, with what it was asked. */
    public record Output(Question question, Ownership.Result found) {}

    @Override
    public String name() {
        return "ownership-cost";
    }

    @Override
    public String question() {
        return "What does it cost over the years against the alternatives, and what would turn that round?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/cheapest", "/lead", "/options/0/perYear", "/options/0/presentValue", "/breakEven/0/option");
    }

    @Override
    public Class<OwnershipCostResult> resultType() {
        return OwnershipCostResult.class;
    }

    @Override
    public Question resolve(Setup setup, Resolution resolution) {
        return OwnershipSections.resolve(setup, resolution);
    }

    @Override
    public Output calculate(Question question, Trace trace) {
        return new Output(question, Ownership.of(question.input(), trace));
    }

    @Override
    public OwnershipCostResult show(Output output, UnitSystem units) {
        Ownership.Result found = output.found();
        Question question = output.question();
        List<Double> ranked = found.costs().stream()
                .map(Ownership.Cost::presentValue)
                .sorted(Comparator.naturalOrder())
                .toList();
        return new OwnershipCostResult(
                question.input().options().get(found.cheapest()).name(),
                ranked.size() < 2 ? null : money(ranked.get(1) - ranked.get(0), question),
                found.costs().stream().map(cost -> cost(cost, question, units)).toList(),
                found.breakEvens().stream()
                        .map(pair -> new BreakEven(
                                pair.option().name(),
                                pair.against().name(),
                                pair.years() == null ? null : units.lifeTime(TimeUnit.YEAR.toSi(pair.years()))))
                        .toList(),
                found.sensitivities().stream()
                        .map(one -> sensitivity(one, question, units))
                        .toList(),
                found.annuity());
    }

    private static Cost cost(Ownership.Cost cost, Question question, UnitSystem units) {
        CostOption option = cost.option();
        boolean replaced = cost.lifeYears() < Double.MAX_VALUE;
        Double distanceM = question.input().distancePerYearM();
        DistanceUnit unit = units == UnitSystem.METRIC ? DistanceUnit.KILOMETRE : DistanceUnit.MILE;
        double outKwh = EnergyUnit.KILOWATT_HOUR.fromSi(option.energyOutPerYearJ());
        return new Cost(
                option.name(),
                option.reference(),
                "/ownership/options/" + option.index(),
                money(cost.presentValue(), question),
                money(cost.perYear(), question),
                distanceM == null ? null : money(cost.perYear() / unit.fromSi(distanceM), question),
                outKwh > 0 ? money(cost.perYear() / outKwh, question) : null,
                replaced ? units.lifeTime(TimeUnit.YEAR.toSi(cost.lifeYears())) : null,
                replaced ? (cost.lifeYears() < option.calendarLifeYears() ? "cycles" : "calendar") : null,
                cost.replacements(),
                money(cost.purchase(), question),
                money(cost.laterSets(), question),
                cost.energy() == null ? null : money(cost.energy(), question),
                money(cost.upkeep(), question),
                money(cost.disposal(), question),
                money(cost.resale(), question),
                money(cost.purchasesWhole(), question),
                money(cost.purchasesProRata(), question),
                outKwh > 0 ? units.energy(cost.mainsEnergyPerYearJ()) : null);
    }

    private static Sensitivity sensitivity(Ownership.Sensitivity one, Question question, UnitSystem units) {
        CostOption option = one.option();
        return new Sensitivity(
                one.varied().toString(),
                option == null ? null : option.name(),
                one.value() != null,
                one.value() == null ? null : shown(one.varied(), one.value(), question, units),
                one.factor());
    }

    private static @Nullable Object shown(Varied varied, double value, Question question, UnitSystem units) {
        return switch (varied) {
            case ENERGY_PRICE, PRICE -> money(value, question);
            case LIFE -> units.lifeTime(TimeUnit.YEAR.toSi(value));
            case USE -> value > 0 ? (Double) value : null;
            case DISCOUNT_RATE -> value;
        };
    }

    private static Money money(double amount, Question question) {
        BigDecimal exact = new BigDecimal(amount, MathContext.DECIMAL64);
        BigDecimal shown = exact.scale() > DECIMALS ? exact.setScale(DECIMALS, RoundingMode.HALF_EVEN) : exact;
        return new Money(shown.stripTrailingZeros().toPlainString(), question.currency());
    }
}
