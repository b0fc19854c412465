package org.axlewright.domain.legalclass;

/** Who changes a vehicle. {@code toString} is the name in requests. */
public enum ChangedBy {
    /** Its maker or a later-stage maker, before the first sale. */
    MAKER("maker"),
    /** A dealer, rental or repair business. */
    SHOP("shop"),
    /** Its owner. */
    OWNER("owner");

    private final String token;

    ChangedBy(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
