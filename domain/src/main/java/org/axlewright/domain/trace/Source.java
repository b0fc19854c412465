package org.axlewright.domain.trace;

/** Where a formula, table or value comes from. {@code toString} is what answers show. */
public record Source(String citation, Standing standing) {

    /** A fact of the trade that no publication states. */
    public static final Source COMMON_PRACTICE = new Source("common practice, no source", Standing.PRACTICE);

    public static Source published(String citation) {
        return new Source(citation, Standing.PUBLISHED);
    }

    public static Source regulation(String citation) {
        return new Source(citation, Standing.REGULATION);
    }

    public static Source derived(String citation) {
        return new Source(citation, Standing.DERIVED);
    }

    public static Source weak(String citation) {
        return new Source(citation, Standing.WEAK);
    }

    public static Source memory(String citation) {
        return new Source(citation, Standing.MEMORY);
    }

    @Override
    public String toString() {
        return citation + standing.mark();
    }
}
