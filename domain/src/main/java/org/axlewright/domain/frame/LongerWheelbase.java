package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPRING_RATE;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.frame.FrameOverhang.Change;
import org.axlewright.domain.frame.FrameOverhang.Crest;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.PlacedMass;
import org.axlewright.domain.frame.FrameOverhang.Spread;
import org.axlewright.domain.frame.FrameOverhang.Strength;
import org.axlewright.domain.frame.FrameOverhang.Stretch;
import org.axlewright.domain.frame.FrameOverhang.StretchRail;
import org.axlewright.domain.frame.FrameOverhang.Stretched;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;
import org.jspecify.annotations.Nullable;

/** What a longer wheelbase does to the rails between the axles, to the turning circle and over a crest. */
final class LongerWheelbase {

    private static final Source BEAM = Source.memory("beam tables of Roark and Gere: simple beam, superposed");
    private static final Source TURNING =
            Source.published("geometry of a slow turn, R = L/sin δ: Jazar, Vehicle Dynamics, kinematic steering");

    private static final Symbol BEFORE = new Symbol("L", LENGTH);
    private static final Symbol AFTER = new Symbol("L'", LENGTH);

    private static final Step WHEELBASE = Step.of(
            "L'",
            "wheelbase after",
            "L' = L + ΔL",
            LENGTH,
            Source.derived("the insert"),
            BEFORE,
            new Symbol("ΔL", LENGTH));
    private static final Step UNIFORM = Step.of(
            "f_w",
            "deflection now over before under the same load per length",
            "f_w = (L'/L)⁴",
            NONE,
            BEAM,
            AFTER,
            BEFORE);
    private static final Step POINT = Step.of(
            "f_P",
            "deflection now over before under the same load at the same share of the span",
            "f_P = (L'/L)³",
            NONE,
            BEAM,
            AFTER,
            BEFORE);
    private static final Step RADIUS = Step.of(
            "R'",
            "radius of the outer front wheel at the same steering angle",
            "R' = R·L'/L",
            LENGTH,
            TURNING,
            new Symbol("R", LENGTH),
            AFTER,
            BEFORE);
    private static final Step RADIUS_BY_ANGLE = Step.of(
            "R",
            "radius of the outer front wheel by its steering angle",
            "R = L/sin δ",
            LENGTH,
            TURNING,
            BEFORE,
            new Symbol("δ", Dimension.ANGLE));
    private static final Step CUTS_IN_BEFORE = cutsIn("c", "before", "R", "L");
    private static final Step CUTS_IN_AFTER = cutsIn("c'", "after", "R'", "L'");
    private static final Step LOAD_STEP =
            varied("P", "design load on the rail between the axles", "P = n·g·Σ(s·m)", FORCE);
    private static final Step MOMENT = varied(
            "M", "largest bending moment", "M(x) = P_A·x − w·x²/2 − Σ F_i·(x − x_i) over loads ahead of x", TORQUE);
    private static final Step MOMENT_BEFORE = varied(
            "M_0", "largest bending moment before the stretch, the same mass per length", "M_0 = M at L", TORQUE);
    private static final Step JOINT = varied(
            "M_s", "larger bending moment at the two joints of the insert", "M_s = max |M| at x_c, x_c + ΔL", TORQUE);
    private static final Step SHEAR = varied("V", "largest shear force", "V = largest of |P_A − w·x − Σ F_i|", FORCE);
    private static final Step DEFLECTION = varied(
            "v",
            "largest deflection",
            "v(x) = [w·x·(L³ − 2·L·x² + x³)/24 + Σ F_i·u·z·(L² − u² − z²)/(6L)]/(E·I); u the lesser of x and x_i, z the"
                    + " distance of the other from the far end",
            LENGTH);
    private static final Step DEFLECTION_BEFORE =
            varied("v_0", "largest deflection before the stretch, the same mass per length", "v_0 = v at L", LENGTH);

    private static final Underside.Breakover BREAKOVER_BEFORE = new Underside.Breakover("β_b", "before the stretch");
    private static final Underside.Breakover BREAKOVER_AFTER = new Underside.Breakover("β_b'", "after the stretch");

