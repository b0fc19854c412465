package org.axlewright.api.section;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Unit;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** Compares in the unit of the annotation; both ends are included. */
public final class WithinValidator implements ConstraintValidator<Within, Object> {

    private double min;
    private double max;
    private String unit = "";

    /** What is wrong, for the error: the limit passed over, in the unit of the annotation. */
    record OutOfRange(Quantity actual, double limitSi, boolean belowMinimum) {}

    /** A part of a value that must be there. */
    record Missing() {}

    @Override
    public void initialize(Within range) {
        min = range.min();
        max = range.max();
        unit = range.unit();
    }

    @Override
    public boolean isValid(@Nullable Object sent, ConstraintValidatorContext context) {
        if (sent == null) {
            return true;
        }
        Quantity quantity = sent instanceof RatedHours hours ? hours.time() : (Quantity) sent;
        if (quantity.unit() == null || Double.isNaN(quantity.value())) {
            return incomplete(quantity, context);
        }
        Unit limitUnit = unitOf(quantity, unit);
        double si = quantity.si();
        double minimumSi = limitUnit.toSi(min);
        double maximumSi = limitUnit.toSi(max);
        if (si >= minimumSi && si <= maximumSi) {
            return true;
        }
        boolean below = si < minimumSi;
        context.disableDefaultConstraintViolation();
        var violation = context.unwrap(HibernateConstraintValidatorContext.class)
                .withDynamicPayload(new OutOfRange(quantity, below ? minimumSi : maximumSi, below))
                .buildConstraintViolationWithTemplate("out of range");
        if (sent instanceof RatedHours hours && hours.plain()) {
            violation.addConstraintViolation();
        } else {
            violation.addPropertyNode("value").addConstraintViolation();
        }
        return false;
    }

    /** A quantity that was sent without its value or without its unit. */
    private static boolean incomplete(Quantity quantity, ConstraintValidatorContext context) {
        context.disableDefaultConstraintViolation();
        if (quantity.unit() == null) {
            missing("unit", context);
        }
        if (Double.isNaN(quantity.value())) {
            missing("value", context);
        }
        return false;
    }

    static void missing(String property, ConstraintValidatorContext context) {
        context.unwrap(HibernateConstraintValidatorContext.class)
                .withDynamicPayload(new Missing())
                .buildConstraintViolationWithTemplate("missing")
                .addPropertyNode(property)
                .addConstraintViolation();
    }

    /** The unit with that token in the dimension of the quantity. */
    static Unit unitOf(Quantity quantity, String token) {
        for (Unit candidate : quantity.unit().getClass().isEnum()
                ? (Unit[]) quantity.unit().getClass().getEnumConstants()
                : (Unit[]) quantity.unit().getClass().getSuperclass().getEnumConstants()) {
            if (candidate.toString().equals(token)) {
                return candidate;
            }
        }
        throw new IllegalStateException("No unit " + token + " in the dimension of " + quantity.unit());
    }
}
