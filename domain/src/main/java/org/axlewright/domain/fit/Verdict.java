package org.axlewright.domain.fit;

/** What a check or a pair comes to, best first: the worst of several decides. {@code toString} is the name in answers. */
public enum Verdict {
    /** Within every limit that was sent. */
    FITS("fits"),
    /** Works as long as something named is kept to. */
    FITS_WITH_LIMITS("fits-with-limits"),
    /** A value is missing without which nobody can tell. */
    UNDECIDED("undecided"),
    /** Beyond a limit. */
    DOES_NOT_FIT("does-not-fit");

    private final String token;

    Verdict(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }

    Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
