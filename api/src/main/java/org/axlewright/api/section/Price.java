package org.axlewright.api.section;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.regex.Pattern;
import org.axlewright.domain.quantity.Money;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** A price: a plain decimal amount from 0 to {@link #max()} and an ISO 4217 currency. */
@Documented
@Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.TYPE_USE,
    ElementType.RECORD_COMPONENT
})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = Price.Reader.class)
public @interface Price {
    /** Largest amount. */
    long max() default 1000;

    String message() default "unreadable";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Checks amount and currency apart, each at its own pointer. */
    final class Reader implements ConstraintValidator<Price, Money> {

        private static final Pattern PLAIN_DECIMAL = Pattern.compile("\\d{1,12}(\\.\\d{1,12})?");
        private BigDecimal maximum = BigDecimal.ZERO;

        @Override
        public void initialize(Price price) {
            maximum = BigDecimal.valueOf(price.max());
        }

        @Override
        public boolean isValid(@Nullable Money money, ConstraintValidatorContext context) {
            if (money == null) {
                return true;
            }
            context.disableDefaultConstraintViolation();
            boolean valid = true;
            if (money.amount() == null
                    || !PLAIN_DECIMAL.matcher(money.amount()).matches()
                    || money.decimal().compareTo(maximum) > 0) {
                complain(
                        "amount",
                        "Amount must be a plain decimal text from \"0\" to \"" + maximum + "\", such as \"0.31\"",
                        context);
                valid = false;
            }
            if (money.currency() == null) {
                WithinValidator.missing("currency", context);
                valid = false;
            } else if (Currency.getAvailableCurrencies().stream()
                    .noneMatch(known -> known.getCurrencyCode().equals(money.currency()))) {
                complain(
                        "currency",
                        "Currency must be an ISO 4217 code, such as \"EUR\", was \"" + money.currency() + "\"",
                        context);
                valid = false;
            }
            return valid;
        }

        private static void complain(String property, String message, ConstraintValidatorContext context) {
            context.unwrap(HibernateConstraintValidatorContext.class)
                    .withDynamicPayload(new Legible.Complaint(message))
                    .buildConstraintViolationWithTemplate("unreadable")
                    .addPropertyNode(property)
                    .addConstraintViolation();
        }
    }
}
