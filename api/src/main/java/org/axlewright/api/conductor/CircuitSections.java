package org.axlewright.api.conductor;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Accessories;
import org.axlewright.api.section.Circuit;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.conductor.AmpacityTable;
import org.axlewright.domain.conductor.CircuitInput;
import org.axlewright.domain.conductor.CircuitInput.Breaker;
import org.axlewright.domain.conductor.CircuitInput.Controller;
import org.axlewright.domain.conductor.CircuitInput.Flat;
import org.axlewright.domain.conductor.CircuitInput.Insulation;
import org.axlewright.domain.conductor.CircuitInput.Stated;
import org.axlewright.domain.conductor.CircuitInput.Supply;
import org.axlewright.domain.conductor.CircuitInput.Surroundings;
import org.axlewright.domain.conductor.CircuitSide;
import org.axlewright.domain.conductor.Cycle;
import org.axlewright.domain.conductor.FuseSent;
import org.axlewright.domain.conductor.Location;
import org.axlewright.domain.conductor.PackFeed;
import org.axlewright.domain.conductor.Segment;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.ResistanceOf;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.CurrentUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Reads the circuits, and of pack and controller what concerns them. */
final class CircuitSections {

    private static final double ALLOWED_DROP_SHARE = 0.03;
    private static final double INSULATION_C = 75;
    private static final int BUNDLED = 2;
    private static final double WALL_M = 0.8e-3;
    private static final double COLD_LITHIUM = 3;
    private static final double COLD_LEAD_ACID = 2;

    private CircuitSections() {}

    /** What is sized. */
    record Circuits(@Nullable PackFeed pack, List<CircuitInput> circuits) {}

