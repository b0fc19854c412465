package org.axlewright.api.assessment;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A value of a result that can be subtracted: a plain number, a quantity or an amount of money.
 *
 * @param value in its unit
 * @param like the value as shown, for its shape and unit
 */
record Amount(double value, JsonNode like) {

    /** Null when it is no such value. */
    static @Nullable Amount of(JsonNode shown) {
        if (shown.isNumber()) {
            return new Amount(shown.asDouble(), shown);
        }
        if (isQuantity(shown)) {
            return new Amount(shown.path("value").asDouble(), shown);
        }
        return isMoney(shown) ? new Amount(new BigDecimal(shown.path("amount").asString()).doubleValue(), shown) : null;
    }

    static boolean isQuantity(JsonNode shown) {
        return shown.isObject()
                && shown.size() == 2
                && shown.path("value").isNumber()
                && shown.path("unit").isString();
    }

    static boolean isMoney(JsonNode shown) {
        return shown.isObject()
                && shown.size() == 2
                && shown.path("amount").isString()
                && shown.path("currency").isString();
    }

    /** Whether the two can be subtracted: same shape, same unit or currency. */
    boolean comparable(Amount other) {
        return like.isNumber()
                ? other.like.isNumber()
                : like.path("unit").equals(other.like.path("unit"))
                        && like.path("currency").equals(other.like.path("currency"));
    }

    /** A value of the same shape and unit. */
    JsonNode shaped(double other) {
        if (like.isNumber()) {
            return JsonNodeFactory.instance.numberNode(other);
        }
        ObjectNode shaped = like.deepCopy().asObject();
        if (isMoney(like)) {
            shaped.put("amount", BigDecimal.valueOf(other).toPlainString());
        } else {
            shaped.put("value", other);
        }
        return shaped;
    }
}
