package org.axlewright.domain.repack;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.axles.TwoSupports;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** The same vehicle with its former pack and with the one it has now. */
public final class PackWeightChange {

    /** Share of the weight on the front axle below which steering suffers. */
    static final double LIGHT_FRONT = 0.20;

    private static final Source STEERED_AXLE = Source.weak(
            "20 % of the laden mass on the steered axle, asked of goods vehicles by Regulation (EU) 1230/2012 as read in a reprint;"
                    + " for this class of vehicle a rule of thumb");
    private static final Source NEWTON = Source.published("Newton's second law, F = m·a");

    private static final Step MASS_CHANGE = Step.of(
            "Δm",
            "what the change of pack adds to the mass",
            "Δm = m_after − m_before",
            MASS,
            Source.derived("difference"),
            new Symbol("m_after", MASS),
            new Symbol("m_before", MASS));
    private static final Step SAME_FORCE = Step.of(
            "k",
            "acceleration and climb under the same force, after over before; stopping distance under the same brake force goes as 1/k",
            "k = m_before/m_after",
            NONE,
            NEWTON,
            new Symbol("m_before", MASS),
            new Symbol("m_after", MASS));
    private static final Step FRONT_LIFT = Step.of(
            "G",
            "grade on which the front wheels leave the ground, standing or at steady speed",
            "tan θ = (L − x)/h",
            GRADE,
            Source.published("Jazar, Vehicle Dynamics, ch. 2: tilting angle of a parked vehicle"),
            new Symbol("L", LENGTH),
            new Symbol("x", LENGTH),
            new Symbol("h", LENGTH));
    private static final Step GRIP_LIMIT = Step.of(
            "a",
            "largest acceleration or deceleration that the tyres pass on, level",
            "a = F/m",
            ACCELERATION,
            NEWTON,
            new Symbol("F", FORCE),
            new Symbol("m", MASS));

    private static final Caution HEAVY_BATTERY = new Caution(
            "lifting-a-pack",
            "A pack is heavy and live: lift it with a hoist rated for it, cover its terminals, use insulated tools, take off jewellery. It"
                    + " must be held down so that it stays in place in a crash or a roll.");
    private static final Caution SUSPENSION = new Caution(
            "ride-height",
            "A lighter or heavier pack changes how the vehicle stands on its springs, and with it alignment and clearance. Check them"
                    + " after the change and weigh the vehicle.");

    private PackWeightChange() {}

    /**
     * The vehicle as driven, with one of the packs.
     *
     * @param massKg above 0
     * @param xM centre of gravity behind the front axle, m
     * @param heightM of the centre of gravity, m; null when not known
     */
    public record Vehicle(
            double massKg, double xM, @Nullable Double heightM) {
        public Vehicle {
            Check.positive(massKg, "mass");
            Check.finite(xM, "x");
            if (heightM != null) {
                Check.positive(heightM, "height");
            }
        }
    }

    /**
     * The question.
     *
     * @param driven axles that drive
     * @param braked axles that brake; null when not known
     * @param friction tyre to ground; null when not known
     */
    public record Input(
            double wheelbaseM,
            Vehicle before,
            Vehicle after,
            AxleSet driven,
            @Nullable AxleSet braked,
            @Nullable Double friction) {
        public Input {
            Check.positive(wheelbaseM, "wheelbase");
            if (friction != null) {
                Check.positive(friction, "friction");
            }
        }
    }

    /**
     * The vehicle with one of the packs.
     *
     * @param frontLiftRad grade on which the front wheels leave the ground, rad; null without the height
     * @param launchLimit acceleration at which the driven tyres slip, m/s2; null without height and friction, and where the front lifts first
     * @param brakeLimit deceleration at which the braked tyres slip, m/s2; null without height, friction and braked axles
     */
    public record State(
            Vehicle vehicle,
            double frontLoadN,
            double rearLoadN,
            double frontShare,
            @Nullable Double frontLiftRad,
            @Nullable Double launchLimit,
            @Nullable Double brakeLimit) {}

    /**
     * The answer.
     *
     * @param massChangeKg after less before
     * @param sameForce acceleration and climb under the same force, after over before
     */
    public record Result(State before, State after, double massChangeKg, double sameForce) {}

