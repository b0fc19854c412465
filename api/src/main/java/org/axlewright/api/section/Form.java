package org.axlewright.api.section;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.Validator;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Unit;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import org.springframework.stereotype.Component;

/** The form of a setup: every range, every marking that can't be read, every contradiction, found together. */
@Component
public class Form {

    /** Components that Java could not call by their JSON name. */
    private static final Map<String, String> JSON_NAMES = Map.of("waiting", "wait");

    private final Validator validator;

    public Form(Validator validator) {
        this.validator = validator;
    }

    /** Everything wrong with the form, by pointer; empty when there is nothing. */
    public List<Fault> faults(Setup setup) {
        List<Fault> faults = new ArrayList<>(ranges(setup));
        Contradictions.find(setup, faults);
        faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::code));
        return faults;
    }

    /**
     * Ranges and markings alone: what can be said of each value by itself. Every range of a number is an interval, so two values that
     * pass vouch for all between them.
     */
    public List<Fault> ranges(Setup setup) {
        return validator.validate(setup).stream().map(Form::fault).toList();
    }

    /** Contradictions alone: what shows only between values. */
    public List<Fault> contradictions(Setup setup) {
        List<Fault> faults = new ArrayList<>();
        Contradictions.find(setup, faults);
        return faults;
    }

    private static Fault fault(ConstraintViolation<Setup> violation) {
        String pointer = pointer(violation.getPropertyPath());
        HibernateConstraintViolation<?> rich = violation.unwrap(HibernateConstraintViolation.class);
        WithinValidator.OutOfRange range = rich.getDynamicPayload(WithinValidator.OutOfRange.class);
        if (range != null) {
            return outOfRange(pointer, range.actual(), range.limitSi(), range.belowMinimum());
        }
        if (rich.getDynamicPayload(WithinValidator.Missing.class) != null) {
            return Fault.missing(pointer);
        }
        Legible.Complaint complaint = rich.getDynamicPayload(Legible.Complaint.class);
        if (complaint != null) {
            return new Fault(pointer, "unreadable", complaint.message(), violation.getInvalidValue(), null);
        }
        Map<String, Object> attributes = violation.getConstraintDescriptor().getAttributes();
        Object value = violation.getInvalidValue();
        if (attributes.containsKey("inclusive")) {
            BigDecimal limit = new BigDecimal(String.valueOf(attributes.get("value")));
            return outOfRange(pointer, (Number) value, limit);
        }
        if (value instanceof Number number) {
            return outOfRange(pointer, number, new BigDecimal(String.valueOf(attributes.get("value"))));
        }
        int size = value instanceof CharSequence text ? text.length() : value instanceof List<?> list ? list.size() : 0;
        Object minimum = attributes.get("min");
        boolean few = minimum instanceof Integer least && size < least;
        Object limit = few ? minimum : attributes.get("max");
        String what = value instanceof CharSequence ? "characters" : "entries";
        return new Fault(
                pointer,
                few ? "too-few" : "too-many",
                "Must have at " + (few ? "least " : "most ") + limit + " " + what + ", has " + size,
                size,
                limit);
    }

    private static Fault outOfRange(String pointer, Number actual, BigDecimal limit) {
        boolean below = actual.doubleValue() < limit.doubleValue();
        return new Fault(
                pointer,
                "out-of-range",
                "Must be at " + (below ? "least " : "most ") + limit.toPlainString() + ", was "
                        + readable(actual.doubleValue()),
                actual,
                limit);
    }

    /** A quantity beyond a limit, both in the sender's unit. */
    public static Fault outOfRange(String pointer, Quantity actual, double limitSi, boolean below) {
        Unit unit = actual.unit();
        double limit =
                new BigDecimal(unit.fromSi(limitSi)).round(new MathContext(12)).doubleValue();
        return new Fault(
                pointer,
                "out-of-range",
                "Must be at " + (below ? "least " : "most ") + readable(limit) + " " + unit + ", was "
                        + readable(actual.value()) + " " + unit,
                actual,
                Map.of("value", limit, "unit", unit));
    }

    static String readable(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros();
        return Math.abs(value) >= 1e9 ? rounded.toString() : rounded.toPlainString();
    }

    private static String pointer(Path path) {
        StringBuilder pointer = new StringBuilder();
        for (Path.Node node : path) {
            if (node.isInIterable() && node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (node.getKind() == ElementKind.PROPERTY && node.getName() != null) {
                pointer.append('/').append(JSON_NAMES.getOrDefault(node.getName(), node.getName()));
            }
        }
        return pointer.toString();
    }
}
