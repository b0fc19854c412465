package org.axlewright.domain.energy;

import static org.axlewright.domain.quantity.Constants.AIR_DENSITY_ISO_2533;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.DISTANCE;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.energy.PackRange.Reach;
import org.axlewright.domain.energy.PackRange.Stretch;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.roadload.RoadLoad;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What a route asks of the pack, leg by leg: steady speed on each leg, full stops with their kinetic energy, waiting with the accessories
 * on. Time lost in slowing down and starting is not counted.
 */
final class RouteDemand {

    private static final Source DYNAMICS =
            Source.published("longitudinal dynamics: Gillespie, Fundamentals of Vehicle Dynamics, ch. 4");
    private static final Source AT_THE_PACK = Source.derived(
            "driving takes more than the wheel needs, braking gives back a share of what the wheel takes");
    private static final Source CIRCUIT = Source.derived("direct-current circuit: V = E - I·r, P = V·I");

    private static final Symbol MASS_ = new Symbol("m", MASS);
    private static final Symbol GRAVITY = new Symbol("g", ACCELERATION);
    private static final Symbol THETA = new Symbol("θ", ANGLE);
    private static final Symbol V = new Symbol("v", SPEED);
    private static final Symbol EFFICIENCY = new Symbol("η", NONE);
    private static final Symbol REGENERATION = new Symbol("b", NONE);
    private static final Symbol ACCESSORIES = new Symbol("Pa", POWER);
    private static final Symbol DRIVING_TIME = new Symbol("td", TIME);

    private static final Step MOVING_TIME =
            Step.of("td", "time driving", "td = d/v", TIME, DYNAMICS, new Symbol("d", DISTANCE), V);
    private static final Step ROLLING = Step.of(
            "Fr",
            "rolling resistance",
            "Fr = m·g·f·cos θ",
            FORCE,
            DYNAMICS,
            MASS_,
            GRAVITY,
            new Symbol("f", NONE),
            THETA);
    private static final Step GRADE = Step.of(
            "Fg", "part of the weight along the road", "Fg = m·g·sin θ", FORCE, DYNAMICS, MASS_, GRAVITY, THETA);
    private static final Step DRAG = Step.of(
            "Fd",
            "drag in still air of 15 degC at sea level (ISO 2533)",
            "Fd = ½·ρ·CdA·v²",
            FORCE,
            DYNAMICS,
            new Symbol("ρ in kg/m3", NONE),
            new Symbol("CdA", BODY_AREA),
            V);
    private static final Step WHEEL_FORCE = Step.of(
            "F",
            "force at the wheels",
            "F = Fr + Fg + Fd",
            FORCE,
            DYNAMICS,
            new Symbol("Fr", FORCE),
            new Symbol("Fg", FORCE),
            new Symbol("Fd", FORCE));
    private static final Step DRIVING = Step.of(
            "Pd",
            "power at the pack, driving uphill or on the level",
            "Pd = F·v/η + Pa",
            POWER,
            AT_THE_PACK,
            new Symbol("F", FORCE),
            V,
            EFFICIENCY,
            ACCESSORIES);
    private static final Step HOLDING_BACK = Step.of(
            "Pd",
            "power at the pack, held back downhill",
            "Pd = F·v·b + Pa",
            POWER,
            AT_THE_PACK,
            new Symbol("F", FORCE),
            V,
            REGENERATION,
            ACCESSORIES);
    private static final Step KINETIC = Step.of(
            "K",
            "energy of the moving vehicle",
            "K = ½·(1 + ε)·m·v²",
            ENERGY,
            DYNAMICS,
            new Symbol("ε", NONE),
            MASS_,
            V);
    private static final Step STOPS = Step.of(
            "Es",
            "energy at the pack for the stops",
            "Es = n·K·(1/η - b)",
            ENERGY,
            AT_THE_PACK,
            new Symbol("n", NONE),
            new Symbol("K", ENERGY),
            EFFICIENCY,
            REGENERATION);
    private static final Step MOVING_POWER = Step.of(
            "Pm",
            "mean power at the pack while moving, stops included",
            "Pm = Pd + Es/td",
            POWER,
            AT_THE_PACK,
            new Symbol("Pd", POWER),
            new Symbol("Es", ENERGY),
            DRIVING_TIME);
    private static final Step MOVING_CURRENT = Step.of(
            "Im",
            "mean current while moving",
            "Im = 2·Pm/(E + √(E² - 4·r·Pm))",
            CURRENT,
            CIRCUIT,
            new Symbol("E", VOLTAGE),
            new Symbol("r", RESISTANCE),
            new Symbol("Pm", POWER));
    private static final Step LEG_ENERGY = Step.of(
            "El",
            "energy at the pack",
            "El = Pm·td + Pa·tw",
            ENERGY,
            AT_THE_PACK,
            new Symbol("Pm", POWER),
            DRIVING_TIME,
            ACCESSORIES,
            new Symbol("tw", TIME));
    private static final Step LEG_CHARGE = Step.of(
            "Ql",
            "charge from the pack",
            "Ql = Im·td + Iw·tw",
            CHARGE,
            CIRCUIT,
            new Symbol("Im", CURRENT),
            DRIVING_TIME,
            new Symbol("Iw", CURRENT),
            new Symbol("tw", TIME));

    private final List<LegDemand> legs;

    private RouteDemand(List<LegDemand> legs) {
        this.legs = List.copyOf(legs);
    }

