package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * One full stop on one grade. Rolling resistance and drag, which would help a little, are left out.
 *
 * @param gradeRad slope, rad, uphill positive
 * @param forceN retarding force at the ground, N
 * @param decelerationMPS2 m/s²; zero or less where the brakes do not stop the vehicle
 * @param brakingDistanceM m; null without a speed or where it does not stop
 * @param totalDistanceM with the reaction, m
 * @param brakingTimeS s
 * @param front what the front axle does; null when the share of the axles is not known
 * @param rear what the rear axle does
 * @param firstToLock wheels that lock first; null when the share of the axles is not known
 * @param decelerationUnlockedMPS2 slowing down without locking any wheel, m/s²; null when the share of the axles is not known
 * @param heatJ what the brakes take, J; null without a distance
 */
public record Stop(
        double gradeRad,
        double forceN,
        double decelerationMPS2,
        @Nullable Double brakingDistanceM,
        @Nullable Double totalDistanceM,
        @Nullable Double brakingTimeS,
        @Nullable AxleStop front,
        @Nullable AxleStop rear,
        @Nullable FirstToLock firstToLock,
        @Nullable Double decelerationUnlockedMPS2,
        @Nullable Double heatJ) {

    private static final Source KINEMATICS =
            Source.published("uniform deceleration: Gillespie, Fundamentals of Vehicle Dynamics, ch. 3");
    private static final Source ENERGY_BALANCE = Source.published(
            "energy of the moving vehicle and of the height it loses; OpenStax College Physics, ch. 14");

    private static final Step DECELERATION = Step.of(
            "a_b",
            "deceleration",
            "a_b = F/m + g·sin θ",
            ACCELERATION,
            KINEMATICS,
            new Symbol("F", FORCE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("θ", ANGLE));
    private static final Step DISTANCE = Step.of(
            "s",
            "braking distance",
            "s = v²/(2·a_b)",
            LENGTH,
            KINEMATICS,
            new Symbol("v", SPEED),
            new Symbol("a_b", ACCELERATION));
    private static final Step TOTAL = Step.of(
            "s_t",
            "stopping distance",
            "s_t = v·t_r + s",
            LENGTH,
            KINEMATICS,
            new Symbol("v", SPEED),
            new Symbol("t_r", EVENT_TIME),
            new Symbol("s", LENGTH));
    private static final Step HEAT = Step.of(
            "E",
            "energy the brakes take in one stop",
            "E = ½·(1 + ε)·m·v² − m·g·sin θ·s",
            ENERGY,
            ENERGY_BALANCE,
            new Symbol("ε", NONE),
            new Symbol("m", MASS),
            new Symbol("v", SPEED),
            new Symbol("g", ACCELERATION),
            new Symbol("θ", ANGLE),
            new Symbol("s", LENGTH));

    private static final Step AXLE_HEAT = Step.of(
            "E_i",
            "energy that the brakes of one axle take",
            "E_i = E·F_i/F",
            ENERGY,
            ENERGY_BALANCE,
            new Symbol("E", ENERGY),
            new Symbol("F_i", FORCE),
            new Symbol("F", FORCE));

    /**
     * One axle in the stop.
     *
     * @param loadN load it carries meanwhile, N
     * @param forceN its retarding force, N
     * @param limit what ends it
     * @param heatJ what its brakes take, J; an upper bound where its wheels slide; null without a distance
     * @param riseK temperature rise of its drums or discs, K; null when their mass is not known
     */
    public record AxleStop(
            double loadN,
            double forceN,
            BrakeLimit limit,
            @Nullable Double heatJ,
            @Nullable Double riseK) {}

    static Stop of(
            Braking.Input input,
            double massKg,
            double forceN,
            @Nullable BrakeBalance balance,
            double gradeRad,
            Trace trace) {
        double g = Constants.STANDARD_GRAVITY;
        double a = trace.note(DECELERATION, forceN / massKg + g * Math.sin(gradeRad), forceN, massKg, g, gradeRad);
        Double distance = null;
        Double total = null;
        Double time = null;
        Double heat = null;
        Double v = input.speedMPS();
        if (v != null && a > Braking.LEAST_DECELERATION) {
            distance = trace.note(DISTANCE, v * v / (2 * a), v, a);
            total = trace.note(TOTAL, v * input.reactionS() + distance, v, input.reactionS(), distance);
            time = v / a;
            double epsilon = input.rotatingMassShare();
            heat = Math.max(
                    0,
                    trace.note(
                            HEAT,
                            (1 + epsilon) * massKg * v * v / 2 - massKg * g * Math.sin(gradeRad) * distance,
                            epsilon,
                            massKg,
                            v,
                            g,
                            gradeRad,
                            distance));
        }
        if (balance == null) {
            return new Stop(gradeRad, forceN, a, distance, total, time, null, null, null, null, heat);
        }
        FirstToLock first = balance.shared() ? null : balance.firstToLock(input.brakesN());
        Double unlocked = null;
        if (first != null) {
            double lockN = first == FirstToLock.NEITHER
                    ? balance.totalN()
                    : Math.min(balance.lockFrontN(), balance.lockRearN());
            unlocked = Math.min(lockN, balance.totalN()) / massKg + g * Math.sin(gradeRad);
        }
        return new Stop(
                gradeRad,
                forceN,
                a,
                distance,
                total,
                time,
                axle(input.front(), balance.frontLoadN(), balance.frontN(), balance.frontLimit(), forceN, heat, trace),
                axle(input.rear(), balance.rearLoadN(), balance.rearN(), balance.rearLimit(), forceN, heat, trace),
                first,
                unlocked,
                heat);
    }

    private static AxleStop axle(
            WheelBrakes brakes,
            double loadN,
            double forceN,
            BrakeLimit limit,
            double totalN,
            @Nullable Double heatJ,
            Trace trace) {
        Double heat = heatJ == null || !(totalN > 0)
                ? null
                : (Double) trace.note(AXLE_HEAT, heatJ * forceN / totalN, heatJ, forceN, totalN);
        Double mass = brakes.heatMassKg();
        Double rise = heat == null || mass == null ? null : (Double) BrakeHeat.riseK(heat, mass, BrakeHeat.IRON, trace);
        return new AxleStop(loadN, forceN, limit, heat, rise);
    }
}
