package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.check.Check.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A beam on two supports at its ends under a load spread evenly and point loads.
 *
 * <p>Source: beam tables of Roark and Gere [from memory], simple beam.
 *
 * @param lengthM span, m
 * @param spreadNPerM load per length, N/m, down positive
 * @param points loads at places from 0 to the span
 * @param rigidityNm2 E·I, N·m²
 */
public record SimpleSpan(double lengthM, double spreadNPerM, List<Point> points, double rigidityNm2) {

    /** Places looked at for a level tangent before the root finder takes over. */
    private static final int PLACES = 200;

    private static final int LARGEST_NUMBER_OF_EVALUATIONS = 100;

    /** A load, N, down positive, at a place, m. */
    public record Point(double xM, double downN) {}

    /** A value and where it stands, m. */
    public record At(double xM, double value) {}

    public SimpleSpan {
        positive(lengthM, "lengthM");
        finite(spreadNPerM, "spreadNPerM");
        points = List.copyOf(points);
        points.forEach(point -> within(point.xM(), 0, lengthM, "xM"));
        positive(rigidityNm2, "rigidityNm2");
    }

    /** What the support at 0 carries, N. */
    public double leftN() {
        return spreadNPerM * lengthM / 2
                + points.stream()
                        .mapToDouble(point -> point.downN() * (lengthM - point.xM()) / lengthM)
                        .sum();
    }

    /** What the support at the far end carries, N. */
    public double rightN() {
        return spreadNPerM * lengthM / 2
                + points.stream()
                        .mapToDouble(point -> point.downN() * point.xM() / lengthM)
                        .sum();
    }

    /** Bending moment, N·m, positive where the bottom is stretched. */
    public double momentNm(double xM) {
        double moment = leftN() * xM - spreadNPerM * xM * xM / 2;
        for (Point point : points) {
            moment -= point.downN() * Math.max(0, xM - point.xM());
        }
        return moment;
    }

    /** Shear force just behind a place, N. */
    private double shearN(double xM) {
        double shear = leftN() - spreadNPerM * xM;
        for (Point point : points) {
            shear -= point.xM() <= xM ? point.downN() : 0;
        }
        return shear;
    }

    /** The largest shear force, N, by its size. */
    public double largestShearN() {
        double largest = Math.max(Math.abs(leftN()), Math.abs(rightN()));
        for (Point point : points) {
            double behind = shearN(point.xM());
            largest = Math.max(largest, Math.max(Math.abs(behind), Math.abs(behind + point.downN())));
        }
        return largest;
    }

    /** The largest bending moment by its size: at a load, or where the shear force passes through nothing between two. */
    public At largestMoment() {
        List<Double> places = new ArrayList<>(List.of(0.0, lengthM));
        points.forEach(point -> places.add(point.xM()));
        Collections.sort(places);
        At largest = new At(0, 0);
        for (int i = 0; i < places.size(); i++) {
            largest = larger(largest, places.get(i), momentNm(places.get(i)));
            if (i > 0 && spreadNPerM != 0) {
                double level = places.get(i - 1) + shearN(places.get(i - 1)) / spreadNPerM;
                if (level > places.get(i - 1) && level < places.get(i)) {
                    largest = larger(largest, level, momentNm(level));
                }
            }
        }
        return largest;
    }

    /** How far a place comes down, m. */
    public double deflectionM(double xM) {
        double l = lengthM;
        double sum = spreadNPerM * xM * (l * l * l - 2 * l * xM * xM + xM * xM * xM) / 24;
        for (Point point : points) {
            double near = Math.min(xM, point.xM());
            double far = l - Math.max(xM, point.xM());
            sum += point.downN() * near * far * (l * l - near * near - far * far) / (6 * l);
        }
        return sum / rigidityNm2;
    }

    private double slope(double xM) {
        double l = lengthM;
        double sum = spreadNPerM * (l * l * l - 6 * l * xM * xM + 4 * xM * xM * xM) / 24;
        for (Point point : points) {
            double a = point.xM();
            double b = l - a;
            sum += xM <= a
                    ? point.downN() * b * (l * l - b * b - 3 * xM * xM) / (6 * l)
                    : -point.downN() * a * (l * l - a * a - 3 * (l - xM) * (l - xM)) / (6 * l);
        }
        return sum;
    }

    /** The largest deflection by its size: where the tangent lies level. */
    public At largestDeflection() {
        At largest = new At(0, 0);
        double from = 0;
        for (int i = 1; i <= PLACES; i++) {
            double to = lengthM * i / PLACES;
            if (slope(from) * slope(to) < 0) {
                double level = new BracketingNthOrderBrentSolver(0, 1e-12, 0, 5)
                        .solve(LARGEST_NUMBER_OF_EVALUATIONS, this::slope, from, to);
                largest = larger(largest, level, deflectionM(level));
            }
            largest = larger(largest, to, deflectionM(to));
            from = to;
        }
        return largest;
    }

    private static At larger(At largest, double xM, double value) {
        return Math.abs(value) > Math.abs(largest.value()) ? new At(xM, value) : largest;
    }
}
