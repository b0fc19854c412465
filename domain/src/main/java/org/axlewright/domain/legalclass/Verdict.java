package org.axlewright.domain.legalclass;

/** Whether a condition is met, or all conditions of a class. {@code toString} is the name in answers. */
public enum Verdict {
    /** Every figure lies inside. */
    MET("met"),
    /** At least one figure lies outside. */
    NOT_MET("not-met"),
    /** Nothing lies outside, and something is not known or falls between two printings of a limit. */
    UNDECIDED("undecided");

    private final String token;

    Verdict(String token) {
        this.token = token;
    }

    /** Of conditions that must all be met. */
    Verdict and(Verdict other) {
        if (this == NOT_MET || other == NOT_MET) {
            return NOT_MET;
        }
        return this == MET ? other : this;
    }

    @Override
    public String toString() {
        return token;
    }
}
