package org.axlewright.domain.motor;

/** Duty for which a motor is rated (IEC 60034-1, duty types). {@code toString} is the name in requests. */
public enum DutyType {
    /** Continuous running. */
    S1("s1"),
    /** Short time, then cold again. */
    S2("s2"),
    /** Intermittent periodic. */
    S3("s3");

    private final String token;

    DutyType(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
