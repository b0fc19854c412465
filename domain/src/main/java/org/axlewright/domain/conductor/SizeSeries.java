package org.axlewright.domain.conductor;

/** Series of conductor sizes; AWG and SAE sizes of one number are not the same copper. {@code toString} is the name in requests. */
public enum SizeSeries {
    AWG("awg"),
    SAE("sae"),
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
