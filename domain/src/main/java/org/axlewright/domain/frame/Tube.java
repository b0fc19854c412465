package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.check.Check.within;
import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.SECOND_MOMENT_OF_AREA;
import static org.axlewright.domain.quantity.Dimension.SECTION_MODULUS;

import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * A hollow section, bent about its level axis and twisted about its length.
 *
 * @param shape of the section
 * @param widthM outer width, m; the diameter of a round tube
 * @param heightM outer height, m; equal to the width unless rectangular
 * @param wallM wall, m, less than half of either
 * @param cornerRadiusM outer corner radius, m; 0 is sharp, the inner one is it less the wall and never below 0
 */
public record Tube(TubeShape shape, double widthM, double heightM, double wallM, double cornerRadiusM) {

    private static final Source RECTANGLE = Source.derived(
            "outer less inner rectangle, each corner a square less a quarter circle, as in EN 10219-2 annex B");
    private static final Source RING = Source.published("mechanics of materials: circular ring");
    private static final Source BREDT = Source.memory("EN 10219-2 annex B: Bredt's closed section with its wall");

    private static final Symbol WIDTH = new Symbol("b", CLEARANCE);
    private static final Symbol HEIGHT = new Symbol("h", CLEARANCE);
    private static final Symbol WALL = new Symbol("t", CLEARANCE);
    private static final Symbol RADIUS = new Symbol("r", CLEARANCE);
    private static final Symbol DIAMETER = new Symbol("D", CLEARANCE);

    private static final Step AREA_FLAT = Step.of(
            "A",
            "area of the section",
            "A = b·h − (4 − π)·r² − b1·h1 + (4 − π)·r1²; b1 = b − 2t, h1 = h − 2t, r1 = max(r − t, 0)",
            AREA,
            RECTANGLE,
            WIDTH,
            HEIGHT,
            WALL,
            RADIUS);
    private static final Step SECOND_MOMENT_FLAT = Step.of(
            "I",
            "second moment of area about the level axis",
            "I = J(b, h, r) − J(b1, h1, r1); J(b, h, r) = b·h³/12 − 4·(0.007545·r⁴ + (1 − π/4)·r²·(h/2 − 0.223368·r)²)",
            SECOND_MOMENT_OF_AREA,
            RECTANGLE,
            WIDTH,
            HEIGHT,
            WALL,
            RADIUS);
    private static final Step MODULUS = Step.of(
            "Z",
            "section modulus",
            "Z = 2·I/h",
            SECTION_MODULUS,
            Source.published("mechanics of materials"),
            new Symbol("I", SECOND_MOMENT_OF_AREA),
            HEIGHT);
    private static final Step FIRST_MOMENT_FLAT = Step.of(
            "Q",
            "first moment of the upper half",
            "Q = q(b, h, r) − q(b1, h1, r1); q(b, h, r) = b·h²/8 − 2·(1 − π/4)·r²·(h/2 − 0.223368·r)",
            SECTION_MODULUS,
            RECTANGLE,
            WIDTH,
            HEIGHT,
            WALL,
            RADIUS);
    private static final Step ENCLOSED_FLAT = Step.of(
            "A_m",
            "area within the middle of the wall",
            "A_m = (b − t)·(h − t) − (4 − π)·((r + r1)/2)²",
            AREA,
            BREDT,
            WIDTH,
            HEIGHT,
            WALL,
            RADIUS);
    private static final Step TORSION_FLAT = Step.of(
            "I_t",
            "torsion constant",
            "I_t = 4·A_m²·t/p + p·t³/3; p = 2·(b + h − 2t) − 2·(4 − π)·(r + r1)/2",
            SECOND_MOMENT_OF_AREA,
            BREDT,
            new Symbol("A_m", AREA),
            WIDTH,
            HEIGHT,
            WALL,
            RADIUS);
    private static final Step AREA_ROUND =
            Step.of("A", "area of the section", "A = π/4·(D² − (D − 2t)²)", AREA, RING, DIAMETER, WALL);
    private static final Step SECOND_MOMENT_ROUND = Step.of(
            "I", "second moment of area", "I = π/64·(D⁴ − (D − 2t)⁴)", SECOND_MOMENT_OF_AREA, RING, DIAMETER, WALL);
    private static final Step FIRST_MOMENT_ROUND = Step.of(
            "Q", "first moment of the upper half", "Q = (D³ − (D − 2t)³)/12", SECTION_MODULUS, RING, DIAMETER, WALL);
    private static final Step ENCLOSED_ROUND =
            Step.of("A_m", "area within the middle of the wall", "A_m = π/4·(D − t)²", AREA, RING, DIAMETER, WALL);
    private static final Step TORSION_ROUND = Step.of(
            "I_t",
            "torsion constant",
            "I_t = 2·I",
            SECOND_MOMENT_OF_AREA,
            RING,
            new Symbol("I", Dimension.SECOND_MOMENT_OF_AREA));

