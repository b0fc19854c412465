package org.axlewright.domain.energy;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CONSUMPTION;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.DISTANCE;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * How much energy is really in the pack, and how far and how long it lasts.
 *
 * <p>The capacity is taken at the mean current of the load (Peukert's law for lead-acid), at the temperature of the cells, and of it the
 * usable share less the reserve. The open-circuit voltage is the nominal voltage throughout; with an internal resistance the voltage
 * under load follows from it. A route is repeated until the charge is spent, counted leg by leg.
 */
public final class PackRange {

    private static final Source CIRCUIT = Source.derived("direct-current circuit: V = E - I·r, P = V·I");
    private static final Source DEFINITION = Source.derived("definition");
    private static final Source PACK_ENERGY = Source.derived(
            "rated energy times usable share, rate factor and temperature factor, with the voltage under load");

    private static final Symbol E = new Symbol("E", VOLTAGE);
    private static final Symbol I = new Symbol("I", CURRENT);
    private static final Symbol P = new Symbol("P", POWER);
    private static final Symbol Q = new Symbol("Q", Dimension.CHARGE);
    private static final Symbol STRINGS = new Symbol("p", NONE);

    private static final Step NOMINAL_ENERGY = Step.of(
            "En",
            "nominal energy",
            "En = V·C·p",
            ENERGY,
            DEFINITION,
            new Symbol("V", VOLTAGE),
            new Symbol("C", CHARGE),
            STRINGS);
    private static final Step CURRENT_OF_POWER = Step.of(
            "I",
            "current of the pack at the power",
            "I = 2·P/(E + √(E² - 4·r·P))",
            CURRENT,
            CIRCUIT,
            E,
            new Symbol("r", RESISTANCE),
            P);
    private static final Step POWER_OF_CURRENT = Step.of(
            "P",
            "power of the pack at the current",
            "P = (E - I·r)·I",
            POWER,
            CIRCUIT,
            E,
            I,
            new Symbol("r", RESISTANCE));
    private static final Step STRING_CURRENT = Step.of(
            "Is", "mean current of one string", "Is = I/p", CURRENT, Source.derived("equal strings share"), I, STRINGS);
    private static final Step DELIVERED = Step.of(
            "Q",
            "charge the pack delivers until the usable share is spent",
            "Q = CI·p·fT·h·u·(1 - s)",
            Dimension.CHARGE,
            PACK_ENERGY,
            new Symbol("CI", Dimension.CHARGE),
            STRINGS,
            new Symbol("fT", NONE),
            new Symbol("h", NONE),
            new Symbol("u", NONE),
            new Symbol("s", NONE));
    private static final Step CHARGE_AT_HEALTH = Step.of(
            "Qh",
            "charge the pack delivers at another point of its life",
            "Qh = Q·h1/h",
            Dimension.CHARGE,
            Source.published("cell makers' data sheets count cycles down to 80 % of the rated capacity"),
            Q,
            new Symbol("h1", NONE),
            new Symbol("h", NONE));
    private static final Step USABLE_UNDER_LOAD =
            Step.of("Eu", "usable energy at the terminals", "Eu = Q·P/I", ENERGY, PACK_ENERGY, Q, P, I);
    private static final Step USABLE_AT_REST =
            Step.of("Eu", "usable energy at the nominal voltage", "Eu = Q·E", ENERGY, PACK_ENERGY, Q, E);
    private static final Step RUNTIME =
            Step.of("tr", "running time at the constant load", "tr = Q/I", TIME, DEFINITION, Q, I);
    private static final Step DISCHARGE_RATE = Step.of(
            "c",
            "mean current as a multiple of the rated capacity per hour",
            "c = I·3600 s/(C·p)",
            NONE,
            DEFINITION,
            I,
            new Symbol("C", Dimension.CHARGE),
            STRINGS);
    private static final Step PEAK_VOLTAGE = Step.of(
            "Vp",
            "voltage of the pack under the greatest steady load",
            "Vp = E - Ip·r",
            VOLTAGE,
            CIRCUIT,
            E,
            new Symbol("Ip", CURRENT),
            new Symbol("r", RESISTANCE));
    private static final Step LAP_POWER = Step.of(
            "P",
            "mean power over the route",
            "P = El/tl",
            POWER,
            DEFINITION,
            new Symbol("El", ENERGY),
            new Symbol("tl", TIME));
    private static final Step LAP_CURRENT = Step.of(
            "I",
            "mean current over the route",
            "I = Ql/tl",
            CURRENT,
            DEFINITION,
            new Symbol("Ql", Dimension.CHARGE),
            new Symbol("tl", TIME));
    private static final Step LAP_CONSUMPTION = Step.of(
            "w",
            "consumption over the route",
            "w = El/dl",
            CONSUMPTION,
            DEFINITION,
            new Symbol("El", ENERGY),
            new Symbol("dl", DISTANCE));
    private static final Symbol[] REACH = {
        Q, new Symbol("Ql", Dimension.CHARGE), new Symbol("dl", DISTANCE), new Symbol("tl", TIME)
    };
    private static final Step RANGE = Step.of(
            "d",
            "distance on the route repeated until the charge is spent",
            "d = (Q/Ql)·dl, the last lap counted leg by leg",
            DISTANCE,
            DEFINITION,
            REACH);
    private static final Step ROUTE_TIME = Step.of(
            "tr",
            "time on the route repeated until the charge is spent",
            "tr = (Q/Ql)·tl, the last lap counted leg by leg",
            TIME,
            DEFINITION,
            REACH);

    private PackRange() {}

    /**
     * The pack.
     *
     * @param cellsInSeries null when not known: no voltage and no energy then
     * @param strings in parallel
     * @param string what one string gives at a constant current
     * @param health share of the rated capacity that is left, above 0
     * @param usableShare share of the capacity that is used, 0 to 1
     * @param reserveShare share of that kept back, 0 to less than 1
     * @param resistanceOhm of the whole pack; null when not known
     * @param acMeasured whether the resistance was read with a 1 kHz meter
     * @param temperatureC of the cells, inside {@link TemperatureFactor#range}
     */
    public record Pack(
            Chemistry chemistry,
            @Nullable Integer cellsInSeries,
            int strings,
            DischargeCapacity string,
            double health,
            double usableShare,
            double reserveShare,
            @Nullable Double resistanceOhm,
            boolean acMeasured,
            double temperatureC,
            Limits limits) {

        public Pack {
            Check.within(strings, 1, Integer.MAX_VALUE, "strings");
            Check.positive(health, "health");
            Check.within(usableShare, 0, 1, "usableShare");
            Check.within(reserveShare, 0, 1, "reserveShare");
            Check.finite(temperatureC, "temperatureC");
        }

        double ratedC() {
            return string.ratedC() * strings;
        }

        double ohm() {
            return resistanceOhm == null ? 0 : resistanceOhm;
        }
    }

    /**
     * What battery management or maker allow, whole pack; null where not known.
     *
     * @param continuousA continuous discharge, A
     * @param peakA peak discharge, A
     * @param peakS how long the peak may last, s
     * @param chargeA charge, regeneration included, A
     */
    public record Limits(
            @Nullable Double continuousA,
            @Nullable Double peakA,
            @Nullable Double peakS,
            @Nullable Double chargeA) {}

    /** What draws on the pack. */
    public sealed interface Duty {}

    /** A constant current at the pack, A. */
    public record ConstantCurrent(double currentA) implements Duty {
        public ConstantCurrent {
            Check.positive(currentA, "currentA");
        }
    }

    /** A constant power at the pack, W. */
    public record ConstantPower(double powerW) implements Duty {
        public ConstantPower {
            Check.positive(powerW, "powerW");
        }
    }

    /**
     * A route driven again and again.
     *
     * @param band the same route with what was assumed at its easy and its hard end; null when nothing was assumed
     */
    public record Route(
            Vehicle vehicle, List<RouteLeg> legs, @Nullable Band band) implements Duty {
        public Route {
            Check.within(legs.size(), 1, Integer.MAX_VALUE, "legs");
            legs = List.copyOf(legs);
        }
    }

    /** The two ends of what was assumed. */
    public record Band(Vehicle easyVehicle, List<RouteLeg> easyLegs, Vehicle hardVehicle, List<RouteLeg> hardLegs) {}

    /**
     * The question.
     *
     * @param duty what draws on the pack; null for the pack alone
     * @param loadUnused whether a constant load was sent beside the route, which goes before it
     */
    public record Input(Pack pack, @Nullable Duty duty, boolean loadUnused) {
        public Input {
            if (pack.cellsInSeries() == null && !(duty instanceof ConstantCurrent)) {
                throw new InvalidInput("cells in series are needed for anything but a constant current");
            }
        }
    }

    /**
     * The answer, SI; null where it can't be given.
     *
     * @param usableEnergyJ at the terminals under the load
     * @param deliveredChargeC until the usable share is spent
     * @param dischargeRate mean current as a multiple of rated capacity per hour
     * @param peakVoltageV under the greatest steady load; null without a resistance
     * @param peakLeg index of the leg with the greatest steady power, or null
     * @param rangeLeastM range when everything assumed is at its hard end
     * @param rangeMostM range when everything assumed is at its easy end
     * @param life the same pack new and at the end of its life
     */
    public record Result(
            @Nullable PackVoltages voltages,
            @Nullable Double nominalEnergyJ,
            @Nullable Double usableEnergyJ,
            double deliveredChargeC,
            @Nullable Double averagePowerW,
            @Nullable Double averageCurrentA,
            @Nullable Double dischargeRate,
            @Nullable Double peakPowerW,
            @Nullable Double peakCurrentA,
            @Nullable Double peakVoltageV,
            @Nullable Integer peakLeg,
            @Nullable Double consumptionJPerM,
            @Nullable Double rangeM,
            @Nullable Double rangeLeastM,
            @Nullable Double rangeMostM,
            @Nullable Double runtimeS,
            List<LegDemand> legs,
            Life life) {}

    /**
     * The same load on the pack at one point of its life, after the reserve; null where it can't be given.
     *
     * @param health share of the rated capacity that is left
     */
    public record LifePoint(
            double health,
            @Nullable Double usableEnergyJ,
            @Nullable Double rangeM,
            @Nullable Double runtimeS) {}

    /** Both ends of the pack's life. */
    public record Life(LifePoint whenNew, LifePoint endOfLife) {}

    /** Share of the rated capacity at which makers count a pack as spent. */
    public static final double END_OF_LIFE = 0.8;

    public static Result of(Input input, Trace trace) {
        Pack pack = input.pack();
        Integer cells = pack.cellsInSeries();
        PackVoltages voltages = cells == null ? null : PackVoltages.of(pack.chemistry(), cells, trace);
        Double nominalJ = voltages == null
                ? null
                : trace.note(
                        NOMINAL_ENERGY,
                        voltages.nominalV() * pack.ratedC(),
                        voltages.nominalV(),
                        pack.string().ratedC(),
                        pack.strings());
        Duty duty = input.duty();
        Result result;
        if (duty instanceof ConstantCurrent constant) {
            result = atCurrent(pack, voltages, nominalJ, constant.currentA(), trace);
        } else if (duty instanceof ConstantPower constant && voltages != null) {
            result = atPower(pack, voltages, nominalJ, constant.powerW(), trace);
        } else if (duty instanceof Route route && voltages != null) {
            result = onRoute(pack, voltages, nominalJ, route, trace);
        } else {
            result = unloaded(pack, voltages, nominalJ, List.of(), trace);
        }
        PackFindings.find(input, result, trace);
        return result;
    }

    /** The pack alone, at the rate its capacity is printed for. */
    private static Result unloaded(
            Pack pack, @Nullable PackVoltages voltages, @Nullable Double nominalJ, List<LegDemand> legs, Trace trace) {
        double chargeC = deliveredC(pack, 0, trace);
        Double usableJ = voltages == null
                ? null
                : trace.note(USABLE_AT_REST, chargeC * voltages.nominalV(), chargeC, voltages.nominalV());
        return new Result(
                voltages,
                nominalJ,
                usableJ,
                chargeC,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                legs,
                life(pack, chargeC, usableJ, null, trace));
    }

    private static Result atPower(
            Pack pack, PackVoltages voltages, @Nullable Double nominalJ, double powerW, Trace trace) {
        double emfV = voltages.nominalV();
        if (!(powerW <= Sag.greatestPowerW(emfV, pack.ohm()))) {
            PackFindings.powerBeyondPack(powerW, emfV, pack.ohm(), "/load/power", trace);
            return unloaded(pack, voltages, nominalJ, List.of(), trace);
        }
        double currentA =
                trace.note(CURRENT_OF_POWER, Sag.currentA(emfV, pack.ohm(), powerW), emfV, pack.ohm(), powerW);
        return constant(pack, voltages, nominalJ, currentA, powerW, trace);
    }

    private static Result atCurrent(
            Pack pack, @Nullable PackVoltages voltages, @Nullable Double nominalJ, double currentA, Trace trace) {
        if (voltages == null) {
            return constant(pack, null, nominalJ, currentA, null, trace);
        }
        double emfV = voltages.nominalV();
        double terminalV = Sag.terminalV(emfV, pack.ohm(), currentA);
        if (!(terminalV > 0)) {
            PackFindings.currentBeyondPack(currentA, emfV, pack.ohm(), trace);
            return unloaded(pack, voltages, nominalJ, List.of(), trace);
        }
        double powerW = trace.note(POWER_OF_CURRENT, terminalV * currentA, emfV, currentA, pack.ohm());
        return constant(pack, voltages, nominalJ, currentA, powerW, trace);
    }

    private static Result constant(
            Pack pack,
            @Nullable PackVoltages voltages,
            @Nullable Double nominalJ,
            double currentA,
            @Nullable Double powerW,
            Trace trace) {
        double chargeC = deliveredC(pack, currentA, trace);
        return new Result(
                voltages,
                nominalJ,
                powerW == null
                        ? null
                        : trace.note(USABLE_UNDER_LOAD, chargeC * powerW / currentA, chargeC, powerW, currentA),
                chargeC,
                powerW,
                currentA,
                dischargeRate(pack, currentA, trace),
                powerW,
                currentA,
                peakVoltage(pack, voltages, currentA, trace),
                null,
                null,
                null,
                null,
                null,
                trace.note(RUNTIME, chargeC / currentA, chargeC, currentA),
                List.of(),
                life(
                        pack,
                        chargeC,
                        powerW == null ? null : (Double) (chargeC * powerW / currentA),
                        atHealth -> new LifeReach(null, atHealth / currentA),
                        trace));
    }

    private static Result onRoute(
            Pack pack, PackVoltages voltages, @Nullable Double nominalJ, Route route, Trace trace) {
        double emfV = voltages.nominalV();
        RouteDemand lap = RouteDemand.of(route.vehicle(), route.legs(), emfV, pack.ohm(), trace);
        int beyond = lap.beyondPack();
        if (beyond >= 0) {
            PackFindings.powerBeyondPack(
                    lap.legs().get(beyond).greatestPowerW(), emfV, pack.ohm(), "/route/" + beyond, trace);
            return unloaded(pack, voltages, nominalJ, lap.legs(), trace);
        }
        double powerW = trace.note(LAP_POWER, lap.energyJ() / lap.durationS(), lap.energyJ(), lap.durationS());
        double currentA = trace.note(LAP_CURRENT, lap.chargeC() / lap.durationS(), lap.chargeC(), lap.durationS());
        double chargeC = deliveredC(pack, currentA, trace);
        boolean spends = lap.spends();
        double usableJ = spends && powerW > 0
                ? trace.note(USABLE_UNDER_LOAD, chargeC * powerW / currentA, chargeC, powerW, currentA)
                : trace.note(USABLE_AT_REST, chargeC * emfV, chargeC, emfV);
        Reach reach = lap.reach(chargeC);
        Double rangeM = null;
        Double runtimeS = null;
        if (reach == null) {
            PackFindings.gainsOnBalance(trace);
        } else {
            double[] terms = {chargeC, lap.chargeC(), lap.distanceM(), lap.durationS()};
            rangeM = trace.note(RANGE, reach.distanceM(), terms);
            runtimeS = trace.note(ROUTE_TIME, reach.timeS(), terms);
        }
        Band band = route.band();
        int peak = lap.peakLeg();
        LegDemand hardest = lap.legs().get(peak);
        return new Result(
                voltages,
                nominalJ,
                usableJ,
                chargeC,
                powerW,
                currentA,
                dischargeRate(pack, currentA, trace),
                hardest.drivingPowerW(),
                hardest.drivingCurrentA(),
                peakVoltage(pack, voltages, hardest.drivingCurrentA(), trace),
                peak,
                trace.note(LAP_CONSUMPTION, lap.energyJ() / lap.distanceM(), lap.energyJ(), lap.distanceM()),
                rangeM,
                band == null ? null : silentRangeM(pack, emfV, band.hardVehicle(), band.hardLegs()),
                band == null ? null : silentRangeM(pack, emfV, band.easyVehicle(), band.easyLegs()),
                runtimeS,
                lap.legs(),
                life(
                        pack,
                        chargeC,
                        usableJ,
                        atHealth -> {
                            Reach far = lap.reach(atHealth);
                            return far == null ? null : new LifeReach(far.distanceM(), far.timeS());
                        },
                        trace));
    }

    /** Range of the same pack on another set of values; null when it has none. */
    private static @Nullable Double silentRangeM(Pack pack, double emfV, Vehicle vehicle, List<RouteLeg> legs) {
        Trace silent = Trace.withoutWorking();
        RouteDemand lap = RouteDemand.of(vehicle, legs, emfV, pack.ohm(), silent);
        if (lap.beyondPack() >= 0) {
            return null;
        }
        Reach reach = lap.reach(deliveredC(pack, lap.chargeC() / lap.durationS(), silent));
        return reach == null ? null : (Double) reach.distanceM();
    }

    /** Charge until the usable share is spent, C, at a mean current of the pack, A. */
    private static double deliveredC(Pack pack, double currentA, Trace trace) {
        double stringA = trace.note(STRING_CURRENT, currentA / pack.strings(), currentA, pack.strings());
        double capacityC = pack.string().at(stringA, trace);
        double fullDischargeS = capacityC / Math.max(stringA, pack.string().slowestA());
        double temperature = TemperatureFactor.of(pack.chemistry(), pack.temperatureC(), fullDischargeS, trace);
        return trace.note(
                DELIVERED,
                capacityC
                        * pack.strings()
                        * temperature
                        * pack.health()
                        * pack.usableShare()
                        * (1 - pack.reserveShare()),
                capacityC,
                pack.strings(),
                temperature,
                pack.health(),
                pack.usableShare(),
                pack.reserveShare());
    }

    /** How far and how long a charge carries; the distance is null at a constant load. */
    private record LifeReach(@Nullable Double distanceM, double timeS) {}

    /** The same load on the pack when new and at the end of its life; the charge goes with the health. */
    private static Life life(
            Pack pack,
            double chargeC,
            @Nullable Double usableJ,
            @Nullable DoubleFunction<@Nullable LifeReach> reach,
            Trace trace) {
        return new Life(
                lifePoint(1, pack, chargeC, usableJ, reach, trace.of("new")),
                lifePoint(END_OF_LIFE, pack, chargeC, usableJ, reach, trace.of("end-of-life")));
    }

    private static LifePoint lifePoint(
            double health,
            Pack pack,
            double chargeC,
            @Nullable Double usableJ,
            @Nullable DoubleFunction<@Nullable LifeReach> reach,
            Trace trace) {
        double atHealthC =
                trace.note(CHARGE_AT_HEALTH, chargeC * health / pack.health(), chargeC, health, pack.health());
        LifeReach far = reach == null ? null : reach.apply(atHealthC);
        return new LifePoint(
                health,
                usableJ == null ? null : (Double) (usableJ * health / pack.health()),
                far == null ? null : far.distanceM(),
                far == null ? null : (Double) far.timeS());
    }

    private static double dischargeRate(Pack pack, double currentA, Trace trace) {
        return trace.note(
                DISCHARGE_RATE,
                currentA * TimeUnit.HOUR.toSi(1) / pack.ratedC(),
                currentA,
                pack.string().ratedC(),
                pack.strings());
    }

    private static @Nullable Double peakVoltage(
            Pack pack, @Nullable PackVoltages voltages, double currentA, Trace trace) {
        if (voltages == null || pack.resistanceOhm() == null) {
            return null;
        }
        return trace.note(
                PEAK_VOLTAGE,
                Sag.terminalV(voltages.nominalV(), pack.ohm(), currentA),
                voltages.nominalV(),
                currentA,
                pack.ohm());
    }

    /** How far and how long. */
    record Reach(double distanceM, double timeS) {}

    /** One stretch of a lap on which the charge is spent evenly. */
    record Stretch(double chargeC, double timeS, double distanceM) {}

    /**
     * Repeats a lap until the charge is spent. What regeneration would put into a full pack is lost; that can only happen on the first
     * lap, because every lap after it starts with something spent. Null when a lap spends nothing on balance.
     */
    static @Nullable Reach reach(List<Stretch> lap, double availableC) {
        double spentC = 0;
        double distanceM = 0;
        double timeS = 0;
        double lapC = 0;
        double turnoverC = 0;
        double highestC = 0;
        double lapM = 0;
        double lapS = 0;
        for (Stretch stretch : lap) {
            if (spentC + stretch.chargeC() >= availableC) {
                return partly(stretch, spentC, distanceM, timeS, availableC);
            }
            spentC = Math.max(0, spentC + stretch.chargeC());
            distanceM += stretch.distanceM();
            timeS += stretch.timeS();
            lapC += stretch.chargeC();
            turnoverC += Math.abs(stretch.chargeC());
            highestC = Math.max(highestC, lapC);
            lapM += stretch.distanceM();
            lapS += stretch.timeS();
        }
        if (!spends(lapC, turnoverC)) {
            return null;
        }
        double laps = Math.max(0, Math.ceil((availableC - spentC - highestC) / lapC));
        spentC += laps * lapC;
        distanceM += laps * lapM;
        timeS += laps * lapS;
        // the last lap; a second round only for what rounding left over
        for (int round = 0; round < 2; round++) {
            for (Stretch stretch : lap) {
                if (spentC + stretch.chargeC() >= availableC) {
                    return partly(stretch, spentC, distanceM, timeS, availableC);
                }
                spentC += stretch.chargeC();
                distanceM += stretch.distanceM();
                timeS += stretch.timeS();
            }
        }
        return new Reach(distanceM, timeS);
    }

    /** Whether a lap spends anything: more than rounding of what goes in and out. */
    static boolean spends(double lapC, double turnoverC) {
        return lapC > 1e-9 * turnoverC;
    }

    private static Reach partly(Stretch stretch, double spentC, double distanceM, double timeS, double availableC) {
        double share = stretch.chargeC() > 0 ? Math.max(0, (availableC - spentC) / stretch.chargeC()) : 0;
        return new Reach(distanceM + share * stretch.distanceM(), timeS + share * stretch.timeS());
    }

    static List<Stretch> stretches(List<LegDemand> legs) {
        List<Stretch> stretches = new ArrayList<>();
        for (LegDemand leg : legs) {
            stretches.add(new Stretch(
                    leg.movingChargeC(), leg.movingTimeS(), leg.leg().distanceM()));
            stretches.add(new Stretch(leg.waitingChargeC(), leg.leg().waitS(), 0));
        }
        return stretches;
    }
}
