package org.axlewright.domain.pack;

/** How an internal resistance was measured. {@code toString} is the name in requests. */
public enum ResistanceMethod {
    /** From the voltage step after ten seconds of direct current. */
    DC_10S("dc-10s"),
    /** With a 1 kHz meter; reads lower than under load. */
    AC_1KHZ("ac-1khz");

    private final String token;

    ResistanceMethod(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
