package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SECOND_MOMENT_OF_AREA;
import static org.axlewright.domain.quantity.Dimension.SECTION_MODULUS;
import static org.axlewright.domain.quantity.Dimension.STRESS;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import org.axlewright.domain.frame.FrameOverhang.Strength;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Stress from bending, pull, shear and torsion in a tube, and what it leaves of the strength. */
final class Stresses {

    private static final Source MECHANICS = Source.published("mechanics of materials: elastic beam");

    private static final Step BENDING = Step.of(
            "σ",
            "bending stress",
            "σ = |M|/Z",
            STRESS,
            MECHANICS,
            new Symbol("M", TORQUE),
            new Symbol("Z", SECTION_MODULUS));
    private static final Step AVERAGE_SHEAR = Step.of(
            "τ_m",
            "average shear stress in the upright walls; over the whole of a round tube",
            "τ_m = V/A_w, A_w = 2·(h − 2t)·t, of a round tube A",
            STRESS,
            MECHANICS,
            new Symbol("V", FORCE),
            new Symbol("A_w", AREA));
    private static final Step PEAK_SHEAR = Step.of(
            "τ_V",
            "shear stress at mid-height",
            "τ_V = V·Q/(I·2t)",
            STRESS,
            MECHANICS,
            new Symbol("V", FORCE),
            new Symbol("Q", SECTION_MODULUS),
            new Symbol("I", SECOND_MOMENT_OF_AREA),
            new Symbol("t", CLEARANCE));
    private static final Step TORSION_FLAT = Step.of(
            "τ_T",
            "shear stress from torsion",
            "τ_T = T/(2·A_m·t)",
            STRESS,
            Source.published("Bredt's formula for a closed thin wall: mechanics of materials"),
            new Symbol("T", TORQUE),
            new Symbol("A_m", AREA),
            new Symbol("t", CLEARANCE));
    private static final Step TORSION_ROUND = Step.of(
            "τ_T",
            "shear stress from torsion at the outside",
            "τ_T = T·(D/2)/I_t",
            STRESS,
            Source.published("mechanics of materials: circular shaft"),
            new Symbol("T", TORQUE),
            new Symbol("D", CLEARANCE),
            new Symbol("I_t", SECOND_MOMENT_OF_AREA));
    private static final Step EQUIVALENT = Step.of(
            "σ_v",
            "equivalent stress (von Mises), the larger of outer fibre and mid-height",
            "σ_v = max(√((σ + |σ_a|)² + 3·τ_T²), √(σ_a² + 3·(τ_V + τ_T)²))",
            STRESS,
            Source.published("von Mises' criterion: mechanics of materials"),
            new Symbol("σ", STRESS),
            new Symbol("σ_a", STRESS),
            new Symbol("τ_V", STRESS),
            new Symbol("τ_T", STRESS));
    private static final Step SAFETY = Step.of(
            "j",
            "yield strength over the equivalent stress",
            "j = f_y/σ_v",
            NONE,
            MECHANICS,
            new Symbol("f_y", STRESS),
            new Symbol("σ_v", STRESS));
    private static final Step UTILISATION = Step.of(
            "η",
            "utilisation: above 1 the safety factor asked for is not there",
            "η = σ_v·j_0/f_y",
            NONE,
            MECHANICS,
            new Symbol("σ_v", STRESS),
            new Symbol("j_0", NONE),
            new Symbol("f_y", STRESS));

    private Stresses() {}

    static double bendingPa(Tube tube, double momentNm, Trace trace) {
        double modulus = tube.sectionModulusM3();
        return trace.note(BENDING, Math.abs(momentNm) / modulus, momentNm, modulus);
    }

    static double averageShearPa(Tube tube, double shearN, Trace trace) {
        double force = Math.abs(shearN);
        return trace.note(AVERAGE_SHEAR, force / tube.webAreaM2(), force, tube.webAreaM2());
    }

    static double peakShearPa(Tube tube, double shearN, Trace trace) {
        double force = Math.abs(shearN);
        double stress = force * tube.firstMomentM3() / (tube.secondMomentM4() * 2 * tube.wallM());
        return trace.note(PEAK_SHEAR, stress, force, tube.firstMomentM3(), tube.secondMomentM4(), tube.wallM());
    }

    static double torsionPa(Tube tube, double torqueNm, Trace trace) {
        double torque = Math.abs(torqueNm);
        if (tube.shape() == TubeShape.ROUND) {
            double stress = torque * tube.widthM() / 2 / tube.torsionM4();
            return trace.note(TORSION_ROUND, stress, torque, tube.widthM(), tube.torsionM4());
        }
        double stress = torque / (2 * tube.enclosedM2() * tube.wallM());
        return trace.note(TORSION_FLAT, stress, torque, tube.enclosedM2(), tube.wallM());
    }

    static Strength strength(
            double bendingPa,
            double axialPa,
            double peakShearPa,
            double torsionPa,
            @Nullable Double yieldPa,
            double askedFor,
            Trace trace) {
        double fibre = Math.hypot(bendingPa + Math.abs(axialPa), Math.sqrt(3) * torsionPa);
        double middle = Math.hypot(axialPa, Math.sqrt(3) * (peakShearPa + torsionPa));
        double equivalent = trace.note(EQUIVALENT, Math.max(fibre, middle), bendingPa, axialPa, peakShearPa, torsionPa);
        if (yieldPa == null) {
            return new Strength(equivalent, null, null);
        }
        Double safety = equivalent > 0 && yieldPa / equivalent <= Double.MAX_VALUE
                ? (Double) trace.note(SAFETY, yieldPa / equivalent, yieldPa, equivalent)
                : null;
        double utilisation = trace.note(UTILISATION, equivalent * askedFor / yieldPa, equivalent, askedFor, yieldPa);
        return new Strength(equivalent, safety, utilisation);
    }
}
