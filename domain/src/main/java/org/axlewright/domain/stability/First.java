package org.axlewright.domain.stability;

/** What happens first as a turn gets faster. {@code toString} is the name in answers. */
public enum First {
    /** The tyres hold, the inner wheels lift. */
    TIPS("tips"),
    /** The tyres let go, as long as the ground stays even. */
    SLIDES("slides"),
    /** Friction lies between what a rigid vehicle stands and what tests of similar ones showed. */
    EITHER("either");

    private final String token;

    First(String token) {
        this.token = token;
    }

    /**
     * Compares what the vehicle stands with what the tyres hold.
     *
     * @param factor static stability factor towards the outside of the turn
     * @param friction tyre to ground
     */
    static First of(double factor, double friction) {
        if (friction >= factor) {
            return TIPS;
        }
        return friction >= Footprint.BAND_LOW * factor ? EITHER : SLIDES;
    }

    @Override
    public String toString() {
        return token;
    }
}
