package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.Copper;
import org.axlewright.domain.conductor.AmpacityTable.Factor;
import org.axlewright.domain.conductor.AmpacityTable.Row;
import org.axlewright.domain.conductor.Cycle.Hottest;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * The thinnest cable that carries a circuit's current for good, stays at or below the rating of insulation and terminals at every moment
 * of its cycle, and loses no more voltage than allowed at the peak. Copper, direct current, two conductors out and back.
 */
public final class ConductorSizing {

    /** Most runs side by side that are proposed. */
    private static final int MOST_RUNS = 4;

    /** Thinnest run to be laid in parallel, 1/0 AWG, m2. Source: NEC 310.10(G), recalled. */
    private static final double THINNEST_PARALLEL_M2 =
            Math.PI / 4 * Conductor.awgDiameterM(0) * Conductor.awgDiameterM(0);

    /** A share of a limit that counts as over it: one, and the error of the sums. */
    private static final double FULL = 1 + 1e-12;

    private static final Source OHM = Source.derived("Ohm's law over two conductors, out and back");
    private static final Source CALORIMETRY = Source.derived(
            "heat held by the copper over heat given off at its ampacity; IEC 60949 for copper 3.45e6 J/(m3 K)");

    private static final Symbol I_RMS = new Symbol("Irms", CURRENT);
    private static final Symbol LENGTH_ONE_WAY = new Symbol("L", LENGTH);
    private static final Symbol PER_LENGTH = new Symbol("r", RESISTANCE_PER_LENGTH);
    private static final Symbol RUNS = new Symbol("n", NONE);
    private static final Symbol PEAK = new Symbol("Ip", CURRENT);

    private static final Step CIRCUIT = Step.of(
            "c",
            "circuit, by its place in the request; the steps that follow are of it and of the size chosen",
            "c",
            NONE,
            Source.derived("the request"),
            new Symbol("c", NONE));
    private static final Step AMPACITY = Step.of(
            "A",
            "allowed current of all runs: table value, factor of the surroundings, factor of the bundle",
            "A = n·At·fa·fb",
            CURRENT,
            Source.regulation(
                    "33 CFR 183.425 or NEC 310.16 with its corrections, as the findings and assumptions name them"),
            RUNS,
            new Symbol("At", CURRENT),
            new Symbol("fa", NONE),
            new Symbol("fb", NONE));
    private static final Step TIME_CONSTANT = Step.of(
            "τ",
            "thermal time constant of one run, copper alone",
            "τ = 3.45·10⁶·S·(Tc − Ta)/((A/n)²·r)",
            EVENT_TIME,
            CALORIMETRY,
            new Symbol("S", AREA),
            new Symbol("Tc", TEMPERATURE),
            new Symbol("Ta", TEMPERATURE),
            new Symbol("A", CURRENT),
            RUNS,
            PER_LENGTH);
    private static final Step DROP = Step.of(
            "dV",
            "voltage lost out and back at the peak current",
            "dV = 2·L·Ip·r/n",
            VOLTAGE,
            OHM,
            LENGTH_ONE_WAY,
            PEAK,
            PER_LENGTH,
            RUNS);
    private static final Step DROP_SHARE = Step.of(
            "d",
            "share of the nominal voltage lost",
            "d = dV/V",
            NONE,
            OHM,
            new Symbol("dV", VOLTAGE),
            new Symbol("V", VOLTAGE));
    private static final Step LOSS = Step.of(
            "P",
            "heat in the cable, mean over the cycle",
            "P = 2·L·Irms²·r/n",
            POWER,
            OHM,
            LENGTH_ONE_WAY,
            I_RMS,
            PER_LENGTH,
            RUNS);
    private static final Step PEAK_TEMPERATURE = Step.of(
            "T",
            "temperature of the conductor at the hottest moment",
            "T = Ta + θ·(Tc − Ta)",
            TEMPERATURE,
            Source.derived("first-order heat balance of the conductor"),
            new Symbol("Ta", TEMPERATURE),
            new Symbol("θ", NONE),
            new Symbol("Tc", TEMPERATURE));
    private static final Step DROP_AREA = Step.of(
            "Sd",
            "copper area at which the drop is just allowed, of all runs",
            "Sd = ρ·Ip·2·L/(s·V), ρ = (10⁻⁶/58)·(234.5 + Tc)/254.5",
            AREA,
            Source.published("IACS, NBS Handbook 100, 1/58 ohm mm2/m at 20 degC"),
            new Symbol("Tc", TEMPERATURE),
            PEAK,
            LENGTH_ONE_WAY,
            new Symbol("s", NONE),
            new Symbol("V", VOLTAGE));

