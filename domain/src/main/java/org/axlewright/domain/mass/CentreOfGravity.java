package org.axlewright.domain.mass;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.TwoSupports;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.mass.Weighing.Tracks;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;
import org.jspecify.annotations.Nullable;

/** Where the weight of the vehicle sits, on which axle, how high, and what each part does to it. */
public final class CentreOfGravity {

    private static final Source COMPOSITE =
            Source.memory("Meriam and Kraige, Engineering Mechanics: Statics, ch. 5, centres of mass");

    private static final Step TOTAL_MASS = Step.of("M", "mass of the whole", "M = Σm", MASS, COMPOSITE);
    private static final Step X =
            Step.of("x", "centre of gravity behind the front axle", "x = Σ(m·x)/Σm", LENGTH, COMPOSITE);
    private static final Step Y =
            Step.of("y", "centre of gravity to the right of the centre plane", "y = Σ(m·y)/Σm", LENGTH, COMPOSITE);
    private static final Step Z = Step.of("z", "height of the centre of gravity", "z = Σ(m·z)/Σm", LENGTH, COMPOSITE);
    private static final Step WEIGHT = Step.of(
            "W",
            "weight of the whole",
            "W = M·g",
            LOAD,
            Source.published("CGPM 1901, standard gravity; NIST SP 811 (2008) B.8"),
            new Symbol("M", MASS),
            new Symbol("g", ACCELERATION));
    private static final Step FRONT_SHARE = Step.of(
            "s_f",
            "share of the weight on the front axle",
            "s_f = W_f/W",
            NONE,
            Source.derived("definition"),
            new Symbol("W_f", LOAD),
            new Symbol("W", LOAD));
    private static final Step LEFT_SHARE = Step.of(
            "s_l",
            "share of the weight on the left wheels",
            "s_l = [W_l0 + Σ m·g·(1/2 − y/t)]/W, t the track at the part's own station",
            NONE,
            Source.derived("moments about the right-hand wheels, each part at its own station"));
    private static final Source RIGID_ON_ITS_WHEELS =
            Source.derived("statics of a vehicle standing on its tyres and springs");
    private static final Step RAISED = Step.of(
            "z₁",
            "height of the centre of gravity of the bare vehicle on its lift and tyres",
            "z₁ = z₀ + Δh",
            LENGTH,
            RIGID_ON_ITS_WHEELS,
            new Symbol("z₀", LENGTH),
            new Symbol("Δh", LENGTH));
    private static final Step PART_RAISED = Step.of(
            "z_p",
            "height of the part, which rides on the body",
            "z_p = z + Δz_b,f + (Δz_b,r − Δz_b,f)·x/L",
            LENGTH,
            RIGID_ON_ITS_WHEELS,
            new Symbol("z", LENGTH),
            new Symbol("Δz_b,f", LENGTH),
            new Symbol("Δz_b,r", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH));

    private static final Step CROSS_SHARE = Step.of(
            "s_x",
            "share of the diagonal front-left plus rear-right, bare vehicle as weighed",
            "s_x = (W_FL + W_RR)/W",
            NONE,
            Source.derived("definition"));

    private static final Step FRONT_PAYLOAD = payload("front axle");
    private static final Step REAR_PAYLOAD = payload("rear axle");
    private static final Step TOTAL_PAYLOAD = payload("whole vehicle");

    private static final Source MOMENTS_OF_A_PART = Source.derived("moments of the part about the axles");
    private static final Source PART_LEFT_OUT = Source.derived("composite centre of gravity with and without the part");

