package org.axlewright.domain.packcheck;

/** What a block's readings say beside those of the others, best first. {@code toString} is the name in answers. */
public enum BlockState {
    /** Like the others. */
    ALIKE("alike"),
    /** Stands out from the others. */
    ODD("odd"),
    /** About one or more cells of lead-acid lower than the others. */
    DEAD_CELL("dead-cell"),
    /** Negative: connected the wrong way round, or driven into reverse. */
    REVERSED("reversed");

    private final String token;

    BlockState(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
