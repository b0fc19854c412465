package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SECOND_MOMENT_OF_AREA;
import static org.axlewright.domain.quantity.Dimension.STRESS;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.frame.Cantilever.Load;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.Overhang;
import org.axlewright.domain.frame.FrameOverhang.OverhangRail;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.PropForce;
import org.axlewright.domain.frame.FrameOverhang.Strength;
import org.axlewright.domain.frame.FrameOverhang.Tie;
import org.axlewright.domain.frame.FrameOverhang.TieForce;
import org.axlewright.domain.frame.FrameOverhang.Weld;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;

/** A box hung behind the last crossmember: forces at its ties, the rails as cantilevers, the prop by compatibility. */
final class HungBox {

    private static final Source STATICS = Source.published("statics: sums of forces and moments");
    private static final Source BEAM =
            Source.memory("beam tables of Roark and Gere: cantilever and overhanging beam, superposed");
    private static final Source COMPATIBILITY = Source.derived(
            "compatibility at the prop by virtual work: bending and pull of the rail, pressing of the prop");
    private static final Source WELDS =
            Source.published("EN 1993-1-8 cl. 4.5.3.3: simplified method for fillet welds, γ_M2 = 1.25");

    /** Partial factor of joints, EN 1993-1-8 table 2.1. */
    private static final double GAMMA_M2 = 1.25;

    private static final Step WEIGHT = Step.of(
            "W",
            "design weight of the box",
            "W = n·m·g",
            FORCE,
            STATICS,
            new Symbol("n", NONE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION));
    private static final Step ROOT_MOMENT = Step.of(
            "M",
            "moment of the box about the last crossmember, all rails together, prop left out",
            "M = W·a",
            TORQUE,
            STATICS,
            new Symbol("W", FORCE),
            new Symbol("a", LENGTH));
    private static final Step REAR_TIE = Step.of(
            "F_2",
            "force at the second tie",
            "F_2 = s·W·(a − x_1)/(x_2 − x_1)",
            FORCE,
            STATICS,
            new Symbol("s", NONE),
            new Symbol("W", FORCE),
            new Symbol("a", LENGTH),
            new Symbol("x_1", LENGTH),
            new Symbol("x_2", LENGTH));
    private static final Step FRONT_TIE = Step.of(
            "F_1",
            "force at the first tie",
            "F_1 = s·W − F_2",
            FORCE,
            STATICS,
            new Symbol("s", NONE),
            new Symbol("W", FORCE),
            new Symbol("F_2", FORCE));
    private static final Step ONE_TIE = Step.of(
            "F_1",
            "force at the one tie; it also holds the moment s·W·(a − x_1)",
            "F_1 = s·W",
            FORCE,
            STATICS,
            new Symbol("s", NONE),
            new Symbol("W", FORCE));
    private static final Step PROP_FORCE = Step.of(
            "N",
            "force in the prop, pressed positive",
            "N = v_0·sin θ/(sin²θ·f + cos²θ·x_p/(E·A) + c_p); f = (x_p³/3 + x_p²·b/3)/(E·I), c_p = l_p/(E·A_p), 0 for a prop that"
                    + " does not give",
            FORCE,
            COMPATIBILITY,
            new Symbol("v_0", LENGTH),
            new Symbol("θ", ANGLE),
            new Symbol("x_p", LENGTH),
            new Symbol("b", LENGTH),
            new Symbol("E", STRESS),
            new Symbol("I", SECOND_MOMENT_OF_AREA),
            new Symbol("A", AREA),
            new Symbol("l_p", LENGTH),
            new Symbol("A_p", AREA));
    private static final Step BEFORE_PROP = varied(
            "v_0",
            "how far the rail would come down at the prop without it",
            "v_0 = Σ(F·f(x_p, x_i) + C·g(x_p, x_i))/(E·I); f = u²·(3w − u)/6 + x·x_i·b/3, u and w the lesser and greater of x and"
                    + " x_i; g = x²/2 up to x_i, x_i·x − x_i²/2 behind it, + x·b/3",
            LENGTH);
    private static final Step MOMENT = varied(
            "M", "largest bending moment of the rail", "M(x) = Σ over loads behind x of F·(x_i − x) + C", TORQUE);
    private static final Step SHEAR =
            varied("V", "largest shear force of the rail", "V(x) = Σ over loads behind x of F, at its largest", FORCE);
    private static final Step DEFLECTION = varied(
            "v",
            "how far the rail comes down at its rearmost load",
            "v = Σ(F·f(x, x_i) + C·g(x, x_i))/(E·I), f and g as for v_0",
            LENGTH);
    private static final Step AXIAL = Step.of(
            "σ_a",
            "pull along the rail from the prop, tension positive",
            "σ_a = N·cos θ/A",
            STRESS,
            STATICS,
            new Symbol("N", FORCE),
            new Symbol("θ", ANGLE),
            new Symbol("A", AREA));
    private static final Step TORQUE_STEP = Step.of(
            "T",
            "torque on a single rail from a box beside it",
            "T = W·(y − y_i)",
            TORQUE,
            STATICS,
            new Symbol("W", FORCE),
            new Symbol("y", LENGTH),
            new Symbol("y_i", LENGTH));
    private static final Step TWIST = Step.of(
            "φ",
            "twist of the rail at its rearmost load",
            "φ = |T|·x/(G·I_t), G = E/2.6",
            ANGLE,
            Source.published("mechanics of materials: Saint-Venant torsion"),
            new Symbol("T", TORQUE),
            new Symbol("x", LENGTH),
            new Symbol("E", STRESS),
            new Symbol("I_t", SECOND_MOMENT_OF_AREA));
    private static final Step THROAT = Step.of(
            "τ_w",
            "stress in the throat of the weld at a tie",
            "τ_w = |F|/(a·(l − 2a))",
            STRESS,
            WELDS,
            new Symbol("F", FORCE),
            new Symbol("a", CLEARANCE),
            new Symbol("l", CLEARANCE));
    private static final Step ALLOWABLE = Step.of(
            "f_vw,d",
            "design strength of the weld",
            "f_vw,d = f_u/(√3·β_w·γ_M2)",
            STRESS,
            WELDS,
            new Symbol("f_u", STRESS),
            new Symbol("β_w", NONE),
            new Symbol("γ_M2", NONE));
    private static final Step PROP_STRESS = Step.of(
            "σ_p",
            "stress in the prop",
            "σ_p = |N|/A_p",
            STRESS,
            STATICS,
            new Symbol("N", FORCE),
            new Symbol("A_p", AREA));
    private static final Step BUCKLING = Step.of(
            "N_cr",
            "force at which the prop buckles, pinned at both ends",
            "N_cr = π²·E·I_min/l_p²",
            FORCE,
            Source.published("Euler's formula: mechanics of materials"),
            new Symbol("E", STRESS),
            new Symbol("I_min", SECOND_MOMENT_OF_AREA),
            new Symbol("l_p", LENGTH));

