package org.axlewright.domain.charging;

/** What sets the charging current; of equals the first named here. {@code toString} is the name in answers. */
public enum LimitedBy {
    /** The charge limit of the pack. */
    PACK("pack"),
    /** The charger's rated output. */
    CHARGER_OUTPUT("charger-output"),
    /** The largest mains current the charger draws. */
    CHARGER_INPUT("charger-input"),
    /** The extension cord. */
    CORD("cord"),
    /** The outlet and the circuit behind it. */
    OUTLET("outlet");

    private final String token;

    LimitedBy(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