    static Circuits resolve(Setup setup, Resolution resolution) {
        PackFeed pack = pack(setup.pack(), resolution);
        List<Circuit> sent = Objects.requireNonNull(setup.circuits());
        boolean routed = sent.stream().anyMatch(circuit -> Boolean.TRUE.equals(circuit.routeCurrent()));
        Cycle route = routed ? RouteCurrent.of(setup, resolution) : null;
        List<CircuitInput> circuits = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            CircuitInput circuit = circuit(i, sent.get(i), pack, route, setup, resolution);
            if (circuit != null) {
                circuits.add(circuit);
            }
        }
        return new Circuits(pack, circuits);
    }

    /** The pack when its voltage can be told. */
    private static @Nullable PackFeed pack(@Nullable Pack pack, Resolution resolution) {
        Integer cells = pack == null ? null : PackSections.cellsInSeries(pack);
        if (pack == null || pack.chemistry() == null || cells == null) {
            return null;
        }
        Pack.InternalResistance resistance = pack.resistance();
        Integer parts = resistance == null ? null : parts(resistance.of(), pack, cells);
        if (resistance == null || resistance.value() == null || parts == null) {
            return new PackFeed(pack.chemistry(), cells, null, 1, 1);
        }
        int strings = resistance.of() == ResistanceOf.PACK ? 1 : PackSections.strings(pack, resolution);
        return new PackFeed(pack.chemistry(), cells, resistance.value().si(), parts, strings);
    }

    /** How many parts of the stated resistance one string has; null when that is not said. */
    private static @Nullable Integer parts(@Nullable ResistanceOf of, Pack pack, int cells) {
        if (of == null) {
            return null;
        }
        return switch (of) {
            case CELL -> cells;
            case BLOCK -> pack.blocks() == null ? null : pack.blocks().count();
            case PACK -> 1;
        };
    }

    private static @Nullable CircuitInput circuit(
            int index,
            Circuit circuit,
            @Nullable PackFeed pack,
            @Nullable Cycle route,
            Setup setup,
            Resolution resolution) {
        String pointer = "/circuits/" + index;
        Cycle cycle = cycle(circuit, pointer, resolution);
        AmpacityTable table = circuit.table() != null
                ? circuit.table()
                : resolution.assume(
                        "ampacity-table",
                        pointer + "/table",
                        AmpacityTable.CFR_33_183_425,
                        "written for battery cable; stands in for a rule for off-road vehicles",
                        AmpacityTable.CFR_33_183_425.source());
        double insulation = circuit.insulationRating() != null
                ? circuit.insulationRating().si()
                : resolution.assume(
                        "insulation-rating",
                        pointer + "/insulationRating",
                        new Measure(INSULATION_C, TEMPERATURE),
                        "the cautious end of usual battery cable; many are marked 90 or 105 degC",
                        Source.COMMON_PRACTICE);
        boolean terminationKnown = circuit.terminationRating() != null;
        double termination = circuit.terminationRating() != null
                ? circuit.terminationRating().si()
                : resolution.assume(
                        "termination-rating",
                        pointer + "/terminationRating",
                        new Measure(insulation, TEMPERATURE),
                        "terminals that bear what the insulation bears; no rule rates crimped lugs on studs",
                        Source.COMMON_PRACTICE);
        boolean insulationHolds =
                hotEnough(circuit.insulationRating(), insulation, table, pointer + "/insulationRating", resolution);
        boolean terminalsHold =
                hotEnough(circuit.terminationRating(), termination, table, pointer + "/terminationRating", resolution);
        if (!insulationHolds
                || !terminalsHold
                || !coolEnough(circuit.ambient(), Math.min(insulation, termination), table, pointer, resolution)
                || cycle == null) {
            return null;
        }
        CircuitSide side = circuit.side() != null
                ? circuit.side()
                : resolution.assume(
                        "battery-side",
                        pointer + "/side",
                        CircuitSide.BATTERY,
                        "before the controller unless it is said to lie behind it",
                        Source.COMMON_PRACTICE);
        Supply supply = supply(circuit, pack, side, pointer, resolution);
        return new CircuitInput(
                index,
                circuit.name(),
                circuit.reference(),
                side,
                supply,
                controller(setup.drive()),
                Objects.requireNonNull(circuit.length()).si(),
                cycle,
                circuit.continuousCurrent() != null,
                circuit.allowedDropShare() != null
                        ? circuit.allowedDropShare()
                        : resolution.assume(
                                "allowed-drop-share",
                                pointer + "/allowedDropShare",
                                Measure.number(ALLOWED_DROP_SHARE),
                                "3 %, as for circuits that matter",
                                Source.published("ISO 10133:2012, critical circuits")),
                table,
                insulation,
                termination,
                terminationKnown,
                surroundings(circuit, pointer, resolution),
                circuit.bundled() != null
                        ? circuit.bundled()
                        : resolution.assume(
                                "bundled",
                                pointer + "/bundled",
                                BUNDLED,
                                "this circuit's two conductors alone",
                                Source.COMMON_PRACTICE),
                circuit.sizes() != null
                        ? circuit.sizes()
                        : resolution.assume(
                                "size-series",
                                pointer + "/sizes",
                                SizeSeries.AWG,
                                "the series the tables are printed in",
                                table.source()),
                circuit.size() == null
                        ? null
                        : new Stated(
                                Conductor.of(ConductorSize.parse(circuit.size())),
                                circuit.parallel() == null ? 1 : circuit.parallel()),
                insulation(circuit, pointer, resolution),
                circuit.initialTemperature() == null
                        ? null
                        : (Double) circuit.initialTemperature().si(),
                flat(circuit, pack, supply, side, pointer, resolution),
                side == CircuitSide.BATTERY && supply.fullV() != null ? breakers(setup) : List.of(),
                side == CircuitSide.BATTERY ? fuse(circuit.fuse(), pointer + "/fuse", resolution) : FuseSent.UNKNOWN,
                Boolean.TRUE.equals(circuit.routeCurrent()) ? route : null);
    }

    /** Null when the profile has a gap or carries nothing; the fault is noted. */
    private static @Nullable Cycle cycle(Circuit circuit, String pointer, Resolution resolution) {
        if (circuit.continuousCurrent() != null) {
            return Cycle.steady(circuit.continuousCurrent().si());
        }
        List<Segment> segments = new ArrayList<>();
        List<Circuit.Segment> sent = Objects.requireNonNull(circuit.profile());
        for (int j = 0; j < sent.size(); j++) {
            Circuit.Segment segment = sent.get(j);
            if (segment.current() == null) {
                resolution.missing(pointer + "/profile/" + j + "/current");
            }
            if (segment.duration() == null) {
                resolution.missing(pointer + "/profile/" + j + "/duration");
            }
            if (segment.current() != null && segment.duration() != null) {
                segments.add(
                        new Segment(segment.current().si(), segment.duration().si()));
            }
        }
        if (segments.size() < sent.size()) {
            return null;
        }
        if (segments.stream().allMatch(segment -> segment.currentA() == 0)) {
            resolution.refuse(new Fault(
                    pointer + "/profile",
                    "no-current",
                    "The profile carries no current: one segment at least must be above 0 A",
                    new Current(0, CurrentUnit.AMPERE),
                    new Current(0, CurrentUnit.AMPERE)));
            return null;
        }
        return new Cycle(segments);
    }

    private static boolean hotEnough(
            @Nullable Temperature sent, double ratingC, AmpacityTable table, String pointer, Resolution resolution) {
        if (ratingC >= table.coolestColumnC()) {
            return true;
        }
        if (sent != null) {
            resolution.refuse(Form.outOfRange(pointer + "/value", sent, table.coolestColumnC(), true));
        }
        return false;
    }

    private static boolean coolEnough(
            @Nullable Temperature ambient, double ratingC, AmpacityTable table, String pointer, Resolution resolution) {
        if (ambient == null) {
            return true;
        }
        double columnC = table.columnC(ratingC).orElseThrow();
        double hottestC = table.hottestAmbientC(columnC);
        double ambientC = ambient.si();
        if (ambientC < columnC && ambientC <= hottestC) {
            return true;
        }
        double limit = ambient.unit().fromSi(hottestC);
        boolean open = hottestC >= columnC;
        resolution.refuse(new Fault(
                pointer + "/ambient/value",
                "out-of-range",
                "Must be " + (open ? "below " : "at most ") + limit + " " + ambient.unit() + " for a cable used at "
                        + ambient.unit().fromSi(columnC) + " " + ambient.unit() + ", was " + ambient.value() + " "
                        + ambient.unit(),
                ambient,
                Map.of("value", limit, "unit", ambient.unit())));
        return false;
    }

    private static Surroundings surroundings(Circuit circuit, String pointer, Resolution resolution) {
        if (circuit.ambient() != null) {
            return new Surroundings(Location.OPEN, circuit.ambient().si());
        }
        Location location = circuit.location() != null
                ? circuit.location()
                : resolution.assume(
                        "location",
                        pointer + "/location",
                        Location.OPEN,
                        "free air at the 30 degC that the tables are printed for; a hot compartment is an engine-space",
                        Source.COMMON_PRACTICE);
        return new Surroundings(location, null);
    }

    private static Controller controller(@Nullable Drive drive) {
        Drive.Controller controller = drive == null ? null : drive.controller();
        return controller == null
                ? new Controller(null, null)
                : new Controller(
                        controller.motorCurrent() == null
                                ? null
                                : (Double) controller.motorCurrent().si(),
                        controller.batteryCurrent() == null
                                ? null
                                : (Double) controller.batteryCurrent().si());
    }

    /** The circuit's own voltage, else the pack's; a stated voltage that the pack can have makes the circuit one of the pack. */
    private static Supply supply(
            Circuit circuit, @Nullable PackFeed pack, CircuitSide side, String pointer, Resolution resolution) {
        PackVoltages volts = pack == null ? null : pack.voltages(Trace.withoutWorking());
        Double stated =
                circuit.voltage() == null ? null : (Double) circuit.voltage().si();

        if (pack == null || volts == null) {
            if (stated == null) {
                List.of("/dropShare", "/areaForDrop")
                        .forEach(result -> resolution.notAnswered(
                                pointer + result, pointer + "/voltage", "/pack/chemistry", "/pack/cellsInSeries"));
            }
            if (side == CircuitSide.BATTERY) {
                if (stated == null) {
                    List.of("/fuse/rating", "/fuse/upperBound")
                            .forEach(result -> resolution.notAnswered(
                                    pointer + result, pointer + "/voltage", "/pack/chemistry", "/pack/cellsInSeries"));
                }
                resolution.notAnswered(
                        pointer + "/fuse/minimumVoltageRating", "/pack/chemistry", "/pack/cellsInSeries");
                interruptingUnknown(pointer, resolution);
            }
            return new Supply(stated, null, null);
        }
        if (stated != null && (stated < volts.cutOffV() || stated > volts.fullV())) {
            if (side == CircuitSide.BATTERY) {
                // the highest voltage of another source has no place in the sections
                resolution.notAnswered(pointer + "/fuse/minimumVoltageRating", pointer + "/voltage");
                resolution.notAnswered(pointer + "/fuse/minimumInterruptingRating", pointer + "/voltage");
                resolution.notAnswered(pointer + "/fuse/maximumClearingTime", pointer + "/voltage");
                resolution.notAnswered(pointer + "/fuse/leastFaultCurrent", pointer + "/voltage");
            }
            return new Supply(stated, null, null);
        }
        if (stated == null) {
            stated = resolution.assume(
                    "circuit-voltage",
                    pointer + "/voltage",
                    new Measure(volts.nominalV(), VOLTAGE),
                    "nominal voltage of the pack, " + pack.cells() + " cells in series",
                    CellData.of(pack.chemistry()).nominalV().source());
        }
        Double resistance = pack.resistanceOhm(Trace.withoutWorking());
        if (side == CircuitSide.BATTERY && resistance == null) {
            interruptingUnknown(pointer, resolution);
        }
        return new Supply(stated, volts.fullV(), resistance);
    }

    private static Insulation insulation(Circuit circuit, String pointer, Resolution resolution) {
        if (circuit.outerDiameter() != null) {
            return new Insulation(null, circuit.outerDiameter().si());
        }
        return new Insulation(
                circuit.insulationThickness() != null
                        ? circuit.insulationThickness().si()
                        : resolution.assume(
                                "insulation-thickness",
                                pointer + "/insulationThickness",
                                new Measure(WALL_M, CLEARANCE),
                                "a thin wall; battery cable has about twice that and runs cooler",
                                Source.memory("SAE J1128 thin-wall and general-purpose primary cable")),
                null);
    }

    /** The pack when it gives least; null where the circuit is not the pack's. */
    private static @Nullable Flat flat(
            Circuit circuit,
            @Nullable PackFeed pack,
            Supply supply,
            CircuitSide side,
            String pointer,
            Resolution resolution) {
        if (pack == null || supply.packOhm() == null || side == CircuitSide.MOTOR) {
            return null;
        }
        Circuit.Fuse fuse = circuit.fuse();
        double factor = fuse != null && fuse.coldResistanceFactor() != null
                ? fuse.coldResistanceFactor()
                : resolution.assume(
                        "cold-resistance",
                        pointer + "/fuse/coldResistanceFactor",
                        Measure.number(pack.chemistry().isLeadAcid() ? COLD_LEAD_ACID : COLD_LITHIUM),
                        "a flat, freezing pack resists more, and a fault on it draws least",
                        Source.memory("cell makers' resistance by temperature, about 0 degC"));
        return new Flat(pack.voltages(Trace.withoutWorking()).cutOffV(), factor);
    }

    /** What opens under a fault beside the fuse. The battery management opens past its peak and is good for no more. */
    private static List<Breaker> breakers(Setup setup) {
        List<Breaker> breakers = new ArrayList<>();
        Pack.Limits limits = setup.pack() == null ? null : setup.pack().limits();
        Pack.Peak peak = limits == null ? null : limits.peakDischarge();
        if (peak != null && peak.current() != null) {
            double most = peak.current().si();
            breakers.add(new Breaker(
                    "battery management", "/pack/limits/peakDischarge/current", most, most, si(peak.duration())));
        }
        Accessories.Contactor contactor =
                setup.accessories() == null ? null : setup.accessories().contactor();
        if (contactor != null && contactor.ratedCurrent() != null) {
            breakers.add(new Breaker(
                    "contactor",
                    "/accessories/contactor/ratedCurrent",
                    contactor.ratedCurrent().si(),
                    si(contactor.breakingCurrent()),
                    si(contactor.openingTime())));
        }
        return breakers;
    }

    private static FuseSent fuse(Circuit.@Nullable Fuse sent, String pointer, Resolution resolution) {
        if (sent == null || sent.temperature() == null) {
            resolution.assume(
                    "fuse-temperature",
                    pointer + "/temperature",
                    new Measure(FuseSent.RATED_C, TEMPERATURE),
                    "ratings and curves hold there; in a hot compartment a fuse carries less",
                    Source.weak("fuse makers' selection notes"));
        }
        if (sent == null) {
            return FuseSent.UNKNOWN;
        }
        List<FuseSent.Point> curve = new ArrayList<>();
        List<Circuit.MeltingPoint> points = sent.meltingCurve() == null ? List.of() : sent.meltingCurve();
        for (int i = 0; i < points.size(); i++) {
            Circuit.MeltingPoint point = points.get(i);
            if (point.current() == null) {
                resolution.missing(pointer + "/meltingCurve/" + i + "/current");
            }
            if (point.time() == null) {
                resolution.missing(pointer + "/meltingCurve/" + i + "/time");
            }
            if (point.current() != null && point.time() != null) {
                curve.add(new FuseSent.Point(point.current().si(), point.time().si()));
            }
        }
        if (!points.isEmpty() && sent.rating() == null) {
            resolution.missing(pointer + "/rating");
        }
        int odd = FuseSent.firstImplausible(curve);
        if (odd >= 0) {
            resolution.refuse(Fault.contradiction(
                    pointer + "/meltingCurve/" + odd,
                    "A fuse melts faster at a larger current: send the points by rising current and falling time"));
            return FuseSent.UNKNOWN;
        }
        return new FuseSent(
                si(sent.rating()),
                si(sent.voltageRating()),
                si(sent.interruptingRating()),
                curve,
                si(sent.temperature()),
                sent.perParallelRun(),
                si(sent.distance()),
                Boolean.TRUE.equals(sent.sheathed()));
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }

    private static void interruptingUnknown(String pointer, Resolution resolution) {
        resolution.notAnswered(pointer + "/fuse/leastFaultCurrent", "/pack/resistance");
        resolution.notAnswered(pointer + "/fuse/minimumInterruptingRating", "/pack/resistance");
        resolution.notAnswered(pointer + "/fuse/maximumClearingTime", "/pack/resistance");
    }
}
