package org.axlewright.api.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.axlewright.api.section.RatedHours;
import org.axlewright.api.section.Ratio;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Values of one kind that differ in their number alone: lengths in inches, whole numbers, amounts of one currency.
 *
 * @param sample one of them
 * @param number the component that holds the number, where the sample is a quantity
 */
record Scale(Object sample, @Nullable Place number) {

    /** Of a price, a ten-billionth: more digits than any currency has. */
    private static final int MONEY_DIGITS = 10;

    /** The scale on which a value lies; null when it has no number. */
    static @Nullable Scale of(Object sample) {
        if (sample instanceof Quantity) {
            try {
                return new Scale(sample, Place.of("/value", sample.getClass(), "quantity"));
            } catch (Place.Unknown impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        boolean numeric = sample instanceof Double
                || sample instanceof Integer
                || (sample instanceof Money money && Plain.isDecimal(money))
                || (sample instanceof RatedHours hours && hours.plain())
                || (sample instanceof Ratio ratio && ratio.teeth() == null);
        return numeric ? new Scale(sample, null) : null;
    }

    /** Whether only whole numbers lie on it. */
    boolean whole() {
        return sample instanceof Integer;
    }

    /** Unit or currency; null for plain numbers. */
    @Nullable
    Object unit() {
        return Plain.unit(sample);
    }

    /** The number of a value of the same kind, in the unit of the sample. */
    double at(Object value) {
        if (value instanceof RatedHours hours) {
            return hours.time().value();
        }
        if (value instanceof Ratio ratio) {
            return ratio.value();
        }
        return ((Number) Plain.in(unit(), value)).doubleValue();
    }

    /** The value with this number. */
    Object with(double value) {
        if (number != null) {
            return number.with(sample, value);
        }
        if (sample instanceof Integer) {
            return (int) Math.rint(value);
        }
        if (sample instanceof Money money) {
            BigDecimal amount = BigDecimal.valueOf(value).setScale(MONEY_DIGITS, RoundingMode.HALF_EVEN);
            return new Money(amount.stripTrailingZeros().toPlainString(), money.currency());
        }
        if (sample instanceof RatedHours) {
            return new RatedHours(new Time(value, TimeUnit.HOUR), true);
        }
        return sample instanceof Ratio ? new Ratio(value, null) : (Object) value;
    }

    /** Coherent SI of a number on the scale, for comparing two ends in different units. */
    double si(double value) {
        return unit() instanceof Unit unit ? unit.toSi(value) : value;
    }
}