    private LongerWheelbase() {}

    private static Step varied(String symbol, String meaning, String formula, Dimension dimension) {
        return Step.of(symbol, meaning, formula, dimension, BEAM);
    }

    private static Step cutsIn(String symbol, String state, String radius, String wheelbase) {
        return Step.of(
                symbol,
                "how much the outer rear wheel's centre line cuts in at full lock, " + state,
                symbol + " = " + radius + " − √(" + radius + "² − " + wheelbase + "²)",
                CLEARANCE,
                TURNING,
                new Symbol(radius, LENGTH),
                new Symbol(wheelbase, LENGTH));
    }

    static Stretched of(Input input, Stretch stretch, Trace trace, List<Trace> traces) {
        double before = stretch.wheelbaseBeforeM();
        double after = trace.note(WHEELBASE, stretch.wheelbaseAfterM(), before, stretch.addedM());
        double ratio = after / before;
        Change turning = null;
        Change cutsIn = null;
        Double radius = radiusM(stretch, trace);
        if (radius != null) {
            double wider = trace.note(RADIUS, radius * ratio, radius, after, before);
            turning = new Change(radius, wider);
            cutsIn = new Change(
                    trace.note(CUTS_IN_BEFORE, radius - across(radius, before), radius, before),
                    trace.note(CUTS_IN_AFTER, wider - across(wider, after), wider, after));
        }
        List<StretchRail> rails = new ArrayList<>();
        if (stretch.spread() != null || !stretch.points().isEmpty()) {
            rails.addAll(rails(input, stretch, traces));
        }
        Crest crest = stretch.crest();
        return new Stretched(
                new Change(before, after),
                trace.note(UNIFORM, Math.pow(ratio, 4), after, before),
                trace.note(POINT, Math.pow(ratio, 3), after, before),
                turning,
                cutsIn,
                crest == null ? null : tangent(crest, before, after, trace),
                crest == null
                        ? null
                        : new Change(
                                BREAKOVER_BEFORE.simple(before, crest.clearanceM(), trace),
                                BREAKOVER_AFTER.simple(after, crest.clearanceM(), trace)),
                rails);
    }

    private static @Nullable Double radiusM(Stretch stretch, Trace trace) {
        if (stretch.turningRadiusM() != null || stretch.steeringRad() == null) {
            return stretch.turningRadiusM();
        }
        double angle = stretch.steeringRad();
        double before = stretch.wheelbaseBeforeM();
        return trace.note(RADIUS_BY_ANGLE, before / Math.sin(angle), before, angle);
    }

    private static double across(double radius, double wheelbase) {
        return Math.sqrt((radius - wheelbase) * (radius + wheelbase));
    }

    private static @Nullable Change tangent(Crest crest, double before, double after, Trace trace) {
        if (crest.frontRadiusM() == null || crest.rearRadiusM() == null) {
            return null;
        }
        double front = crest.frontRadiusM();
        double rear = crest.rearRadiusM();
        Double was = BREAKOVER_BEFORE.tangent(before, crest.clearanceM(), front, rear, trace);
        Double is = BREAKOVER_AFTER.tangent(after, crest.clearanceM(), front, rear, trace);
        return was == null || is == null ? null : new Change(was, is);
    }

    private static List<StretchRail> rails(Input input, Stretch stretch, List<Trace> traces) {
        List<Trace> silent = traces.stream().map(any -> Trace.withoutWorking()).toList();
        Spread spread = stretch.spread();
        double design = input.verticalFactor() * input.gravity();
        double perLength = spread == null ? 0 : design * spread.massKg() / stretch.wheelbaseAfterM();
        double[] spreadShares =
                spread == null ? new double[traces.size()] : Shares.of(input.rails(), spread.yM(), traces);
        List<double[]> pointShares = stretch.points().stream()
                .map(point -> Shares.of(input.rails(), point.yM(), silent))
                .toList();
        List<StretchRail> rails = new ArrayList<>();
        for (int i = 0; i < traces.size(); i++) {
            List<SimpleSpan.Point> after = new ArrayList<>();
            List<SimpleSpan.Point> before = new ArrayList<>();
            for (int j = 0; j < stretch.points().size(); j++) {
                PlacedMass point = stretch.points().get(j);
                double force = design * point.massKg() * pointShares.get(j)[i];
                after.add(new SimpleSpan.Point(point.xM(), force));
                before.add(new SimpleSpan.Point(placeBefore(point.xM(), stretch), force));
            }
            Rail rail = input.rails().get(i);
            double rigidity = input.elasticModulusPa() * rail.tube().secondMomentM4();
            double own = perLength * spreadShares[i];
            rails.add(rail(
                    input,
                    stretch,
                    rail,
                    new SimpleSpan(stretch.wheelbaseAfterM(), own, after, rigidity),
                    new SimpleSpan(stretch.wheelbaseBeforeM(), own, before, rigidity),
                    traces.get(i)));
        }
        return rails;
    }

