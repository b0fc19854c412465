package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.FORCE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.braking.MeasuredStop.Calibration;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Stopping distance and heat on the level and on a grade, what the parking brake holds, what a brake through the motor does, and what
 * taller tyres, more mass and more speed cost. Each axle gives the least of its brakes and its tyres; friction is one figure for rolling
 * and sliding tyres, so a sliding tyre is reckoned no worse than a gripping one.
 */
public final class Braking {

    /** Slowing down by less than this is no stop, m/s². */
    static final double LEAST_DECELERATION = 1e-3;

    private static final double[] SPEED_FACTORS = {0.5, 0.75, 1, 1.25, 1.5};
    private static final double FASTER = 1.1;

    private static final Step SHARE_OF_MEASURED = Step.of(
            "F_b",
            "force of one axle's brakes, the measured force shared as the figures sent",
            "F_b = F_m·F_i/ΣF",
            FORCE,
            Source.derived("measured beats reckoned; the ratio of the axles stays"),
            new Symbol("F_m", FORCE),
            new Symbol("F_i", FORCE),
            new Symbol("ΣF", FORCE));

    private Braking() {}

    /**
     * The vehicle in one state.
     *
     * @param massKg kg
     * @param stance where its mass is; null when wheelbase, position or height is not known
     */
    public record State(double massKg, @Nullable Stance stance) {
        public State {
            Check.positive(massKg, "massKg");
        }
    }

    /**
     * The parking brake.
     *
     * @param held axles it holds
     * @param forceN at the ground, N; null when not known
     */
    public record Parking(AxleSet held, @Nullable Double forceN) {}

    /**
     * Regeneration as far as it is known.
     *
     * @param torqueForceN force at the ground of the largest braking torque, N; null when not known
     * @param currentPowerW power at the wheel at the largest current, W; null when not known
     */
    public record Regeneration(
            @Nullable Double torqueForceN, @Nullable Double currentPowerW) {}

    /**
     * What is asked.
     *
     * @param occupied as driven
     * @param empty without occupants; null when not known
     * @param bare as weighed; null when not known or the same as empty
     * @param braked axles with service brakes
     * @param front brakes of the front axle
     * @param rear brakes of the rear axle
     * @param stop a measured stop; it overrides the forces of the brakes
     * @param rotatingMassShare what the rotating parts add to the mass, for the heat
     * @param friction tyre to ground; null when not known
     * @param frictionSent whether it was sent, not assumed
     * @param gradeRad slope, rad, uphill positive; null when not sent
     * @param gradeInDegrees whether the slope was sent in degrees
     * @param speedMPS speed to stop from, m/s; null when not known
     * @param reactionS time until the brakes come on, s
     * @param parking null when nothing is held
     * @param driven axles that drive; null when not known
     * @param motorBrakeN force at the ground of the spring-applied brake on the motor shaft, N; null when there is none
     * @param regeneration null when nothing is known of it
     */
    public record Input(
            State occupied,
            @Nullable State empty,
            @Nullable State bare,
            AxleSet braked,
            WheelBrakes front,
            WheelBrakes rear,
            @Nullable MeasuredStop stop,
            double rotatingMassShare,
            @Nullable Double friction,
            boolean frictionSent,
            @Nullable Double gradeRad,
            boolean gradeInDegrees,
            @Nullable Double speedMPS,
            double reactionS,
            @Nullable Parking parking,
            @Nullable AxleSet driven,
            @Nullable Double motorBrakeN,
            @Nullable Regeneration regeneration) {

        public Input {
            Check.notNegative(rotatingMassShare, "rotatingMassShare");
            Check.notNegative(reactionS, "reactionS");
            if (friction != null) {
                Check.positive(friction, "friction");
            }
            if (speedMPS != null) {
                Check.notNegative(speedMPS, "speedMPS");
            }
        }

        /** What the brakes of both axles give together, N. */
        double brakesN() {
            double frontN = front.forceN() == null ? BrakeBalance.NOT_THE_LIMIT_N : front.forceN();
            double rearN = rear.forceN() == null ? BrakeBalance.NOT_THE_LIMIT_N : rear.forceN();
            return frontN + rearN;
        }

        private Input with(WheelBrakes otherFront, WheelBrakes otherRear) {
            return new Input(
                    occupied,
                    empty,
                    bare,
                    braked,
                    otherFront,
                    otherRear,
                    stop,
                    rotatingMassShare,
                    friction,
                    frictionSent,
                    gradeRad,
                    gradeInDegrees,
                    speedMPS,
                    reactionS,
                    parking,
                    driven,
                    motorBrakeN,
                    regeneration);
        }
    }

