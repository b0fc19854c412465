package org.axlewright.domain.trace;

/** How far a source can be trusted. The mark is shown behind the citation where the reader must know it. */
public enum Standing {
    /** Printed in a named standard, handbook, textbook, paper, maker's data sheet or on a government or university page. */
    PUBLISHED(""),
    /** A regulation or a table of a standard. */
    REGULATION(""),
    /** Own arithmetic from published figures, with the formula shown. */
    DERIVED(" [derived]"),
    /** Seen only on an unsigned or low-authority page. */
    WEAK(" [weak]"),
    /** Recalled, not seen in a source. */
    MEMORY(" [from memory]"),
    /** A habit of the trade that no publication states. */
    PRACTICE("");

    private final String mark;

    Standing(String mark) {
        this.mark = mark;
    }

    String mark() {
        return mark;
    }
}
