package org.axlewright.domain.pack;

/** Cell chemistry of a pack. {@code toString} is the name in requests. */
public enum Chemistry {
    /** Lithium iron phosphate. */
    LFP("lfp"),
    /** Lithium nickel manganese cobalt oxide. */
    NMC("nmc"),
    /** Lead-acid with liquid electrolyte. */
    FLOODED("flooded"),
    /** Lead-acid, absorbent glass mat. */
    AGM("agm"),
    /** Lead-acid, gelled electrolyte. */
    GEL("gel");

    private final String token;

    Chemistry(String token) {
        this.token = token;
    }

    /** Whether the cells are lead-acid, of whatever build. */
    public boolean isLeadAcid() {
        return this == FLOODED || this == AGM || this == GEL;
    }

    @Override
    public String toString() {
        return token;
    }
}
