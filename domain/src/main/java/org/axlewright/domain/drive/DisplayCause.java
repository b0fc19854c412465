package org.axlewright.domain.drive;

/** What a wrong display points to, by the share of the true speed it shows. {@code toString} is the name in answers. */
public enum DisplayCause {
    /** Within 2 %: as good as right. */
    NONE("none"),
    /** 0.8 to 1.3: another tyre or ratio. */
    TYRE("tyre"),
    /** About a half or about twice: pulses for one turn. */
    PULSES("pulses"),
    /** Anything else: a sensor, its magnet or its wiring. */
    FAULT("fault");

    private final String token;

    DisplayCause(String token) {
        this.token = token;
    }

    /** By speed shown over true speed. */
    static DisplayCause of(double shownShare) {
        if (Math.abs(shownShare - 1) <= 0.02) {
            return NONE;
        }
        if (shownShare >= 0.8 && shownShare <= 1.3) {
            return TYRE;
        }
        return near(shownShare, 0.5) || near(shownShare, 2) ? PULSES : FAULT;
    }

    /** Within 10 %. */
    private static boolean near(double value, double wanted) {
        return Math.abs(value / wanted - 1) <= 0.1;
    }

    @Override
    public String toString() {
        return token;
    }
}