    static RouteDemand of(Vehicle vehicle, List<RouteLeg> legs, double emfV, double ohm, Trace trace) {
        List<LegDemand> demands = new ArrayList<>(legs.size());
        for (int i = 0; i < legs.size(); i++) {
            Trace ofLeg = trace.keepsWorking() ? trace.of("leg " + (i + 1)) : trace;
            demands.add(demand(vehicle, legs.get(i), emfV, ohm, ofLeg));
        }
        return new RouteDemand(demands);
    }

    private static LegDemand demand(Vehicle vehicle, RouteLeg leg, double emfV, double ohm, Trace trace) {
        double m = vehicle.massKg();
        double v = leg.speedMPS();
        double theta = leg.gradeRad();
        double eta = vehicle.driveEfficiency();
        double b = vehicle.regenerationShare();
        double accessoriesW = vehicle.accessoriesW();
        double time = trace.note(MOVING_TIME, leg.distanceM() / v, leg.distanceM(), v);
        double rollingN = trace.note(
                ROLLING,
                RoadLoad.rollingN(m, leg.rollingResistance(), theta, STANDARD_GRAVITY),
                m,
                STANDARD_GRAVITY,
                leg.rollingResistance(),
                theta);
        double gradeN = trace.note(GRADE, RoadLoad.gradeN(m, theta, STANDARD_GRAVITY), m, STANDARD_GRAVITY, theta);
        double dragN = trace.note(
                DRAG,
                RoadLoad.dragN(AIR_DENSITY_ISO_2533, vehicle.dragAreaM2(), v),
                AIR_DENSITY_ISO_2533,
                vehicle.dragAreaM2(),
                v);
        double forceN = trace.note(WHEEL_FORCE, rollingN + gradeN + dragN, rollingN, gradeN, dragN);
        double drivingW = forceN >= 0
                ? trace.note(DRIVING, forceN * v / eta + accessoriesW, forceN, v, eta, accessoriesW)
                : trace.note(HOLDING_BACK, forceN * v * b + accessoriesW, forceN, v, b, accessoriesW);
        double stopsJ = 0;
        double kineticJ = 0;
        if (leg.stops() > 0) {
            kineticJ = trace.note(
                    KINETIC, RoadLoad.kineticJ(m, vehicle.rotatingMassShare(), v), vehicle.rotatingMassShare(), m, v);
            stopsJ = trace.note(STOPS, leg.stops() * kineticJ * (1 / eta - b), leg.stops(), kineticJ, eta, b);
        }
        double movingW = trace.note(MOVING_POWER, drivingW + stopsJ / time, drivingW, stopsJ, time);
        double energyJ = trace.note(
                LEG_ENERGY, movingW * time + accessoriesW * leg.waitS(), movingW, time, accessoriesW, leg.waitS());
        double wheelJ = Math.max(forceN, 0) * leg.distanceM() + leg.stops() * kineticJ;
        LegDemand.Split split = new LegDemand.Split(
                rollingN * leg.distanceM(),
                gradeN * leg.distanceM(),
                dragN * leg.distanceM(),
                leg.stops() * kineticJ * (1 - b),
                Math.max(-forceN, 0) * leg.distanceM() * (1 - b),
                wheelJ * (1 / eta - 1),
                accessoriesW * (time + leg.waitS()));
        double greatestW = Math.max(Math.max(drivingW, movingW), accessoriesW);
        if (!(greatestW <= Sag.greatestPowerW(emfV, ohm))) {
            return new LegDemand(false, leg, time, forceN, drivingW, 0, movingW, 0, 0, energyJ, split);
        }
        double movingA = trace.note(MOVING_CURRENT, Sag.currentA(emfV, ohm, movingW), emfV, ohm, movingW);
        double waitingA = Sag.currentA(emfV, ohm, accessoriesW);
        trace.note(LEG_CHARGE, movingA * time + waitingA * leg.waitS(), movingA, time, waitingA, leg.waitS());
        return new LegDemand(
                true,
                leg,
                time,
                forceN,
                drivingW,
                Sag.currentA(emfV, ohm, drivingW),
                movingW,
                movingA * time,
                waitingA * leg.waitS(),
                energyJ,
                split);
    }

    List<LegDemand> legs() {
        return legs;
    }

    /** Index of the first leg that asks more than the pack can give, or -1. */
    int beyondPack() {
        for (int i = 0; i < legs.size(); i++) {
            if (!legs.get(i).withinPack()) {
                return i;
            }
        }
        return -1;
    }

    /** Index of the leg with the greatest power at steady speed. */
    int peakLeg() {
        int peak = 0;
        for (int i = 1; i < legs.size(); i++) {
            if (legs.get(i).drivingPowerW() > legs.get(peak).drivingPowerW()) {
                peak = i;
            }
        }
        return peak;
    }

    double energyJ() {
        return legs.stream().mapToDouble(LegDemand::energyJ).sum();
    }

    double chargeC() {
        return legs.stream().mapToDouble(LegDemand::chargeC).sum();
    }

    double durationS() {
        return legs.stream().mapToDouble(LegDemand::durationS).sum();
    }

    double distanceM() {
        return legs.stream().mapToDouble(leg -> leg.leg().distanceM()).sum();
    }

    boolean spends() {
        List<Stretch> stretches = PackRange.stretches(legs);
        double turnoverC =
                stretches.stream().mapToDouble(one -> Math.abs(one.chargeC())).sum();
        return PackRange.spends(chargeC(), turnoverC);
    }

    /** How far the charge reaches; null when the route spends nothing on balance. */
    @Nullable
    Reach reach(double availableC) {
        return PackRange.reach(PackRange.stretches(legs), availableC);
    }
}