    private static final Step WELD_UTILISATION = Step.of(
            "η_w",
            "utilisation of the weld",
            "η_w = τ_w/f_vw,d",
            NONE,
            WELDS,
            new Symbol("τ_w", STRESS),
            new Symbol("f_vw,d", STRESS));
    private static final Step PROP_UTILISATION = Step.of(
            "η_p",
            "utilisation of the prop with the safety factor asked for",
            "η_p = |N|·j_0/N_R; N_R the lesser of A_p·f_y and, when pressed, N_cr",
            NONE,
            STATICS,
            new Symbol("N", FORCE),
            new Symbol("j_0", NONE),
            new Symbol("N_R", FORCE));

    private static Step varied(String symbol, String meaning, String formula, Dimension dimension) {
        return Step.of(symbol, meaning, formula, dimension, BEAM);
    }

    private HungBox() {}

    static Overhang of(Input input, Box box, double armM, Trace trace, List<Trace> traces) {
        double weight = trace.note(
                WEIGHT,
                input.verticalFactor() * box.massKg() * input.gravity(),
                input.verticalFactor(),
                box.massKg(),
                input.gravity());
        double moment = trace.note(ROOT_MOMENT, weight * armM, weight, armM);
        double[] shares = Shares.of(input.rails(), box.yM(), traces);
        List<OverhangRail> rails = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            rails.add(rail(input, box, armM, weight, shares[i], input.rails().get(i), traces.get(i)));
        }
        return new Overhang(moment, weight, rails);
    }

    private static OverhangRail rail(
            Input input, Box box, double armM, double weightN, double share, Rail rail, Trace trace) {
        List<Load> loads = loads(box.ties(), armM, weightN, share, trace);
        List<TieForce> ties = new ArrayList<>();
        for (int i = 0; i < box.ties().size(); i++) {
            ties.add(tie(box.ties().get(i), loads.get(i), rail, trace));
        }
        Tube tube = rail.tube();
        double rigidity = input.elasticModulusPa() * tube.secondMomentM4();
        double rearmost = loads.stream().mapToDouble(Load::xM).max().orElse(0);
        Prop prop = box.prop();
        PropForce propForce = null;
        double axial = 0;
        if (prop != null) {
            Cantilever free = new Cantilever(loads, rigidity, box.backSpanM());
            propForce = prop(input, prop, free, tube, trace);
            loads.add(new Load(prop.xM(), -propForce.forceN() * prop.sine(), 0));
            double pull = propForce.forceN() * prop.cosine() / tube.areaM2();
            axial = trace.note(AXIAL, pull, propForce.forceN(), Math.atan2(prop.sine(), prop.cosine()), tube.areaM2());
        }
        Cantilever beam = new Cantilever(loads, rigidity, box.backSpanM());
        double momentAt = 0;
        double moment = 0;
        double axialThere = 0;
        double worst = -1;
        double shear = 0;
        for (double x : beam.nodes()) {
            double ahead = beam.momentNm(x);
            double couple = loads.stream()
                    .filter(load -> load.xM() == x)
                    .mapToDouble(Load::coupleNm)
                    .sum();
            double here = Math.abs(ahead) >= Math.abs(ahead - couple) ? ahead : ahead - couple;
            double pulled = prop != null && x <= prop.xM() ? axial : 0;
            double stress = Math.abs(here) / tube.sectionModulusM3() + Math.abs(pulled);
            if (stress > worst) {
                worst = stress;
                moment = here;
                momentAt = x;
                axialThere = pulled;
            }
            shear = Math.abs(beam.shearN(x)) > Math.abs(shear) ? beam.shearN(x) : shear;
        }
        List<Term> terms = terms(loads, trace);
        trace.noteTerms(MOMENT, moment, terms);
        trace.noteTerms(SHEAR, shear, terms);
        double deflection = trace.noteTerms(DEFLECTION, beam.deflectionM(rearmost), terms);
        Double torque = null;
        Double torsion = null;
        Double twist = null;
        if (input.rails().size() == 1 && box.yM() != rail.yM()) {
            torque = trace.note(TORQUE_STEP, weightN * (box.yM() - rail.yM()), weightN, box.yM(), rail.yM());
            torsion = Stresses.torsionPa(tube, torque, trace);
            twist = trace.note(
                    TWIST,
                    Math.abs(torque) * rearmost / (input.shearModulusPa() * tube.torsionM4()),
                    torque,
                    rearmost,
                    input.elasticModulusPa(),
                    tube.torsionM4());
        }
        double bending = Stresses.bendingPa(tube, moment, trace);
        double peak = Stresses.peakShearPa(tube, shear, trace);
        Strength strength = Stresses.strength(
                bending, axialThere, peak, torsion == null ? 0 : torsion, rail.yieldPa(), input.safetyFactor(), trace);
        return new OverhangRail(
                rail,
                share,
                moment,
                momentAt,
                shear,
                bending,
                axial,
                Stresses.averageShearPa(tube, shear, trace),
                peak,
                torque,
                torsion,
                twist,
                deflection,
                strength,
                ties,
                propForce);
    }

    /** Loads on one rail, in the order of the ties; at the centre of the box when it has none. */
    private static List<Load> loads(List<Tie> ties, double armM, double weightN, double share, Trace trace) {
        List<Load> loads = new ArrayList<>();
        double own = share * weightN;
        if (ties.isEmpty()) {
            loads.add(new Load(armM, own, 0));
        } else if (ties.size() == 1) {
            double x = ties.get(0).xM();
            loads.add(new Load(x, trace.note(ONE_TIE, own, share, weightN), own * (armM - x)));
        } else {
            double first = ties.get(0).xM();
            double second = ties.get(1).xM();
            double rear =
                    trace.note(REAR_TIE, own * (armM - first) / (second - first), share, weightN, armM, first, second);
            double front = trace.note(FRONT_TIE, own - rear, share, weightN, rear);
            loads.add(new Load(first, front, 0));
            loads.add(new Load(second, rear, 0));
        }
        return loads;
    }

    private static TieForce tie(Tie tie, Load load, Rail rail, Trace trace) {
        Weld weld = tie.weld();
        Double throat = null;
        if (weld != null && load.coupleNm() == 0 && weld.lengthM() > 2 * weld.throatM()) {
            double stress = Math.abs(load.downN()) / (weld.throatM() * (weld.lengthM() - 2 * weld.throatM()));
            throat = trace.note(THROAT, stress, load.downN(), weld.throatM(), weld.lengthM());
        }
        Rail.WeldStrength strength = rail.weld();
        if (throat == null || strength == null) {
            return new TieForce(tie, load.downN(), throat, null, null);
        }
        double allowable =
                trace.note(ALLOWABLE, allowablePa(strength), strength.tensilePa(), strength.correlation(), GAMMA_M2);
        double utilisation = trace.note(WELD_UTILISATION, throat / allowable, throat, allowable);
        return new TieForce(tie, load.downN(), throat, allowable, utilisation);
    }

    /** Design strength of a fillet weld by the simplified method, Pa. */
    static double allowablePa(Rail.WeldStrength strength) {
        return strength.tensilePa() / (Math.sqrt(3) * strength.correlation() * GAMMA_M2);
    }

    private static PropForce prop(Input input, Prop prop, Cantilever free, Tube rail, Trace trace) {
        double modulus = input.elasticModulusPa();
        double sine = prop.sine();
        double cosine = prop.cosine();
        Tube tube = prop.tube();
        double down = trace.noteTerms(BEFORE_PROP, free.deflectionM(prop.xM()), terms(free.loads(), trace));
        double gives = tube == null ? 0 : prop.lengthM() / (modulus * tube.areaM2());
        double resists = sine * sine * free.flexibility(prop.xM())
                + cosine * cosine * prop.xM() / (modulus * rail.areaM2())
                + gives;
        double force = down * sine / resists;
        if (tube == null) {
            List<Term> terms = trace.keepsWorking()
                    ? List.of(
                            new Term(new Symbol("v_0", LENGTH), down),
                            new Term(new Symbol("θ", ANGLE), Math.atan2(sine, cosine)),
                            new Term(new Symbol("x_p", LENGTH), prop.xM()),
                            new Term(new Symbol("b", LENGTH), free.backSpanM()),
                            new Term(new Symbol("E", STRESS), modulus),
                            new Term(new Symbol("I", SECOND_MOMENT_OF_AREA), rail.secondMomentM4()),
                            new Term(new Symbol("A", AREA), rail.areaM2()))
                    : List.of();
            return new PropForce(trace.noteTerms(PROP_FORCE, force, terms), null, null, null);
        }
        trace.note(
                PROP_FORCE,
                force,
                down,
                Math.atan2(sine, cosine),
                prop.xM(),
                free.backSpanM(),
                modulus,
                rail.secondMomentM4(),
                rail.areaM2(),
                prop.lengthM(),
                tube.areaM2());
        double stress = trace.note(PROP_STRESS, Math.abs(force) / tube.areaM2(), force, tube.areaM2());
        double buckling = trace.note(
                BUCKLING,
                Math.PI * Math.PI * modulus * tube.leastSecondMomentM4() / Math.pow(prop.lengthM(), 2),
                modulus,
                tube.leastSecondMomentM4(),
                prop.lengthM());
        Double yield = prop.yieldPa();
        Double utilisation = null;
        if (yield != null) {
            double bears = force > 0 ? Math.min(buckling, yield * tube.areaM2()) : yield * tube.areaM2();
            utilisation = trace.note(
                    PROP_UTILISATION,
                    Math.abs(force) * input.safetyFactor() / bears,
                    force,
                    input.safetyFactor(),
                    bears);
        }
        return new PropForce(force, stress, buckling, utilisation);
    }

    private static List<Term> terms(List<Load> loads, Trace trace) {
        List<Term> terms = new ArrayList<>();
        if (trace.keepsWorking()) {
            for (int i = 0; i < loads.size(); i++) {
                Load load = loads.get(i);
                terms.add(new Term(new Symbol("x_" + (i + 1), LENGTH), load.xM()));
                terms.add(new Term(new Symbol("F_" + (i + 1), FORCE), load.downN()));
                if (load.coupleNm() != 0) {
                    terms.add(new Term(new Symbol("C_" + (i + 1), TORQUE), load.coupleNm()));
                }
            }
        }
        return terms;
    }
}
