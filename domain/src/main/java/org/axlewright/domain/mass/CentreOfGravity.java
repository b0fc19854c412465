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
    private static final Step RAISED = Step.of(
            "Δz",
            "rise of the bare vehicle's centre of gravity by lift and tyres",
            "Δz as room lift works it out",
            LENGTH,
            Source.derived("sprung share of the lift plus change of loaded radius, by axle load"),
            new Symbol("Δz", LENGTH));

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
     * How lift and tyres raised the vehicle since it was weighed, m.
     *
     * @param bareM rise of the bare vehicle's centre of gravity
     * @param frontM rise of the frame over the front axle
     * @param rearM rise of the frame over the rear axle
     */
    public record Raise(double bareM, double frontM, double rearM) {
        public static final Raise NONE = new Raise(0, 0, 0);

        public Raise {
            Check.finite(bareM, "rise of the bare vehicle");
            Check.finite(frontM, "rise at the front");
            Check.finite(rearM, "rise at the rear");
        }
    }

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
     * @param parts in the order of the request
     */
    public record Input(
            double wheelbaseM,
            @Nullable Tracks tracks,
            @Nullable Weighing weighing,
            @Nullable Double heightM,
            @Nullable RaisedAxle raisedAxle,
            Raise raise,
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
        List<PointMass> emptyMasses = new ArrayList<>();
        List<PointMass> allMasses = new ArrayList<>();
        List<Part> raisedParts = new ArrayList<>();
        PointMass bare = bare(input, trace);
        for (Part part : input.parts()) {
            Part raised = new Part(
                    part.pointer(),
                    part.name(),
                    part.reference(),
                    part.occupant(),
                    part.mass().raisedBy(frameRiseM(input, part.mass().xM())));
            raisedParts.add(raised);
        }
        State empty = null;
        if (bare != null) {
            emptyMasses.add(bare);
            raisedParts.stream()
                    .filter(part -> !part.occupant())
                    .map(Part::mass)
                    .forEach(emptyMasses::add);
            allMasses.add(bare);
            raisedParts.stream().map(Part::mass).forEach(allMasses::add);
            boolean people = emptyMasses.size() < allMasses.size();
            Trace emptyTrace = people || input.laden() != null ? Trace.withoutWorking() : trace;
            empty = state(composite(emptyMasses, emptyTrace), emptyMasses, input, emptyTrace);
        }
        State occupied = occupied(input, allMasses, empty, emptyMasses.size() < allMasses.size(), trace);
        Result result = new Result(
                occupied,
                empty,
                levers(raisedParts, allMasses, input),
                input.weighing() == null ? null : input.weighing().crossShare());
        MassFindings.find(input, result, trace);
        return result;
    }

    private static State occupied(
            Input input, List<PointMass> all, @Nullable State empty, boolean people, Trace trace) {
        if (input.laden() == null) {
            State derived = Objects.requireNonNull(empty, "bare vehicle");
            return people ? state(composite(all, trace), all, input, trace) : derived;
        }
        PointMass derived = empty == null ? null : composite(all, Trace.withoutWorking());
        Laden laden = input.laden();
        PointMass whole = new PointMass(
                given(laden.massKg(), derived, PointMass::massKg),
                given(laden.xM(), derived, PointMass::xM),
                laden.yM() != null || derived == null ? laden.yM() : derived.yM(),
                laden.zM() != null || derived == null ? laden.zM() : derived.zM());
        return state(whole, List.of(whole), input, trace);
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
        if (height != null && input.raise().bareM() != 0) {
            trace.note(RAISED, input.raise().bareM(), input.raise().bareM());
        }
        return new PointMass(plan.massKg(), plan.xM(), plan.yM(), height)
                .raisedBy(input.raise().bareM());
    }

    /** Parts and people ride on the frame: they rise with it at their own station. */
    private static double frameRiseM(Input input, double xM) {
        Raise raise = input.raise();
        return raise.frontM() + (raise.rearM() - raise.frontM()) * xM / input.wheelbaseM();
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
                ratings.frontN() == null ? null : (Double) (ratings.frontN() - front),
                ratings.rearN() == null ? null : (Double) (ratings.rearN() - rear),
                ratings.totalN() == null ? null : (Double) (ratings.totalN() - weight));
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

    private static List<Lever> levers(List<Part> parts, List<PointMass> all, Input input) {
        if (all.isEmpty()) {
            return List.of();
        }
        Trace silent = Trace.withoutWorking();
        PointMass whole = composite(all, silent);
        List<Lever> levers = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            double weight = part.mass().massKg() * STANDARD_GRAVITY;
            List<PointMass> others = new ArrayList<>(all);
            others.remove(i + 1); // the bare vehicle stands first
            PointMass without = composite(others, silent);
            levers.add(new Lever(
                    part,
                    TwoSupports.frontLoadN(weight, part.mass().xM(), input.wheelbaseM(), silent),
                    TwoSupports.rearLoadN(weight, part.mass().xM(), input.wheelbaseM(), silent),
                    whole.xM() - without.xM(),
                    difference(whole.yM(), without.yM()),
                    difference(whole.zM(), without.zM())));
        }
        return List.copyOf(levers);
    }

    private static @Nullable Double difference(@Nullable Double with, @Nullable Double without) {
        return with == null || without == null ? null : (Double) (with - without);
    }
}
