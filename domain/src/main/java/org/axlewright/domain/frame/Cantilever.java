package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A beam held at {@code x = 0} and free beyond, under point loads and couples. Held means built in, or carried on through to a second
 * support ahead, {@code backSpanM} away, which lets it turn at the first: an overhanging beam.
 *
 * <p>Source: beam tables of Roark and Gere [from memory], cantilever with a load or a couple at any place, overhanging beam.
 *
 * @param loads what acts on it
 * @param rigidityNm2 E·I, N·m²
 * @param backSpanM distance to the support ahead, m; 0 is built in
 */
public record Cantilever(List<Load> loads, double rigidityNm2, double backSpanM) {

    /**
     * A load on the beam.
     *
     * @param xM behind the support, m
     * @param downN force, N, down positive
     * @param coupleNm couple that bends the beam down behind it, N·m
     */
    public record Load(double xM, double downN, double coupleNm) {
        public Load {
            notNegative(xM, "xM");
        }
    }

    public Cantilever {
        loads = List.copyOf(loads);
        positive(rigidityNm2, "rigidityNm2");
        notNegative(backSpanM, "backSpanM");
    }

    /** Places where the bending moment can be largest, m: the support and every load, in order. */
    List<Double> nodes() {
        List<Double> nodes = new ArrayList<>(List.of(0.0));
        loads.forEach(load -> nodes.add(load.xM()));
        Collections.sort(nodes);
        return nodes;
    }

    /** Bending moment just ahead of a place, N·m, positive where the top is stretched. */
    public double momentNm(double xM) {
        double moment = 0;
        for (Load load : loads) {
            if (load.xM() >= xM) {
                moment += load.downN() * (load.xM() - xM) + load.coupleNm();
            }
        }
        return moment;
    }

    /** Shear force just ahead of a place, N: what hangs behind it. */
    public double shearN(double xM) {
        return loads.stream()
                .filter(load -> load.xM() >= xM)
                .mapToDouble(Load::downN)
                .sum();
    }

    /** How far a place comes down, m. */
    public double deflectionM(double xM) {
        double sum = 0;
        for (Load load : loads) {
            double a = load.xM();
            double ahead = Math.min(xM, a);
            double force = ahead * ahead * (3 * Math.max(xM, a) - ahead) / 6 + xM * a * backSpanM / 3;
            double couple = (xM <= a ? xM * xM / 2 : a * xM - a * a / 2) + xM * backSpanM / 3;
            sum += load.downN() * force + load.coupleNm() * couple;
        }
        return sum / rigidityNm2;
    }

    /** How far a unit force at a place brings that place down, m/N. */
    double flexibility(double xM) {
        return (Math.pow(xM, 3) / 3 + xM * xM * backSpanM / 3) / rigidityNm2;
    }
}
