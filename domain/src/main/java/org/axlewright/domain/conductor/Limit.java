package org.axlewright.domain.conductor;

/** What a size is held against. {@code toString} is the name in answers. */
public enum Limit {
    /** RMS current against the current that the insulation allows. */
    AMPACITY("ampacity"),
    /** RMS current against the current that the terminals allow. */
    TERMINATION("termination"),
    /** Drop at the peak current against the share allowed. */
    VOLTAGE_DROP("voltage-drop"),
    /** Hottest moment of the cycle against the lower rating of insulation and terminals. */
    PEAK_HEATING("peak-heating");

    private final String token;

    Limit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