    private ConductorSizing() {}

    /**
     * One circuit sized.
     *
     * @param conductorC temperature at which resistance, drop and loss hold: the column of the table, degC
     * @param chosen the thinnest that passes; null when none does
     * @param limitedBy what set the size; null when none passes
     * @param peakC highest temperature of the conductor over the cycle, degC; null when none passes
     * @param peakHeatingS time in which the peak current would bring the conductor from where it starts to its limit with no heat lost,
     *     s; null for a steady current and when none passes
     * @param dropAreaM2 least copper area for the drop, m2; null when the voltage is not known
     * @param candidates every size tried, thinnest first
     * @param fuse for the size stated, else the chosen one; null when there is none and on the motor side
     * @param warmth of the chosen size; null when none passes or its strand does not fit into the diameter outside
     * @param judged the size stated; null when none was, or thinner than the table
     * @param verdict on that fuse
     * @param route the cable judged, else the one proposed, under the current of the route; null when none flows here
     */
    public record Result(
            CircuitInput input,
            double rmsA,
            double peakA,
            double conductorC,
            @Nullable Candidate chosen,
            @Nullable Limit limitedBy,
            @Nullable Double peakC,
            @Nullable Double peakHeatingS,
            @Nullable Double dropAreaM2,
            List<Candidate> candidates,
            @Nullable FuseWindow fuse,
            @Nullable Warmth warmth,
            @Nullable Judged judged,
            FuseCheck.@Nullable Verdict verdict,
            @Nullable RouteHeat route) {}

    /**
     * A cable under the current of a route that repeats, by the physical model.
     *
     * @param rmsA current of the same mean heat, A
     * @param peakA highest mean current of a leg, A
     * @param hottestC degC; null when it leaves the model
     */
    public record RouteHeat(
            double rmsA, double peakA, @Nullable Double hottestC) {}

    /**
     * A cable by the physical model.
     *
     * @param hottestC over the repeated cycle, degC; null when it leaves the model
     * @param toLimitS time in which the peak current brings it to its limit, s; null when it never does
     */
    public record Warmth(
            @Nullable Double hottestC, @Nullable Double toLimitS) {}

    /**
     * The size that somebody has chosen.
     *
     * @param warmth null when its strand does not fit into the diameter outside
     */
    public record Judged(Candidate candidate, @Nullable Warmth warmth) {}

    /**
     * Sizes every circuit by itself.
     *
     * @param pack behind them, for the working; null when not known
     */
    public static List<Result> of(@Nullable PackFeed pack, List<CircuitInput> circuits, Trace trace) {
        if (pack != null) {
            pack.voltages(trace);
            pack.resistanceOhm(trace);
        }
        return circuits.stream().map(circuit -> of(circuit, trace)).toList();
    }

    /** Sizes one circuit. */
    public static Result of(CircuitInput input, Trace trace) {
        trace.note(CIRCUIT, input.index(), input.index());
        double rms = input.cycle().rmsA(trace);
        double peak = input.cycle().peakA();
        List<Candidate> candidates = candidates(input, rms);
        Candidate chosen =
                candidates.stream().filter(Candidate::passes).findFirst().orElse(null);
        Double dropArea = dropArea(input, peak, trace);
        Judged judged = judged(input, rms, trace);
        Result result;
        if (chosen == null) {
            result = result(input, rms, null, null, null, null, dropArea, candidates, null, judged, trace);
        } else {
            Candidate worked = candidate(input, chosen.conductor(), chosen.parallel(), rms, trace)
                    .orElseThrow();
            Factor air = air(input, input.columnC());
            Hottest hottest = input.cycle().hottest(worked.ampacityA(), worked.timeConstantS(), trace);
            double peakC = trace.note(
                    PEAK_TEMPERATURE,
                    air.ambientC() + hottest.share() * (input.columnC() - air.ambientC()),
                    air.ambientC(),
                    hottest.share(),
                    input.columnC());
            double startC = air.ambientC() + hottest.peakStartShare() * (input.columnC() - air.ambientC());
            Double heating = input.steady()
                    ? null
                    : (Double) Adiabatic.timeS(
                            peak / worked.parallel(), worked.conductor().areaM2(), startC, input.columnC(), trace);
            result = result(
                    input,
                    rms,
                    worked,
                    limitedBy(candidates),
                    peakC,
                    heating,
                    dropArea,
                    candidates,
                    warmth(input, worked, rms, trace),
                    judged,
                    trace);
        }
        ConductorFindings.find(result, trace);
        return result;
    }

