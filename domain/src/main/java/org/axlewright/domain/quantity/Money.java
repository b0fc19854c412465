package org.axlewright.domain.quantity;

import java.math.BigDecimal;

/**
 * An amount of money, or a price for each kilowatt-hour where a field says so. Decimal, never binary.
 *
 * @param amount as a decimal text, so that no cent is lost on the way
 * @param currency ISO 4217 code
 */
public record Money(String amount, String currency) {

    /** The amount as a number; the text must be a plain decimal. */
    public BigDecimal decimal() {
        return new BigDecimal(amount);
    }
}
