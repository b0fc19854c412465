package org.axlewright.domain.conductor;

import java.util.List;
import java.util.OptionalDouble;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.jspecify.annotations.Nullable;

/**
 * The fuse that is there, as far as it was described.
 *
 * @param ratingA A
 * @param voltageV rating for direct current, V
 * @param interruptingA interrupting rating at that voltage, A
 * @param curve time to melt by current, rising currents and falling times; empty when not known
 * @param temperatureC of its compartment, degC; null when not known, and then taken as that of the ratings
 * @param perRun whether each parallel run has its own; null when not said
 * @param distanceM along the conductor from the source, m
 * @param sheathed whether the conductor is sheathed or enclosed up to the fuse
 */
public record FuseSent(
        @Nullable Double ratingA,
        @Nullable Double voltageV,
        @Nullable Double interruptingA,
        List<Point> curve,
        @Nullable Double temperatureC,
        @Nullable Boolean perRun,
        @Nullable Double distanceM,
        boolean sheathed) {

    /** Nothing is known of it. */
    public static final FuseSent UNKNOWN = new FuseSent(null, null, null, List.of(), null, null, null, false);

    /** Temperature at which ratings and curves of fuses hold, degC. Source: fuse makers' selection notes [weak]. */
    public static final double RATED_C = 25;

    /** Loss of rating by kelvin above that. Recalled from makers' derating curves of slow fuses. */
    static final double DERATING_PER_K = 0.005;

    /** Hottest compartment for which the straight line is taken, degC. */
    public static final double HOTTEST_C = 125;

    /** A point of the maker's curve. */
    public record Point(double currentA, double timeS) {
        public Point {
            Check.positive(currentA, "currentA");
            Check.positive(timeS, "timeS");
        }
    }

    public FuseSent {
        curve = List.copyOf(curve);
        if (firstImplausible(curve) >= 0) {
            throw new InvalidInput("a fuse melts faster at a larger current");
        }
        if (temperatureC != null) {
            Check.within(temperatureC, -60, HOTTEST_C, "temperatureC");
        }
    }

    /** Place of the first point that does not melt faster at a larger current than the one before; -1 when all do. */
    public static int firstImplausible(List<Point> curve) {
        for (int i = 1; i < curve.size(); i++) {
            if (!(curve.get(i).currentA() > curve.get(i - 1).currentA()
                    && curve.get(i).timeS() < curve.get(i - 1).timeS())) {
                return i;
            }
        }
        return -1;
    }

    /** Share of the rating left in its compartment; 1 when that is not known or cool. */
    double temperatureFactor() {
        return temperatureC == null ? 1 : temperatureFactor(temperatureC);
    }

    static double temperatureFactor(double temperatureC) {
        return 1 - DERATING_PER_K * Math.max(0, temperatureC - RATED_C);
    }

    /**
     * Time to melt in its compartment, s: a straight line between the logarithms of two points. Nothing outside the points.
     *
     * @param currentA through this fuse, A
     */
    OptionalDouble meltingS(double currentA) {
        double asCool = currentA / temperatureFactor();
        for (int i = 1; i < curve.size(); i++) {
            Point slow = curve.get(i - 1);
            Point fast = curve.get(i);
            if (asCool >= slow.currentA() && asCool <= fast.currentA()) {
                double share = Math.log(asCool / slow.currentA()) / Math.log(fast.currentA() / slow.currentA());
                return OptionalDouble.of(slow.timeS() * Math.pow(fast.timeS() / slow.timeS(), share));
            }
        }
        return OptionalDouble.empty();
    }

    /** Current that melts it in a time in its compartment, A: the inverse of {@link #meltingS}. Nothing outside the points. */
    OptionalDouble meltingA(double timeS) {
        for (int i = 1; i < curve.size(); i++) {
            Point slow = curve.get(i - 1);
            Point fast = curve.get(i);
            if (timeS <= slow.timeS() && timeS >= fast.timeS()) {
                double share = Math.log(timeS / slow.timeS()) / Math.log(fast.timeS() / slow.timeS());
                return OptionalDouble.of(
                        slow.currentA() * Math.pow(fast.currentA() / slow.currentA(), share) * temperatureFactor());
            }
        }
        return OptionalDouble.empty();
    }

    /** Whether a current lies above the last point: it melts sooner than there, nobody knows how much. */
    boolean beyondCurve(double currentA) {
        return !curve.isEmpty()
                && currentA / temperatureFactor() > curve.get(curve.size() - 1).currentA();
    }

    /** Whether a current lies below the first point: it melts later than there, if ever. */
    boolean beforeCurve(double currentA) {
        return !curve.isEmpty() && currentA / temperatureFactor() < curve.get(0).currentA();
    }
}