    /** Adds the fuse, which protects the cable that is there, else the one proposed. */
    private static Result result(
            CircuitInput input,
            double rmsA,
            @Nullable Candidate chosen,
            @Nullable Limit limitedBy,
            @Nullable Double peakC,
            @Nullable Double heatingS,
            @Nullable Double dropAreaM2,
            List<Candidate> candidates,
            @Nullable Warmth warmth,
            @Nullable Judged judged,
            Trace trace) {
        Candidate protectedCable = judged != null ? judged.candidate() : chosen;
        FuseWindow fuse = null;
        FuseCheck.Verdict verdict = null;
        if (protectedCable != null && input.side() != CircuitSide.MOTOR) {
            fuse = FuseWindow.of(input, rmsA, protectedCable, trace);
            verdict = FuseCheck.of(input, fuse, protectedCable, trace);
        }
        return new Result(
                input,
                rmsA,
                input.cycle().peakA(),
                input.columnC(),
                chosen,
                limitedBy,
                peakC,
                heatingS,
                dropAreaM2,
                candidates,
                fuse,
                warmth,
                judged,
                verdict,
                protectedCable == null ? null : route(input, protectedCable, trace));
    }

    private static @Nullable RouteHeat route(CircuitInput input, Candidate cable, Trace trace) {
        Cycle route = input.route();
        Double wall = input.insulation().wallM(cable.conductor());
        if (route == null || wall == null) {
            return null;
        }
        Trace ofRoute = trace.of("route");
        double rms = route.rmsA(ofRoute);
        double ambient = air(input, input.columnC()).ambientC();
        CableHeat heat = heat(input, cable, wall, ambient);
        CableHeat.Settled settled = heat.settled(route, rms, cable.parallel());
        Double hottest = settled == null ? null : (Double) settled.hottestC();
        heat.note(cable.conductor().areaM2(), wall, hottest, null, ambient, input.columnC(), ofRoute);
        return new RouteHeat(rms, route.peakA(), hottest);
    }

    private static CableHeat heat(CircuitInput input, Candidate cable, double wallM, double ambientC) {
        return new CableHeat(
                cable.resistanceOhmPerM(),
                input.columnC(),
                cable.conductor().areaM2(),
                wallM,
                ambientC,
                bundle(input, cable.parallel()).value());
    }

    private static @Nullable Judged judged(CircuitInput input, double rmsA, Trace trace) {
        CircuitInput.Stated stated = input.stated();
        if (stated == null) {
            return null;
        }
        Trace ofStated = trace.of("size sent");
        Candidate candidate = candidate(input, stated.conductor(), stated.runs(), rmsA, ofStated)
                .orElse(null);
        return candidate == null ? null : new Judged(candidate, warmth(input, candidate, rmsA, ofStated));
    }

    /** The physical model on a cable; null when its strand does not fit into the diameter outside. */
    private static @Nullable Warmth warmth(CircuitInput input, Candidate cable, double rmsA, Trace trace) {
        Double wall = input.insulation().wallM(cable.conductor());
        if (wall == null) {
            return null;
        }
        double column = input.columnC();
        double ambient = air(input, column).ambientC();
        int runs = cable.parallel();
        CableHeat heat = heat(input, cable, wall, ambient);
        double start = ambient;
        Double hottest = null;
        if (input.steady()) {
            OptionalDouble steady = heat.steadyC(rmsA / runs);
            hottest = steady.isPresent() ? (Double) steady.getAsDouble() : null;
        } else {
            CableHeat.Settled settled = heat.settled(input.cycle(), rmsA, runs);
            if (settled != null) {
                hottest = settled.hottestC();
                start = settled.peakStartC();
            }
        }
        if (input.initialC() != null) {
            start = input.initialC();
        }
        OptionalDouble time = heat.timeS(input.cycle().peakA() / runs, start, column);
        Double toLimit = time.isPresent() ? (Double) time.getAsDouble() : null;
        heat.note(cable.conductor().areaM2(), wall, hottest, toLimit, start, column, trace);
        return new Warmth(hottest, toLimit);
    }

    /**
     * Least copper area for a drop, m2: {@code S = ρ I L_loop/dV}.
     *
     * @param loopM out and back, m
     */
    public static double dropAreaM2(double resistivityOhmM, double currentA, double loopM, double dropV) {
        return resistivityOhmM * currentA * loopM / dropV;
    }

    private static @Nullable Double dropArea(CircuitInput input, double peakA, Trace trace) {
        Double volts = input.supply().nominalV();
        if (volts == null) {
            return null;
        }
        double area = dropAreaM2(
                Copper.resistivityOhmM(input.columnC()), peakA, 2 * input.lengthM(), input.allowedDropShare() * volts);
        return trace.note(DROP_AREA, area, input.columnC(), peakA, input.lengthM(), input.allowedDropShare(), volts);
    }

