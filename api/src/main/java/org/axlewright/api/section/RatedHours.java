package org.axlewright.api.section;

import com.fasterxml.jackson.annotation.JsonValue;
import org.axlewright.domain.quantity.Time;

/**
 * The hour rate of a capacity. Data sheets print it as a bare number of hours ("C/20", "at the 5 h rate"), so a plain number is read as
 * hours; a time with its unit is read too.
 *
 * @param time the hour rate
 * @param plain whether it was sent as a plain number
 */
public record RatedHours(Time time, boolean plain) {

    /** What was sent: a plain number of hours, or a time with its unit. */
    @JsonValue
    Object asSent() {
        return plain ? time.value() : time;
    }
}
