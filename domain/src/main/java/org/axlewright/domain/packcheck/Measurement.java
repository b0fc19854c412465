package org.axlewright.domain.packcheck;

/** The one measurement that would reduce the doubt most. {@code toString} is the name in answers. */
public enum Measurement {
    POLARITY(
            "polarity",
            "/readings/blocks",
            "Check the polarity of the block that reads negative, everything switched off, before any charge"),
    BLOCK_REST_VOLTAGES(
            "block-rest-voltages",
            "/readings/blocks",
            "The voltage of every single block at rest: a sum hides a reversed or weak one"),
    BLOCK_LOAD_VOLTAGES(
            "block-load-voltages",
            "/readings/blocks",
            "The voltage of every block under one known current, brake held for a few seconds: a weak block shows only under load"),
    LOAD_CURRENT(
            "load-current",
            "/readings/loadCurrent",
            "The current while the voltages under load were read: without it there is no resistance"),
    REST_AGAIN(
            "rest-again",
            "/readings/restTime",
            "The same voltages after 8 to 24 h off charge and load: before that they tell the last hour, not the charge"),
    SPECIFIC_GRAVITY(
            "specific-gravity",
            "/readings/blocks",
            "The specific gravity of each cell of the odd block: it tells a flat block from a spoilt one"),
    TIMED_DISCHARGE(
            "timed-discharge",
            "/readings/timeToCutOff",
            "A full pack discharged at one constant current to its cut-off, by the clock: nothing else tells the capacity"),
    CLAMP_CURRENT(
            "clamp-current",
            "/readings/clampCurrent",
            "The current in the battery cable at a steady speed on the level: it turns capacity into distance"),
    SAME_AGAIN(
            "same-again",
            "/readings",
            "The same readings in some weeks, at the same temperature: the change tells more than the value");

    private final String token;
    private final String pointer;
    private final String reason;

    Measurement(String token, String pointer, String reason) {
        this.token = token;
        this.pointer = pointer;
        this.reason = reason;
    }

    /** Where to send it. */
    public String pointer() {
        return pointer;
    }

    public String reason() {
        return reason;
    }

    @Override
    public String toString() {
        return token;
    }
}
