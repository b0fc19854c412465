package org.axlewright.domain.cable;

/** Series of conductor sizes; AWG and SAE sizes of one number are not the same copper. {@code toString} is the name in requests. */
public enum SizeSeries {
    /** American wire gauge, ASTM B258. */
    AWG("awg"),
    /** Automotive gauge, SAE J1127 and J1128: less copper than AWG of the same number. */
    SAE("sae"),
    /** Nominal area, IEC 60228. */
    MM2("mm2");

    private final String token;

    SizeSeries(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
