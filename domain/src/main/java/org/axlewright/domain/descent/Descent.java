package org.axlewright.domain.descent;

import static org.axlewright.domain.quantity.Constants.AIR_DENSITY_ISO_2533;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.DISTANCE;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.roadload.RoadLoad;
import org.axlewright.domain.roadload.SpeedPolynomial;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * A hill at steady speed: what pulls, what holds back, and where the energy goes. What rolling and air do not take, the motor takes as
 * far as torque, tyres, controller, pack and resistor allow, and the friction brakes the rest. Nothing is given off to the air by brakes
 * and resistor meanwhile, so their temperature rises are upper bounds.
 */
public final class Descent {

    private static final Source DYNAMICS =
            Source.published("longitudinal dynamics: Gillespie, Fundamentals of Vehicle Dynamics, ch. 4");
    private static final Source BALANCE = Source.derived("energy balance of the descent at steady speed");
    private static final Source CIRCUIT = Source.derived("direct-current circuit: P = U·I");
    private static final Source MOMENTS =
            Source.published("Jazar, Vehicle Dynamics, ch. 2, eq. 2.121 and 2.122: axle load on an inclined road");

    private static final Symbol M = new Symbol("m", MASS);
    private static final Symbol G = new Symbol("g", ACCELERATION);
    private static final Symbol THETA = new Symbol("θ", ANGLE);
    private static final Symbol V = new Symbol("v", SPEED);
    private static final Symbol D = new Symbol("d", DISTANCE);

    private static final Step HEIGHT_ENERGY =
            Step.of("E", "energy of the height lost", "E = m·g·d·sin θ", ENERGY, DYNAMICS, M, G, D, THETA);
    private static final Step ROLLING = Step.of(
            "Fr", "rolling resistance", "Fr = m·g·f·cos θ", FORCE, DYNAMICS, M, G, new Symbol("f", NONE), THETA);
    private static final Step DRAG = Step.of(
            "Fd",
            "drag in still air of 15 degC at sea level (ISO 2533)",
            "Fd = ½·ρ·CdA·v²",
            FORCE,
            DYNAMICS,
            new Symbol("ρ in kg/m3", NONE),
            new Symbol("CdA", BODY_AREA),
            V);
    private static final Step HOLDING = Step.of(
            "F",
            "force that holds the speed; below zero the motor must push",
            "F = m·g·sin θ − Fr − Fd",
            FORCE,
            DYNAMICS,
            M,
            G,
            THETA,
            new Symbol("Fr", FORCE),
            new Symbol("Fd", FORCE));
    private static final Step HOLDING_POWER =
            Step.of("P", "power that holds the speed", "P = F·v", POWER, DYNAMICS, new Symbol("F", FORCE), V);
    private static final Step CURRENT_WANTED = Step.of(
            "I",
            "charging current when the motor takes it all",
            "I = b·P/U",
            CURRENT,
            CIRCUIT,
            new Symbol("b", NONE),
            new Symbol("P", POWER),
            new Symbol("U", VOLTAGE));
    private static final Step MOTOR_POWER = Step.of(
            "Pm",
            "power at the wheel that the motor takes, as torque, tyres, controller, pack and resistor allow",
            "Pm = min(P, Pt, Pc/b)",
            POWER,
            BALANCE,
            new Symbol("P", POWER),
            new Symbol("Pt", POWER),
            new Symbol("Pc", POWER),
            new Symbol("b", NONE));
    private static final Step PACK_CHARGE = Step.of(
            "Q",
            "charge that goes into the pack",
            "Q = E/U",
            CHARGE,
            CIRCUIT,
            new Symbol("E", ENERGY),
            new Symbol("U", VOLTAGE));
    private static final Step TOP = Step.of(
            "s",
            "state of charge to leave the top with",
            "s = 1 − Q/C",
            NONE,
            BALANCE,
            new Symbol("Q", CHARGE),
            new Symbol("C", CHARGE));
    private static final Step TO_BEAR = Step.of(
            "U_b",
            "voltage that the controller must bear",
            "U_b = k·U_full",
            VOLTAGE,
            DescentFindings.MARGIN,
            new Symbol("k", NONE),
            new Symbol("U_full", VOLTAGE));
    private static final Step RESISTOR_OHM = Step.of(
            "R",
            "largest resistance that takes the power",
            "R = U²/P",
            RESISTANCE,
            CIRCUIT,
            new Symbol("U", VOLTAGE),
            new Symbol("P", POWER));
    private static final Step NEEDED_REAR = needed("rear axle", "μ = F·L/(m·g·(x·cos θ − h·sin θ))");
    private static final Step NEEDED_FRONT = needed("front axle", "μ = F·L/(m·g·((L − x)·cos θ + h·sin θ))");
    private static final Step NEEDED_ALL = needed("all wheels", "μ = F/(m·g·cos θ)");
    private static final Step TERMINAL = Step.of(
            "v_t",
            "speed at which the air alone would hold it",
            "v_t = √((m·g·sin θ − Fr)/(½·ρ·CdA))",
            SPEED,
            DYNAMICS,
            M,
            G,
            THETA,
            new Symbol("Fr", FORCE),
            new Symbol("ρ in kg/m3", NONE),
            new Symbol("CdA", BODY_AREA));
    private static final Step DOUBLING = Step.of(
            "t",
            "time until the speed has doubled with nothing holding it",
            "t = ∫ (1 + ε)·m/(m·g·sin θ − Fr − ½·ρ·CdA·u²) du from v to 2·v",
            EVENT_TIME,
            DYNAMICS,
            new Symbol("ε", NONE),
            M,
            G,
            THETA,
            new Symbol("Fr", FORCE),
            new Symbol("ρ in kg/m3", NONE),
            new Symbol("CdA", BODY_AREA),
            V);
    private static final Step STOP_ENERGY = Step.of(
            "K",
            "energy of the stop at the bottom",
            "K = ½·(1 + ε)·m·v²",
            ENERGY,
            DYNAMICS,
            new Symbol("ε", NONE),
            M,
            V);

