package org.axlewright.api.whatif;

import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The bare number of a value, and its unit: what a plot draws. */
final class Plain {

    private Plain() {}

    /** The unit of a quantity, the currency of money; null for what has none. */
    static @Nullable Object unit(Object value) {
        return value instanceof Quantity quantity
                ? quantity.unit()
                : value instanceof Money money ? money.currency() : null;
    }

    /** The number in that unit; a text, a truth or a name as it is. */
    static Object in(@Nullable Object unit, Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.unit() == unit || !(unit instanceof Unit other)
                    ? quantity.value()
                    : other.fromSi(quantity.si());
        }
        return value instanceof Money money && isDecimal(money) ? (Object) money.decimal() : value;
    }

    /** Whether the amount is one, and has a currency. */
    static boolean isDecimal(Money money) {
        return money.amount() != null
                && money.currency() != null
                && money.amount().matches("-?\\d{1,16}(\\.\\d{1,16})?");
    }

    /** The number, null where the value is none. */
    static @Nullable Double number(@Nullable Object value) {
        if (value == null) {
            return null;
        }
        return in(unit(value), value) instanceof Number number ? (Double) number.doubleValue() : null;
    }
}