    public Tube {
        positive(widthM, "widthM");
        positive(heightM, "heightM");
        positive(wallM, "wallM");
        positive(Math.min(widthM, heightM) / 2 - wallM, "bore");
        within(notNegative(cornerRadiusM, "cornerRadiusM"), 0, Math.min(widthM, heightM) / 2 * (1 + 1e-9), "radius");
    }

    private boolean round() {
        return shape == TubeShape.ROUND;
    }

    private double innerRadiusM() {
        return Math.max(0, cornerRadiusM - wallM);
    }

    private RoundedRectangle outer() {
        return new RoundedRectangle(widthM, heightM, cornerRadiusM);
    }

    private RoundedRectangle inner() {
        return new RoundedRectangle(widthM - 2 * wallM, heightM - 2 * wallM, innerRadiusM());
    }

    /** Area, m². */
    public double areaM2() {
        return round()
                ? Math.PI / 4 * (Math.pow(widthM, 2) - Math.pow(widthM - 2 * wallM, 2))
                : outer().areaM2() - inner().areaM2();
    }

    /** Second moment of area about the level axis, m⁴. */
    public double secondMomentM4() {
        return round()
                ? Math.PI / 64 * (Math.pow(widthM, 4) - Math.pow(widthM - 2 * wallM, 4))
                : outer().secondMomentM4() - inner().secondMomentM4();
    }

    /** Section modulus, m³. */
    public double sectionModulusM3() {
        return 2 * secondMomentM4() / heightM;
    }

    /** First moment of the upper half, m³. */
    public double firstMomentM3() {
        return round()
                ? (Math.pow(widthM, 3) - Math.pow(widthM - 2 * wallM, 3)) / 12
                : outer().firstMomentM3() - inner().firstMomentM3();
    }

    /** Area within the middle of the wall, m². */
    public double enclosedM2() {
        double mean = (cornerRadiusM + innerRadiusM()) / 2;
        return round()
                ? Math.PI / 4 * Math.pow(widthM - wallM, 2)
                : (widthM - wallM) * (heightM - wallM) - (4 - Math.PI) * mean * mean;
    }

    /** Torsion constant, m⁴. */
    public double torsionM4() {
        if (round()) {
            return 2 * secondMomentM4();
        }
        double mean = (cornerRadiusM + innerRadiusM()) / 2;
        double around = 2 * (widthM + heightM - 2 * wallM) - 2 * (4 - Math.PI) * mean;
        return 4 * Math.pow(enclosedM2(), 2) * wallM / around + around * Math.pow(wallM, 3) / 3;
    }

    /** Area that carries shear: the two upright walls between the level ones; of a round tube all of it, m². */
    public double webAreaM2() {
        return round() ? areaM2() : 2 * (heightM - 2 * wallM) * wallM;
    }

    /** Least second moment of area, m⁴: the way a strut buckles. */
    double leastSecondMomentM4() {
        return Math.min(
                secondMomentM4(),
                new Tube(shape, /* widthM= */ heightM, /* heightM= */ widthM, wallM, cornerRadiusM).secondMomentM4());
    }

    /** Slenderness of the wall in compression: flat width over wall, diameter over wall. */
    double slenderness() {
        return round() ? widthM / wallM : (widthM - 3 * wallM) / wallM;
    }

    /** Takes down the properties. */
    void note(Trace trace) {
        if (round()) {
            trace.note(AREA_ROUND, areaM2(), widthM, wallM);
            trace.note(SECOND_MOMENT_ROUND, secondMomentM4(), widthM, wallM);
            trace.note(FIRST_MOMENT_ROUND, firstMomentM3(), widthM, wallM);
            trace.note(ENCLOSED_ROUND, enclosedM2(), widthM, wallM);
            trace.note(TORSION_ROUND, torsionM4(), secondMomentM4());
        } else {
            trace.note(AREA_FLAT, areaM2(), widthM, heightM, wallM, cornerRadiusM);
            trace.note(SECOND_MOMENT_FLAT, secondMomentM4(), widthM, heightM, wallM, cornerRadiusM);
            trace.note(FIRST_MOMENT_FLAT, firstMomentM3(), widthM, heightM, wallM, cornerRadiusM);
            trace.note(ENCLOSED_FLAT, enclosedM2(), widthM, heightM, wallM, cornerRadiusM);
            trace.note(TORSION_FLAT, torsionM4(), enclosedM2(), widthM, heightM, wallM, cornerRadiusM);
        }
        trace.note(MODULUS, sectionModulusM3(), secondMomentM4(), heightM);
    }
}
