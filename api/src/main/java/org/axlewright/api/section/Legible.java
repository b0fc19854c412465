package org.axlewright.api.section;

import jakarta.validation.ConstraintValidatorContext;
import java.util.function.Consumer;
import org.axlewright.domain.check.Unreadable;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** Turns a reader's complaint into a violation that carries it. */
final class Legible {

    private Legible() {}

    /** What a reader said of a text; written for people. */
    record Complaint(String message) {}

    static boolean check(@Nullable String text, Consumer<String> reader, ConstraintValidatorContext context) {
        if (text == null) {
            return true;
        }
        try {
            reader.accept(text);
            return true;
        } catch (Unreadable unreadable) {
            context.disableDefaultConstraintViolation();
            String message = unreadable.getMessage();
            context.unwrap(HibernateConstraintValidatorContext.class)
                    .withDynamicPayload(new Complaint(message == null ? "not readable" : message))
                    .buildConstraintViolationWithTemplate("unreadable")
                    .addConstraintViolation();
            return false;
        }
    }
}
