package org.axlewright.domain.lift;

/** How an axle is lifted. {@code toString} is the name in requests. */
public enum LiftKind {
    /** A block between axle and leaf spring. */
    BLOCK("block"),
    /** A longer shackle at one eye of the leaf spring. */
    SHACKLE("shackle"),
    /** A spacer at the spring or strut. */
    SPACER("spacer"),
    /** A knuckle with the stub axle set lower. */
    SPINDLE("spindle"),
    /** Longer or dropped suspension arms. */
    ARMS("arms"),
    /** The body raised off the frame; frame and suspension stay. */
    BODY("body");

    private final String token;

    LiftKind(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
