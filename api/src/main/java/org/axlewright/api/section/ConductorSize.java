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
import org.jspecify.annotations.Nullable;

/** A conductor size that can be read. */
@Documented
@Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.TYPE_USE,
    ElementType.RECORD_COMPONENT
})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = ConductorSize.Reader.class)
public @interface ConductorSize {
    String message() default "unreadable";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Reads the designation as the calculations do. */
    final class Reader implements ConstraintValidator<ConductorSize, String> {
        @Override
        public boolean isValid(@Nullable String designation, ConstraintValidatorContext context) {
            return Legible.check(designation, org.axlewright.domain.cable.ConductorSize::parse, context);
        }
    }
}