    /** Sets the two side by side. Pure. */
    public static Result of(Input input, Trace trace) {
        State before = state(input.before(), input, trace.of("before"));
        State after = state(input.after(), input, trace.of("after"));
        double massBefore = input.before().massKg();
        double massAfter = input.after().massKg();
        Result result = new Result(
                before,
                after,
                trace.note(MASS_CHANGE, massAfter - massBefore, massAfter, massBefore),
                trace.note(SAME_FORCE, massBefore / massAfter, massBefore, massAfter));
        find(result, trace);
        return result;
    }

    private static State state(Vehicle vehicle, Input input, Trace trace) {
        double weightN = vehicle.massKg() * Constants.STANDARD_GRAVITY;
        double frontN = TwoSupports.frontLoadN(weightN, vehicle.xM(), input.wheelbaseM(), trace);
        double rearN = TwoSupports.rearLoadN(weightN, vehicle.xM(), input.wheelbaseM(), trace);
        Double heightM = vehicle.heightM();
        if (heightM == null) {
            return new State(vehicle, frontN, rearN, frontN / weightN, null, null, null);
        }
        double ahead = input.wheelbaseM() - vehicle.xM();
        Double liftRad = ahead > 0
                ? (Double) trace.note(FRONT_LIFT, Math.atan(ahead / heightM), input.wheelbaseM(), vehicle.xM(), heightM)
                : null;
        Stance stance = new Stance(vehicle.massKg(), input.wheelbaseM(), vehicle.xM(), heightM);
        Double launch = null;
        Double brake = null;
        if (input.friction() != null) {
            launch = limit(stance.thrustLimitN(input.driven(), input.friction(), 0, trace), vehicle, trace);
            if (input.braked() != null) {
                brake = limit(stance.brakeLimitN(input.braked(), input.friction(), 0, trace), vehicle, trace);
            }
        }
        return new State(vehicle, frontN, rearN, frontN / weightN, liftRad, launch, brake);
    }

    private static @Nullable Double limit(double forceN, Vehicle vehicle, Trace trace) {
        return Double.isFinite(forceN)
                ? (Double) trace.note(GRIP_LIMIT, forceN / vehicle.massKg(), forceN, vehicle.massKg())
                : null;
    }

    private static void find(Result result, Trace trace) {
        trace.caution(HEAVY_BATTERY);
        trace.caution(SUSPENSION);
        State before = result.before();
        State after = result.after();
        if (after.frontShare() < LIGHT_FRONT) {
            trace.find(Finding.of(
                            "front-axle-light",
                            after.frontShare() < 0 ? Level.DANGER : Level.WARNING,
                            "With this pack a share of {actual} of the weight is on the front axle, below {limit}: it steers badly and lifts its front wheels early",
                            STEERED_AXLE)
                    .at("/pack/position/x")
                    .actual(Measure.number(after.frontShare()))
                    .limit(Measure.number(LIGHT_FRONT))
                    .action("Move the pack forward, or put other weight ahead of it"));
        }
        if (before.frontLiftRad() != null
                && after.frontLiftRad() != null
                && after.frontLiftRad() < before.frontLiftRad()) {
            trace.find(Finding.of(
                            "lifts-its-front-earlier",
                            Level.CAUTION,
                            "The front wheels now leave the ground on a grade of {actual}, before on {limit}; under power and with a heel of the driver sooner",
                            Source.derived("tan θ = (L − x)/h with both packs"))
                    .at("/pack/position")
                    .actual(new Measure(after.frontLiftRad(), GRADE))
                    .limit(new Measure(before.frontLiftRad(), GRADE))
                    .action("Ask stability with this vehicle before it climbs"));
        }
        if (result.massChangeKg() > 0) {
            trace.find(Finding.of(
                            "heavier",
                            Level.CAUTION,
                            "The change adds {actual}: with the same brakes it stops later, and tyres and axles carry more",
                            NEWTON)
                    .at("/pack/mass")
                    .actual(new Measure(result.massChangeKg(), MASS))
                    .action("Hold the axle loads against the maker's ratings"));
        }
    }
}
