package org.axlewright.api.section;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.axlewright.domain.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** Nothing is read without a bound: quantities, shares, texts and lists of every section. */
class RangesTest {

    @Test
    void everythingThatCanBeSentHasABound() {
        List<String> unbounded = new ArrayList<>();
        Set<Class<?>> seen = new LinkedHashSet<>();
        walk(Setup.class, "", seen, unbounded);
        assertThat(seen).hasSizeGreaterThan(20);
        assertThat(unbounded).isEmpty();
    }

    private static void walk(Class<?> section, String pointer, Set<Class<?>> seen, List<String> unbounded) {
        if (!seen.add(section)) {
            return;
        }
        for (RecordComponent component : section.getRecordComponents()) {
            String at = pointer + "/" + component.getName();
            Class<?> type = component.getType();
            if (Quantity.class.isAssignableFrom(type)) {
                require(has(component, Within.class), at + " has no range", unbounded);
            } else if (type == Double.class || type == Ratio.class) {
                require(
                        has(component, DecimalMin.class) && has(component, DecimalMax.class),
                        at + " lacks a bound",
                        unbounded);
            } else if (type == String.class || type == List.class) {
                require(has(component, Size.class), at + " has no size", unbounded);
            }
            Type entry = component.getGenericType() instanceof ParameterizedType list
                    ? list.getActualTypeArguments()[0]
                    : type;
            if (entry instanceof Class<?> inner
                    && inner.isRecord()
                    && inner.getPackage() == Setup.class.getPackage()
                    && inner != RatedHours.class
                    && inner != Ratio.class) {
                walk(inner, at, seen, unbounded);
            }
        }
    }

    private static boolean has(RecordComponent component, Class<? extends Annotation> annotation) {
        return component.isAnnotationPresent(annotation)
                || component.getAccessor().isAnnotationPresent(annotation)
                || component.getAnnotatedType().isAnnotationPresent(annotation);
    }

    private static void require(boolean met, String complaint, List<String> unbounded) {
        if (!met) {
            unbounded.add(complaint);
        }
    }
}
