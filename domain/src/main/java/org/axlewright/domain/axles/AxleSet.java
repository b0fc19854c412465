package org.axlewright.domain.axles;

/** The axles that drive or brake. {@code toString} is the name in requests. */
public enum AxleSet {
    FRONT("front"),
    REAR("rear"),
    ALL("all");

    private final String token;

    AxleSet(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
