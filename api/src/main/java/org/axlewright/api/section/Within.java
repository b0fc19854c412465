package org.axlewright.api.section;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Range of a quantity, both ends included. Checked after conversion and reported in the sender's unit at {@code <pointer>/value}. */
@Documented
@Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.TYPE_USE,
    ElementType.RECORD_COMPONENT
})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = WithinValidator.class)
public @interface Within {
    double min();

    double max();

    /** Token of the unit in which {@link #min} and {@link #max} are written. */
    String unit();

    String message() default "out of range";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
