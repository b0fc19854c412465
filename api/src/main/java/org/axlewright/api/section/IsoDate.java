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
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.axlewright.domain.check.Unreadable;
import org.jspecify.annotations.Nullable;

/** A day of the calendar, {@code 2026-11-25} (ISO 8601), from 1900 to 2999. */
@Documented
@Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.TYPE_USE,
    ElementType.RECORD_COMPONENT
})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = IsoDate.Reader.class)
public @interface IsoDate {
    String message() default "unreadable";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Reads the day as the calculations do. */
    final class Reader implements ConstraintValidator<IsoDate, String> {

        @Override
        public boolean isValid(@Nullable String text, ConstraintValidatorContext context) {
            return Legible.check(text, Reader::read, context);
        }

        /**
         * Reads a day.
         *
         * @throws Unreadable when it is none
         */
        public static LocalDate read(String text) {
            try {
                LocalDate day = LocalDate.parse(text);
                if (day.getYear() >= 1900 && day.getYear() <= 2999) {
                    return day;
                }
            } catch (DateTimeParseException noDay) {
                throw new Unreadable("A day is written year-month-day, such as \"2026-11-25\", was \"" + text + "\"");
            }
            throw new Unreadable("A day lies between the years 1900 and 2999, was \"" + text + "\"");
        }
    }
}
