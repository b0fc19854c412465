package org.axlewright.api.calculation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.axlewright.api.calculation.Answer.ShownAssumption;
import org.axlewright.api.calculation.Answer.ShownCaution;
import org.axlewright.api.calculation.Answer.ShownFinding;
import org.axlewright.api.calculation.Answer.ShownStep;
import org.axlewright.api.calculation.Answer.ShownTerm;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Assumption;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Puts what the domain noted into the units and words of the answer. */
final class Shown {

    private Shown() {}

    static List<ShownFinding> findings(Trace trace, UnitSystem units) {
        return trace.findings().stream()
                .sorted(Comparator.comparing(Finding::level).reversed())
                .map(finding -> finding(finding, units))
                .toList();
    }

    static ShownFinding finding(Finding finding, UnitSystem units) {
        return new ShownFinding(
                finding.code(),
                finding.level(),
                filled(finding, units),
                finding.pointer(),
                finding.state(),
                finding.actual() == null ? null : value(finding.actual(), units),
                finding.limit() == null ? null : value(finding.limit(), units),
                finding.action(),
                finding.source().toString());
    }

    static List<ShownAssumption> assumptions(List<Assumption> assumptions, UnitSystem units) {
        return assumptions.stream()
                .map(assumption -> new ShownAssumption(
                        assumption.code(),
                        assumption.pointer(),
                        value(assumption.value(), units),
                        assumption.reason(),
                        assumption.source().toString()))
                .toList();
    }

    static List<ShownStep> working(Trace trace) {
        return trace.lines().stream()
                .map(line -> new ShownStep(
                        line.step().symbol(),
                        line.step().meaning(),
                        line.step().formula(),
                        line.terms().stream()
                                .map(term -> new ShownTerm(
                                        term.symbol().name(),
                                        term.value(),
                                        term.symbol().dimension().siUnit()))
                                .toList(),
                        line.value(),
                        line.step().dimension().siUnit(),
                        line.step().source().toString()))
                .toList();
    }

    static List<ShownCaution> cautions(Trace trace) {
        return trace.cautions().stream()
                .map(caution -> new ShownCaution(caution.code(), caution.message()))
                .toList();
    }

    /** What could be sent: measures become quantities, names their tokens; maps and lists go through. */
    private static Object value(Object value, UnitSystem units) {
        if (value instanceof Measure measure) {
            return measure.dimension().show(measure.si(), units);
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> shown = new LinkedHashMap<>();
            map.forEach((key, part) -> shown.put(String.valueOf(key), value(part, units)));
            return shown;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(part -> value(part, units)).toList();
        }
        return value instanceof Enum<?> name ? name.toString() : value;
    }

    private static String filled(Finding finding, UnitSystem units) {
        return finding.message()
                .replace("{actual}", text(finding.actual(), units))
                .replace("{limit}", text(finding.limit(), units));
    }

    private static String text(@Nullable Measure measure, UnitSystem units) {
        if (measure == null) {
            return "";
        }
        Object shown = measure.dimension().show(measure.si(), units);
        return shown instanceof Quantity quantity
                ? readable(quantity.value()) + " " + quantity.unit()
                : readable((Double) shown);
    }

    /** Three significant digits for the eye; the exact value stands beside the message. */
    static String readable(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
