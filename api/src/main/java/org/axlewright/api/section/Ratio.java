package org.axlewright.api.section;

import com.fasterxml.jackson.annotation.JsonValue;
import jakarta.validation.valueextraction.ExtractedValue;
import jakarta.validation.valueextraction.UnwrapByDefault;
import jakarta.validation.valueextraction.ValueExtractor;
import org.axlewright.domain.drive.Teeth;
import org.jspecify.annotations.Nullable;

/**
 * A reduction: turns of the motor for one turn of the wheel. Sent as a plain number, or as two tooth counts in a text such as
 * {@code "14:60"}, either way round.
 *
 * @param value the reduction
 * @param teeth the text as sent; null for a plain number
 */
public record Ratio(double value, @Nullable String teeth) {

    /**
     * Reads two tooth counts.
     *
     * @throws org.axlewright.domain.check.Unreadable when they are none
     */
    public static Ratio ofTeeth(String text) {
        return new Ratio(Teeth.parse(text).reduction(), text);
    }

    /** What was sent: a number, or the text. */
    @JsonValue
    Object asSent() {
        return teeth == null ? (Object) value : teeth;
    }

    /** Holds the bounds of a number against the reduction. Named in {@code META-INF/services}. */
    @UnwrapByDefault
    public static final class Value implements ValueExtractor<@ExtractedValue(type = Double.class) Ratio> {
        @Override
        public void extractValues(Ratio ratio, ValueReceiver receiver) {
            receiver.value(null, ratio.value());
        }
    }
}
