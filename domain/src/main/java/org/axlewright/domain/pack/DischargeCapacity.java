package org.axlewright.domain.pack;

import java.util.Comparator;
import java.util.List;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * What one string gives at a constant current, from full to cut-off at 25 degrees Celsius. Known rows of current and time; between two
 * rows Peukert's law with the exponent of the two, above the fastest row with {@link #exponentBeyond}. At currents below the slowest row
 * the capacity of that row holds: the law would promise more without end, and makers say only that at least the rated capacity is there
 * (battery-monitor maker's manual).
 *
 * <p>Peukert's law holds for constant current and temperature without self-discharge; it over-predicts the loss under intermittent load,
 * and the exponent grows with age.
 */
public final class DischargeCapacity {

    private static final Symbol TIME = new Symbol("H", Dimension.TIME);
    private static final Symbol CHARGE = new Symbol("C", Dimension.CHARGE);
    private static final Symbol CURRENT = new Symbol("I", Dimension.CURRENT);
    private static final Symbol EXPONENT = new Symbol("k", Dimension.NONE);
    private static final Source MANUAL =
            Source.published("battery-monitor maker's manual: Peukert's law from two discharges");

    private static final Step FITTED = Step.of(
            "k",
            "Peukert exponent between two rows",
            "k = ln(t1/t2)/ln(I2/I1)",
            Dimension.NONE,
            MANUAL,
            new Symbol("I1", Dimension.CURRENT),
            new Symbol("t1", Dimension.TIME),
            new Symbol("I2", Dimension.CURRENT),
            new Symbol("t2", Dimension.TIME));
    private static final Step DURATION = Step.of(
            "t",
            "time of one string from full to cut-off at the current, 25 degC",
            "t = H·(C/(I·H))^k",
            Dimension.TIME,
            MANUAL,
            TIME,
            CHARGE,
            CURRENT,
            EXPONENT);
    private static final Step AT_CURRENT = Step.of(
            "CI",
            "capacity of one string at the current, 25 degC",
            "CI = I·t",
            Dimension.CHARGE,
            MANUAL,
            CURRENT,
            new Symbol("t", Dimension.TIME));
    private static final Step RATED = Step.of(
            "CI",
            "capacity of one string at or below the rated current, 25 degC",
            "CI = C",
            Dimension.CHARGE,
            Source.published(
                    "battery-monitor maker's manual: at the rated current or slower the rated capacity is there"),
            CHARGE);

    private final List<Row> rows;
    private final double exponentBeyond;

    /**
     * A constant-current discharge from full to cut-off.
     *
     * @param currentA of one string, A
     * @param timeS to cut-off, s
     */
    public record Row(double currentA, double timeS) {

        public Row {
            Check.positive(currentA, "currentA");
            Check.positive(timeS, "timeS");
        }

        /** What the discharge gave, C. */
        public double capacityC() {
            return currentA * timeS;
        }
    }

    private DischargeCapacity(List<Row> rows, double exponentBeyond) {
        this.rows = rows;
        this.exponentBeyond = exponentBeyond;
    }

    /**
     * A capacity at an hour rate with an exponent.
     *
     * @param capacityC of one string, C
     * @param ratedTimeS the hour rate, s
     * @param exponent Peukert exponent, 1 to 2
     */
    public static DischargeCapacity rated(double capacityC, double ratedTimeS, double exponent) {
        return new DischargeCapacity(
                List.of(new Row(capacityC / ratedTimeS, ratedTimeS)), Check.within(exponent, 1, 2, "exponent"));
    }

    /** A maker's rows, at least two, whose capacity does not grow with the current ({@link #firstImplausible}). */
    public static DischargeCapacity rows(List<Row> rows) {
        List<Row> sorted =
                rows.stream().sorted(Comparator.comparingDouble(Row::currentA)).toList();
        if (sorted.size() < 2) {
            throw new InvalidInput("at least two rows, got " + sorted.size());
        }
        Row last = sorted.get(sorted.size() - 1);
        return new DischargeCapacity(sorted, exponent(sorted.get(sorted.size() - 2), last));
    }

    /** Peukert exponent of two discharges of the same string: k = ln(t1/t2)/ln(I2/I1). */
    public static double exponent(Row slow, Row fast) {
        return Math.log(slow.timeS() / fast.timeS()) / Math.log(fast.currentA() / slow.currentA());
    }

    /**
     * Index of the first row, as given, that no cell can give beside another: the same current twice, or a larger capacity than at a
     * smaller current, or an exponent above 2; -1 when the rows agree.
     */
    public static int firstImplausible(List<Row> rows) {
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < i; j++) {
                Row one = rows.get(i);
                Row other = rows.get(j);
                boolean slower = one.currentA() < other.currentA();
                double exponent = slower ? exponent(one, other) : exponent(other, one);
                // rows with the capacity printed to the last digit give an exponent of 1 less a rounding error
                if (!(exponent >= 1 - 1e-9 && exponent <= 2)) {
                    return i;
                }
            }
        }
        return -1;
    }

    /** Current of the slowest row, A: the rated current. */
    public double slowestA() {
        return rows.get(0).currentA();
    }

    /** Current of the fastest row, A. */
    public double fastestA() {
        return rows.get(rows.size() - 1).currentA();
    }

    /** Whether more than one row was given. */
    public boolean fitted() {
        return rows.size() > 1;
    }

    /** Exponent above the fastest row. */
    public double exponentBeyond() {
        return exponentBeyond;
    }

    /** Capacity at the slowest row, C: what the label says. */
    public double ratedC() {
        return rows.get(0).capacityC();
    }

    /**
     * What one string gives at that current, C.
     *
     * @param currentA of one string, A; zero and less (charging on balance) counts as slower than the slowest row
     */
    public double at(double currentA, Trace trace) {
        Check.finite(currentA, "currentA");
        if (currentA <= slowestA()) {
            return trace.note(RATED, ratedC(), ratedC());
        }
        int i = 0;
        while (i + 1 < rows.size() && rows.get(i + 1).currentA() < currentA) {
            i++;
        }
        Row row = rows.get(i);
        double k = exponentBeyond;
        if (fitted()) {
            int first = Math.min(i, rows.size() - 2);
            Row slow = rows.get(first);
            Row fast = rows.get(first + 1);
            k = trace.note(FITTED, exponent(slow, fast), slow.currentA(), slow.timeS(), fast.currentA(), fast.timeS());
        }
        double time = trace.note(
                DURATION,
                row.timeS() * Math.pow(row.currentA() / currentA, k),
                row.timeS(),
                row.capacityC(),
                currentA,
                k);
        return trace.note(AT_CURRENT, currentA * time, currentA, time);
    }
}