    private static Step needed(String axle, String formula) {
        return Step.of(
                "μ",
                "friction that holding the speed takes, " + axle,
                formula,
                NONE,
                MOMENTS,
                new Symbol("F", FORCE),
                new Symbol("L", LENGTH),
                M,
                G,
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH),
                THETA);
    }

    private Descent() {}

    /** The vehicle in one state; the stance is null when wheelbase, position or height is not known. */
    public record State(double massKg, @Nullable Stance stance) {
        public State {
            Check.positive(massKg, "massKg");
        }
    }

    /**
     * A stretch that falls.
     *
     * @param distanceM along the road, m
     * @param fallRad slope, rad, downhill positive
     * @param speedMPS steady speed, m/s
     * @param rollingResistance coefficient
     * @param pointer where it stands in the request
     */
    public record Leg(double distanceM, double fallRad, double speedMPS, double rollingResistance, String pointer) {
        public Leg {
            Check.positive(distanceM, "distanceM");
            Check.within(fallRad, 0, Math.PI / 2, "fallRad");
            Check.positive(speedMPS, "speedMPS");
            Check.notNegative(rollingResistance, "rollingResistance");
        }
    }

    /**
     * Regeneration.
     *
     * @param share of the braking energy at the wheel that comes back, 0 to 1
     * @param torqueForceN force at the ground of the largest braking torque, N; null when not known
     * @param controllerA largest current that the controller sends back, A; null when not known
     */
    public record Regeneration(
            double share,
            @Nullable Double torqueForceN,
            @Nullable Double controllerA) {
        public Regeneration {
            Check.within(share, 0, 1, "share");
        }
    }

    /**
     * The pack.
     *
     * @param cells in series
     * @param nominalV V
     * @param fullV at the end of a charge, V
     * @param capacityC of all strings, C; null when not known
     * @param stateOfCharge at the top of the hill; null when not known
     * @param temperatureC of the cells; null when not known
     * @param chargeA largest charging current, A; null when not known
     */
    public record Pack(
            Chemistry chemistry,
            int cells,
            double nominalV,
            double fullV,
            @Nullable Double capacityC,
            @Nullable Double stateOfCharge,
            @Nullable Double temperatureC,
            @Nullable Double chargeA) {

        /** Whether it takes no charge because its cells are frozen for that. */
        boolean cold() {
            return !chemistry.isLeadAcid() && temperatureC != null && temperatureC < COLD_C;
        }

        /** What still fits in, C; null when not known. */
        @Nullable
        Double headroomC() {
            return capacityC == null || stateOfCharge == null ? null : (Double) ((1 - stateOfCharge) * capacityC);
        }
    }

    /** What controller and capacitors must bear over the full pack, for the peaks of regeneration; source {@link DescentFindings#MARGIN}. */
    static final double VOLTAGE_MARGIN = 1.2;

    /** Cell voltages of lithium iron phosphate between which regeneration should fade, V: riders' practice [weak]. */
    private static final double FADE_FROM_V = 3.45;

    private static final double FADE_TO_V = 3.55;

    /** Below it a lithium cell takes no charge, degC. */
    static final double COLD_C = 0;

    /** The braking resistor, as far as it is known. */
    public record Resistor(
            @Nullable Double ohm,
            @Nullable Double continuousW,
            @Nullable Double heatSinkKg) {}

    /**
     * The friction brakes.
     *
     * @param braked axles; null when not known
     * @param frontShare share of the front axle in their heat; null when not known
     * @param frontKg drums or discs of the front axle, kg; null when not known
     * @param rearKg drums or discs of the rear axle, kg; null when not known
     */
    public record FrictionBrakes(
            @Nullable AxleSet braked,
            @Nullable Double frontShare,
            @Nullable Double frontKg,
            @Nullable Double rearKg) {}

    /**
     * What is asked.
     *
     * @param legs in order; empty when nothing falls
     * @param controllerV highest voltage of the controller, V; null when not known
     * @param sensorFactor true speed over the speed the controller reckons with; 1 when it reads right
     * @param fallInDegrees whether the slope of the hill was sent in degrees
     */
    public record Input(
            State occupied,
            @Nullable State empty,
            List<Leg> legs,
            double dragAreaM2,
            double rotatingMassShare,
            double friction,
            @Nullable AxleSet driven,
            Regeneration regeneration,
            @Nullable Pack pack,
            @Nullable Double controllerV,
            @Nullable Resistor resistor,
            FrictionBrakes brakes,
            double sensorFactor,
            boolean fallInDegrees) {

        public Input {
            legs = List.copyOf(legs);
            Check.notNegative(dragAreaM2, "dragAreaM2");
            Check.positive(friction, "friction");
        }
    }

    /**
     * Where the energy of the hill goes, J. The parts less what the motor adds are the energy of the height lost.
     *
     * @param driveLossJ lost between wheel and battery terminals in what the motor takes
     * @param motorAddsJ what the motor must add where the hill falls too little
     */
    public record Split(
            double rollingJ,
            double dragJ,
            double frictionBrakesJ,
            double driveLossJ,
            double packJ,
            double resistorJ,
            double motorAddsJ) {

        /** Energy of the height lost, J. */
        public double totalJ() {
            return rollingJ + dragJ + frictionBrakesJ + driveLossJ + packJ + resistorJ - motorAddsJ;
        }

        private Split plus(Split other) {
            return new Split(
                    rollingJ + other.rollingJ,
                    dragJ + other.dragJ,
                    frictionBrakesJ + other.frictionBrakesJ,
                    driveLossJ + other.driveLossJ,
                    packJ + other.packJ,
                    resistorJ + other.resistorJ,
                    motorAddsJ + other.motorAddsJ);
        }
    }

    /** Heat of the friction brakes, J, and the rise by axle, K; null where an axle has no share or no known mass. */
    public record BrakesHeat(
            double energyJ,
            @Nullable Double frontRiseK,
            @Nullable Double rearRiseK) {}

    /**
     * A resistor for a pack that takes nothing.
     *
     * @param ohm largest resistance that takes the power; null without a voltage
     * @param riseK of its heat sink; null without a mass
     */
    public record ResistorNeed(
            double powerW,
            double energyJ,
            @Nullable Double ohm,
            @Nullable Double riseK) {}

    /**
     * What the tyres must give on the steepest stretch.
     *
     * @param byMotor friction when the driven axle holds it alone; null when not known or no load is left on it
     * @param byBrakes friction when the braked axles hold it alone
     */
    public record Adhesion(
            @Nullable Double byMotor, @Nullable Double byBrakes) {}

    /**
     * With nothing holding it.
     *
     * @param terminalMPS speed at which the air holds it, m/s
     * @param doublingS time until the speed has doubled, s; null where it never does
     */
    public record Runaway(double terminalMPS, @Nullable Double doublingS) {}

    /**
     * One state of the vehicle.
     *
     * @param greatestW greatest power that holds the speed, W
     * @param pack null without chemistry or cells
     * @param alone everything into the friction brakes, as with a disconnected pack
     * @param stop the stop still needed at the bottom
     */
    public record OfState(
            double massKg,
            double energyJ,
            double durationS,
            double greatestW,
            Split split,
            @Nullable PackDown pack,
            BrakesHeat brakes,
            BrakesHeat alone,
            BrakesHeat stop,
            @Nullable ResistorNeed resistor,
            Adhesion adhesion,
            @Nullable Runaway runaway) {

        @Nullable
        Double wantedA() {
            return pack == null ? null : pack.wantedA();
        }

        @Nullable
        Double wantedC() {
            return pack == null ? null : pack.wantedC();
        }
    }

    /**
     * The pack on the way down.
     *
     * @param headroomC what fits in at the top, C; null when not known
     * @param headroomJ the same at the nominal voltage, J
     * @param chargeC what goes in, C; null without regeneration
     * @param wantedC what would, were the pack never full, C
     * @param wantedA greatest charging current when the motor holds the speed alone, A
     * @param topShare state of charge to leave the top with; null when the hill gives more than the pack holds
     * @param bottomShare state of charge at the bottom
     * @param fadeFromV voltage at which regeneration should begin to fade, V; lithium iron phosphate only
     * @param fadeToV voltage at which it should be gone, V
     * @param toBearV voltage that the controller must bear, V
     */
    public record PackDown(
            @Nullable Double headroomC,
            @Nullable Double headroomJ,
            @Nullable Double chargeC,
            @Nullable Double wantedC,
            @Nullable Double wantedA,
            @Nullable Double topShare,
            @Nullable Double bottomShare,
            @Nullable Double fadeFromV,
            @Nullable Double fadeToV,
            double toBearV) {}

    /** The answer. */
    public record Result(OfState occupied, @Nullable OfState empty, double friction) {}

    /** Energy, heat and adhesion of a hill. */
    public static Result of(Input input, Trace trace) {
        OfState occupied = state(input, input.occupied(), input.empty() == null ? trace : trace.of("occupied"));
        OfState empty = input.empty() == null ? null : state(input, input.empty(), trace.of("empty"));
        Result result = new Result(occupied, empty, input.friction());
        DescentFindings.find(input, result, trace);
        return result;
    }

    /** What one leg takes at steady speed. */
    private record Pull(double rollingN, double dragN, double holdingN, double powerW) {}

    private static Pull pull(Input input, double massKg, Leg leg, Trace trace) {
        double g = STANDARD_GRAVITY;
        double rollingN = trace.note(
                ROLLING,
                RoadLoad.rollingN(massKg, leg.rollingResistance(), leg.fallRad(), g),
                massKg,
                g,
                leg.rollingResistance(),
                leg.fallRad());
        double dragN = trace.note(
                DRAG,
                RoadLoad.dragN(AIR_DENSITY_ISO_2533, input.dragAreaM2(), leg.speedMPS()),
                AIR_DENSITY_ISO_2533,
                input.dragAreaM2(),
                leg.speedMPS());
        double holdingN = trace.note(
                HOLDING,
                RoadLoad.gradeN(massKg, leg.fallRad(), g) - rollingN - dragN,
                massKg,
                g,
                leg.fallRad(),
                rollingN,
                dragN);
        return new Pull(
                rollingN,
                dragN,
                holdingN,
                trace.note(HOLDING_POWER, holdingN * leg.speedMPS(), holdingN, leg.speedMPS()));
    }

    private static OfState state(Input input, State state, Trace trace) {
        Pack pack = input.pack();
        double share = input.regeneration().share();
        Split total = new Split(0, 0, 0, 0, 0, 0, 0);
        double energyJ = 0;
        double durationS = 0;
        double greatestW = 0;
        double resistorW = 0;
        double resistorJ = 0;
        double freeJ = 0;
        double headroomC = pack == null || pack.headroomC() == null ? Double.POSITIVE_INFINITY : pack.headroomC();
        for (int i = 0; i < input.legs().size(); i++) {
            Leg leg = input.legs().get(i);
            Trace ofLeg = trace.keepsWorking() && input.legs().size() > 1 ? trace.of("stretch " + (i + 1)) : trace;
            double timeS = leg.distanceM() / leg.speedMPS();
            durationS += timeS;
            energyJ += ofLeg.note(
                    HEIGHT_ENERGY,
                    RoadLoad.gradeN(state.massKg(), leg.fallRad(), STANDARD_GRAVITY) * leg.distanceM(),
                    state.massKg(),
                    STANDARD_GRAVITY,
                    leg.distanceM(),
                    leg.fallRad());
            Pull pull = pull(input, state.massKg(), leg, ofLeg);
            greatestW = Math.max(greatestW, pull.powerW());
            double holdJ = Math.max(0, pull.holdingN()) * leg.distanceM();
            double addJ = Math.max(0, -pull.holdingN()) * leg.distanceM();
            double motorW = motorW(input, state, leg, Math.max(0, pull.powerW()));
            // a pack that takes nothing leaves it all to the resistor
            resistorW = Math.max(resistorW, share * motorW);
            resistorJ += share * motorW * timeS;
            double packW = packW(input);
            freeJ += Math.min(share * motorW, packW) * timeS;
            double packJ = Math.min(Math.min(share * motorW, packW) * timeS, headroomC * volts(pack));
            headroomC -= packJ / volts(pack);
            double intoResistorJ = Math.min(share * motorW * timeS - packJ, resistorTakesW(input) * timeS);
            double terminalsW = (packJ + intoResistorJ) / timeS;
            double takenW = share > 0
                    ? ofLeg.note(
                            MOTOR_POWER,
                            Math.min(motorW, terminalsW / share),
                            Math.max(0, pull.powerW()),
                            motorW,
                            terminalsW,
                            share)
                    : 0;
            double takenJ = takenW * timeS;
            total = total.plus(new Split(
                    pull.rollingN() * leg.distanceM(),
                    pull.dragN() * leg.distanceM(),
                    Math.max(0, holdJ - takenJ),
                    Math.max(0, Math.min(holdJ, takenJ) - packJ - intoResistorJ),
                    packJ,
                    intoResistorJ,
                    addJ));
        }
        double holdJ = total.frictionBrakesJ() + total.driveLossJ() + total.packJ() + total.resistorJ();
        double lastMPS = input.legs().isEmpty()
                ? 0
                : input.legs().get(input.legs().size() - 1).speedMPS();
        double stopJ = trace.note(
                STOP_ENERGY,
                RoadLoad.kineticJ(state.massKg(), input.rotatingMassShare(), lastMPS),
                input.rotatingMassShare(),
                state.massKg(),
                lastMPS);
        return new OfState(
                state.massKg(),
                energyJ,
                durationS,
                greatestW,
                total,
                pack == null ? null : packDown(pack, share, greatestW, total.packJ(), freeJ, trace),
                heat(input.brakes(), total.frictionBrakesJ(), trace),
                heat(input.brakes(), holdJ, trace.of("brakes alone")),
                heat(input.brakes(), stopJ, trace.of("stop at the bottom")),
                share > 0 && resistorW > 0 ? resistor(input, resistorW, resistorJ, trace) : null,
                adhesion(input, state, trace),
                runaway(input, state, trace));
    }

    private static PackDown packDown(
            Pack pack, double share, double greatestW, double packJ, double freeJ, Trace trace) {
        double volts = pack.nominalV();
        Double headroomC = pack.headroomC();
        boolean lfp = pack.chemistry() == Chemistry.LFP;
        double toBearV = trace.note(TO_BEAR, VOLTAGE_MARGIN * pack.fullV(), VOLTAGE_MARGIN, pack.fullV());
        Double headroomJ = headroomC == null ? null : (Double) (headroomC * volts);
        Double fadeFromV = lfp ? (Double) (pack.cells() * FADE_FROM_V) : null;
        Double fadeToV = lfp ? (Double) (pack.cells() * FADE_TO_V) : null;
        if (!(share > 0)) {
            return new PackDown(
                    headroomC, headroomJ, null, null, null, null, pack.stateOfCharge(), fadeFromV, fadeToV, toBearV);
        }
        double chargeC = trace.note(PACK_CHARGE, packJ / volts, packJ, volts);
        double wantedC = freeJ / volts;
        Double capacityC = pack.capacityC();
        Double top = pack.cold() || capacityC == null || wantedC > capacityC
                ? null
                : (Double) trace.note(TOP, 1 - wantedC / capacityC, wantedC, capacityC);
        return new PackDown(
                headroomC,
                headroomJ,
                chargeC,
                wantedC,
                trace.note(CURRENT_WANTED, share * greatestW / volts, share, greatestW, volts),
                top,
                capacityC == null || pack.stateOfCharge() == null
                        ? null
                        : (Double) Math.min(1, pack.stateOfCharge() + chargeC / capacityC),
                fadeFromV,
                fadeToV,
                toBearV);
    }

    /** Nominal voltage; 1 V where there is no pack, so that charge and energy can be told apart nowhere. */
    private static double volts(@Nullable Pack pack) {
        return pack == null ? 1 : pack.nominalV();
    }

    /** Power at the wheel that torque, tyres and controller let the motor take, W. */
    private static double motorW(Input input, State state, Leg leg, double holdW) {
        Regeneration regeneration = input.regeneration();
        if (!(regeneration.share() > 0)) {
            return 0;
        }
        double most = holdW;
        Double torqueN = regeneration.torqueForceN();
        if (torqueN != null) {
            most = Math.min(most, torqueN * leg.speedMPS());
        }
        Double controllerA = regeneration.controllerA();
        if (controllerA != null && input.pack() != null) {
            most = Math.min(most, controllerA * volts(input.pack()) / regeneration.share());
        }
        if (state.stance() != null && input.driven() != null) {
            double gripN = state.stance()
                    .brakeLimitN(input.driven(), input.friction(), -leg.fallRad(), Trace.withoutWorking());
            most = Math.min(most, gripN * leg.speedMPS());
        }
        return most;
    }

    /** Power that the pack lets in while it is not full, W. */
    private static double packW(Input input) {
        Pack pack = input.pack();
        if (pack == null) {
            return Double.MAX_VALUE;
        }
        if (pack.cold()) {
            return 0;
        }
        return pack.chargeA() == null ? Double.MAX_VALUE : pack.chargeA() * pack.nominalV();
    }

    /** Power that the resistor takes at most, W; nothing without one. */
    private static double resistorTakesW(Input input) {
        Resistor resistor = input.resistor();
        if (resistor == null) {
            return 0;
        }
        Double volts = resistorV(input);
        return resistor.ohm() == null || volts == null ? Double.MAX_VALUE : volts * volts / resistor.ohm();
    }

    /** The voltage that the resistor sees: the controller's highest, else the full pack's. */
    static @Nullable Double resistorV(Input input) {
        Pack pack = input.pack();
        Double fullV = pack == null ? null : (Double) pack.fullV();
        Double highestV = input.controllerV();
        if (highestV == null || fullV == null) {
            return highestV == null ? fullV : highestV;
        }
        return Math.min(highestV, fullV);
    }

    private static ResistorNeed resistor(Input input, double powerW, double energyJ, Trace trace) {
        Double volts = resistorV(input);
        Resistor resistor = input.resistor();
        Double heatSinkKg = resistor == null ? null : resistor.heatSinkKg();
        return new ResistorNeed(
                powerW,
                energyJ,
                volts == null ? null : (Double) trace.note(RESISTOR_OHM, volts * volts / powerW, volts, powerW),
                heatSinkKg == null
                        ? null
                        : (Double) BrakeHeat.riseK(energyJ, heatSinkKg, BrakeHeat.ALUMINIUM, trace.of("heat sink")));
    }

    private static BrakesHeat heat(FrictionBrakes brakes, double energyJ, Trace trace) {
        Double front = brakes.frontShare();
        if (front == null) {
            return new BrakesHeat(energyJ, null, null);
        }
        return new BrakesHeat(
                energyJ,
                rise(energyJ * front, brakes.frontKg(), trace.of("front")),
                rise(energyJ * (1 - front), brakes.rearKg(), trace.of("rear")));
    }

    private static @Nullable Double rise(double energyJ, @Nullable Double massKg, Trace trace) {
        return massKg == null ? null : (Double) BrakeHeat.riseK(energyJ, massKg, BrakeHeat.IRON, trace);
    }

    /** The stretch that takes the largest force against its axle load. */
    private static Adhesion adhesion(Input input, State state, Trace trace) {
        Double byMotor = null;
        Double byBrakes = null;
        for (Leg leg : input.legs()) {
            double holdingN =
                    pull(input, state.massKg(), leg, Trace.withoutWorking()).holdingN();
            if (holdingN <= 0) {
                continue;
            }
            Double motor = friction(state.stance(), input.driven(), holdingN, leg.fallRad(), trace.of("by the motor"));
            Double brakes = friction(
                    state.stance(), input.brakes().braked(), holdingN, leg.fallRad(), trace.of("by the brakes"));
            byMotor = motor == null || (byMotor != null && byMotor > motor) ? byMotor : motor;
            byBrakes = brakes == null || (byBrakes != null && byBrakes > brakes) ? byBrakes : brakes;
        }
        return new Adhesion(byMotor, byBrakes);
    }

    private static @Nullable Double friction(
            @Nullable Stance stance, @Nullable AxleSet axle, double forceN, double fallRad, Trace trace) {
        if (stance == null || axle == null) {
            return null;
        }
        Trace silent = Trace.withoutWorking();
        double loadN = switch (axle) {
            case FRONT -> stance.frontLoadN(-fallRad, 0, silent);
            case REAR -> stance.rearLoadN(-fallRad, 0, silent);
            case ALL -> stance.weightN() * Math.cos(fallRad);
        };
        if (!(loadN > 1e-6 * stance.weightN())) {
            return null;
        }
        Step step = axle == AxleSet.ALL ? NEEDED_ALL : axle == AxleSet.REAR ? NEEDED_REAR : NEEDED_FRONT;
        return trace.note(
                step,
                forceN / loadN,
                forceN,
                stance.wheelbaseM(),
                stance.massKg(),
                stance.gravity(),
                stance.xM(),
                stance.heightM(),
                fallRad);
    }

    /** On the stretch that pulls hardest; null where nothing pulls. */
    private static @Nullable Runaway runaway(Input input, State state, Trace trace) {
        Leg worst = null;
        double mostN = 0;
        for (Leg leg : input.legs()) {
            double pullN =
                    pull(input, state.massKg(), leg, Trace.withoutWorking()).holdingN();
            if (pullN > mostN) {
                mostN = pullN;
                worst = leg;
            }
        }
        if (worst == null || input.dragAreaM2() == 0) {
            return null;
        }
        double massKg = state.massKg();
        double rollingN = RoadLoad.rollingN(massKg, worst.rollingResistance(), worst.fallRad(), STANDARD_GRAVITY);
        double pullN = RoadLoad.gradeN(massKg, worst.fallRad(), STANDARD_GRAVITY) - rollingN;
        double c = AIR_DENSITY_ISO_2533 * input.dragAreaM2() / 2;
        double terminal = trace.note(
                TERMINAL,
                Math.sqrt(pullN / c),
                massKg,
                STANDARD_GRAVITY,
                worst.fallRad(),
                rollingN,
                AIR_DENSITY_ISO_2533,
                input.dragAreaM2());
        double v = worst.speedMPS();
        Double doubling = null;
        if (2 * v < NEAR_TERMINAL * terminal) {
            double epsilon = input.rotatingMassShare();
            doubling = trace.note(
                    DOUBLING,
                    new SpeedPolynomial(-pullN, 0, c).rollingTimeS((1 + epsilon) * massKg, v, 2 * v),
                    epsilon,
                    massKg,
                    STANDARD_GRAVITY,
                    worst.fallRad(),
                    rollingN,
                    AIR_DENSITY_ISO_2533,
                    input.dragAreaM2(),
                    v);
        }
        return new Runaway(terminal, doubling);
    }

    /** Close to the terminal speed the time grows without bound. */
    private static final double NEAR_TERMINAL = 0.95;
}