    /** Where a mass stood before the stretch: what lies behind the cut moved back with it. */
    private static double placeBefore(double xM, Stretch stretch) {
        double back = Math.max(stretch.cutXM(), xM - stretch.addedM());
        return Math.min(Math.max(0, xM <= stretch.cutXM() ? xM : back), stretch.wheelbaseBeforeM());
    }

    private static StretchRail rail(
            Input input, Stretch stretch, Rail rail, SimpleSpan after, SimpleSpan before, Trace trace) {
        List<Term> now = terms(after, input, rail, trace);
        List<Term> then = terms(before, input, rail, trace);
        SimpleSpan.At largest = after.largestMoment();
        double joint = Math.max(
                Math.abs(after.momentNm(stretch.cutXM())),
                Math.abs(after.momentNm(Math.min(after.lengthM(), stretch.cutXM() + stretch.addedM()))));
        double load = after.spreadNPerM() * after.lengthM()
                + after.points().stream().mapToDouble(SimpleSpan.Point::downN).sum();
        trace.noteTerms(LOAD_STEP, load, now);
        trace.noteTerms(MOMENT, largest.value(), now);
        double momentBefore =
                trace.noteTerms(MOMENT_BEFORE, before.largestMoment().value(), then);
        trace.noteTerms(JOINT, joint, now);
        double shear = trace.noteTerms(SHEAR, after.largestShearN(), now);
        double deflection =
                trace.noteTerms(DEFLECTION, after.largestDeflection().value(), now);
        double deflectionBefore =
                trace.noteTerms(DEFLECTION_BEFORE, before.largestDeflection().value(), then);
        Tube tube = rail.tube();
        double bending = Stresses.bendingPa(tube, largest.value(), trace);
        double jointBending = Stresses.bendingPa(tube, joint, trace);
        double peak = Stresses.peakShearPa(tube, shear, trace);
        Strength strength = Stresses.strength(bending, 0, peak, 0, rail.yieldPa(), input.safetyFactor(), trace);
        return new StretchRail(
                rail,
                load,
                largest.value(),
                largest.xM(),
                momentBefore,
                joint,
                shear,
                bending,
                jointBending,
                Stresses.averageShearPa(tube, shear, trace),
                peak,
                deflection,
                deflectionBefore,
                strength);
    }

    private static List<Term> terms(SimpleSpan span, Input input, Rail rail, Trace trace) {
        List<Term> terms = new ArrayList<>();
        if (trace.keepsWorking()) {
            terms.add(new Term(new Symbol("L", LENGTH), span.lengthM()));
            terms.add(new Term(new Symbol("w", SPRING_RATE), span.spreadNPerM()));
            terms.add(new Term(new Symbol("P_A", FORCE), span.leftN()));
            terms.add(new Term(new Symbol("E", Dimension.STRESS), input.elasticModulusPa()));
            terms.add(new Term(
                    new Symbol("I", Dimension.SECOND_MOMENT_OF_AREA),
                    rail.tube().secondMomentM4()));
            for (int i = 0; i < span.points().size(); i++) {
                terms.add(new Term(
                        new Symbol("x_" + (i + 1), LENGTH), span.points().get(i).xM()));
                terms.add(new Term(
                        new Symbol("F_" + (i + 1), FORCE), span.points().get(i).downN()));
            }
        }
        return terms;
    }
}
