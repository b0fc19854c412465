package org.axlewright.domain.legalclass;

/** Whose thresholds they are. {@code toString} is the name in answers. */
public enum Region {
    UNITED_STATES("united-states"),
    CANADA("canada"),
    EUROPEAN_UNION("european-union");

    private final String token;

    Region(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
