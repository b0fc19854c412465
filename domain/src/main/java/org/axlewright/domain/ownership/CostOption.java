package org.axlewright.domain.ownership;

import org.axlewright.domain.check.Check;
import org.jspecify.annotations.Nullable;

/**
 * One way to own: what is paid and when. Amounts in the one currency of the question.
 *
 * @param index place among the options
 * @param price of the first set
 * @param extras paid once at the start: charger, installation
 * @param replacementPrice of each later set
 * @param disposal paid for each set at the end of its life and at the end of the horizon
 * @param resale got at the end of the horizon
 * @param upkeepPerYear labour, water, maintenance, fuel
 * @param calendarLifeYears years of service; infinite for what is not replaced
 * @param cycleLife cycles; infinite when they don't count
 * @param cyclesPerYear 0 when not known
 * @param energyOutPerYearJ out of the pack, J; 0 when not known
 * @param efficiency energy out of the pack over energy from the mains
 */
public record CostOption(
        int index,
        String name,
        @Nullable String reference,
        double price,
        double extras,
        double replacementPrice,
        double disposal,
        double resale,
        double upkeepPerYear,
        double calendarLifeYears,
        double cycleLife,
        double cyclesPerYear,
        double energyOutPerYearJ,
        double efficiency) {

    public CostOption {
        Check.notNegative(price, "price");
        Check.notNegative(extras, "extras");
        Check.notNegative(replacementPrice, "replacement price");
        Check.notNegative(disposal, "disposal");
        Check.notNegative(resale, "resale");
        Check.notNegative(upkeepPerYear, "upkeep");
        Check.within(calendarLifeYears, Double.MIN_NORMAL, Double.POSITIVE_INFINITY, "calendar life");
        Check.within(cycleLife, Double.MIN_NORMAL, Double.POSITIVE_INFINITY, "cycle life");
        Check.notNegative(cyclesPerYear, "cycles");
        Check.notNegative(energyOutPerYearJ, "energy");
        Check.within(efficiency, Double.MIN_NORMAL, 1, "efficiency");
    }

    /** Years by the calendar or by cycles, whichever ends first. */
    double lifeYears() {
        return cyclesPerYear > 0 ? Math.min(calendarLifeYears, cycleLife / cyclesPerYear) : calendarLifeYears;
    }

    boolean cyclesEndFirst() {
        return cyclesPerYear > 0 && cycleLife / cyclesPerYear < calendarLifeYears;
    }

    /** Sets after the first over a horizon: ceil(N/life) − 1; a life that ends with the horizon needs none. */
    double replacements(double horizonYears) {
        return Math.max(0, Math.ceil(horizonYears / lifeYears() * (1 - 1e-12)) - 1);
    }

    CostOption withPrices(double factor) {
        return new CostOption(
                index,
                name,
                reference,
                price * factor,
                extras,
                replacementPrice * factor,
                disposal,
                resale,
                upkeepPerYear,
                calendarLifeYears,
                cycleLife,
                cyclesPerYear,
                energyOutPerYearJ,
                efficiency);
    }

    CostOption withLife(double factor) {
        return new CostOption(
                index,
                name,
                reference,
                price,
                extras,
                replacementPrice,
                disposal,
                resale,
                upkeepPerYear,
                calendarLifeYears * factor,
                cycleLife * factor,
                cyclesPerYear,
                energyOutPerYearJ,
                efficiency);
    }

    CostOption withUse(double factor) {
        return new CostOption(
                index,
                name,
                reference,
                price,
                extras,
                replacementPrice,
                disposal,
                resale,
                upkeepPerYear,
                calendarLifeYears,
                cycleLife,
                cyclesPerYear * factor,
                energyOutPerYearJ * factor,
                efficiency);
    }
}
