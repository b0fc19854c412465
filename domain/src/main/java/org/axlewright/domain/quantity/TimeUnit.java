package org.axlewright.domain.quantity;

/** Units of time; SI unit: second. Factors are exact (NIST SP 811, 2008, Appendix B). */
public enum TimeUnit implements Unit {
    MILLISECOND("ms", 0.001),
    SECOND("s", 1),
    MINUTE("min", 60),
    HOUR("h", 3600),
    DAY("d", 86400),
    WEEK("week", 604800),
    MONTH("month", 2629746),
    YEAR("a", 31556952);

    private final String token;
    private final double factor;

    TimeUnit(String token, double factor) {
        this.token = token;
        this.factor = factor;
    }

    @Override
    public double toSi(double value) {
        return value * factor;
    }

    @Override
    public double fromSi(double si) {
        return si / factor;
    }

    @Override
    public String toString() {
        return token;
    }
}