    /** What changed the braking distance. {@code toString} is the name in answers. */
    public enum Change {
        TYRES("tyres"),
        PLAN("plan"),
        OCCUPANTS("occupants"),
        TENTH_FASTER("tenth-faster");

        private final String token;

        Change(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * What one change does to the braking distance on the level.
     *
     * @param withoutM before the change, m
     * @param withM after it, m
     */
    public record Cost(Change change, double withoutM, double withM) {
        /** After over before. */
        public double factor() {
            return withM / withoutM;
        }
    }

    /**
     * Stopping distance at another speed, reaction included.
     *
     * @param levelM on the level, m
     * @param gradeM on the grade, m; null without a grade or where it does not stop
     */
    public record AtSpeed(
            double speedMPS,
            double reactionM,
            double levelM,
            @Nullable Double gradeM) {}

    /** Nose up and nose down on a ramp. */
    public record Holds(Hold noseUp, Hold noseDown) {}

    /** The same on the level and down the slope sent, whichever sign it was sent with; null when none was sent. */
    public record Retarders(Retarder level, @Nullable Retarder downhill) {}

    /**
     * One state of the vehicle.
     *
     * @param level null when neither brakes nor tyres are known well enough
     * @param grade null without a grade too
     * @param opposite the same slope the other way; null without a slope
     */
    public record OfState(
            double massKg,
            @Nullable Stop level,
            @Nullable Stop grade,
            @Nullable Stop opposite,
            @Nullable Holds parking,
            @Nullable Retarders motorBrake,
            @Nullable Holds motorBrakeHolds,
            @Nullable Retarders regeneration) {}

    /**
     * The answer.
     *
     * @param reactionM distance until the brakes come on, m; null without speed
     * @param empty null when not known
     * @param calibration null without a measured stop
     */
    public record Result(
            @Nullable Double reactionM,
            OfState occupied,
            @Nullable OfState empty,
            List<Cost> costs,
            List<AtSpeed> bySpeed,
            @Nullable Calibration calibration) {}

    /** Stops, holds and what they cost. */
    public static Result of(Input input, Trace trace) {
        boolean two = input.empty() != null;
        Trace occupiedTrace = two ? trace.of("occupied") : trace;
        WheelBrakes front = input.front();
        WheelBrakes rear = input.rear();
        double togetherN = BrakeBalance.NOT_THE_LIMIT_N;
        Calibration calibration = null;
        MeasuredStop stop = input.stop();
        if (stop != null) {
            calibration = stop.tells(
                    input.occupied().stance(), input.braked(), input.frictionSent() ? input.friction() : null, trace);
            boolean known = (!front.there() || front.forceN() != null) && (!rear.there() || rear.forceN() != null);
            double nowN = calibration.forceNowN();
            if (!front.there()) {
                rear = measured(rear, nowN, calibration);
            } else if (!rear.there()) {
                front = measured(front, nowN, calibration);
            } else if (!known) {
                togetherN = nowN;
            } else if (calibration.limit() != BrakeLimit.TYRES) {
                double sumN = force(front) + force(rear);
                front = front.with(trace.note(SHARE_OF_MEASURED, nowN * force(front) / sumN, nowN, force(front), sumN));
                rear = rear.with(trace.note(SHARE_OF_MEASURED, nowN * force(rear) / sumN, nowN, force(rear), sumN));
            }
        }
        Input calibrated = input.with(front, rear);
        OfState occupied = state(calibrated, input.occupied(), togetherN, occupiedTrace);
        OfState empty = input.empty() == null ? null : state(calibrated, input.empty(), togetherN, trace.of("empty"));
        Result result = new Result(
                input.speedMPS() == null ? null : (Double) (input.speedMPS() * input.reactionS()),
                occupied,
                empty,
                costs(calibrated, occupied, empty, togetherN),
                bySpeed(calibrated, occupied),
                calibration);
        BrakingFindings.find(input, calibrated, result, trace);
        return result;
    }

    /** The only braked axle gave all that was measured; where the tyres ended it, brakes known to be stronger stay so. */
    private static WheelBrakes measured(WheelBrakes axle, double nowN, Calibration calibration) {
        return calibration.limit() == BrakeLimit.TYRES && axle.forceN() != null ? axle : axle.with(nowN);
    }

    private static double force(WheelBrakes axle) {
        return axle.forceN() == null ? 0 : axle.forceN();
    }

    private static OfState state(Input input, State state, double togetherN, Trace trace) {
        Double grade = input.gradeRad();
        Trace level = grade == null ? trace : trace.of("level");
        Trace slope = trace.of("grade");
        Trace down = trace.of("downhill");
        Parking parking = input.parking();
        return new OfState(
                state.massKg(),
                stop(input, state, togetherN, 0, level),
                grade == null ? null : stop(input, state, togetherN, grade, slope),
                grade == null || grade == 0
                        ? null
                        : stop(input, state, togetherN, -grade, trace.of("grade the other way")),
                parking == null ? null : holds(input, state, parking.held(), parking.forceN(), trace),
                motorBrake(input, state, level, down),
                input.motorBrakeN() == null || input.driven() == null
                        ? null
                        : holds(input, state, input.driven(), input.motorBrakeN(), trace),
                regeneration(input, state, level, down));
    }

    /** Null when neither brakes nor tyres are known well enough. */
    private static @Nullable Stop stop(Input input, State state, double togetherN, double gradeRad, Trace trace) {
        Stance stance = state.stance();
        Double friction = input.friction();
        if (stance != null && friction != null) {
            BrakeBalance balance =
                    BrakeBalance.of(stance, input.front(), input.rear(), togetherN, friction, gradeRad, trace);
            return Stop.of(input, state.massKg(), balance.totalN(), balance, gradeRad, trace);
        }
        double forceN = Math.min(togetherN, input.brakesN());
        if (friction != null && (input.braked() == AxleSet.ALL || forceN < BrakeBalance.NOT_THE_LIMIT_N)) {
            forceN = Math.min(forceN, friction * state.massKg() * Constants.STANDARD_GRAVITY * Math.cos(gradeRad));
        }
        return forceN < BrakeBalance.NOT_THE_LIMIT_N
                ? Stop.of(input, state.massKg(), forceN, null, gradeRad, trace)
                : null;
    }

    private static @Nullable Holds holds(Input input, State state, AxleSet held, @Nullable Double forceN, Trace trace) {
        Hold up = Hold.of(state.massKg(), state.stance(), held, forceN, input.friction(), true, trace);
        Hold down = Hold.of(state.massKg(), state.stance(), held, forceN, input.friction(), false, trace);
        return up == null || down == null ? null : new Holds(up, down);
    }

    private static @Nullable Retarders motorBrake(Input input, State state, Trace level, Trace down) {
        Double forceN = input.motorBrakeN();
        AxleSet driven = input.driven();
        if (forceN == null || driven == null) {
            return null;
        }
        return retarders(input, state, driven, forceN, RetarderLimit.TORQUE, level, down);
    }

    private static @Nullable Retarders regeneration(Input input, State state, Trace level, Trace down) {
        Regeneration sent = input.regeneration();
        AxleSet driven = input.driven();
        if (sent == null || driven == null) {
            return null;
        }
        Double v = input.speedMPS();
        double torqueN = sent.torqueForceN() == null ? BrakeBalance.NOT_THE_LIMIT_N : sent.torqueForceN();
        double currentN = sent.currentPowerW() == null || v == null || v == 0
                ? BrakeBalance.NOT_THE_LIMIT_N
                : sent.currentPowerW() / v;
        double wantedN = Math.min(torqueN, currentN);
        if (!(wantedN < BrakeBalance.NOT_THE_LIMIT_N)) {
            return null;
        }
        RetarderLimit limit = currentN < torqueN ? RetarderLimit.CURRENT : RetarderLimit.TORQUE;
        return retarders(input, state, driven, wantedN, limit, level, down);
    }

    private static Retarders retarders(
            Input input, State state, AxleSet driven, double wantedN, RetarderLimit limit, Trace level, Trace down) {
        Retarder onLevel = Retarder.of(
                state.massKg(), state.stance(), driven, wantedN, limit, input.friction(), 0, input.speedMPS(), level);
        Double grade = input.gradeRad();
        Retarder downhill = grade == null
                ? null
                : Retarder.of(
                        state.massKg(),
                        state.stance(),
                        driven,
                        wantedN,
                        limit,
                        input.friction(),
                        -Math.abs(grade),
                        input.speedMPS(),
                        down);
        return new Retarders(onLevel, downhill);
    }

    private static List<Cost> costs(Input input, OfState occupied, @Nullable OfState empty, double togetherN) {
        List<Cost> costs = new ArrayList<>();
        Double now = distance(occupied.level());
        if (now == null || now == 0) {
            return costs;
        }
        Trace silent = Trace.withoutWorking();
        Double former = formerDistance(input, togetherN, silent);
        if (former != null) {
            costs.add(new Cost(Change.TYRES, former, now));
        }
        Double withoutPeople = empty == null ? null : distance(empty.level());
        if (empty != null && input.bare() != null && withoutPeople != null) {
            Double asWeighed = distance(stop(input, input.bare(), togetherN, 0, silent));
            if (asWeighed != null) {
                costs.add(new Cost(Change.PLAN, asWeighed, withoutPeople));
            }
        }
        if (withoutPeople != null && empty != null && empty.massKg() != occupied.massKg()) {
            costs.add(new Cost(Change.OCCUPANTS, withoutPeople, now));
        }
        costs.add(new Cost(Change.TENTH_FASTER, now, now * FASTER * FASTER));
        return costs;
    }

    /** With the brakes as strong as they were on the former tyres; null when the tyres stay or the brakes are not known. */
    private static @Nullable Double formerDistance(Input input, double togetherN, Trace silent) {
        Double frontFactor = input.front().formerForceFactor();
        Double rearFactor = input.rear().formerForceFactor();
        if (togetherN < BrakeBalance.NOT_THE_LIMIT_N) {
            return frontFactor == null || rearFactor == null
                    ? null
                    : distance(stop(input, input.occupied(), togetherN * Math.min(frontFactor, rearFactor), 0, silent));
        }
        Double front = former(input.front());
        Double rear = former(input.rear());
        if (front == null || rear == null) {
            return null;
        }
        if (frontFactor == null && rearFactor == null) {
            return null;
        }
        Input before = input.with(input.front().with(front), input.rear().with(rear));
        return distance(stop(before, input.occupied(), togetherN, 0, silent));
    }

    private static @Nullable Double former(WheelBrakes brakes) {
        if (!brakes.there()) {
            return brakes.forceN();
        }
        Double factor = brakes.formerForceFactor();
        return brakes.forceN() == null ? null : (Double) (brakes.forceN() * (factor == null ? 1 : factor));
    }

    private static @Nullable Double distance(@Nullable Stop stop) {
        return stop == null ? null : stop.brakingDistanceM();
    }

    private static List<AtSpeed> bySpeed(Input input, OfState occupied) {
        Double v = input.speedMPS();
        Double level = distance(occupied.level());
        if (v == null || v == 0 || level == null) {
            return List.of();
        }
        Double grade = distance(occupied.grade());
        List<AtSpeed> rows = new ArrayList<>();
        for (double factor : SPEED_FACTORS) {
            double reaction = factor * v * input.reactionS();
            rows.add(new AtSpeed(
                    factor * v,
                    reaction,
                    reaction + factor * factor * level,
                    grade == null ? null : (Double) (reaction + factor * factor * grade)));
        }
        return rows;
    }
}
