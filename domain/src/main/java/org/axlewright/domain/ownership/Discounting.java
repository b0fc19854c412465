package org.axlewright.domain.ownership;

/** Factors of engineering economics: discrete compounding once a year. Times in years, rates as a share for each year. */
public final class Discounting {

    private Discounting() {}

    /** Present value of one unit in t years: (1 + d)^−t. */
    public static double single(double rate, double years) {
        return Math.pow(1 + rate, -years);
    }

    /** What one unit grows to in t years: (1 + d)^t. */
    public static double growth(double rate, double years) {
        return Math.pow(1 + rate, years);
    }

    /**
     * Present value of one unit at the end of each year, the last part of a year at its end in proportion: P/A = [1 − (1 + d)^−n]/d for
     * whole years.
     */
    public static double series(double rate, double years) {
        double whole = Math.floor(years);
        double rest = years - whole;
        return repeated(rate, 1, whole) + (rest > 0 ? rest * single(rate, years) : 0);
    }

    /** Present value of one unit at every interval, {@code times} of them, the first after one interval. */
    public static double repeated(double rate, double intervalYears, double times) {
        double ratio = single(rate, intervalYears);
        double gap = -Math.expm1(-intervalYears * Math.log1p(rate)); // 1 − ratio, exact near a rate of 0
        return gap < 1e-14 ? times : ratio * -Math.expm1(-times * intervalYears * Math.log1p(rate)) / gap;
    }
}