    /** Single runs of the series; when none passes, two, three, four runs of the thick ones until one does. */
    private static List<Candidate> candidates(CircuitInput input, double rmsA) {
        List<Candidate> tried = new ArrayList<>();
        for (int runs = 1; runs <= MOST_RUNS && tried.stream().noneMatch(Candidate::passes); runs++) {
            for (Conductor conductor : Conductor.of(input.sizes())) {
                if (runs == 1 || conductor.areaM2() >= THINNEST_PARALLEL_M2) {
                    candidate(input, conductor, runs, rmsA, Trace.withoutWorking())
                            .ifPresent(tried::add);
                }
            }
        }
        return List.copyOf(tried);
    }

    /** A size with its figures; nothing when it is thinner than the table or a gauge that the table does not print. */
    private static Optional<Candidate> candidate(
            CircuitInput input, Conductor conductor, int runs, double rmsA, Trace trace) {
        return input.table().row(conductor.areaM2()).map(row -> candidate(input, conductor, runs, row, rmsA, trace));
    }

    private static Candidate candidate(
            CircuitInput input, Conductor conductor, int runs, Row row, double rmsA, Trace trace) {
        double column = input.columnC();
        double resistance = conductor.resistanceOhmPerM(column, trace);
        double ampacity = ampacity(input, row, runs, column, trace);
        Factor air = air(input, column);
        double each = ampacity / runs;
        double timeConstant = trace.note(
                TIME_CONSTANT,
                Copper.VOLUMETRIC_HEAT_IEC_60949
                        * conductor.areaM2()
                        * (column - air.ambientC())
                        / (each * each * resistance),
                conductor.areaM2(),
                column,
                air.ambientC(),
                ampacity,
                runs,
                resistance);
        double peak = input.cycle().peakA();
        double drop = trace.note(
                DROP, 2 * input.lengthM() * peak * resistance / runs, input.lengthM(), peak, resistance, runs);
        Double volts = input.supply().nominalV();
        Double share = volts == null ? null : (Double) trace.note(DROP_SHARE, drop / volts, drop, volts);
        double loss = trace.note(
                LOSS, 2 * input.lengthM() * rmsA * rmsA * resistance / runs, input.lengthM(), rmsA, resistance, runs);

        EnumSet<Limit> fails = EnumSet.noneOf(Limit.class);
        if (rmsA > ampacity * FULL) {
            double byInsulation = ampacity(input, row, runs, input.insulationColumnC(), Trace.withoutWorking());
            fails.add(rmsA > byInsulation * FULL ? Limit.AMPACITY : Limit.TERMINATION);
        } else if (input.cycle()
                        .hottest(ampacity, timeConstant, Trace.withoutWorking())
                        .share()
                > FULL) {
            fails.add(Limit.PEAK_HEATING);
        }
        if (share != null && share > input.allowedDropShare()) {
            fails.add(Limit.VOLTAGE_DROP);
        }
        return new Candidate(
                conductor,
                runs,
                row.size(),
                resistance,
                ampacity,
                drop,
                share,
                loss,
                timeConstant,
                Collections.unmodifiableSet(fails));
    }

    private static double ampacity(CircuitInput input, Row row, int runs, double columnC, Trace trace) {
        Factor air = air(input, columnC);
        Factor bundle = bundle(input, runs);
        double tabled = input.table().currentA(row, columnC);
        return trace.note(
                AMPACITY, runs * tabled * air.value() * bundle.value(), runs, tabled, air.value(), bundle.value());
    }

    static Factor air(CircuitInput input, double columnC) {
        AmpacityTable table = input.table();
        Double ambient = input.surroundings().ambientC();
        return input.surroundings().location() == Location.ENGINE_SPACE
                ? table.engineSpace(columnC)
                : table.ambient(ambient == null ? AmpacityTable.BASE_C : ambient, columnC);
    }

    /** Runs in parallel lie with the others. A voltage that is not known counts as one of the stricter rule. */
    static Factor bundle(CircuitInput input, int runs) {
        Double volts = input.supply().highestV();
        return input.table()
                .bundle(input.bundled() + 2 * (runs - 1), volts == null ? FuseWindow.STRICTER_FROM_V : volts);
    }

    /** What kept the thinner ones out: of all limits the one that the last candidate before the chosen fails; the RMS current first. */
    private static Limit limitedBy(List<Candidate> candidates) {
        Limit last = Limit.AMPACITY;
        for (Candidate candidate : candidates) {
            if (candidate.passes()) {
                break;
            }
            last = candidate.fails().iterator().next();
        }
        return last;
    }
}
