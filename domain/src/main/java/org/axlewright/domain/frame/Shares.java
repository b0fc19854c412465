package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.List;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** How a weight that lies across a frame shares out over its rails. */
final class Shares {

    /** Rails nearer than this, m, are one line: they share by stiffness alone. */
    private static final double ONE_LINE_M = 0.01;

    private static final Step TWO = Step.of(
            "s",
            "share of the weight on the rail",
            "s = (y_o − y)/(y_o − y_i)",
            NONE,
            Source.published("statics: moments about the other rail"),
            new Symbol("y_o", LENGTH),
            new Symbol("y", LENGTH),
            new Symbol("y_i", LENGTH));
    private static final Step MANY = Step.of(
            "s",
            "share of the weight on the rail, rigid cradle on rails of unlike stiffness",
            "s = κ·(1 + (y − ȳ)·(y_i − ȳ)/S), κ = I/ΣI, ȳ = Σκ·y_i, S = Σκ·(y_i − ȳ)²",
            NONE,
            Source.derived("a rigid body on parallel springs; two rails give the moments of statics"),
            new Symbol("κ", NONE),
            new Symbol("y", LENGTH),
            new Symbol("ȳ", LENGTH),
            new Symbol("y_i", LENGTH),
            new Symbol("S", AREA));
    private static final Step BY_STIFFNESS = Step.of(
            "s",
            "share of the weight on the rail, all rails in one line",
            "s = I/ΣI",
            NONE,
            Source.derived("parallel springs"),
            new Symbol("κ", NONE));

    private Shares() {}

    /** Share of a weight at {@code yM} on each rail; they sum to 1, and one beyond the rails lifts the far one. */
    static double[] of(List<Rail> rails, double yM, List<Trace> traces) {
        double stiffness =
                rails.stream().mapToDouble(rail -> rail.tube().secondMomentM4()).sum();
        double[] shares = new double[rails.size()];
        double lowest = rails.stream().mapToDouble(Rail::yM).min().orElse(0);
        double highest = rails.stream().mapToDouble(Rail::yM).max().orElse(0);
        double middle = rails.stream()
                .mapToDouble(rail -> rail.tube().secondMomentM4() / stiffness * rail.yM())
                .sum();
        double spread = rails.stream()
                .mapToDouble(rail -> rail.tube().secondMomentM4() / stiffness * Math.pow(rail.yM() - middle, 2))
                .sum();
        for (int i = 0; i < shares.length; i++) {
            double own = rails.get(i).yM();
            double kappa = rails.get(i).tube().secondMomentM4() / stiffness;
            if (highest - lowest < ONE_LINE_M) {
                shares[i] = traces.get(i).note(BY_STIFFNESS, kappa, kappa);
            } else if (shares.length == 2) {
                double other = rails.get(1 - i).yM();
                shares[i] = traces.get(i).note(TWO, (other - yM) / (other - own), other, yM, own);
            } else {
                double share = kappa * (1 + (yM - middle) * (own - middle) / spread);
                shares[i] = traces.get(i).note(MANY, share, kappa, yM, middle, own, spread);
            }
        }
        return shares;
    }
}