    private static final Step FRONT_CHANGE = Step.of(
            "ΔW_f",
            "what the part adds to the front axle",
            "ΔW_f = m·g·(L − x)/L",
            LOAD,
            MOMENTS_OF_A_PART,
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH));
    private static final Step REAR_CHANGE = Step.of(
            "ΔW_r",
            "what the part adds to the rear axle",
            "ΔW_r = m·g·x/L",
            LOAD,
            MOMENTS_OF_A_PART,
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("x", LENGTH),
            new Symbol("L", LENGTH));
    private static final Step X_CHANGE = shift("x", "rearward");
    private static final Step Y_CHANGE = shift("y", "to the right");
    private static final Step Z_CHANGE = shift("z", "upward");

    private static Step payload(String what) {
        return Step.of(
                "P",
                "load left on the " + what,
                "P = R − W",
                LOAD,
                Source.derived("rating less load"),
                new Symbol("R", LOAD),
                new Symbol("W", LOAD));
    }

    private static Step shift(String axis, String direction) {
        return Step.of(
                "Δ" + axis,
                "shift of the centre of gravity " + direction + " by the part",
                "Δ" + axis + " = m·(" + axis + "_p − " + axis + ")/(M − m)",
                LENGTH,
                PART_LEFT_OUT,
                new Symbol("m", MASS),
                new Symbol(axis + "_p", LENGTH),
                new Symbol(axis, LENGTH),
                new Symbol("M", MASS));
    }

    private CentreOfGravity() {}

    /**
     * A part added or taken away, or a person.
     *
     * @param pointer where it stands in the request
     * @param mass negative when it is taken away
     */
    public record Part(
            String pointer, @Nullable String name, @Nullable String reference, boolean occupant, PointMass mass) {}

    /**
     * Rated loads, N; null where not known.
     *
     * @param frontN of the front axle
     * @param rearN of the rear axle
     * @param totalN of the whole
     */
    public record Ratings(
            @Nullable Double frontN,
            @Nullable Double rearN,
            @Nullable Double totalN) {}

    /** What was measured as driven and overrides what is derived; null where not measured. */
    public record Laden(
            @Nullable Double massKg,
            @Nullable Double xM,
            @Nullable Double yM,
            @Nullable Double zM) {}

    /**
     * The vehicle, what was added and taken off, and how it was raised.
     *
     * @param weighing the bare vehicle, or null when only {@code laden} is known
     * @param heightM height of the bare vehicle's centre of gravity, or null
     * @param raisedAxle in place of {@code heightM}
     * @param rise how lift and tyres raised the vehicle since it was weighed and measured
     * @param parts in the order of the request, placed as the vehicle stood before the lift
     */
    public record Input(
            double wheelbaseM,
            @Nullable Tracks tracks,
            @Nullable Weighing weighing,
            @Nullable Double heightM,
            @Nullable RaisedAxle raisedAxle,
            Rise rise,
            List<Part> parts,
            @Nullable Laden laden,
            Ratings ratings) {

        public Input {
            Check.positive(wheelbaseM, "wheelbase");
            parts = List.copyOf(parts);
        }
    }

    /**
     * The vehicle in one state.
     *
     * @param leftShare null when the side is not known
     * @param payloadFrontN rating less load, negative when over; null without a rating
     */
    public record State(
            PointMass whole,
            double frontLoadN,
            double rearLoadN,
            double frontShare,
            @Nullable Double leftShare,
            @Nullable Double payloadFrontN,
            @Nullable Double payloadRearN,
            @Nullable Double payloadTotalN) {}

    /** What one part does to each axle, N, and to the centre of gravity, m. */
    public record Lever(
            Part part,
            double frontLoadChangeN,
            double rearLoadChangeN,
            double xChangeM,
            @Nullable Double yChangeM,
            @Nullable Double zChangeM) {}

    /**
     * The vehicle in both states, and what each part does to it.
     *
     * @param empty without occupants; null when only the laden vehicle is known
     * @param crossShare of the bare vehicle as weighed on four scales
     */
    public record Result(
            State occupied,
            @Nullable State empty,
            List<Lever> leverage,
            @Nullable Double crossShare) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        PointMass bare = bare(input, trace);
        List<Part> parts = bare == null ? List.of() : raised(input, trace);
        List<PointMass> empty = new ArrayList<>();
        List<PointMass> all = new ArrayList<>();
        if (bare != null) {
            empty.add(bare);
            parts.stream().filter(part -> !part.occupant()).map(Part::mass).forEach(empty::add);
            all.add(bare);
            parts.stream().map(Part::mass).forEach(all::add);
        }
        boolean statesDiffer = input.laden() != null || empty.size() < all.size();
        Trace occupiedTrace = statesDiffer ? trace.of("occupied") : trace;
        Trace emptyTrace = statesDiffer ? trace.of("empty") : trace;
        PointMass driven = bare == null || !statesDiffer ? null : composite(all, occupiedTrace);
        State emptyState = bare == null ? null : state(composite(empty, emptyTrace), empty, input, emptyTrace);
        State occupiedState;
        if (input.laden() != null) {
            PointMass measured = measured(input.laden(), driven);
            occupiedState = state(measured, List.of(measured), input, occupiedTrace);
        } else if (driven != null) {
            occupiedState = state(driven, all, input, occupiedTrace);
        } else {
            occupiedState = Objects.requireNonNull(emptyState, "bare vehicle");
        }
        PointMass derived = driven != null || emptyState == null ? driven : emptyState.whole();
        Result result = new Result(
                occupiedState,
                emptyState,
                derived == null ? List.of() : levers(parts, derived, input, trace),
                crossShare(input.weighing(), trace));
        MassFindings.find(input, result, trace);
        return result;
    }

    /** What was measured as driven; the rest as derived. */
    private static PointMass measured(Laden laden, @Nullable PointMass derived) {
        return new PointMass(
                given(laden.massKg(), derived, PointMass::massKg),
                given(laden.xM(), derived, PointMass::xM),
                laden.yM() != null || derived == null ? laden.yM() : derived.yM(),
                laden.zM() != null || derived == null ? laden.zM() : derived.zM());
    }

    private static double given(
            @Nullable Double measured, @Nullable PointMass derived, Function<PointMass, Double> otherwise) {
        return measured != null ? measured : otherwise.apply(Objects.requireNonNull(derived, "bare vehicle"));
    }

    private static @Nullable PointMass bare(Input input, Trace trace) {
        Weighing weighing = input.weighing();
        if (weighing == null) {
            return null;
        }
        PointMass plan = weighing.inPlan(input.wheelbaseM(), input.tracks(), trace);
        Double height = input.heightM();
        if (input.raisedAxle() != null) {
            height = input.raisedAxle().heightM(plan.massKg() * STANDARD_GRAVITY, plan.xM(), input.wheelbaseM(), trace);
        }
        if (height != null && !input.rise().isNone()) {
            double frontShare = 1 - plan.xM() / input.wheelbaseM();
            double riseM = input.rise().centreOfGravityM(frontShare, trace);
            height = trace.note(RAISED, height + riseM, height, riseM);
        }
        return new PointMass(plan.massKg(), plan.xM(), plan.yM(), height);
    }

    /** The parts where they are now. Parts and people ride on the body: they rise with it at their own station. */
    public static List<Part> raised(Input input, Trace trace) {
        if (input.rise().isNone()) {
            return input.parts();
        }
        double frontM = bodyRiseM(input.rise().front());
        double rearM = bodyRiseM(input.rise().rear());
        List<Part> raised = new ArrayList<>();
        for (Part part : input.parts()) {
            PointMass mass = part.mass();
            Double zM = mass.zM();
            if (zM != null) {
                double risenM = zM + frontM + (rearM - frontM) * mass.xM() / input.wheelbaseM();
                zM = trace.note(PART_RAISED, risenM, zM, frontM, rearM, mass.xM(), input.wheelbaseM());
            }
            raised.add(new Part(
                    part.pointer(),
                    part.name(),
                    part.reference(),
                    part.occupant(),
                    new PointMass(mass.massKg(), mass.xM(), mass.yM(), zM)));
        }
        return raised;
    }

    private static double bodyRiseM(AxleLift axle) {
        return axle.liftM() + axle.tyreM();
    }

    /** The vehicle as derived, with everything in it. */
    public static PointMass derived(Input input, Trace trace) {
        List<PointMass> all = new ArrayList<>();
        all.add(Objects.requireNonNull(bare(input, trace), "bare vehicle"));
        raised(input, trace).stream().map(Part::mass).forEach(all::add);
        return composite(all, trace);
    }

    private static PointMass composite(List<PointMass> parts, Trace trace) {
        double mass = sum(parts, part -> 1.0);
        note(trace, TOTAL_MASS, mass, parts, null);
        return new PointMass(
                mass,
                mean(parts, mass, X, PointMass::xM, trace),
                parts.stream().anyMatch(part -> part.yM() == null)
                        ? null
                        : mean(parts, mass, Y, part -> Objects.requireNonNull(part.yM()), trace),
                parts.stream().anyMatch(part -> part.zM() == null)
                        ? null
                        : mean(parts, mass, Z, part -> Objects.requireNonNull(part.zM()), trace));
    }

    private static double sum(List<PointMass> parts, Function<PointMass, Double> arm) {
        double sum = 0;
        for (PointMass part : parts) {
            sum += part.massKg() * arm.apply(part);
        }
        return sum;
    }

    private static Double mean(
            List<PointMass> parts, double massKg, Step step, Function<PointMass, Double> arm, Trace trace) {
        double mean = sum(parts, arm) / massKg;
        note(trace, step, mean, parts, arm);
        return mean;
    }

    private static void note(
            Trace trace, Step step, double value, List<PointMass> parts, @Nullable Function<PointMass, Double> arm) {
        if (!trace.keepsWorking()) {
            return;
        }
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            terms.add(new Term(new Symbol("m" + i, MASS), parts.get(i).massKg()));
            if (arm != null) {
                terms.add(new Term(new Symbol(step.symbol() + i, LENGTH), arm.apply(parts.get(i))));
            }
        }
        trace.noteTerms(step, value, terms);
    }

    private static State state(PointMass whole, List<PointMass> parts, Input input, Trace trace) {
        double weight = trace.note(WEIGHT, whole.massKg() * STANDARD_GRAVITY, whole.massKg(), STANDARD_GRAVITY);
        double front = TwoSupports.frontLoadN(weight, whole.xM(), input.wheelbaseM(), trace);
        double rear = TwoSupports.rearLoadN(weight, whole.xM(), input.wheelbaseM(), trace);
        double frontShare = trace.note(FRONT_SHARE, front / weight, front, weight);
        Ratings ratings = input.ratings();
        return new State(
                whole,
                front,
                rear,
                frontShare,
                leftShare(parts, weight, input, trace),
                payloadN(FRONT_PAYLOAD, ratings.frontN(), front, trace),
                payloadN(REAR_PAYLOAD, ratings.rearN(), rear, trace),
                payloadN(TOTAL_PAYLOAD, ratings.totalN(), weight, trace));
    }

    private static @Nullable Double payloadN(Step step, @Nullable Double ratingN, double loadN, Trace trace) {
        return ratingN == null ? null : (Double) trace.note(step, ratingN - loadN, ratingN, loadN);
    }

    private static @Nullable Double crossShare(@Nullable Weighing weighing, Trace trace) {
        if (!(weighing instanceof Weighing.Scales scales)) {
            return null;
        }
        List<Term> terms = List.of(
                new Term(new Symbol("W_FL", LOAD), scales.frontLeftN()),
                new Term(new Symbol("W_RR", LOAD), scales.rearRightN()),
                new Term(new Symbol("W", LOAD), scales.totalN()));
        return trace.noteTerms(CROSS_SHARE, scales.crossShare(), terms);
    }

    /** The first of the parts is the bare vehicle when it was weighed; its own left load then needs no track. */
    private static @Nullable Double leftShare(List<PointMass> parts, double weightN, Input input, Trace trace) {
        Double bareLeft = input.laden() != null || input.weighing() == null
                ? null
                : input.weighing().leftLoadN();
        List<Term> terms = new ArrayList<>();
        double left = 0;
        for (int i = 0; i < parts.size(); i++) {
            PointMass part = parts.get(i);
            double load;
            if (i == 0 && bareLeft != null) {
                load = bareLeft;
            } else if (part.yM() == null) {
                return null;
            } else if (part.yM() == 0) {
                load = part.massKg() * STANDARD_GRAVITY / 2;
            } else if (input.tracks() == null) {
                return null;
            } else {
                double track = input.tracks().atM(part.xM(), input.wheelbaseM());
                load = part.massKg() * STANDARD_GRAVITY * (0.5 - part.yM() / track);
            }
            left += load;
            if (trace.keepsWorking()) {
                terms.add(new Term(new Symbol("W_l" + i, LOAD), load));
            }
        }
        terms.add(new Term(new Symbol("W", LOAD), weightN));
        return trace.noteTerms(LEFT_SHARE, left / weightN, terms);
    }

    /** What each part does to the vehicle as derived with everything in it: the vehicle with the part less the vehicle without it. */
    private static List<Lever> levers(List<Part> parts, PointMass whole, Input input, Trace trace) {
        List<Lever> levers = new ArrayList<>();
        double wheelbaseM = input.wheelbaseM();
        Trace silent = Trace.withoutWorking();
        for (Part part : parts) {
            PointMass mass = part.mass();
            double weightN = mass.massKg() * STANDARD_GRAVITY;
            levers.add(new Lever(
                    part,
                    trace.note(
                            FRONT_CHANGE,
                            TwoSupports.frontLoadN(weightN, mass.xM(), wheelbaseM, silent),
                            mass.massKg(),
                            STANDARD_GRAVITY,
                            mass.xM(),
                            wheelbaseM),
                    trace.note(
                            REAR_CHANGE,
                            TwoSupports.rearLoadN(weightN, mass.xM(), wheelbaseM, silent),
                            mass.massKg(),
                            STANDARD_GRAVITY,
                            mass.xM(),
                            wheelbaseM),
                    shift(X_CHANGE, mass.massKg(), mass.xM(), whole.xM(), whole.massKg(), trace),
                    shiftWhereKnown(Y_CHANGE, mass, mass.yM(), whole.yM(), whole, trace),
                    shiftWhereKnown(Z_CHANGE, mass, mass.zM(), whole.zM(), whole, trace)));
        }
        return List.copyOf(levers);
    }

    private static @Nullable Double shiftWhereKnown(
            Step step,
            PointMass part,
            @Nullable Double partArmM,
            @Nullable Double wholeArmM,
            PointMass whole,
            Trace trace) {
        return partArmM == null || wholeArmM == null
                ? null
                : (Double) shift(step, part.massKg(), partArmM, wholeArmM, whole.massKg(), trace);
    }

    private static double shift(Step step, double massKg, double armM, double wholeArmM, double wholeKg, Trace trace) {
        return trace.note(step, massKg * (armM - wholeArmM) / (wholeKg - massKg), massKg, armM, wholeArmM, wholeKg);
    }
}
